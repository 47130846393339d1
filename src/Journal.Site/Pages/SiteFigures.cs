using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Wording;
using Journal.Site.Photos;

namespace Journal.Site.Pages;

/// <summary>
/// A journal with its figures, as the pages need it: every figure computed once, when the first page asks for it, and
/// every thing found by its id. An id that the journal does not know throws a <see cref="KeyNotFoundException"/>.
/// </summary>
/// <param name="journal">The journal.</param>
/// <param name="today">The day that <c>publish: after</c> is compared with.</param>
/// <param name="photoOf">Where a picture of the journal stands in the site; null for one that cannot be read.</param>
internal sealed class SiteFigures(MakerJournal journal, DateOnly today, Func<string, PublishedPhoto?> photoOf)
{
    private readonly Lock guard = new();

    /// <summary>What viewers see: hidden evenings count in hours and in what is worked out from hours, and nowhere else.</summary>
    private readonly ShownJournal shown = ShownJournal.Of(journal, today);

    /// <summary>The journal as viewers see it: without the hidden evenings.</summary>
    public MakerJournal Journal => shown.Told;

    /// <summary>What may be shown; ask it before a page names an entry, tool, lesson, plan or picture.</summary>
    public Visibility Visibility { get; } = new(journal, today);

    /// <summary>Where the hours went, those of hidden evenings too.</summary>
    public Hours Hours => field ?? Once(ref field, static figures => Hours.Of(figures.shown.Counted));

    /// <summary>When the work was done: minutes of hidden evenings count, their days, milestones and trials are left out.</summary>
    public Timeline Timeline => field ?? Once(ref field, static figures => Timeline.Of(figures.shown));

    /// <summary>Lessons and mistakes of shown entries; the hours that they are compared with count hidden evenings.</summary>
    public Lessons Lessons => field ?? Once(ref field, static figures => Lessons.Of(figures.Journal, figures.Hours));

    /// <summary>What shown entries used and made, and the crib.</summary>
    public Tooling Tooling => field ?? Once(ref field, static figures => Tooling.Of(figures.Journal));

    /// <summary>What shown entries bought, in the journal's currency.</summary>
    public Costs Costs => field ?? Once(ref field, static figures => Costs.Of(figures.Journal));

    /// <summary>How far each build is by its shown entries.</summary>
    public State State => field ?? Once(ref field, static figures => State.Of(figures.Journal));

    /// <summary>Which shown entries point to each part, tool, lesson and entry.</summary>
    public BackLinks BackLinks => field ?? Once(ref field, static figures => BackLinks.Of(figures.Journal));

    /// <summary>The lessons that shown entries taught: those that have a page.</summary>
    public IReadOnlyList<LessonFigure> ShownLessons => field ?? Once(ref field, static figures => [.. figures.Lessons.All.Where(lesson => figures.Visibility.Shows(lesson.Id) && figures.Visibility.Shows(lesson.Entry))]);

    /// <summary>Which of the shown lessons are like which.</summary>
    public SimilarLessons Similar => field ?? Once(ref field, static figures => SimilarLessons.Of(figures.ShownLessons));

    /// <summary>Which of the shown lessons to read before a job.</summary>
    public LessonsToRead ToRead => field ?? Once(ref field, static figures => LessonsToRead.Of(figures.ShownLessons));

    /// <summary>Finds how a lesson came about in the text of its entry.</summary>
    public LessonStory Story => field ?? Once(ref field, static figures => LessonStory.Among(figures.ShownLessons));

    /// <summary>The readings of shown entries, judged.</summary>
    public ReadingFigures Readings => field ?? Once(ref field, static figures => Core.Figures.Readings.Of(figures.Journal));

    /// <summary>The same readings by the entry that took them.</summary>
    public ILookup<EntryRef, ReadingFigure> ReadingsOf => field ?? Once(ref field, static figures => figures.Readings.All.ToLookup(reading => new EntryRef(reading.Build, reading.Entry)));

    /// <summary>The settings of shown entries.</summary>
    public SettingFigures Settings => field ?? Once(ref field, static figures => Core.Figures.Settings.Of(figures.Journal));

    /// <summary>The same settings by the entry that used them.</summary>
    public ILookup<EntryRef, SettingFigure> SettingsOf => field ?? Once(ref field, static figures => figures.Settings.All.ToLookup(setting => new EntryRef(setting.Build, setting.Entry)));

    /// <summary>The mates of each build, as required and as built by the readings of shown entries.</summary>
    public ILookup<Id<Build>, MateFigure> Mates => field ?? Once(ref field, static figures => Core.Figures.Mates.Of(figures.Journal).ToLookup(mate => mate.Build));

    /// <summary>The route of each part that shown entries worked on.</summary>
    public IReadOnlyDictionary<PartRef, Route> Routes => field ?? Once(ref field, static figures => figures.Journal.Builds.SelectMany(Route.Of).ToDictionary(route => route.Part));

    /// <summary>The shown entries that worked on a part, in order.</summary>
    public ILookup<PartRef, Entry> Worked => field ?? Once(ref field, static figures => EntriesByPart(figures.Journal));

    /// <summary>What pages look up by the thing that they are about.</summary>
    public EntryIndex Index => field ?? Once(ref field, static figures => new EntryIndex(figures));

    /// <summary>Entries as lines of a list.</summary>
    public EntryLines Lines => field ?? Once(ref field, static figures => new EntryLines(figures));

    /// <summary>The entries that are shown, by date.</summary>
    public IReadOnlyList<Entry> ShownEntries => field ?? Once(ref field, static figures => [.. figures.Journal.Entries.Where(figures.Visibility.Shows)]);

    /// <summary>Operations that a shown entry names, in the order of the vocabulary: those that have a page.</summary>
    public IReadOnlyList<Id<Operation>> ShownOperations => field ?? Once(ref field, static figures => [.. figures.OperationsIn(figures.ShownEntries)]);

    /// <summary>The plans that may be shown, those not begun first.</summary>
    public IReadOnlyList<Plan> ShownPlans => field ?? Once(ref field, static figures => [.. figures.Journal.Plans.Where(figures.Visibility.Shows).OrderBy(plan => figures.Journal.BegunAs(plan) is null ? 0 : 1)]);

    private Dictionary<EntryRef, Entry> Entries => field ?? Once(ref field, static figures => figures.Journal.Entries.ToDictionary(entry => entry.Ref));

    private Dictionary<PartRef, Part> Parts => field ?? Once(ref field, static figures => figures.Journal.Builds.SelectMany(build => build.Parts.Select(part => (new PartRef(build.Id, part.Id), part))).ToDictionary());

    private Dictionary<Id<Tool>, ToolFigure> Tools => field ?? Once(ref field, static figures => figures.Tooling.Tools.ToDictionary(tool => tool.Id));

    private Dictionary<Id<Lesson>, LessonFigure> LessonsById => field ?? Once(ref field, static figures => figures.Lessons.All.ToDictionary(lesson => lesson.Id));

    private Dictionary<Id<Build>, Build> Builds => field ?? Once(ref field, static figures => figures.Journal.Builds.ToDictionary(build => build.Id));

    private Dictionary<Id<Build>, BuildHours> HoursByBuild => field ?? Once(ref field, static figures => figures.Hours.Builds.ToDictionary(build => build.Build));

    private Dictionary<Id<Build>, BuildState> StateByBuild => field ?? Once(ref field, static figures => figures.State.Builds.ToDictionary(build => build.Build));

    private Dictionary<Id<Plan>, Lazy<PlanForecast>> Forecasts => field ?? Once(ref field, static figures => figures.Journal.Plans.ToDictionary(plan => plan.Id, plan => new Lazy<PlanForecast>(() => PlanForecast.Of(plan, figures.shown.Counted))));

    /// <summary>Where a picture of the journal stands in the site; null for one that cannot be read.</summary>
    public PublishedPhoto? PhotoOf(Photo photo) => photoOf(photo.File);

    /// <summary>A build by its id.</summary>
    public Build Build(Id<Build> build) => Builds[build];

    /// <summary>The hours of a build, those of hidden evenings too.</summary>
    public BuildHours HoursOf(Id<Build> build) => HoursByBuild[build];

    /// <summary>How far a build is by its shown entries.</summary>
    public BuildState StateOf(Id<Build> build) => StateByBuild[build];

    /// <summary>A shown entry.</summary>
    public Entry Entry(EntryRef entry) => Entries[entry];

    /// <summary>A part of a build's list.</summary>
    public Part Part(PartRef part) => Parts[part];

    /// <summary>A tool of the crib, or one that shown entries name.</summary>
    public Tool Tool(Id<Tool> tool) => Tools[tool].Tool;

    /// <summary>The same with its part in the work.</summary>
    public ToolFigure ToolFigure(Id<Tool> tool) => Tools[tool];

    /// <summary>A lesson that a shown entry taught.</summary>
    public LessonFigure Lesson(Id<Lesson> lesson) => LessonsById[lesson];

    /// <summary>An operation of the built-in vocabulary or of the journal's own.</summary>
    public Operation Operation(Id<Operation> operation) => Journal.Vocabulary.Operations[operation];

    /// <summary>The title of a cause, or words that say that there is none.</summary>
    public string CauseTitle(Id<Cause>? cause) => cause is { } id ? Journal.Vocabulary.Causes[id].Title : "No cause given";

    /// <summary>The estimate of a plan, or of the build that it has become.</summary>
    public PlanForecast Forecast(Plan plan) => Forecasts[plan.Id].Value;

    /// <summary>A link to an entry by its title; of a hidden one neither title nor address.</summary>
    public LinkView Link(EntryRef entry) => Visibility.Shows(entry) ? new(Entries[entry].Title, Addresses.Of(entry)) : new("an unpublished entry", null);

    /// <summary>A link to a part sheet by the part's title.</summary>
    public LinkView Link(PartRef part) => new(Parts[part].Title, Addresses.Of(part));

    /// <summary>A part with its item number before it.</summary>
    public LinkView LinkWithItem(PartRef part) => Link(part) is var link && Parts[part].Item is { } item ? link with { Text = $"{item}\u2002{link.Text}" } : link;

    /// <summary>A tool by its title, a link where it is shown; one that only hidden entries name has no title.</summary>
    public LinkView Link(Id<Tool> tool) => Tools.TryGetValue(tool, out var figure) ? new(figure.Tool.Title, Visibility.Shows(tool) ? Addresses.Of(tool) : null) : new("an unpublished tool", null);

    /// <summary>A lesson by its text, a link where it is shown; one that a hidden entry taught has no text.</summary>
    public LinkView Link(Id<Lesson> lesson) => LessonsById.TryGetValue(lesson, out var figure) ? new(figure.Lesson.Text, Visibility.Shows(lesson) ? Addresses.Of(lesson) : null) : new("an unpublished lesson", null);

    /// <summary>A link to the page of an operation, which must be one of <see cref="ShownOperations"/>.</summary>
    public LinkView Link(Id<Operation> operation) => new(Operation(operation).Title, Addresses.Of(operation));

    /// <summary>Operations in small letters with commas between, in the order given.</summary>
    public string OperationWords(IEnumerable<Id<Operation>> operations) => string.Join(", ", operations.Select(id => Casing.Lower(Operation(id).Title)));

    // One lock for all figures, which the same thread may take again: figures need each other, and none is worked out twice.
    private T Once<T>(ref T? figure, Func<SiteFigures, T> make)
        where T : class
    {
        lock (guard)
        {
            return figure ??= make(this);
        }
    }

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
