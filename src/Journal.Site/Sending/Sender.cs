using System.Runtime.ExceptionServices;
using System.Security.Cryptography;
using Journal.Core.Model;

namespace Journal.Site.Sending;

/// <summary>
/// Sends a site to where viewers are: only what changed, pictures before the pages that show them, the front page and the
/// feeds last, and then deletes what earlier sends brought and the site no longer has.
/// </summary>
public sealed class Sender
{
    private const string NoManifest = "none";
    private readonly SendOrder order;
    private readonly ITransport transport;
    private readonly RetryPolicy retries;
    private readonly IReadOnlyDictionary<string, string> site;
    private long bytes;
    private int files;

    private Sender(SendOrder order, ITransport transport, RetryPolicy retries, IReadOnlyDictionary<string, string> site) =>
        (this.order, this.transport, this.retries, this.site) = (order, transport, retries, site);

    /// <summary>Sends a site.</summary>
    /// <exception cref="SendingException">It could not be finished; viewers still have whole pages.</exception>
    public static async Task<SendReport> SendAsync(SendOrder order, CancellationToken cancellation = default)
    {
        var transport = Transports.For(order);
        await using (transport)
        {
            return await SendAsync(order, transport, RetryPolicy.Usual, cancellation);
        }
    }

    /// <summary>Sends a site by a given way.</summary>
    /// <param name="order">The site, and where it goes.</param>
    /// <param name="transport">The way to the destination; opened here, and disposed by the caller.</param>
    /// <param name="retries">How often, and after what waits, a failure that may pass is tried again.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="SendingException">It could not be finished; sending again goes on from there.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    internal static async Task<SendReport> SendAsync(SendOrder order, ITransport transport, RetryPolicy retries, CancellationToken cancellation)
    {
        var sender = new Sender(order, transport, retries, SiteToSend.FilesOf(order.Site));
        try
        {
            return await sender.SendAsync(cancellation);
        }
        catch (Exception e) when (e is not (SendingException or OperationCanceledException))
        {
            throw new SendingException($"{(transport.Explain(e) ?? e.Message).TrimEnd('.')}. Send again to continue from here.", e);
        }
    }

    private async Task<SendReport> SendAsync(CancellationToken cancellation)
    {
        using var log = SendLog.Open(order.Site, order.Destination);
        await Try(transport.OpenAsync, cancellation);
        var bytesThere = await retries.Try(stop => transport.ReadAsync(SentManifest.Address, stop), transport.MayPass, cancellation);
        var manifest = bytesThere is null ? Own(new Dictionary<string, string>()) : SentManifest.Read(bytesThere);
        RefuseAnother(manifest);
        var digest = bytesThere is null ? NoManifest : DigestOf(bytesThere);
        var there = log.Correct(manifest.Files, digest);
        if (bytesThere is null || order.Verify || site.Keys.Any(address => !there.ContainsKey(address)))
        {
            var found = await retries.Try(List, transport.MayPass, cancellation);
            RefuseForeign(found, there);
            there = bytesThere is null || order.Verify ? Corrected(found, there) : there;
        }

        var plan = SendPlan.Between(site, there);
        var report = new SendReport(plan.ToSend, plan.ToDelete, plan.ToSend.Sum(SiteLength));
        if (order.DryRun)
        {
            return report;
        }

        await ClearHalves(log, cancellation);
        var next = Own(site).ToBytes();
        if (bytesThere is null || !next.AsSpan().SequenceEqual(bytesThere) || plan.ToSend.Count + plan.ToDelete.Count > 0)
        {
            log.Start(digest);
            await Carry(plan, report, log, cancellation);
            log.FinishAll(DigestOf(next));
            await Try(stop => transport.PutAsync(new OutgoingFile(SentManifest.Address, next), stop), cancellation);
            await transport.FinishAsync(cancellation);
        }

        log.Close();
        return report;
    }

    private static string DigestOf(byte[] manifest) => Convert.ToHexStringLower(SHA256.HashData(manifest));

    private async Task Carry(SendPlan plan, SendReport report, SendLog log, CancellationToken cancellation)
    {
        foreach (var phase in plan.ToSend.GroupBy(UploadPhases.Of))
        {
            await AtOnce(phase, (address, stop) => Carry(address, report, log, stop), cancellation);
        }

        foreach (var phase in plan.ToDelete.GroupBy(UploadPhases.Of))
        {
            await AtOnce(phase, (address, stop) => TakeAway(address, log, stop), cancellation);
        }

        if (plan.ToDelete.Count > 0)
        {
            await Try(stop => transport.RemoveEmptyFoldersAsync(plan.ToDelete, stop), cancellation);
        }
    }

    // Noted first, since the site may have the file again before the next send.
    private async Task TakeAway(string address, SendLog log, CancellationToken cancellation)
    {
        if (!transport.ArrivesAtOnce)
        {
            log.Begin(address);
        }

        await Try(stop => transport.DeleteAsync(address, stop), cancellation);
    }

    private async Task Carry(string address, SendReport report, SendLog log, CancellationToken cancellation)
    {
        var contents = SiteToSend.Read(order.Site, address, site[address]);
        if (!transport.ArrivesAtOnce)
        {
            log.Begin(address);
        }

        await Try(stop => transport.PutAsync(new OutgoingFile(address, contents), stop), cancellation);
        if (!transport.ArrivesAtOnce)
        {
            log.Finish(address, site[address]);
        }

        order.Progress?.Report(new SendProgress(Interlocked.Increment(ref files), report.Files.Count, Interlocked.Add(ref bytes, contents.Length), report.Bytes));
    }

    // A file that a broken send left incomplete may hold words that are not to be published any more.
    private async Task ClearHalves(SendLog log, CancellationToken cancellation)
    {
        if (transport.Draft is { } draft && log.IsOfBrokenSend)
        {
            await AtOnce(log.HalfBrought.Append(SentManifest.Address), (address, stop) => Try(inner => transport.DeleteAsync(address + draft, inner), stop), cancellation);
        }
    }

    // Nothing that no send brought is written over unasked, neither at the first send nor where the site has a new page.
    private void RefuseForeign(Dictionary<string, long> found, IReadOnlyDictionary<string, string> there)
    {
        var foreign = site.Keys.Where(address => found.ContainsKey(address) && !there.ContainsKey(address)).Order(StringComparer.Ordinal).ToList();
        if (foreign.Count > 0 && !order.TakeOver)
        {
            var names = string.Join(", ", foreign.Take(3)) + (foreign.Count > 3 ? ", …" : "");
            throw new SendingException($"The destination has files that no send put there: {names}. Send to an empty place, or overwrite them with `--take-over`. Nothing was sent.");
        }
    }

    // What another journal sent there is not this one's to delete.
    private void RefuseAnother(SentManifest manifest)
    {
        if (manifest.Journal != order.Id && !order.TakeOver)
        {
            throw new SendingException($"The destination has the site of another journal, “{manifest.Title}”. Send to a separate place, or replace that site with `--take-over`. If it is this journal under an earlier title, write `id: {manifest.Journal}` in journal.yaml. Nothing was sent.");
        }
    }

    private SentManifest Own(IReadOnlyDictionary<string, string> files) => new(order.Id, order.Title, files);

    // Ours that are missing or of another length go again.
    private Dictionary<string, string> Corrected(Dictionary<string, long> found, IReadOnlyDictionary<string, string> there) => there.ToDictionary(
        file => file.Key,
        file => found.TryGetValue(file.Key, out var length) && (length < 0 || !site.ContainsKey(file.Key) || length == SiteLength(file.Key)) ? file.Value : "",
        StringComparer.Ordinal);

    private async Task<Dictionary<string, long>> List(CancellationToken cancellation)
    {
        var found = new Dictionary<string, long>(StringComparer.Ordinal);
        await foreach (var (address, length) in transport.ListAsync(cancellation))
        {
            found[address] = length;
        }

        return found;
    }

    private long SiteLength(string address) => new FileInfo(SiteAddress.PathIn(order.Site, address)) is { Exists: true } file ? file.Length : 0;

    // When one fails no other begins, but those on their way arrive: half of a file is of no use to anybody.
    private async Task AtOnce(IEnumerable<string> addresses, Func<string, CancellationToken, Task> action, CancellationToken cancellation)
    {
        Exception? failure = null;
        await Parallel.ForEachAsync(
            addresses.TakeWhile(_ => Volatile.Read(ref failure) is null),
            new ParallelOptions { MaxDegreeOfParallelism = transport.AtOnce, CancellationToken = cancellation },
            async (address, _) =>
            {
                try
                {
                    await action(address, cancellation);
                }
#pragma warning disable CA1031 // It is thrown again below.
                catch (Exception e)
#pragma warning restore CA1031
                {
                    Interlocked.CompareExchange(ref failure, e, null);
                }
            });
        if (failure is not null)
        {
            ExceptionDispatchInfo.Throw(failure);
        }
    }

    private Task Try(Func<CancellationToken, Task> action, CancellationToken cancellation) => retries.Try(action, transport.MayPass, cancellation);
}
