using Journal.Core.Model;

namespace Journal.Site.Sending;

/// <summary>What shall be sent, and where to.</summary>
/// <param name="Journal">The journal's folder.</param>
/// <param name="Site">The site's folder.</param>
/// <param name="Destination">Where it goes.</param>
public sealed record SendOrder(string Journal, string Site, NamedDestination Destination)
{
    /// <summary>The journal's id, by which its site is known at the destination.</summary>
    public required Guid Id { get; init; }

    /// <summary>The journal's title.</summary>
    public required string Title { get; init; }

    /// <summary>Only say what would be done.</summary>
    public bool DryRun { get; init; }

    /// <summary>Write over files at the destination that no send of ours brought, and take the place of another journal's site.</summary>
    public bool TakeOver { get; init; }

    /// <summary>List the destination, and send again what is missing there or has another length.</summary>
    public bool Verify { get; init; }

    /// <summary>Who signs a commit.</summary>
    public string Maker { get; init; } = "";

    /// <summary>The day of a commit; times of day are nobody's business.</summary>
    public DateOnly Today { get; init; }

    /// <summary>Is told how far the send is.</summary>
    public IProgress<SendProgress>? Progress { get; init; }
}

/// <summary>How far a send is.</summary>
/// <param name="Files">Files that have arrived.</param>
/// <param name="OfFiles">Files to send.</param>
/// <param name="Bytes">Bytes that have arrived.</param>
/// <param name="OfBytes">Bytes to send.</param>
public readonly record struct SendProgress(int Files, int OfFiles, long Bytes, long OfBytes);

/// <summary>What a send did, or would do.</summary>
/// <param name="Files">The addresses of the files sent, in their order.</param>
/// <param name="Deleted">The addresses of the files taken away.</param>
/// <param name="Bytes">How many bytes the files have.</param>
public sealed record SendReport(IReadOnlyList<string> Files, IReadOnlyList<string> Deleted, long Bytes);
