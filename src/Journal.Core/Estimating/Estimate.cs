using Journal.Core.Model;

namespace Journal.Core.Estimating;

/// <summary>
/// What the journal's history says a plan, or the rest of a build, will take (docs/estimating.md). Hours are numbers to a thousandth of an hour, minutes are whole.
/// </summary>
public sealed record Estimate
{
    /// <summary>The id of the plan or build.</summary>
    public required string Plan { get; init; }

    /// <summary>Its title.</summary>
    public required string Title { get; init; }

    /// <summary>Hours for everything, parts and whole; of a build under way with the hours already spent.</summary>
    public required HourRange Hours { get; init; }

    /// <summary>The same from 0.05 to 0.95 in steps of 0.05.</summary>
    public required IReadOnlyList<HourQuantile> Quantiles { get; init; }

    /// <summary>The days on which it is done; null where nothing is known of the pace.</summary>
    public FinishRange? Finish { get; init; }

    /// <summary>The same from 0.05 to 0.95 in steps of 0.05; empty where nothing is known of the pace.</summary>
    public IReadOnlyList<FinishQuantile> FinishQuantiles { get; init; } = [];

    /// <summary>Each part, in the order of the parts list.</summary>
    public required IReadOnlyList<PartEstimate> Parts { get; init; }

    /// <summary>Work on the build as a whole.</summary>
    public required WholeEstimate Whole { get; init; }

    /// <summary>The parts (or <c>whole</c>) that make up most of the uncertainty, the greatest first.</summary>
    public required IReadOnlyList<UncertainPart> MostUncertain { get; init; }

    /// <summary>What it rests on.</summary>
    public required HistorySize History { get; init; }

    /// <summary>How far past guesses ran over; null without a finished part that had one.</summary>
    public Overrun? Overrun { get; init; }

    /// <summary>Past guesses and hours in order of finishing; null without a finished part that had a guess.</summary>
    public GuessesOverTime? Guesses { get; init; }

    /// <summary>How the history fared when forecast from what came before.</summary>
    public Backtest Backtest { get; init; } = Backtest.OfNothing;

    /// <summary>What each change asked for makes of it, then all of them together; empty where none was.</summary>
    public IReadOnlyList<Difference> Differences { get; init; } = [];

    /// <summary>Finished parts that parts without a guess may be like.</summary>
    public IReadOnlyList<LikeOffer> Offers { get; init; } = [];

    /// <summary>Minutes already spent on a build under way; null for a plan.</summary>
    public int? MinutesSoFar { get; init; }

    /// <summary>Hours still to come in a build under way; null for a plan.</summary>
    public HourRange? Left { get; init; }

    /// <summary>Hours a week that the dates are reckoned with, idle weeks counted; null where nothing is known of the pace.</summary>
    public double? HoursAWeek { get; init; }

    /// <summary>Whether that pace was said, by the plan or with the question, and does not come from the maker's own weeks.</summary>
    public bool IsPaceSaid { get; init; }

    /// <summary>The day from which the dates are reckoned.</summary>
    public required DateOnly Start { get; init; }

    /// <summary>What the reader should know of it, in words: little history, no pace.</summary>
    public required IReadOnlyList<string> Remarks { get; init; }

    /// <summary>The seed of chance.</summary>
    public required int Seed { get; init; }

    /// <summary>The hours of each draw in rising order.</summary>
    internal IReadOnlyList<double> Totals { get; init; } = [];

    /// <summary>The day of each draw in rising order; empty where nothing is known of the pace.</summary>
    internal IReadOnlyList<DateOnly> Days { get; init; } = [];

    /// <summary>The estimate of a plan.</summary>
    public static EstimateResult Of(MakerJournal journal, Plan plan, EstimateOptions options) =>
        Estimator.Run(EstimateSubject.Of(plan), journal, options);

    /// <summary>The estimate of a build: what was spent so far and what is left, learning from the parts finished since its start.</summary>
    public static EstimateResult Of(MakerJournal journal, Build build, EstimateOptions options) =>
        Estimator.Run(EstimateSubject.Of(journal.StoodOn(options.Today), build.Id), journal, options);
}

/// <summary>Hours that suffice with a chance of 10, 25, 50, 75, 80 and 90 %.</summary>
public sealed record HourRange(double P10, double P25, double P50, double P75, double P80, double P90);

/// <summary>Hours that suffice with a chance.</summary>
public sealed record HourQuantile(double P, double Hours);

/// <summary>Days by which it is done with a chance of 50, 80 and 90 %; null where that lies more than a century off.</summary>
public sealed record FinishRange(DateOnly? P50, DateOnly? P80, DateOnly? P90);

/// <summary>A day by which it is done with a chance; null where that lies more than a century off.</summary>
public sealed record FinishQuantile(double P, DateOnly? Date);

/// <summary>A part's hours.</summary>
/// <param name="Part">The part's id.</param>
/// <param name="P10">Hours that suffice once in ten times.</param>
/// <param name="P50">At even odds.</param>
/// <param name="P90">Nine times in ten.</param>
/// <param name="Basis">What it rests on, in words.</param>
/// <param name="IsFinished">Whether these are hours taken.</param>
public sealed record PartEstimate(string Part, double P10, double P50, double P90, string Basis, bool IsFinished = false)
{
    /// <summary>The part's title.</summary>
    public string Title { get; init; } = "";

    /// <summary>The maker's first guess in hours, for all pieces; null where there is none.</summary>
    public double? Guess { get; init; }

    /// <summary>The second guess likewise.</summary>
    public double? Reguess { get; init; }
}

/// <summary>Hours of the work on the build as a whole; null where nothing is known and none is included.</summary>
public sealed record WholeEstimate(double? P10, double? P50, double? P90, string Basis);

/// <summary>A part's share in the variance of the whole, 0 to 1.</summary>
public sealed record UncertainPart(string Part, double Share);

/// <summary>The finished parts that an estimate rests on.</summary>
public sealed record HistorySize(int Parts, int Minutes);

/// <summary>How far guesses ran over.</summary>
/// <param name="Parts">Finished parts that had a guess.</param>
/// <param name="GuessedHours">What was guessed for them.</param>
/// <param name="TakenHours">What they took.</param>
/// <param name="Ratio">Hours taken for an hour guessed.</param>
/// <param name="FixturesAndPuttingRightHours">Of the hours taken, those for fixtures, tools and putting right.</param>
/// <param name="ShareOfOverrun">Those hours against what the guesses ran over, 1 at most; null where they did not run over.</param>
public sealed record Overrun(
    int Parts,
    double GuessedHours,
    double TakenHours,
    double Ratio,
    double FixturesAndPuttingRightHours,
    double? ShareOfOverrun);
