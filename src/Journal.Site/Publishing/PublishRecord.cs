using Journal.Core.Checking;
using Journal.Core.Model;
using Journal.Core.Parsing.Problems;
using Journal.Site.Output;

namespace Journal.Site.Publishing;

/// <summary>
/// What a publish saw and made, kept in the user's cache: by it the next one knows what changed since. It may be deleted
/// at any time, and one that does not fit is not used; then everything is made anew.
/// </summary>
internal sealed record PublishRecord
{
    /// <summary>The program and templates that made the site.</summary>
    public required string Look { get; init; }

    /// <summary>The journal's folder.</summary>
    public required string Folder { get; init; }

    /// <summary>The day of publishing.</summary>
    public required DateOnly Today { get; init; }

    /// <summary>From this day on more would be shown.</summary>
    public required DateOnly SameUntil { get; init; }

    /// <summary>When the journal's files were looked at, in ticks (UTC).</summary>
    public required long Surveyed { get; init; }

    /// <summary>The journal's files.</summary>
    public required IReadOnlyDictionary<string, FileStamp> Sources { get; init; }

    /// <summary>The site's files, as the publish left them.</summary>
    public required IReadOnlyDictionary<string, FileStamp> Site { get; init; }

    /// <summary>What reading the journal had to say.</summary>
    public required IReadOnlyList<Problem> Problems { get; init; }

    /// <summary>What was published.</summary>
    public required Published Published { get; init; }

    /// <summary>Whether <see cref="Sources"/> is all that the site was made of: no picture lay behind a link or a dot.</summary>
    public required bool IsAllSeen { get; init; }

    /// <summary>What a publish saw and made.</summary>
    public static PublishRecord Of(Survey survey, JournalFiles sources, JournalReading reading, Published published, IReadOnlyDictionary<string, FileStamp> site) => new()
    {
        Look = survey.Look,
        Folder = survey.Folder,
        Today = survey.Today,
        SameUntil = FirstDayOfMore(reading.Journal!, survey.Today),
        Surveyed = survey.Begun.Ticks,
        Sources = sources.Stamps,
        IsAllSeen = !sources.HoldsLinks && !reading.Journal!.Entries.SelectMany(entry => entry.Photos).Any(photo => $"/{photo.File}".Contains("/.", StringComparison.Ordinal)),
        Site = site,
        Problems = reading.Problems,
        Published = published,
    };

    /// <summary>
    /// The journal's files that are not surely as they were, in no order: added, gone, of another stamp, or so young when
    /// they were looked at that they may have changed within the clock's next tick.
    /// </summary>
    public IEnumerable<string> ChangesTo(IReadOnlyDictionary<string, FileStamp> now)
    {
        var doubtful = Surveyed - TimeSpan.FromSeconds(2).Ticks;
        return DifferencesTo(now).Concat(now.Where(file => file.Value.Modified > doubtful).Select(file => file.Key));
    }

    /// <summary>The journal's files that were added, are gone, or have another stamp, in no order.</summary>
    public IEnumerable<string> DifferencesTo(IReadOnlyDictionary<string, FileStamp> now) => Sources.Keys.Where(path => !now.ContainsKey(path))
        .Concat(now.Where(file => !Sources.TryGetValue(file.Key, out var stamp) || stamp != file.Value).Select(file => file.Key));

    /// <summary>Whether a site is the one it tells of, every file there as the publish left it.</summary>
    public bool IsOf(SiteFolder site) =>
        !site.HasRecovered && FileStamps.OfSite(site.Target) is { } files && Site.All(file => files.TryGetValue(file.Key, out var stamp) && stamp == file.Value);

    /// <summary>Whether no other publish wrote a site since: its list of files, which each writes last, is the one it tells of.</summary>
    public bool IsOfLastPublish(string site) =>
        FileStamps.Of(Path.Combine(site, Manifest.FileName)) is { } list && Site.TryGetValue(Manifest.FileName, out var stamp) && stamp == list;

    private static DateOnly FirstDayOfMore(MakerJournal journal, DateOnly today) => journal.Builds
        .SelectMany(build => build.Entries)
        .SelectMany(entry => entry.Photos.Select(photo => photo.Publish).Append(entry.Publish))
        .Concat(journal.Plans.Select(plan => plan.Publish))
        .Select(publication => publication.FirstSeenAfter(today))
        .OfType<DateOnly>()
        .DefaultIfEmpty(DateOnly.MaxValue)
        .Min();
}
