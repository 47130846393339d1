using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Reading;
using Journal.Core.Trade;
using Journal.Site.Photos;

namespace Journal.Site.Pages;

/// <summary>A journal with its figures, as the pages need it: every figure computed once, every thing found by its id.</summary>
internal sealed class Book
{
    private readonly Dictionary<EntryRef, Entry> entries;
    private readonly Dictionary<PartRef, Part> parts;
    private readonly Dictionary<Id<Tool>, Tool> tools;
    private readonly Dictionary<Id<Lesson>, LessonFigure> lessons;

    public Book(MakerJournal journal, DateOnly today, IReadOnlyDictionary<string, PublishedPhoto> photos)
    {
        Journal = journal;
        Photos = photos;
        Showing = new Showing(journal, today);
        Hours = Hours.Of(journal);
        Timeline = Timeline.Of(journal);
        Lessons = Lessons.Of(journal, Hours);
        Tooling = Tooling.Of(journal);
        Costs = Costs.Of(journal);
        State = State.Of(journal);
        BackLinks = BackLinks.Of(journal);
        Readings = Core.Figures.Readings.Of(journal);
        ReadingsOf = Readings.All.ToLookup(reading => new EntryRef(reading.Build, reading.Entry));
        Settings = Core.Figures.Settings.Of(journal);
        SettingsOf = Settings.All.ToLookup(setting => new EntryRef(setting.Build, setting.Entry));
        Mates = Core.Figures.Mates.Of(journal).ToLookup(mate => mate.Build);
        Routes = journal.Builds.SelectMany(Route.Of).ToDictionary(route => route.Part);
        entries = journal.Entries.ToDictionary(entry => entry.Ref);
        parts = journal.Builds.SelectMany(build => build.Parts.Select(part => (new PartRef(build.Id, part.Id), part))).ToDictionary();
        tools = Tooling.Tools.ToDictionary(tool => tool.Id, tool => tool.Tool);
        lessons = Lessons.All.ToDictionary(lesson => lesson.Id);
        EntryHours = Hours.Builds.SelectMany(build => build.Entries).ToDictionary(hours => hours.Entry);
        Worked = EntriesByPart(journal);
    }

    public MakerJournal Journal { get; }

    public Showing Showing { get; }

    public IReadOnlyDictionary<string, PublishedPhoto> Photos { get; }

    public Hours Hours { get; }

    public Timeline Timeline { get; }

    public Lessons Lessons { get; }

    public Tooling Tooling { get; }

    public Costs Costs { get; }

    public State State { get; }

    public BackLinks BackLinks { get; }

    public ReadingFigures Readings { get; }

    public ILookup<EntryRef, ReadingFigure> ReadingsOf { get; }

    public SettingFigures Settings { get; }

    public ILookup<EntryRef, SettingFigure> SettingsOf { get; }

    public ILookup<Id<Build>, MateFigure> Mates { get; }

    public IReadOnlyDictionary<PartRef, Route> Routes { get; }

    public IReadOnlyDictionary<EntryRef, EntryHours> EntryHours { get; }

    /// <summary>The entries that worked on a part, shown or not, in order.</summary>
    public ILookup<PartRef, Entry> Worked { get; }

    public Entry Entry(EntryRef entry) => entries[entry];

    public Part Part(PartRef part) => parts[part];

    public Tool Tool(Id<Tool> tool) => tools[tool];

    public LessonFigure Lesson(Id<Lesson> lesson) => lessons[lesson];

    public Operation Operation(Id<Operation> operation) => Journal.Vocabulary.Operations[operation];

    public string CauseTitle(Id<Cause>? cause) => cause is { } id ? Journal.Vocabulary.Causes[id].Title : "Cause not said";

    public IEnumerable<Entry> ShownEntries => Journal.Entries.Where(Showing.Shows);

    /// <summary>Operations that a shown entry names, in the order of the vocabulary: those that have a page.</summary>
    public IReadOnlyList<Id<Operation>> ShownOperations
    {
        get
        {
            var used = ShownEntries.SelectMany(entry => entry.Jobs).SelectMany(job => job.Operations).ToHashSet();
            return [.. Journal.Vocabulary.Operations.Ids.Where(used.Contains)];
        }
    }

    public LinkView Link(EntryRef entry) => Showing.Shows(entry) ? new(entries[entry].Title, Addresses.Of(entry)) : new("an evening that is not shown", null);

    public LinkView Link(PartRef part) => new(parts[part].Title, Showing.Shows(part) ? Addresses.Of(part) : null);

    /// <summary>A part with its item number before it.</summary>
    public LinkView LinkWithItem(PartRef part) => Link(part) is var link && parts[part].Item is { } item ? link with { Text = $"{item}\u2002{link.Text}" } : link;

    public LinkView Link(Id<Tool> tool) => new(tools[tool].Title, Showing.Shows(tool) ? Addresses.Of(tool) : null);

    public LinkView Link(Id<Lesson> lesson) => new(lessons[lesson].Lesson.Text, Showing.Shows(lesson) ? Addresses.Of(lesson) : null);

    public LinkView Link(Id<Operation> operation) => new(Operation(operation).Title, Addresses.Of(operation));

    public string OperationWords(IEnumerable<Id<Operation>> operations) => string.Join(", ", operations.Select(id => Show.Lower(Operation(id).Title)));

    /// <summary>Families of the materials that a job worked on.</summary>
    public IEnumerable<Id<MaterialFamily>> Materials(Entry entry, Job job) =>
        job.Parts.Select(share => parts[new PartRef(entry.Build, share.Part)].Material?.Family).OfType<Id<MaterialFamily>>();

    /// <summary>The cautions that an entry calls for, what maims first.</summary>
    public IEnumerable<Caution> Cautions(Entry entry)
    {
        var text = $"{entry.Title}\n{entry.Body.Text}\n{string.Join('\n', entry.Trials.Select(trial => $"on {trial.On} {trial.Pressure} {trial.Result}"))}";
        return CautionReader.Shared.Where((caution, _) =>
            entry.Jobs.Any(job => caution.IsCalledForBy(job.Operations, Materials(entry, job), "")) || caution.IsCalledForBy([], [], text));
    }

    private static ILookup<PartRef, Entry> EntriesByPart(MakerJournal journal) => journal.Builds
        .SelectMany(build => build.Entries)
        .SelectMany(entry => entry.Jobs.SelectMany(job => job.Parts).Select(share => share.Part).Distinct(), (entry, part) => (part, entry))
        .ToLookup(pair => new PartRef(pair.entry.Build, pair.part), pair => pair.entry);
}
