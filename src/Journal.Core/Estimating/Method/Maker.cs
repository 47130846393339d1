using static Journal.Core.Estimating.Chance.SameEverywhere;

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

    /// <summary>Learns from finished parts in the order of finishing; there may be none.</summary>
    public Maker(IReadOnlyList<PastPart> past)
    {
        Past = past;
        Curve = LearningCurve.Of(past);
        var times = new OperationTimes(past, Curve);
        references = new References(past, times);
        WithGuesses = Learn(times, MethodConstants.WithGuesses, i => past[i].Guess is not null);
        WithoutGuesses = Learn(times, MethodConstants.WithoutGuesses, _ => true);
    }

    /// <summary>The finished parts in the order of finishing.</summary>
    public IReadOnlyList<PastPart> Past { get; }

    /// <summary>How the hours of equal pieces fall with their number.</summary>
    public LearningCurve Curve { get; }

    /// <summary>How hours run against guesses.</summary>
    public Habit WithGuesses { get; }

    /// <summary>How hours run against what operations typically take.</summary>
    public Habit WithoutGuesses { get; }

    /// <summary>Whether there is anything to forecast a part from.</summary>
    public bool CanForecast(PlannedPart part) => part.Guess is not null || Past.Count > 0;

    /// <summary>Step 9 for one part, before chance is drawn.</summary>
    public Outlook OutlookOn(PlannedPart part)
    {
        var habit = part.Guess is null ? WithoutGuesses : WithGuesses;
        var middle = habit.MiddleOf(references.LogOf(part));
        return new Outlook(part.Name, middle + TowardsNeighbour(part, habit, middle), habit.SharedScale, habit.Scatter, part.Spent);
    }

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

    private Habit Learn(OperationTimes times, MethodConstants constants, Func<int, bool> counts)
    {
        var withGuess = ReferenceEquals(constants, MethodConstants.WithGuesses);
        int[] which = [.. Enumerable.Range(0, Past.Count).Where(counts)];
        return Habit.Of(
            [.. which.Select(i => references.LogOfPast(i, withGuess))],
            [.. which.Select(i => Ln(Past[i].Hours))],
            [.. which.Select(i => times.Recency[i])],
            constants);
    }
}
