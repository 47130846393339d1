using Journal.Core.Estimating.Method;
using Journal.Core.Model;

namespace Journal.Core.Estimating;

/// <summary>A guess in hours.</summary>
internal static class GuessHours
{
    /// <summary>
    /// The guessed hours for all pieces of a part, null for a guess of nothing. A guess under <c>operations</c> is for one piece
    /// and grows along the learning curve; every other is for all of them (docs/estimating.md, Guesses).
    /// </summary>
    public static double? HoursFor(this Guess guess, Part part, LearningCurve? curve = null)
    {
        var hours = guess.MeanMinutes / 60;
        var pieces = guess.IsForOne(part) ? (curve ?? LearningCurve.None).Total(part.Quantity) : 1;
        return hours > 0 ? hours * pieces : null;
    }

    /// <summary>Whether the guess is for one piece of several.</summary>
    public static bool IsForOne(this Guess guess, Part part) => part.Quantity > 1 && guess.ForOnePiece;
}
