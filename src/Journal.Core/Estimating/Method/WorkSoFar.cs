using Journal.Core.Model;
using static Journal.Core.Statistics.SameEverywhere;

namespace Journal.Core.Estimating.Method;

/// <summary>What was done to a part that is begun and not finished.</summary>
/// <param name="Hours">Hours spent on it, more than zero.</param>
/// <param name="Operations">The operations worked on, each once, in the order in which they were first worked.</param>
/// <param name="Last">The operation worked last; null where operations do not tell how far it has come.</param>
internal sealed record WorkSoFar(double Hours, IReadOnlyList<Id<Operation>> Operations, Id<Operation>? Last)
{
    /// <summary>Hours of which nothing more is known.</summary>
    public static WorkSoFar OfHours(double hours) => new(hours, [], null);

    /// <summary>
    /// Begun parts, ρ: the share of the part's operations that is left, each counted by what it usually takes and the last
    /// one as half done (docs/estimating.md).
    /// </summary>
    /// <param name="planned">The operations planned, at least one.</param>
    /// <param name="last">The operation worked last.</param>
    /// <param name="typicalLog">An operation's usual log hours, t_o.</param>
    public double ShareLeft(IReadOnlyList<Id<Operation>> planned, Id<Operation> last, Func<Id<Operation>, double> typicalLog)
    {
        double Usual(IEnumerable<Id<Operation>> operations) => operations.Sum(operation => Exp(typicalLog(operation)));
        var toCome = Usual(planned.Except(Operations)) + (MethodConstants.LastOperationLeft * Exp(typicalLog(last)));
        return Math.Min(MethodConstants.MostLeft, toCome / Usual(planned.Union(Operations)));
    }

    /// <summary>Begun parts, ρ where no operations are planned: the share of the guess that is not yet spent.</summary>
    /// <param name="guess">The hours guessed, or else expected, for the whole part.</param>
    public double ShareLeft(double guess) =>
        Math.Clamp(1 - (Hours / guess), MethodConstants.LeastLeftOfGuess, MethodConstants.MostLeft);
}
