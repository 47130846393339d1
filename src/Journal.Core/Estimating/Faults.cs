using System.Globalization;
using Journal.Core.Model;

namespace Journal.Core.Estimating;

/// <summary>Looks for what would keep an estimate from being made.</summary>
internal static class Faults
{
    /// <summary>Every fault, in the order of the parts list.</summary>
    public static IReadOnlyList<EstimateFault> Of(EstimateSubject asked, MakerJournal journal, History history, EstimateOptions options)
    {
        IReadOnlyList<Id<Part>> gone = [.. options.Without.Except(options.Twice)];
        var kept = asked.Without(gone);
        return
        [
            .. OfOptions(asked, options),
            .. OfUnknown(options.Without, EstimateFaultKind.UnknownWithout, "leave out", asked),
            .. OfUnknown(options.Twice, EstimateFaultKind.UnknownTwice, "make twice", asked),
            .. OfList(kept),
            .. kept.Open.SelectMany(part => OfPart(part, journal)),
            .. OfGround(kept, history),
        ];
    }

    private static IEnumerable<EstimateFault> OfOptions(EstimateSubject undertaking, EstimateOptions options)
    {
        if (options.Draws < 100)
        {
            yield return new(EstimateFaultKind.TooFewDraws, $"{options.Draws} draws are too few.", "Ask for at least 100; 10,000 is usual.");
        }

        if ((options.HoursAWeek ?? undertaking.HoursAWeek) is { } hours && hours is <= 0 or > 168)
        {
            yield return new(
                EstimateFaultKind.HoursAWeek,
                string.Create(CultureInfo.InvariantCulture, $"{hours} hours a week is not possible."),
                "Give the hours of a usual week, such as 6, or leave them out to use the journal's own pace.");
        }
    }

    private static IEnumerable<EstimateFault> OfUnknown(IEnumerable<Id<Part>> named, EstimateFaultKind kind, string todo, EstimateSubject undertaking) =>
        named.Where(id => undertaking.Parts.All(part => part.Id != id))
            .Select(part => new EstimateFault(kind, $"{undertaking.Name} has no part {part} to {todo}.", $"Its parts: {Listed(undertaking.Parts)}."));

    private static IEnumerable<EstimateFault> OfList(EstimateSubject undertaking)
    {
        if (undertaking.IsFinished)
        {
            yield return new(
                EstimateFaultKind.AlreadyFinished,
                $"{undertaking.Title} is finished; it took {undertaking.SpentInAll}.",
                "Estimate a plan or a build under way.");
        }
        else if (undertaking.Parts.Count == 0 && undertaking.Whole.Values.All(guess => guess == Minutes.Zero))
        {
            yield return new(
                EstimateFaultKind.NoParts,
                $"{undertaking.Title} has no parts to estimate.",
                "List its parts under `parts`, each with operations or a guess.");
        }
    }

    private static IEnumerable<EstimateFault> OfPart(Part part, MakerJournal journal)
    {
        if (part.Quantity < 1)
        {
            yield return new(EstimateFaultKind.NoPieces, $"{part.Id} has no pieces.", "Give its quantity as 1 or more, or take it off the list.");
        }

        if (part.CurrentGuess is { MeanMinutes: <= 0 })
        {
            yield return new(
                EstimateFaultKind.GuessOfNothing,
                $"The guess for {part.Id} is zero.",
                "Guess at least a few minutes, or leave out the guess.");
        }

        if (part.Like is { } like && journal.Builds.All(build => build.Id != like.Build || !build.HasPart(like.Part)))
        {
            yield return new(
                EstimateFaultKind.UnknownLike,
                $"{part.Id} is like {like}, which the journal does not have.",
                "Give a part that was made: `build/part`.");
        }
    }

    // With neither guess nor history an estimate would be invented.
    private static IEnumerable<EstimateFault> OfGround(EstimateSubject undertaking, History history)
    {
        List<Part> bare = [.. undertaking.Open.Where(part => part.CurrentGuess is null)];
        if (history.Parts.Count == 0 && bare.Count > 0)
        {
            yield return new(
                EstimateFaultKind.NothingToGoOn,
                $"No part is finished yet, and there is no guess for {Listed(bare)}.",
                "Write a guess for each part, such as `guess: 6h`; or record the hours of the parts you make, "
                + "and `finished` when one is done. Five finished parts are a start.");
        }
    }

    private static string Listed(IReadOnlyList<Part> parts) =>
        parts.Count <= 8
            ? string.Join(", ", parts.Select(part => part.Id))
            : $"{string.Join(", ", parts.Take(7).Select(part => part.Id))} and {parts.Count - 7} more";
}
