using Journal.Core.Figures;
using Journal.Core.Parsing.Problems;
using Journal.Site.Text;

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

    /// <summary>Of each entry what must stay for only its words to have changed, by file; those that cannot be told so are not in it.</summary>
    public required IReadOnlyDictionary<string, EntrySlots> Entries { get; init; }

    /// <summary>Where the site will stand; empty for no absolute addresses.</summary>
    public required string Home { get; init; }

    /// <summary>By which the stories of lessons are found in texts.</summary>
    public required LessonStory Story { get; init; }

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

/// <summary>Where an entry's words stand in the site.</summary>
/// <param name="Facts">The digest of all else in its file (<c>EntryWords.Facts</c>).</param>
/// <param name="Address">Its page, by which the find index knows it.</param>
/// <param name="Slots">The places.</param>
internal sealed record EntrySlots(string Facts, string Address, IReadOnlyList<WordSlot> Slots);

/// <summary>What stands in a place that shows an entry's words.</summary>
internal enum SlotKind : byte
{
    /// <summary>The whole text, on a page.</summary>
    Prose,

    /// <summary>The paragraphs that tell how a lesson came about, on the lesson's page.</summary>
    Story,

    /// <summary>The whole text in the Atom feed.</summary>
    Atom,

    /// <summary>The whole text in the JSON Feed.</summary>
    Json,
}

/// <summary>A place in a file of the site that shows an entry's words.</summary>
/// <param name="Address">The file.</param>
/// <param name="Offset">Where it begins, in bytes.</param>
/// <param name="Length">How many bytes it has.</param>
/// <param name="Kind">What stands there.</param>
/// <param name="About">For a story the words of its lesson; else empty.</param>
/// <param name="Answers">Where the links and pictures of the text lead from there.</param>
internal sealed record WordSlot(string Address, int Offset, int Length, SlotKind Kind, string About, TextAnswers Answers);
