using Journal.Core.Model;

namespace Journal.Core.Tests.Estimating;

/// <summary>A journal put together in code: builds, evenings, plans.</summary>
internal sealed class Shop
{
    private readonly List<Build> builds = [];
    private readonly List<Plan> plans = [];

    public static DateOnly Day(string date) => DateOnly.Parse(date, System.Globalization.CultureInfo.InvariantCulture);

    public static Part Part(string id, double? guess = null, string[]? operations = null, int quantity = 1, string? like = null) => new()
    {
        Id = new(id),
        Title = id,
        Quantity = quantity,
        Guess = guess is { } hours ? Hours(hours) : null,
        Operations = [.. (operations ?? []).Select(operation => new Id<Operation>(operation))],
        Like = like?.Split('/') is { } named ? new PartRef(new(named[0]), new(named[1])) : null,
    };

    public static Guess Hours(double hours) => new() { Likely = Time(hours) };

    public static Minutes Time(double hours) => new((int)Math.Round(hours * 60));

    /// <summary>A build of evenings, each (date, part or "whole", operation, hours, what is finished).</summary>
    public Shop With(string id, BuildStatus status, Part[] parts, params (string Date, string Part, string Operation, double Hours, string? Finished)[] evenings)
    {
        builds.Add(new Build
        {
            Id = new(id), Title = id, Folder = id, Status = status, Parts = parts, Entries = [.. evenings.Select((evening, i) => Entry(id, i, evening))],
        });
        return this;
    }

    public Shop Change(string id, Func<Build, Build> change)
    {
        var at = builds.FindIndex(build => build.Id.Value == id);
        builds[at] = change(builds[at]);
        return this;
    }

    public Shop Planning(Plan plan)
    {
        plans.Add(plan);
        return this;
    }

    public static Plan Plan(string id, params Part[] parts) => new() { Id = new(id), Title = id, File = $"plans/{id}.yaml", Parts = parts };

    /// <summary>A bench drill of so many parts, one a week from a Monday on: each turned and bored, over its guess by a quarter.</summary>
    public Shop WithDrill(int parts, string id = "drill", string from = "2025-01-06", bool guesses = true) => With(
        id,
        BuildStatus.Finished,
        [.. Enumerable.Range(0, parts).Select(i => Part($"part-{i}", guesses ? 4 + (i % 3) : null))],
        [
            .. Enumerable.Range(0, parts).SelectMany(i => new (string, string, string, double, string?)[]
            {
                ($"{Day(from).AddDays(7 * i):yyyy-MM-dd}", $"part-{i}", "turning", 2 + (i % 3), null),
                ($"{Day(from).AddDays((7 * i) + 2):yyyy-MM-dd}", $"part-{i}", "boring", 3.25 - (0.5 * (i % 2)), $"part-{i}"),
            }),
        ]);

    public MakerJournal Journal() => new()
    {
        Title = "Shop",
        Id = Guid.Empty,
        Vocabulary = new Vocabulary
        {
            Operations = WordList<Operation>.Of(
                Words([("turning", TimeKind.Cutting), ("boring", TimeKind.Cutting), ("fixture-making", TimeKind.FixturesAndTools), ("assembly", TimeKind.Fitting), ("painting", TimeKind.Finishing), ("other", TimeKind.Shop)])),
            Causes = WordList<Cause>.Of([]),
            Materials = WordList<MaterialFamily>.Of([]),
            StockForms = WordList<StockForm>.Of([]),
            ToolKinds = WordList<ToolKind>.Of([]),
        },
        Builds = builds,
        Plans = plans,
    };

    private static IEnumerable<(Id<Operation>, Operation, IReadOnlyList<string>)> Words((string Id, TimeKind Kind)[] words) =>
        words.Select(word => (new Id<Operation>(word.Id), new Operation(new(word.Id), word.Id, word.Kind), (IReadOnlyList<string>)[]));

    private static Entry Entry(string build, int number, (string Date, string Part, string Operation, double Hours, string? Finished) evening) => new()
    {
        Id = new($"{evening.Date}-{number}"),
        Build = new(build),
        File = $"{build}/{evening.Date}-{number}.md",
        Title = evening.Date,
        Date = Day(evening.Date),
        Body = Body.Empty,
        Jobs =
        [
            new Job
            {
                Number = 1,
                Parts = evening.Part == "whole" ? [] : [new(new(evening.Part), 1)],
                Operations = [new(evening.Operation)],
                Time = Time(evening.Hours),
            },
        ],
        Finished = evening.Finished is { } part ? [new(new(part), null)] : [],
    };
}
