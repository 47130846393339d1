using Journal.Core.Model;

namespace Journal.Core.Estimating.Method;

/// <summary>A part to come as the method sees it.</summary>
/// <param name="Name">Names its stream of chance, and the part in what is reported.</param>
/// <param name="Guess">Hours guessed for all its pieces, more than zero; null where there is no guess.</param>
/// <param name="Operations">The operations foreseen, each once; may be empty.</param>
/// <param name="Quantity">How many pieces, at least 1.</param>
internal sealed record PlannedPart(string Name, double? Guess, IReadOnlyList<Id<Operation>> Operations, int Quantity = 1)
{
    /// <summary>The finished part it is like.</summary>
    public PastPart? Like { get; init; }

    /// <summary>What was done to it so far; null while it is not begun.</summary>
    public WorkSoFar? SoFar { get; init; }
}
