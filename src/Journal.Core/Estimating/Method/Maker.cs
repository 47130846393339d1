using static Journal.Core.Statistics.SameEverywhere;

namespace Journal.Core.Estimating.Method;

/// <summary>
/// All that the method knows of a maker: typical hours by operation, and the habit against guesses and against operations.
/// </summary>
/// <remarks>
/// Histories and plans may be mixed. Typical hours and recency come from all finished parts. The habit against guesses rests
/// on those that had a guess, the habit against operations on all of them. Each part to come is forecast by the habit that
/// fits it, so one forgotten guess does not throw the others away; the luck of the build is one and the same for both kinds.
/// </remarks>
internal sealed class Maker
{
    private readonly References references;
    private readonly OperationTimes times;

    /// <summary>Learns from finished parts in the order of finishing; there may be none.</summary>
    public Maker(IReadOnlyList<PastPart> past)
        : this(past, MethodConstants.WithGuesses, MethodConstants.WithoutGuesses)
    {
    }

    private Maker(IReadOnlyList<PastPart> past, MethodConstants withGuesses, MethodConstants withoutGuesses)
    {
        Past = past;
        Curve = LearningCurve.Of(past);
        times = new OperationTimes(past, Curve);
        references = new References(past, times);
        WithGuesses = Learn(withGuesses, withGuess: true);
        WithoutGuesses = Learn(withoutGuesses, withGuess: false);
    }

    /// <summary>The finished parts in the order of finishing.</summary>
    public IReadOnlyList<PastPart> Past { get; }

    /// <summary>How the hours of equal pieces fall with their number.</summary>
    public LearningCurve Curve { get; }

    /// <summary>How hours run against guesses.</summary>
    public Habit WithGuesses { get; }

    /// <summary>How hours run against what operations typically take.</summary>
    public Habit WithoutGuesses { get; }

    /// <summary>Learns from finished parts that all belong to the build being forecast.</summary>
    public static Maker OfOneBuild(IReadOnlyList<PastPart> past) =>
        new(past, MethodConstants.WithGuesses.WithinOneBuild(), MethodConstants.WithoutGuesses.WithinOneBuild());

    /// <summary>
    /// What finished parts of the build tell of its luck: each one's hours against the outlook on it.
    /// </summary>
    public SharedLuck LuckAfter(IEnumerable<(PlannedPart Part, double Hours)> finished) => SharedLuck.After(
        finished.Select(part => (OutlookOn(part.Part), Ln(part.Hours), HabitFor(part.Part).Constants.ResidualLimit)));

    /// <summary>Middle of a part and Shared luck, for one part, before chance is drawn.</summary>
    public Outlook OutlookOn(PlannedPart part)
    {
        var habit = HabitFor(part);
        var plain = habit.MiddleOf(references.LogOf(part));
        var middle = plain + TowardsNeighbour(part, habit, plain);
        var outlook = new Outlook(part.Name, middle, habit.SharedScale, habit.Scatter);
        return part.SoFar is not { } soFar ? outlook : outlook with { Spent = soFar.Hours, ShareLeft = ShareLeft(part, soFar, middle) };
    }

    private double ShareLeft(PlannedPart part, WorkSoFar soFar, double middle) => soFar.Last is { } last && part.Operations.Count > 0
        ? soFar.ShareLeft(part.Operations, last, times.TypicalLogOf)
        : soFar.ShareLeft(part.Guess ?? Exp(middle));

    // `like` draws the middle towards the named part: its ratio where both had a guess, else its hours for as many pieces.
    // The range stays as wide as it was: nothing measured says that a likeness narrows it.
    private double TowardsNeighbour(PlannedPart part, Habit habit, double middle)
    {
        if (part.Like is not { } neighbour)
        {
            return 0;
        }

        var hours = part.Guess is { } guess && neighbour.Guess is { } itsGuess
            ? guess * neighbour.Hours / itsGuess
            : neighbour.Hours * Curve.Total(part.Quantity) / Curve.Total(neighbour.Quantity);
        return habit.Constants.LikeShare * (Ln(hours) - middle);
    }

    private Habit HabitFor(PlannedPart part) => part.Guess is null ? WithoutGuesses : WithGuesses;

    private Habit Learn(MethodConstants constants, bool withGuess)
    {
        int[] which = [.. Enumerable.Range(0, Past.Count).Where(i => !withGuess || Past[i].Guess is not null)];
        return Habit.Of(
            [.. which.Select(i => references.LogOfPast(i, withGuess))],
            [.. which.Select(i => Ln(Past[i].Hours))],
            [.. which.Select(i => times.Recency[i])],
            constants);
    }
}
