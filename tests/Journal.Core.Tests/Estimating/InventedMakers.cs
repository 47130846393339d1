using Journal.Core.Statistics;
using Journal.Core.Estimating.Method;
using Journal.Core.Model;

namespace Journal.Core.Tests.Estimating;

/// <summary>A maker invented for a test: a history, a plan, and what each part of the plan really took.</summary>
internal sealed record InventedMaker(IReadOnlyList<PastPart> Past, IReadOnlyList<PlannedPart> Plan, IReadOnlyList<double> Hours)
{
    /// <summary>What the plan took in all.</summary>
    public double Took => Hours.Sum();

    /// <summary>The parts of the plan once they are made.</summary>
    public IReadOnlyList<PastPart> Made { get; init; } = [];

    /// <summary>Each part of the plan with about half of its operations done.</summary>
    public IReadOnlyList<HalfMade> Halves { get; init; } = [];

    /// <summary>How the luck of the build turns under way, standard normal.</summary>
    public double Turn { get; init; }
}

/// <summary>A part with about half of its operations done.</summary>
/// <param name="Worked">The operations worked on.</param>
/// <param name="Last">The last of them, half done.</param>
/// <param name="HoursLeft">What is really left of it.</param>
internal sealed record HalfMade(IReadOnlyList<Id<Operation>> Worked, Id<Operation> Last, double HoursLeft);

/// <summary>How an invented world works; the default is as the method thinks.</summary>
/// <param name="WithGuesses">Whether makers guess.</param>
internal sealed record InventedWorld(bool WithGuesses)
{
    /// <summary>The luck of a single part on the scale of its scatter; standard normal by default.</summary>
    public Func<Luck, double> Part { get; init; } = luck => luck.Normal();

    /// <summary>How much a maker's log hours change from the first part to the last; none by default.</summary>
    public double Drift { get; init; }

    /// <summary>How far the middle one of three past builds was off as a whole, in logarithms; 0 by default.</summary>
    public double OddBuild { get; init; }

    /// <summary>Whether past builds had their own luck too, as real ones have.</summary>
    public bool PastBuildsDiffer { get; init; }

    /// <summary>How many past parts each maker has; null for 15 to 60.</summary>
    public int? Finished { get; init; }

    /// <summary>A world that is not as the method thinks.</summary>
    public static InventedWorld Wrong(string what, bool withGuesses) => what switch
    {
        "past builds differ" => new(withGuesses) { PastBuildsDiffer = true },
        "heavy tails" => new(withGuesses) { Part = StudentOfThree },
        "drift" => new(withGuesses) { Drift = -0.5 },
        "odd build" => new(withGuesses) { OddBuild = 1 },
        _ => throw new ArgumentOutOfRangeException(nameof(what), what, "No such world."),
    };

    /// <summary>How far operations differ in what they take, on the scale of logarithms.</summary>
    public double Operations { get; init; } = 0.5;

    /// <summary>Whether a few past parts are of one luck with the build, as the method then takes them.</summary>
    public bool AreFewOfOneLuck { get; init; }

    private MethodConstants Constants => WithGuesses ? MethodConstants.WithGuesses : MethodConstants.WithoutGuesses;

    /// <summary>Invents makers with habits drawn from what the method assumes of makers; the same every time.</summary>
    public IEnumerable<InventedMaker> Makers(int count, int planned = 10) =>
        Enumerable.Range(0, count).Select(number => Invent(Luck.For(number, WithGuesses ? "with guesses" : "without"), planned));

    private InventedMaker Invent(Luck luck, int planned)
    {
        var finished = Finished ?? 15 + luck.Below(46);
        var habit = Constants.HabitScale * luck.Normal();
        var slope = Constants.FixedSlope + (Constants.SlopeScale * luck.Normal());

        // Step 7's prior: s² = 10 σ₀² / χ² with 11 degrees of freedom has the mean 10 σ₀² / 9 that the step starts from.
        var chi = Enumerable.Range(0, 11).Sum(_ => Math.Pow(luck.Normal(), 2));
        var scatter = Constants.Scatter * Math.Sqrt(10 / chi);
        // Five operations: with more of them, typical hours rest on few parts each, an error that the method leaves to τ.
        double[] operations = [.. Enumerable.Range(0, 5).Select(_ => 0.5 + (Operations * luck.Normal()))];

        var sketches = Enumerable.Range(0, finished + planned).Select(_ => Sketch.Of(luck, operations, WithGuesses)).ToList();
        var centre = (finished == 0 ? sketches : sketches.Take(finished)).Average(sketch => sketch.LogReference);
        var buildScale = finished < MethodConstants.EnoughParts ? Constants.ThinBuildScale : Constants.BuildScale;
        double[] builds = [.. Enumerable.Range(0, 4).Select(_ => buildScale * luck.Normal())];
        double LogHours(Sketch sketch, int i, double wider = 1) => sketch.LogReference + habit + (slope * (sketch.LogReference - centre)) + (wider * scatter * Part(luck))
            + (finished == 0 ? 0 : Drift * (Math.Min(i, finished) / (double)finished))
            + (i >= finished || SharesItsLuck(finished) ? builds[3] : (PastBuildsDiffer ? builds[3 * i / finished] : 0) + (3 * i / finished == 1 ? OddBuild : 0));

        var hours = sketches.Select((sketch, i) => Math.Exp(LogHours(sketch, i))).ToList();
        var plan = sketches.Skip(finished).ToList();
        return new InventedMaker(
            [.. sketches.Take(finished).Select((sketch, i) => sketch.Finished(i, hours[i]))],
            [.. plan.Select((sketch, j) => sketch.Planned(j))],
            [.. hours.Skip(finished)])
        {
            Made = [.. plan.Select((sketch, j) => sketch.Finished(finished + j, hours[finished + j]))],
            Halves = [.. plan.Select((sketch, j) => sketch.Half(Math.Exp(LogHours(sketch, finished + j, MethodConstants.BegunScatter))))],
            Turn = luck.Normal(),
        };
    }

    private bool SharesItsLuck(int finished) => AreFewOfOneLuck && finished < MethodConstants.EnoughParts;

    // Student's t with three degrees of freedom, scaled to variance 1.
    private static double StudentOfThree(Luck luck)
    {
        var chi = Enumerable.Range(0, 3).Sum(_ => Math.Pow(luck.Normal(), 2));
        return luck.Normal() / Math.Sqrt(chi / 3) / Math.Sqrt(3);
    }

    private sealed record Sketch(double LogReference, double? Guess, double[] Shares, Id<Operation>[] Operations)
    {
        public static Sketch Of(Luck luck, double[] operations, bool guesses)
        {
            int[] order = [.. Enumerable.Range(0, operations.Length)];
            luck.Shuffle(order);
            var chosen = order[..(1 + luck.Below(4))];
            var together = chosen.Sum(o => Math.Exp(operations[o]));
            var guess = Math.Exp(1.5 + (0.7 * luck.Normal()));
            return new Sketch(
                guesses ? (0.9 * Math.Log(guess)) + 0.15 : Math.Log(together),
                guesses ? guess : null,
                [.. chosen.Select(o => Math.Exp(operations[o]) / together)],
                [.. chosen.Select(o => new Id<Operation>($"operation-{o}"))]);
        }

        public PastPart Finished(int i, double hours) =>
            new($"past/{i}", hours, Guess, [.. Operations.Zip(Shares, (operation, share) => new Work(operation, share * hours))]);

        // The first half of its operations is done, the last of them half; what is left goes by what operations really take.
        public HalfMade Half(double whole)
        {
            var worked = (Operations.Length + 1) / 2;
            return new HalfMade(Operations[..worked], Operations[worked - 1], whole * Math.Min(MethodConstants.MostLeft, Shares[worked..].Sum() + (MethodConstants.LastOperationLeft * Shares[worked - 1])));
        }

        public PlannedPart Planned(int j) => new($"plan/{j}", Guess, Operations);
    }
}
