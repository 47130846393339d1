using System.Globalization;
using Journal.Core.Model;

namespace Journal.Core.Tests;

/// <summary>Small journals for tests, as short to write as a maker's own files.</summary>
internal static class Sample
{
    /// <summary>A vocabulary of one operation or more for each kind of time, and a few causes.</summary>
    public static Vocabulary Vocabulary { get; } = new()
    {
        Operations = Words<Operation>(
            [
                ("turning", TimeKind.Cutting), ("boring", TimeKind.Cutting), ("drilling", TimeKind.Cutting),
                ("marking-out", TimeKind.SettingUp), ("fixture-making", TimeKind.FixturesAndTools), ("measuring", TimeKind.Measuring),
                ("fitting", TimeKind.Fitting), ("painting", TimeKind.Finishing), ("drawing", TimeKind.Thinking), ("cleaning", TimeKind.Shop),
            ],
            (id, kind) => new Operation(id, id.ToTitle(), kind)),
        Causes = Words<Cause>(Plain("measuring", "setting-up", "datum-choice", "drill-wander", "haste", "handling"), (id, _) => new Cause(id, id.ToTitle())),
        Materials = Words<MaterialFamily>(Plain("grey-iron", "mild-steel", "brass"), (id, _) => new MaterialFamily(id, id.ToTitle())),
        StockForms = Words<StockForm>(Plain("casting", "round"), (id, _) => new StockForm(id, id.ToTitle())),
        ToolKinds = Words<ToolKind>(
            Plain("machine", "cutting", "jig", "fixture", "gauge"),
            (id, _) => new ToolKind(id, id.ToTitle())),
    };

    public static MakerJournal Journal(params Build[] builds) => new()
    {
        Title = "The Lean-to",
        Id = Guid.Empty,
        Vocabulary = Vocabulary,
        Builds = [.. builds.OrderBy(build => build.Id)],
    };

    public static Build Build(string id, params Entry[] entries) => new()
    {
        Id = new(id),
        Title = Titles.FromId(id),
        Folder = id,
        Entries = [.. entries.Select(entry => entry with { Build = new(id) }).OrderBy(entry => entry.Date).ThenBy(entry => entry.Id)],
    };

    public static Part Part(string id, int quantity = 1, string? material = null) => new()
    {
        Id = new(id),
        Title = Titles.FromId(id),
        Quantity = quantity,
        Material = material is null ? null : new Material(new(material), null),
    };

    /// <summary>An entry with the date as its id, in a build yet to be named.</summary>
    public static Entry Entry(string date, params Job[] jobs) => new()
    {
        Id = new(date),
        Build = new("unnamed"),
        File = $"{date}.md",
        Title = date,
        Date = DateOnly.ParseExact(date, "yyyy-MM-dd", CultureInfo.InvariantCulture),
        Jobs = [.. (jobs.Length == 0 ? [Job(60)] : jobs).Select((job, i) => job with { Number = i + 1 })],
        Body = Body.Empty,
    };

    /// <summary>A job of so many minutes; parts as <c>head</c> or <c>head:2</c>, none for the whole.</summary>
    public static Job Job(int minutes, string operations = "turning", string parts = "") => new()
    {
        Number = 1,
        Time = new(minutes),
        Operations = [.. Split(operations).Select(id => new Id<Operation>(id))],
        Parts = [.. Split(parts).Select(part => part.Split(':')).Select(part => new PartShare(new(part[0]), Weight(part)))],
    };

    public static Lesson Lesson(string id, Build build, string entry) => new() { Id = new(id), Text = Titles.FromId(id), Entry = new(build.Id, new(entry)) };

    public static DateOnly Day(string date) => DateOnly.ParseExact(date, "yyyy-MM-dd", CultureInfo.InvariantCulture);

    public static EntryRef Ref(string build, string entry) => new(new(build), new(entry));

    private static decimal Weight(string[] part) => part.Length == 1 ? 1 : decimal.Parse(part[1], CultureInfo.InvariantCulture);

    private static string[] Split(string words) => words.Split(' ', StringSplitOptions.RemoveEmptyEntries);

    private static (string Id, TimeKind Kind)[] Plain(params string[] words) => [.. words.Select(word => (word, default(TimeKind)))];

    private static WordList<T> Words<T>((string Id, TimeKind Kind)[] words, Func<Id<T>, TimeKind, T> word)
        where T : class =>
        WordList<T>.Of(words.Select(entry => (new Id<T>(entry.Id), word(new(entry.Id), entry.Kind), (IReadOnlyList<string>)[])));
}
