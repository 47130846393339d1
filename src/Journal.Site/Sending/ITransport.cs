namespace Journal.Site.Sending;

/// <summary>
/// Brings files to one kind of destination. Addresses are those of the site; the transport knows the folder they go into.
/// Each file arrives whole or not at all.
/// </summary>
internal interface ITransport : IAsyncDisposable
{
    /// <summary>How many files may be on their way at once.</summary>
    int AtOnce { get; }

    /// <summary>Whether nothing is there before <see cref="FinishAsync"/>, and then all of it.</summary>
    bool ArrivesAtOnce { get; }

    /// <summary>What stands behind a file's address while it is on its way; null where nothing is seen of one before it is whole.</summary>
    string? Draft { get; }

    /// <summary>Opens the way: signs in, and makes sure of whom it talks to.</summary>
    Task OpenAsync(CancellationToken cancellation);

    /// <summary>The contents of a file; null where there is none.</summary>
    Task<byte[]?> ReadAsync(string address, CancellationToken cancellation);

    /// <summary>Every file at the destination with its length in bytes; −1 where the destination does not tell.</summary>
    IAsyncEnumerable<(string Address, long Length)> ListAsync(CancellationToken cancellation);

    /// <summary>Puts a file in its place, over one that is there.</summary>
    Task PutAsync(OutgoingFile file, CancellationToken cancellation);

    /// <summary>Takes a file away; one that is not there is well.</summary>
    Task DeleteAsync(string address, CancellationToken cancellation);

    /// <summary>
    /// Removes the folders that files were taken away from and that are empty now, after all else and one by one: two deletions
    /// at once would take the folder from under each other. One that cannot be removed shows readers nothing, and stays.
    /// </summary>
    /// <param name="deleted">The addresses of the files that were taken away.</param>
    /// <param name="cancellation">Ends it at once.</param>
    Task RemoveEmptyFoldersAsync(IReadOnlyCollection<string> deleted, CancellationToken cancellation);

    /// <summary>Makes all that was put and taken away count, where the destination does that in one step.</summary>
    Task FinishAsync(CancellationToken cancellation);

    /// <summary>Whether a failure may pass by itself, so that trying again makes sense.</summary>
    bool MayPass(Exception failure);

    /// <summary>A failure in words that say what to do; null where its own message must do.</summary>
    string? Explain(Exception failure);
}
