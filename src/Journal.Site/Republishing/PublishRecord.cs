using Journal.Core.Parsing.Problems;

namespace Journal.Site.Republishing;

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

    /// <summary>Whether it tells of a site made so.</summary>
    public bool Fits(string look, string folder, DateOnly today) => Look == look && Folder == folder && today >= Today && today < SameUntil;

    /// <summary>
    /// The journal's files that are not surely as they were, in no order: added, gone, of another stamp, or so young when
    /// they were looked at that they may have changed within the clock's next tick.
    /// </summary>
    public IEnumerable<string> ChangesTo(IReadOnlyDictionary<string, FileStamp> now)
    {
        var doubtful = Surveyed - TimeSpan.FromSeconds(2).Ticks;
        return Sources.Keys.Where(path => !now.ContainsKey(path))
            .Concat(now.Where(file => !Sources.TryGetValue(file.Key, out var stamp) || stamp != file.Value || stamp.Modified > doubtful).Select(file => file.Key));
    }

    /// <summary>Whether every file of the site is there as the publish left it.</summary>
    public bool HasUntouched(IReadOnlyDictionary<string, FileStamp> site) => Site.All(file => site.TryGetValue(file.Key, out var stamp) && stamp == file.Value);
}
