using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>
/// What may be shown on a day (docs/figures.md, Hidden evenings): of an evening that stays at home nothing, nor of a tool that
/// only it names. Parts and the crib are shown as if that evening had not been.
/// </summary>
public sealed class Visibility
{
    private readonly HashSet<EntryRef> hiddenEntries;
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
        hiddenTools = [.. hidden.SelectMany(ToolsUsed).Concat(journal.Tools.Where(tool => tool.DefinedIn is not null).Select(tool => tool.Id))];
        hiddenTools.ExceptWith(journal.Tools.Where(tool => tool.DefinedIn is not { } entry || !hiddenEntries.Contains(entry)).Select(tool => tool.Id));
        hiddenTools.ExceptWith(shown.SelectMany(ToolsUsed));
    }

    /// <summary>The day of publishing.</summary>
    public DateOnly Today { get; }

    /// <summary>Whether an entry is shown.</summary>
    public bool Shows(Entry entry) => !hiddenEntries.Contains(entry.Ref);

    /// <summary>Whether an entry of the journal is shown.</summary>
    public bool Shows(EntryRef entry) => !hiddenEntries.Contains(entry);

    /// <summary>Whether a tool is shown: unless it stands in no crib and only hidden entries name it.</summary>
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
        LinkKind.Part => true,
        LinkKind.Tool => Shows(new Id<Tool>(target.Id)),
        LinkKind.Lesson => Shows(new Id<Lesson>(target.Id)),
        _ => Shows(new EntryRef(target.Build!.Value, new(target.Id))),
    };

    private static IEnumerable<Id<Tool>> ToolsUsed(Entry entry) => entry.Jobs
        .SelectMany(job => job.Tools.Concat(job.Made))
        .Concat(entry.Readings.Select(reading => reading.With).OfType<Id<Tool>>())
        .Concat(entry.Settings.Select(setting => setting.Machine).OfType<Id<Tool>>())
        .Concat(entry.Bought.Select(bought => bought.ForTool).OfType<Id<Tool>>());
}
