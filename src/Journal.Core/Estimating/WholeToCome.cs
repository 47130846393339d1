using System.Globalization;
using Journal.Core.Estimating.Method;
using Journal.Core.Model;
using Journal.Core.Statistics;

namespace Journal.Core.Estimating;

/// <summary>The work on a build as a whole, drawn: from its guesses, else from its share in finished builds.</summary>
/// <param name="Estimate">Its range and basis.</param>
/// <param name="Hours">Its hours in each draw.</param>
internal sealed record WholeToCome(WholeEstimate Estimate, double[] Hours)
{
    /// <summary>The outlooks on the guesses for the whole: each is forecast like a part with a guess, by the same habit.</summary>
    public static IReadOnlyList<Outlook> Guesses(EstimateSubject undertaking, Knowledge knowledge) =>
    [
        .. Guessed(undertaking).Select(guess => knowledge.Maker.OutlookOn(new PlannedPart($"whole/{guess.Key}", guess.Value.InHours, [guess.Key])
        {
            SoFar = undertaking.SpentOnWhole.GetValueOrDefault(guess.Key) is { Count: > 0 } spent ? WorkSoFar.OfHours(spent.InHours) : null,
        })),
    ];

    /// <summary>From the guesses where there are any; else from the share in finished builds; else only what was spent so far.</summary>
    /// <param name="undertaking">The plan or build.</param>
    /// <param name="knowledge">The maker as learned from the finished parts.</param>
    /// <param name="guesses">The outlooks on the guesses for the whole (<see cref="Guesses"/>).</param>
    /// <param name="hours">The hours of each of them in each draw.</param>
    /// <param name="parts">The parts, of whose hours the share is taken.</param>
    /// <param name="options">The seed and the number of draws.</param>
    public static WholeToCome Of(
        EstimateSubject undertaking,
        Knowledge knowledge,
        IReadOnlyList<Outlook> guesses,
        IReadOnlyList<double[]> hours,
        PartsToCome parts,
        EstimateOptions options) =>
        guesses.Count > 0 ? FromGuesses(undertaking, knowledge, guesses, hours, options)
        : WholeShare.Of(knowledge.History, undertaking.Build) is { } share && parts.Totals.Min() > 0 ? FromShare(undertaking, share, parts, options)
        : Nothing(undertaking, options);

    private static List<KeyValuePair<Id<Operation>, Minutes>> Guessed(EstimateSubject undertaking) =>
        [.. undertaking.Whole.Where(guess => guess.Value > Minutes.Zero)];

    private static WholeToCome FromGuesses(
        EstimateSubject undertaking,
        Knowledge knowledge,
        IReadOnlyList<Outlook> outlooks,
        IReadOnlyList<double[]> hours,
        EstimateOptions options)
    {
        var unforeseen = undertaking.SpentOnWhole
            .Where(spent => undertaking.Whole.GetValueOrDefault(spent.Key) == Minutes.Zero)
            .Sum(spent => spent.Value);
        double[] totals = [.. Draws.Sum(hours, options.Draws).Select(sum => sum + unforeseen.InHours)];

        var guesses = Guessed(undertaking);
        var words = string.Join(" + ", guesses.Select(guess => $"{guess.Value} {guess.Key}"));
        var ratio = outlooks.Sum(outlook => SameEverywhere.Exp(outlook.Middle)) / guesses.Sum(guess => guess.Value).InHours;
        return new(Ranged(totals, Basis.OfGuess(words, isSecond: false, ratio, knowledge.Maker)), totals);
    }

    private static WholeToCome FromShare(EstimateSubject undertaking, WholeShare share, PartsToCome parts, EstimateOptions options)
    {
        double[] middles = [.. parts.Totals.Select(hours => SameEverywhere.Ln(hours * share.Share))];
        var hours = Draws.About("whole", middles, share.Spread, undertaking.SpentOnWhole.Values.Sum().InHours, options.Seed);
        var basis = string.Create(
            CultureInfo.InvariantCulture,
            $"{share.Share * 60:0} minutes for each hour on parts, as in {Basis.Count(share.Builds, "finished build")}");
        return new(Ranged(hours, basis), hours);
    }

    private static WholeToCome Nothing(EstimateSubject undertaking, EstimateOptions options)
    {
        var spent = undertaking.SpentOnWhole.Values.Sum();
        var taken = spent == Minutes.Zero ? (double?)null : Rounded.Hours(spent.InHours);
        var basis = "no guess under `whole` and no finished build to take its share from: "
            + (taken is null ? "not included" : $"only the {spent} spent so far");
        return new(new(taken, taken, taken, basis), [.. Enumerable.Repeat(spent.InHours, options.Draws)]);
    }

    private static WholeEstimate Ranged(double[] hours, string basis)
    {
        var sorted = Estimator.Sorted(hours);
        return new(Estimator.At(sorted, 0.1, 0), Estimator.At(sorted, 0.5, 0), Estimator.At(sorted, 0.9, 0), basis);
    }
}
