using Journal.Core.Estimating;
using Journal.Core.Statistics;
using Journal.Core.Model;

namespace Journal.Benchmarks.Estimating;

/// <summary>An estimate of 60 parts by 10,000 draws, back-test included, from a journal of five builds.</summary>
/// <param name="name">The benchmark's name.</param>
/// <param name="without">The parts to leave out, each told as a difference.</param>
/// <param name="mostSeconds">How long it may take, warm.</param>
internal sealed class EstimateBenchmark(string name, IReadOnlyList<Id<Part>> without, double mostSeconds) : Benchmark
{
    private const int Parts = 60;
    private const int Draws = 10_000;

    private static readonly string[] Operations = ["turning", "boring", "milling", "drilling", "reaming", "tapping", "fitting", "scraping"];

    private readonly MakerJournal journal = InventJournal();
    private readonly Plan plan = new()
    {
        Id = new("shaper"),
        Title = "Shaper",
        File = "plans/shaper.yaml",
        Parts = [.. Enumerable.Range(0, Parts).Select(i => InventPart(i, guess: i % 4 != 0))],
    };

    /// <inheritdoc/>
    public override string Name => name;

    /// <inheritdoc/>
    protected override string What =>
        $"{Draws:N0} draws over {Parts} parts from 150 finished ones, dates and back-test included; floor: as many bare normals and sums";

    /// <inheritdoc/>
    protected override double MostSeconds => mostSeconds;

    /// <inheritdoc/>
    protected override void Work()
    {
        var result = Estimate.Of(journal, plan, new EstimateOptions { Today = new(2025, 10, 20), Draws = Draws, Without = without });
        if (!result.IsEstimate || result.Estimate.Backtest.Kits != 4 || result.Estimate.Finish is null)
        {
            throw new InvalidOperationException("The estimate was not made.");
        }
    }

    /// <inheritdoc/>
    protected override void Floor()
    {
        var luck = Luck.For(1, "floor");
        var totals = new double[Draws];
        for (var draw = 0; draw < Draws; draw++)
        {
            var shared = luck.Normal();
            for (var part = 0; part < Parts; part++)
            {
                totals[draw] += SameEverywhere.Exp(2 + (0.3 * shared) + (0.6 * luck.Normal()));
            }
        }

        Array.Sort(totals);
    }

    private static (Id<Operation>, Operation, IReadOnlyList<string>) Word(string id) => (new(id), new(new(id), id, TimeKind.Cutting), []);

    // Five builds of 30 parts, three evenings to a part.
    private static MakerJournal InventJournal() => new()
    {
        Title = "Benchmark",
        Id = Guid.Empty,
        Vocabulary = new Vocabulary
        {
            Operations = WordList<Operation>.Of(Operations.Select(Word)),
            Causes = WordList<Cause>.Of([]),
            Materials = WordList<MaterialFamily>.Of([]),
            StockForms = WordList<StockForm>.Of([]),
            ToolKinds = WordList<ToolKind>.Of([]),
        },
        Builds = [.. Enumerable.Range(0, 5).Select(InventBuild)],
    };

    private static Build InventBuild(int number)
    {
        var luck = Luck.For(number, "build");
        var id = new Id<Build>($"build-{number}");
        return new Build
        {
            Id = id,
            Title = $"Build {number}",
            Folder = id.Value,
            Status = BuildStatus.Finished,
            Parts = [.. Enumerable.Range(0, 30).Select(i => InventPart(i, guess: i % 3 != 0))],
            Entries = [.. Enumerable.Range(0, 90).Select(i => InventEntry(id, new DateOnly(2022 + number - 1, 1, 10).AddDays(3 * i), i, luck))],
        };
    }

    private static Part InventPart(int i, bool guess) => new()
    {
        Id = new($"part-{i}"),
        Title = $"Part {i}",
        Guess = guess ? new Guess { Likely = new(120 + (i * 37 % 600)) } : null,
        Operations = [new(Operations[i % 8]), new(Operations[(i + 3) % 8])],
    };

    private static Entry InventEntry(Id<Build> build, DateOnly date, int i, Luck luck) => new()
    {
        Id = new($"{date:yyyy-MM-dd}"),
        Build = build,
        File = $"{build}/{date:yyyy-MM-dd}.md",
        Title = $"{date:yyyy-MM-dd}",
        Date = date,
        Body = Body.Empty,
        Jobs =
        [
            new Job
            {
                Number = 1,
                Parts = [new(new($"part-{i / 3}"), 1)],
                Operations = [new(Operations[(i + (i / 3)) % 8])],
                Time = new(30 + luck.Below(240)),
            },
        ],
        Finished = i % 3 == 2 ? [new(new($"part-{i / 3}"), null)] : [],
    };
}
