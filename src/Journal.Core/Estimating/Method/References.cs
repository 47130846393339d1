using Journal.Core.Statistics;
using static Journal.Core.Statistics.SameEverywhere;

namespace Journal.Core.Estimating.Method;

/// <summary>Reference: what a part is measured against, from its guess and its operations, or from its operations alone.</summary>
internal sealed class References
{
    private readonly IReadOnlyList<PastPart> past;
    private readonly OperationTimes times;
    private readonly double? lambda;

    /// <summary>Prepares the references of a history.</summary>
    /// <param name="past">Finished parts in the order of finishing, with guesses and without.</param>
    /// <param name="times">What their operations typically take.</param>
    public References(IReadOnlyList<PastPart> past, OperationTimes times)
    {
        (this.past, this.times) = (past, times);
        double[] ratios =
        [
            .. Enumerable.Range(0, past.Count)
                .Where(i => past[i].Guess is not null)
                .Select(i => Ln(past[i].Guess!.Value / times.TypicalOfPast(i))),
        ];

        // λ = exp(median ln(g/Q)): brings the operations' hours to the scale of the maker's guesses.
        lambda = ratios.Length == 0 ? null : Exp(Quantiles.Median(ratios));
    }

    /// <summary>ln R of the finished part i: R = g^0.9 (λQ)^0.1 against its guess, R = Q against its operations alone.</summary>
    public double LogOfPast(int i, bool withGuess) =>
        withGuess ? Blend(past[i].Guess!.Value, times.TypicalOfPast(i)) : Ln(times.TypicalOfPast(i));

    /// <summary>ln R of a part to come; its guess stands alone while no finished part had one.</summary>
    /// <exception cref="InvalidOperationException">It has no guess and nothing was finished before.</exception>
    public double LogOf(PlannedPart part)
    {
        var typical = times.TypicalOf(part.Operations, part.Quantity);
        return part.Guess is { } guess ? Blend(guess, typical)
            : Ln(typical ?? throw new InvalidOperationException($"There is neither guess nor history for {part.Name}."));
    }

    private double Blend(double guess, double? typical) => lambda is { } scale && typical is { } hours
        ? (MethodConstants.GuessShare * Ln(guess)) + ((1 - MethodConstants.GuessShare) * Ln(scale * hours))
        : Ln(guess);
}
