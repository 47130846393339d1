using System.Globalization;
using Journal.Core.Estimating.Method;
using Journal.Core.Model;
using Journal.Core.Statistics;

namespace Journal.Core.Estimating;

/// <summary>What a part's range rests on, in words.</summary>
internal static class Basis
{
    /// <summary>Of a part of the list.</summary>
    public static string Of(Part part, PlannedPart planned, Outlook outlook, Maker maker, History history)
    {
        var words = planned.Guess is { } guess
            ? OfGuess(Guessed(part), part.Reguess is not null, SameEverywhere.Exp(outlook.Middle) / guess, maker)
            : OfOperations(planned.Operations, history);
        var alike = planned.Like is { } like ? $"; like {like.Name}" : "";
        return $"{words}{alike}{(planned.SoFar is { } soFar ? $"; {OfWorkSoFar(soFar, planned.Operations)}" : "")}";
    }

    // `4h spent so far: boring and facing done; reaming and fitting to come`; without planned operations only the time.
    private static string OfWorkSoFar(WorkSoFar soFar, IReadOnlyList<Id<Operation>> planned)
    {
        var spent = $"{new Minutes((int)Math.Round(60 * soFar.Hours))} spent so far";
        var toCome = planned.Except(soFar.Operations).ToList();
        return planned.Count == 0 ? spent
            : $"{spent}: {Listed(soFar.Operations)} done; {(toCome.Count == 0 ? "no other operation planned" : $"{Listed(toCome)} to come")}";
    }

    private static string Listed(IReadOnlyList<Id<Operation>> operations) => operations.Count == 1
        ? operations[0].Value
        : $"{string.Join(", ", operations.SkipLast(1))} and {operations[^1]}";

    /// <summary>Of a guess: <c>your guess 12h × 1.31, from 17 parts</c>.</summary>
    public static string OfGuess(string guess, bool isSecond, double ratio, Maker maker)
    {
        var said = $"your {(isSecond ? "second guess" : "guess")} {guess}";
        return maker.WithGuesses.Parts == 0
            ? $"{said}, with no past guess to compare it with"
            : string.Create(CultureInfo.InvariantCulture, $"{said} × {ratio:0.00}, from {Count(maker.WithGuesses.Parts, "part")}");
    }

    private static string Guessed(Part part)
    {
        var first = part.Guess is { } guess ? Words(guess, part) : null;
        return part.Reguess is not { } second ? first! : first is null ? Words(second, part) : $"{Words(second, part)} (at first {first})";
    }

    private static string Words(Guess guess, Part part)
    {
        var time = new Minutes((int)Math.Round(guess.MeanMinutes, MidpointRounding.AwayFromZero));
        return guess.IsForOne(part) ? $"{time} for each of {part.Quantity}" : time.ToString();
    }

    // `9 past boring jobs`, `9 past boring, 4 turning jobs`, `9 past boring jobs, none with lapping`.
    private static string OfOperations(IReadOnlyList<Id<Operation>> operations, History history)
    {
        if (operations.Count == 0)
        {
            return $"{Count(history.Parts.Count, "finished part")}, as it names no operation";
        }

        List<(Id<Operation> Operation, int Jobs)> known =
        [
            .. operations.Select(operation => (operation, Jobs(operation, history))).Where(pair => pair.Item2 > 0),
        ];
        var first = known.Count == 0
            ? Count(history.Parts.Count, "finished part")
            : $"{string.Join(", ", known.Select((pair, i) => $"{pair.Jobs} {(i == 0 ? "past " : "")}{pair.Operation}"))} {Jobs(known[^1].Jobs)}";
        var unknown = operations.Except(known.Select(pair => pair.Operation)).ToList();
        return unknown.Count == 0 ? first : $"{first}, none with {string.Join(" or ", unknown)}";
    }

    private static int Jobs(Id<Operation> operation, History history) =>
        history.Parts.SelectMany(part => part.Work).Where(work => work.Operation == operation).Sum(work => work.Jobs);

    private static string Jobs(int count) => count == 1 ? "job" : "jobs";

    /// <summary>A number of things: <c>1 part</c>, <c>4 parts</c>.</summary>
    internal static string Count(int count, string what) => count == 1 ? $"1 {what}" : $"{count} {what}s";
}
