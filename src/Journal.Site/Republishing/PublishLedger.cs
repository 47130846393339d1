using Journal.Core.Model;
using Journal.Core.Parsing.Problems;

namespace Journal.Site.Republishing;

/// <summary>What a publish knows before it begins, to become a <see cref="PublishRecord"/>.</summary>
/// <param name="look">The program and templates.</param>
/// <param name="surveyed">When the journal's files were looked at.</param>
/// <param name="sources">What they were.</param>
/// <param name="problems">What reading the journal had to say.</param>
internal sealed class PublishLedger(string look, DateTime surveyed, IReadOnlyDictionary<string, FileStamp> sources, IReadOnlyList<Problem> problems)
{
    /// <summary>Keeps it all; where that fails the next publish makes everything anew.</summary>
    public void Keep(RecordFile file, PublishOrder order, Published published, string site)
    {
        // What lies behind a dot was not looked at.
        var isAllSeen = !order.Journal.Entries.SelectMany(entry => entry.Photos).Any(photo => $"/{photo.File}".Contains("/.", StringComparison.Ordinal));
        if (isAllSeen && FileStamps.OfSite(site) is { } files)
        {
            file.Write(new PublishRecord
            {
                Look = look,
                Folder = Path.GetFullPath(order.Folder),
                Today = order.Today,
                SameUntil = SameUntil(order.Journal, order.Today),
                Surveyed = surveyed.Ticks,
                Sources = sources,
                Site = files,
                Problems = problems,
                Published = published,
            });
        }
    }

    private static DateOnly SameUntil(MakerJournal journal, DateOnly today) => journal.Builds
        .SelectMany(build => build.Entries)
        .SelectMany(entry => entry.Photos.Select(photo => photo.Publish).Append(entry.Publish))
        .Concat(journal.Plans.Select(plan => plan.Publish))
        .Select(publication => publication.FirstSeenAfter(today))
        .OfType<DateOnly>()
        .DefaultIfEmpty(DateOnly.MaxValue)
        .Min();
}
