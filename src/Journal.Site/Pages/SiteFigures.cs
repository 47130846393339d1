using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Site.Photos;

namespace Journal.Site.Pages;

/// <summary>A journal with its figures, as the pages need it: every figure computed once, every thing found by its id.</summary>
internal sealed class SiteFigures
{
    private readonly Dictionary<EntryRef, Entry> entries;
    private readonly Dictionary<PartRef, Part> parts;
    private readonly Dictionary<Id<Tool>, ToolFigure> tools;
    private readonly Dictionary<Id<Lesson>, LessonFigure> lessons;
    private readonly Dictionary<Id<Build>, Build> builds;
    private readonly Dictionary<Id<Build>, BuildHours> hours;
    private readonly Dictionary<Id<Build>, BuildState> states;
    private readonly Dictionary<Id<Plan>, Lazy<PlanForecast>> forecasts;

    public SiteFigures(MakerJournal journal, DateOnly today, IReadOnlyDictionary<string, PublishedPhoto> photos)
    {
        Journal = journal;
        Photos = photos;
        Visibility = new Visibility(journal, today);
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
        tools = Tooling.Tools.ToDictionary(tool => tool.Id);
        lessons = Lessons.All.ToDictionary(lesson => lesson.Id);
        builds = journal.Builds.ToDictionary(build => build.Id);
        hours = Hours.Builds.ToDictionary(build => build.Build);
        states = State.Builds.ToDictionary(build => build.Build);
        forecasts = journal.Plans.ToDictionary(plan => plan.Id, plan => new Lazy<PlanForecast>(() => PlanForecast.Of(plan, journal)));
        ShownEntries = [.. journal.Entries.Where(Visibility.Shows)];
        ShownLessons = [.. Lessons.All.Where(lesson => Visibility.Shows(lesson.Id) && Visibility.Shows(lesson.Entry))];
        Similar = SimilarLessons.Of(ShownLessons);
        ToRead = LessonsToRead.Of(ShownLessons);
        Story = LessonStory.Among(ShownLessons);
        EntryHours = Hours.Builds.SelectMany(build => build.Entries).ToDictionary(hours => hours.Entry);
        Worked = EntriesByPart(journal);
        ShownOperations = [.. OperationsIn(ShownEntries)];
        Index = new EntryIndex(this);
        Lines = new EntryLines(this);
    }

    public MakerJournal Journal { get; }

    public Visibility Visibility { get; }

    public IReadOnlyDictionary<string, PublishedPhoto> Photos { get; }

    public Hours Hours { get; }

    public Timeline Timeline { get; }

    public Lessons Lessons { get; }

    public Tooling Tooling { get; }

    public Costs Costs { get; }

    public State State { get; }

    public BackLinks BackLinks { get; }

    /// <summary>The lessons that shown entries taught: those that have a page.</summary>
    public IReadOnlyList<LessonFigure> ShownLessons { get; }

    /// <summary>Which of the shown lessons are like which.</summary>
    public SimilarLessons Similar { get; }

    /// <summary>Which of the shown lessons to read before a job.</summary>
    public LessonsToRead ToRead { get; }

    /// <summary>Finds how a lesson came about in the text of its entry.</summary>
    public LessonStory Story { get; }

    public ReadingFigures Readings { get; }

    public ILookup<EntryRef, ReadingFigure> ReadingsOf { get; }

    public SettingFigures Settings { get; }

    public ILookup<EntryRef, SettingFigure> SettingsOf { get; }

    public ILookup<Id<Build>, MateFigure> Mates { get; }

    public IReadOnlyDictionary<PartRef, Route> Routes { get; }

    public IReadOnlyDictionary<EntryRef, EntryHours> EntryHours { get; }

    /// <summary>The entries that worked on a part, shown or not, in order.</summary>
    public ILookup<PartRef, Entry> Worked { get; }

    /// <summary>What pages look up by the thing that they are about.</summary>
    public EntryIndex Index { get; }

    /// <summary>Entries as lines of a list.</summary>
    public EntryLines Lines { get; }

    /// <summary>The entries that are shown, by date.</summary>
    public IReadOnlyList<Entry> ShownEntries { get; }

    /// <summary>Operations that a shown entry names, in the order of the vocabulary: those that have a page.</summary>
    public IReadOnlyList<Id<Operation>> ShownOperations { get; }

    public Build Build(Id<Build> build) => builds[build];

    public BuildHours HoursOf(Id<Build> build) => hours[build];

    public BuildState StateOf(Id<Build> build) => states[build];

    public Entry Entry(EntryRef entry) => entries[entry];

    public Part Part(PartRef part) => parts[part];

    public Tool Tool(Id<Tool> tool) => tools[tool].Tool;

    public ToolFigure ToolFigure(Id<Tool> tool) => tools[tool];

    public LessonFigure Lesson(Id<Lesson> lesson) => lessons[lesson];

    public Operation Operation(Id<Operation> operation) => Journal.Vocabulary.Operations[operation];

    public string CauseTitle(Id<Cause>? cause) => cause is { } id ? Journal.Vocabulary.Causes[id].Title : "Cause not said";

    /// <summary>The plans that may be shown, those not begun first.</summary>
    public IReadOnlyList<Plan> ShownPlans => [.. Journal.Plans.Where(Visibility.Shows).OrderBy(plan => Journal.BegunAs(plan) is null ? 0 : 1)];

    /// <summary>The estimate of a plan, or of the build that it has become.</summary>
    public PlanForecast Forecast(Plan plan) => forecasts[plan.Id].Value;

    public LinkView Link(EntryRef entry) => Visibility.Shows(entry) ? new(entries[entry].Title, Addresses.Of(entry)) : new("an evening that is not shown", null);

    public LinkView Link(PartRef part) => new(parts[part].Title, Visibility.Shows(part) ? Addresses.Of(part) : null);

    /// <summary>A part, or that it is one that is not shown.</summary>
    public LinkView LinkOrHidden(PartRef part) => Visibility.Shows(part) ? Link(part) : new("A part that is not shown", null);

    /// <summary>A part with its item number before it.</summary>
    public LinkView LinkWithItem(PartRef part) => Link(part) is var link && parts[part].Item is { } item ? link with { Text = $"{item}\u2002{link.Text}" } : link;

    public LinkView Link(Id<Tool> tool) => new(tools[tool].Tool.Title, Visibility.Shows(tool) ? Addresses.Of(tool) : null);

    public LinkView Link(Id<Lesson> lesson) => new(lessons[lesson].Lesson.Text, Visibility.Shows(lesson) ? Addresses.Of(lesson) : null);

    public LinkView Link(Id<Operation> operation) => new(Operation(operation).Title, Addresses.Of(operation));

    public string OperationWords(IEnumerable<Id<Operation>> operations) => string.Join(", ", operations.Select(id => Show.Lower(Operation(id).Title)));

    /// <summary>Families of the materials that a job worked on.</summary>
    public IEnumerable<Id<MaterialFamily>> Materials(Entry entry, Job job) =>
        job.Parts.Select(share => parts[new PartRef(entry.Build, share.Part)].Material?.Family).OfType<Id<MaterialFamily>>();

    private IEnumerable<Id<Operation>> OperationsIn(IEnumerable<Entry> shown)
    {
        var used = shown.SelectMany(entry => entry.Jobs).SelectMany(job => job.Operations).ToHashSet();
        return Journal.Vocabulary.Operations.Ids.Where(used.Contains);
    }

    private static ILookup<PartRef, Entry> EntriesByPart(MakerJournal journal) => journal.Builds
        .SelectMany(build => build.Entries)
        .SelectMany(entry => entry.Jobs.SelectMany(job => job.Parts).Select(share => share.Part).Distinct(), (entry, part) => (part, entry))
        .ToLookup(pair => new PartRef(pair.entry.Build, pair.part), pair => pair.entry);
}
