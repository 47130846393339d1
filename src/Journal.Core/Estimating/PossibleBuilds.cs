using Journal.Core.Estimating.Method;

namespace Journal.Core.Estimating;

/// <summary>
/// Everything that may have to be made, drawn once: parts to leave out and parts to make twice among it, so that each answer
/// to “what if” comes from the same draws.
/// </summary>
internal sealed class PossibleBuilds
{
    private readonly IReadOnlyList<OpenPart> parts;
    private readonly double[][] hours;

    private PossibleBuilds(Knowledge knowledge, IReadOnlyList<OpenPart> parts, IReadOnlyList<Outlook> guesses, double[][] hours) =>
        (Knowledge, this.parts, Guesses, this.hours) = (knowledge, parts, guesses, hours);

    /// <summary>What is known of the maker and of the build's luck.</summary>
    public Knowledge Knowledge { get; }

    /// <summary>The outlooks on the guesses for the work on the whole.</summary>
    public IReadOnlyList<Outlook> Guesses { get; }

    /// <summary>Their hours in each draw.</summary>
    public IReadOnlyList<double[]> HoursOfGuesses => hours[parts.Count..];

    /// <summary>Draws all together, since the build's luck is one and the same for its parts and its whole.</summary>
    public static PossibleBuilds Of(EstimateSubject undertaking, History history, EstimateOptions options)
    {
        var knowledge = Knowledge.Of(undertaking, history);
        IReadOnlyList<OpenPart> parts = [.. OpenPart.Of(undertaking, knowledge), .. OpenPart.Again(undertaking, knowledge, options.Twice)];
        var guesses = WholeToCome.Guesses(undertaking, knowledge);
        var draws = Draws.Of([.. parts.Select(part => part.Outlook), .. guesses], knowledge.Luck, options.Seed, options.Draws);
        return new PossibleBuilds(knowledge, parts, guesses, draws.Hours);
    }

    /// <summary>The parts to make under some options, with their hours in each draw.</summary>
    public IReadOnlyList<(OpenPart Part, double[] Hours)> PartsUnder(EstimateOptions options) =>
    [
        .. parts.Zip(hours).Where(pair => pair.First.IsAgain ? options.Twice.Contains(pair.First.Part.Id) : !options.Without.Contains(pair.First.Part.Id)),
    ];
}
