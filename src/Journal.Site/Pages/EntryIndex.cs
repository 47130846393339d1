using Journal.Core.Figures;
using Journal.Core.Model;

namespace Journal.Site.Pages;

/// <summary>A reading with the entry that took it.</summary>
internal readonly record struct EntryReading(Entry Entry, MeasuredReading Reading);

/// <summary>A job with its entry.</summary>
internal readonly record struct EntryJob(Entry Entry, Job Job);

/// <summary>The shown entries before and after one.</summary>
/// <param name="Before">The one before; null at the beginning.</param>
/// <param name="After">The one after; null at the end.</param>
internal readonly record struct Neighbours(EntryRef? Before, EntryRef? After);

/// <summary>
/// What belongs to an entry, part or operation, found without going through the journal: a page that searched all
/// entries would make publishing ten times as many take a hundred times as long.
/// </summary>
internal sealed class EntryIndex
{
    private readonly Dictionary<EntryRef, Neighbours> inBuild;
    private readonly Dictionary<(PartRef Part, EntryRef Entry), Neighbours> onPart = [];
    private readonly Dictionary<(Id<Build> Build, Id<Mistake> Mistake), EntryRef> mistakesTold;
    private readonly Dictionary<(Id<Build> Build, Id<Snag> Snag), (EntryRef Entry, string Text)> snags;
    private readonly Dictionary<(Id<Build> Build, Id<Snag> Snag), EntryRef> snagsCleared;

    /// <summary>Goes through the journal once, in time that grows with its length.</summary>
    public EntryIndex(SiteFigures figures)
    {
        var journal = figures.Journal;
        var entries = journal.Builds.SelectMany(build => build.Entries).ToList();
        Mistakes = figures.Lessons.Mistakes.ToLookup(cost => cost.Ref.Entry);
        MistakesOn = figures.Lessons.Mistakes.SelectMany(cost => cost.On.Parts.Distinct(), (cost, part) => (part, cost)).ToLookup(pair => pair.part, pair => pair.cost);
        LessonsOn = figures.Lessons.All.SelectMany(lesson => lesson.On.Parts.Distinct(), (lesson, part) => (part, lesson)).ToLookup(pair => pair.part, pair => pair.lesson);
        Readings = figures.ShownEntries
            .SelectMany(entry => entry.Readings.Where(reading => reading.Part is not null), (entry, reading) => new EntryReading(entry, reading))
            .ToLookup(one => new PartRef(one.Entry.Build, one.Reading.Part!.Value));
        Jobs = journal.Entries
            .SelectMany(entry => entry.Jobs, (entry, job) => new EntryJob(entry, job))
            .SelectMany(one => one.Job.Operations.Distinct(), (one, operation) => (operation, one))
            .ToLookup(pair => pair.operation, pair => pair.one);
        mistakesTold = entries.SelectMany(entry => entry.Mistakes.Where(mistake => mistake.Id is not null), (entry, mistake) => (entry, mistake))
            .DistinctBy(told => (told.entry.Build, told.mistake.Id))
            .ToDictionary(told => (told.entry.Build, told.mistake.Id!.Value), told => told.entry.Ref);
        snags = entries.SelectMany(entry => entry.Snags, (entry, snag) => (entry, snag))
            .DistinctBy(told => (told.entry.Build, told.snag.Id))
            .ToDictionary(told => (told.entry.Build, told.snag.Id), told => (told.entry.Ref, told.snag.Text));
        snagsCleared = entries.SelectMany(entry => entry.Cleared, (entry, snag) => (Key: (entry.Build, snag), entry.Ref)).DistinctBy(cleared => cleared.Key).ToDictionary(cleared => cleared.Key, cleared => cleared.Ref);
        inBuild = journal.Builds.SelectMany(build => InOrder(build.Entries.Where(figures.Visibility.Shows))).ToDictionary(one => one.Entry, one => one.Beside);
        foreach (var part in figures.Worked)
        {
            foreach (var (entry, beside) in InOrder(part.Where(figures.Visibility.Shows)))
            {
                onPart.Add((part.Key, entry), beside);
            }
        }
    }

    /// <summary>What went wrong in an entry, with what it cost.</summary>
    public ILookup<EntryRef, MistakeCost> Mistakes { get; }

    /// <summary>What went wrong on a part.</summary>
    public ILookup<PartRef, MistakeCost> MistakesOn { get; }

    /// <summary>What was learned on a part.</summary>
    public ILookup<PartRef, LessonFigure> LessonsOn { get; }

    /// <summary>The readings of a part in shown entries.</summary>
    public ILookup<PartRef, EntryReading> Readings { get; }

    /// <summary>The jobs of an operation.</summary>
    public ILookup<Id<Operation>, EntryJob> Jobs { get; }

    /// <summary>The entry that tells of a mistake; null where none does.</summary>
    public EntryRef? ToldIn(Id<Build> build, Id<Mistake> mistake) => mistakesTold.TryGetValue((build, mistake), out var entry) ? entry : null;

    /// <summary>A snag and the entry that found it; null where none did.</summary>
    public (EntryRef Entry, string Text)? Snag(Id<Build> build, Id<Snag> snag) => snags.TryGetValue((build, snag), out var found) ? found : null;

    /// <summary>The entry that put a snag right; null where none did.</summary>
    public EntryRef? ClearedIn(Id<Build> build, Id<Snag> snag) => snagsCleared.TryGetValue((build, snag), out var entry) ? entry : null;

    /// <summary>The shown entries before and after a shown one in its build.</summary>
    public Neighbours Beside(EntryRef entry) => inBuild.GetValueOrDefault(entry);

    /// <summary>The shown entries before and after a shown one on a part.</summary>
    public Neighbours Beside(EntryRef entry, PartRef part) => onPart.GetValueOrDefault((part, entry));

    private static IEnumerable<(EntryRef Entry, Neighbours Beside)> InOrder(IEnumerable<Entry> entries)
    {
        var order = entries.Select(entry => entry.Ref).ToList();
        return order.Select((entry, at) => (entry, new Neighbours(at > 0 ? order[at - 1] : null, at < order.Count - 1 ? order[at + 1] : null)));
    }
}
