using Journal.Core.Checking;
using Journal.Core.Parsing.Problems;
using Journal.Site.Output;
using Journal.Site.Photos;
using Journal.Site.Republishing;

namespace Journal.Site;

/// <summary>Which journal shall be published, and where to.</summary>
/// <param name="Folder">The journal's folder.</param>
/// <param name="To">The site's folder.</param>
/// <param name="Today">The day that <c>publish: after</c> is held against.</param>
/// <param name="Template">A maker's own copy of the templates; null for ours.</param>
public sealed record SiteOrder(string Folder, string To, DateOnly Today, string? Template = null)
{
    /// <summary>Where made pictures and records are kept; null for the user's cache folder.</summary>
    public string? Cache { get; init; }

    /// <summary>Is told how far the pictures are.</summary>
    public IProgress<PictureProgress>? Progress { get; init; }

    /// <summary>Is told what reading the journal had to say, before publishing begins.</summary>
    public Action<IReadOnlyList<Problem>>? Read { get; init; }
}

/// <summary>What became of an order.</summary>
/// <param name="Problems">What reading the journal had to say.</param>
/// <param name="Published">What was published; null where errors stopped it.</param>
public sealed record SiteOutcome(IReadOnlyList<Problem> Problems, Published? Published)
{
    /// <summary>Whether the journal was read for it; else the record of the publish before was enough.</summary>
    internal bool WasRead { get; init; }

    /// <summary>Whether anything keeps the exit status from being 0.</summary>
    public bool IsFlawed => Published is null || Published.Problems.Count > 0 || Problems.Any(problem => problem.Severity != Severity.Warning);
}

/// <summary>
/// Reads a journal and publishes it. What the publish before saw is remembered, so that one with nothing changed does
/// nothing.
/// </summary>
public static class SitePublisher
{
    /// <summary>Publishes; on any failure the old site stands as it was.</summary>
    /// <exception cref="PublishingException">The folder is not ours to write, or another publish is at work.</exception>
    /// <exception cref="Templates.TemplateException">A template is missing or at fault.</exception>
    /// <exception cref="IOException">The disk is full, or a file cannot be written.</exception>
    public static SiteOutcome Publish(SiteOrder order, CancellationToken cancellation = default)
    {
        var begun = DateTime.UtcNow;
        var cache = order.Cache ?? UserCache.OfUser().Folder;
        var look = BuildFingerprint.Of(order.Template);
        var sources = FileStamps.OfJournal(order.Folder);
        if (sources is not null && Again(order, cache, look, begun, sources, cancellation) is { } again)
        {
            return again;
        }

        cancellation.ThrowIfCancellationRequested();
        var reading = JournalReader.Read(order.Folder, order.Today);
        order.Read?.Invoke(reading.Problems);
        if (reading.HasErrors || reading.Journal is null)
        {
            return new SiteOutcome(reading.Problems, null) { WasRead = true };
        }

        var published = Publisher.Publish(
            new PublishOrder(order.Folder, reading.Journal, order.To, order.Today, order.Template)
            {
                Cache = order.Cache,
                Progress = order.Progress,
                Begun = begun,
                Ledger = sources is null ? null : new PublishLedger(look, begun, sources, reading.Problems),
            },
            cancellation);
        return new SiteOutcome(reading.Problems, published) { WasRead = true };
    }

    // Null where the record of the publish before is not enough.
    private static SiteOutcome? Again(
        SiteOrder order, string cache, string look, DateTime begun, IReadOnlyDictionary<string, FileStamp> sources, CancellationToken cancellation)
    {
        var site = Destination.RealPath(order.To);
        var file = new RecordFile(cache, site);
        if (file.Read() is not { } record || !record.Fits(look, Path.GetFullPath(order.Folder), order.Today) || record.ChangesTo(sources).Any())
        {
            return null;
        }

        Destination.Check(order.To, order.Folder);
        using var folder = SiteFolder.Begin(site);
        if (folder.HasRecovered || FileStamps.OfSite(site) is not { } files || !record.HasUntouched(files))
        {
            return null;
        }

        cancellation.ThrowIfCancellationRequested();
        order.Read?.Invoke(record.Problems);
        PublishTimes.Note(cache, site, begun);
        return new SiteOutcome(record.Problems, record.Published with { FrontPage = Published.FrontPageIn(order.To) });
    }
}
