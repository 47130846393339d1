using Journal.Core.Estimating.Method;
using Journal.Core.Model;

namespace Journal.Core.Estimating;

/// <summary>What the reader should know of an estimate.</summary>
public static class Remarks
{
    /// <summary>About the history and the list, in the order of their weight.</summary>
    internal static IEnumerable<string> On(EstimateSubject undertaking, Knowledge knowledge)
    {
        List<Part> open = [.. undertaking.Open];
        if (open.Count > 0 && Thin(open, knowledge) is { } thin)
        {
            yield return thin;
        }

        foreach (var part in open.Where(part => part.Like is { } like && knowledge.History.Parts.All(past => past.Ref != like)))
        {
            yield return OnLike(part);
        }
    }

    /// <summary>That the part which a part is like is not finished; it names both.</summary>
    public static string OnLike(Part part) => $"{part.Id} is like {part.Like}, which is not finished yet: it is estimated without it.";

    private static string? Thin(List<Part> open, Knowledge knowledge)
    {
        var (guessed, all) = (knowledge.Maker.WithGuesses.Parts, knowledge.History.Parts.Count);
        var hasGuesses = open.Any(part => part.CurrentGuess is not null);
        return all == 0
            ? "No part is finished yet: this is based on guesses alone, and the range is wide."
            : all < MethodConstants.EnoughParts
            ? $"Only {Basis.Count(all, "part")} finished so far: too few to show habits, so the range is wider."
            : hasGuesses && guessed == 0
            ? "No finished part had a guess: how good the guesses are is not known yet, so the range is wider."
            : hasGuesses && guessed < MethodConstants.EnoughParts
            ? $"Only {Basis.Count(guessed, "finished part")} had a guess: too few to show how good the guesses are, so the range is wider."
            : null;
    }
}
