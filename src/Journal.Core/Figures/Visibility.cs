using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>
/// What may be shown on a day. What stays at home counts in every figure, but its text, titles and pictures appear
/// nowhere, nor do tools, parts and lessons that only it names.
/// </summary>
public sealed class Visibility
{
    private readonly HashSet<EntryRef> hiddenEntries;
    private readonly HashSet<PartRef> hiddenParts;
    private readonly HashSet<Id<Tool>> hiddenTools;
    private readonly HashSet<Id<Lesson>> lessons;

    /// <summary>What a journal shows on a day.</summary>
    public Visibility(MakerJournal journal, DateOnly today)
    {
        Today = today;
        var byShown = journal.Builds.SelectMany(build => build.Entries).ToLookup(entry => entry.Publish.AllowsOn(today));
        var (shown, hidden) = (byShown[true].ToList(), byShown[false].ToList());
        hiddenEntries = [.. hidden.Select(entry => entry.Ref)];
        lessons = [.. shown.SelectMany(entry => entry.Lessons).Select(lesson => lesson.Id)];
        hiddenParts = NamedOnlyBy(hidden, shown, PartsUsed, PartsTold);
        hiddenTools = NamedOnlyBy(hidden, shown, ToolsUsed, ToolsTold);
    }

    /// <summary>The day of publishing.</summary>
    public DateOnly Today { get; }

    /// <summary>Whether an entry is shown.</summary>
    public bool Shows(Entry entry) => !hiddenEntries.Contains(entry.Ref);

    /// <summary>Whether an entry of the journal is shown.</summary>
    public bool Shows(EntryRef entry) => !hiddenEntries.Contains(entry);

    /// <summary>Whether a part is shown: unless only hidden entries name it.</summary>
    public bool Shows(PartRef part) => !hiddenParts.Contains(part);

    /// <summary>Whether a tool is shown: unless only hidden entries name it.</summary>
    public bool Shows(Id<Tool> tool) => !hiddenTools.Contains(tool);

    /// <summary>Whether a lesson is shown: as its entry is.</summary>
    public bool Shows(Id<Lesson> lesson) => lessons.Contains(lesson);

    /// <summary>Whether a plan is shown.</summary>
    public bool Shows(Plan plan) => plan.Publish.AllowsOn(Today);

    /// <summary>Whether a picture is shown where its entry is.</summary>
    public bool Shows(Photo photo) => photo.Publish.AllowsOn(Today);

    /// <summary>Whether what a link points to is shown.</summary>
    public bool Shows(LinkTarget target) => target.Kind switch
    {
        LinkKind.Part => Shows(new PartRef(target.Build!.Value, new(target.Id))),
        LinkKind.Tool => Shows(new Id<Tool>(target.Id)),
        LinkKind.Lesson => Shows(new Id<Lesson>(target.Id)),
        _ => Shows(new EntryRef(target.Build!.Value, new(target.Id))),
    };

    // Work tells more than words: what only hidden entries worked on or with stays hidden even where a shown text
    // links to it; that link is reported.
    private static HashSet<T> NamedOnlyBy<T>(List<Entry> hidden, List<Entry> shown, Func<Entry, IEnumerable<T>> used, Func<Entry, IEnumerable<T>> told)
    {
        var names = hidden.SelectMany(told).ToHashSet();
        names.ExceptWith(shown.SelectMany(told));
        names.UnionWith(hidden.SelectMany(used));
        names.ExceptWith(shown.SelectMany(used));
        return names;
    }

    private static IEnumerable<PartRef> PartsUsed(Entry entry) => entry.Jobs
        .SelectMany(job => job.Parts.Select(share => share.Part))
        .Concat(entry.Finished.Select(finished => finished.Part))
        .Concat(entry.Readings.Select(reading => reading.Part).OfType<Id<Part>>())
        .Concat(entry.Bought.Select(bought => bought.ForPart).OfType<Id<Part>>())
        .Select(part => new PartRef(entry.Build, part));

    private static IEnumerable<PartRef> PartsTold(Entry entry) => entry.Body.Links
        .Select(link => link.Target)
        .OfType<LinkTarget>()
        .Where(target => target.Kind == LinkKind.Part)
        .Select(target => new PartRef(target.Build!.Value, new(target.Id)));

    private static IEnumerable<Id<Tool>> ToolsUsed(Entry entry) => entry.Jobs
        .SelectMany(job => job.Tools.Concat(job.Made))
        .Concat(entry.Readings.Select(reading => reading.With).OfType<Id<Tool>>())
        .Concat(entry.Settings.Select(setting => setting.Machine).OfType<Id<Tool>>())
        .Concat(entry.Bought.Select(bought => bought.ForTool).OfType<Id<Tool>>());

    private static IEnumerable<Id<Tool>> ToolsTold(Entry entry) => entry.Body.Links
        .Select(link => link.Target)
        .OfType<LinkTarget>()
        .Where(target => target.Kind == LinkKind.Tool)
        .Select(target => new Id<Tool>(target.Id));
}
