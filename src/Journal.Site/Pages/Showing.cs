using Journal.Core.Model;

namespace Journal.Site.Pages;

/// <summary>
/// What may be shown on the day of publishing. What stays at home counts in every figure, but its text, titles and
/// pictures appear nowhere, nor do tools, parts and lessons that only it names.
/// </summary>
internal sealed class Showing
{
    private readonly HashSet<EntryRef> entries;
    private readonly HashSet<PartRef> hiddenParts;
    private readonly HashSet<Id<Tool>> hiddenTools;
    private readonly HashSet<Id<Lesson>> lessons;

    public Showing(MakerJournal journal, DateOnly today)
    {
        Today = today;
        var all = journal.Builds.SelectMany(build => build.Entries).ToList();
        var shown = all.Where(entry => entry.Publish.AllowsOn(today)).ToList();
        var hidden = all.Where(entry => !entry.Publish.AllowsOn(today)).ToList();
        entries = [.. shown.Select(entry => entry.Ref)];
        lessons = [.. shown.SelectMany(entry => entry.Lessons).Select(lesson => lesson.Id)];
        hiddenParts = [.. hidden.SelectMany(Parts)];
        hiddenParts.ExceptWith(shown.SelectMany(Parts));
        hiddenTools = [.. hidden.SelectMany(Tools)];
        hiddenTools.ExceptWith(shown.SelectMany(Tools));
    }

    /// <summary>The day of publishing.</summary>
    public DateOnly Today { get; }

    public bool Shows(Entry entry) => entries.Contains(entry.Ref);

    public bool Shows(EntryRef entry) => entries.Contains(entry);

    public bool Shows(PartRef part) => !hiddenParts.Contains(part);

    public bool Shows(Id<Tool> tool) => !hiddenTools.Contains(tool);

    public bool Shows(Id<Lesson> lesson) => lessons.Contains(lesson);

    public bool Shows(Plan plan) => plan.Publish.AllowsOn(Today);

    public bool Shows(Photo photo) => photo.Publish.AllowsOn(Today);

    private static IEnumerable<PartRef> Parts(Entry entry) => entry.Jobs
        .SelectMany(job => job.Parts.Select(share => share.Part))
        .Concat(entry.Finished.Select(finished => finished.Part))
        .Select(part => new PartRef(entry.Build, part));

    private static IEnumerable<Id<Tool>> Tools(Entry entry) => entry.Jobs
        .SelectMany(job => job.Tools.Concat(job.Made))
        .Concat(entry.Readings.Select(reading => reading.With).OfType<Id<Tool>>())
        .Concat(entry.Settings.Select(setting => setting.Machine).OfType<Id<Tool>>());
}
