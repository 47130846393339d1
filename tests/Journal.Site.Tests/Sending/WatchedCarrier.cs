using System.Collections.Concurrent;
using Journal.Site.Sending;

namespace Journal.Site.Tests.Sending;

/// <summary>Another transport's work, written down in its order, with failures on request.</summary>
internal sealed class WatchedCarrier(ITransport inner) : ITransport
{
    private int steps;

    public ConcurrentQueue<string> Done { get; } = new();

    /// <summary>Is asked before each step, counted from 1; what it gives is thrown.</summary>
    public Func<int, Exception?> Fail { get; init; } = _ => null;

    public Func<Exception, bool> Passes { get; init; } = _ => false;

    public int AtOnce => inner.AtOnce;

    public bool ArrivesAtOnce => inner.ArrivesAtOnce;

    public string? Draft => inner.Draft;

    public IEnumerable<string> Sent => Done.Where(line => line.StartsWith("put ", StringComparison.Ordinal)).Select(line => line[4..]);

    public Task OpenAsync(CancellationToken cancellation) => inner.OpenAsync(cancellation);

    public Task<byte[]?> ReadAsync(string address, CancellationToken cancellation) => inner.ReadAsync(address, cancellation);

    public IAsyncEnumerable<(string Address, long Length)> ListAsync(CancellationToken cancellation)
    {
        Done.Enqueue("list");
        return inner.ListAsync(cancellation);
    }

    public async Task PutAsync(OutgoingFile file, CancellationToken cancellation)
    {
        Step();
        await inner.PutAsync(file, cancellation);
        Done.Enqueue($"put {file.Address}");
    }

    public async Task DeleteAsync(string address, CancellationToken cancellation)
    {
        Step();
        await inner.DeleteAsync(address, cancellation);
        Done.Enqueue($"delete {address}");
    }

    public Task RemoveEmptyFoldersAsync(IReadOnlyCollection<string> deleted, CancellationToken cancellation) => inner.RemoveEmptyFoldersAsync(deleted, cancellation);

    public Task FinishAsync(CancellationToken cancellation) => inner.FinishAsync(cancellation);

    public bool MayPass(Exception failure) => Passes(failure) || inner.MayPass(failure);

    public string? Explain(Exception failure) => inner.Explain(failure);

    public ValueTask DisposeAsync() => inner.DisposeAsync();

    private void Step()
    {
        if (Fail(Interlocked.Increment(ref steps)) is { } failure)
        {
            throw failure;
        }
    }
}
