using Journal.Core.Estimating.Method;
using Journal.Core.Model;

namespace Journal.Core.Estimating;

/// <summary>The parts of an undertaking, drawn.</summary>
/// <param name="Estimates">Each part of the list in its order.</param>
/// <param name="Open">The parts still to make with their hours in each draw.</param>
/// <param name="Totals">Hours on all parts in each draw, what was spent on others included.</param>
internal sealed record PartsToCome(
    IReadOnlyList<PartEstimate> Estimates,
    IReadOnlyList<(string Name, double[] Hours)> Open,
    double[] Totals)
{
    /// <summary>Puts what was drawn for the parts still to make together with what the finished ones took.</summary>
    /// <param name="undertaking">The plan or build.</param>
    /// <param name="knowledge">The maker as learned from the finished parts.</param>
    /// <param name="open">The parts still to make with their hours in each draw; those to make again stand last in the list of estimates.</param>
    /// <param name="options">How many draws there are.</param>
    public static PartsToCome Of(
        EstimateSubject undertaking,
        Knowledge knowledge,
        IReadOnlyList<(OpenPart Part, double[] Hours)> open,
        EstimateOptions options)
    {
        var closed = undertaking.Spent.Values.Sum() - open.Where(one => !one.Part.IsAgain).Sum(one => undertaking.SpentOn(one.Part.Part.Id));
        var listed = open.Where(one => !one.Part.IsAgain).ToDictionary(one => one.Part.Part.Id, one => Estimated(one.Part, knowledge));
        return new PartsToCome(
            [
                .. undertaking.Parts.Select(part => listed.GetValueOrDefault(part.Id) ?? Taken(part, undertaking.SpentOn(part.Id))),
                .. open.Where(one => one.Part.IsAgain).Select(one => Estimated(one.Part, knowledge)),
            ],
            [.. open.Select(one => (one.Part.Planned.Name, one.Hours))],
            [.. Draws.Sum([.. open.Select(one => one.Hours)], options.Draws).Select(sum => sum + closed.InHours)]);
    }

    // What a part still takes is log-normal, exactly: no draws are needed.
    private static PartEstimate Estimated(OpenPart open, Knowledge knowledge)
    {
        return Guessed(open.Part, new(open.Planned.Name, At(0.1), At(0.5), At(0.9), open.Basis(knowledge)));

        double At(double share) => Rounded.Hours(open.Outlook.Quantile(share, knowledge.Luck));
    }

    private static PartEstimate Taken(Part part, Minutes time) => Guessed(part, new(
        part.Id.Value, Rounded.Hours(time.InHours), Rounded.Hours(time.InHours), Rounded.Hours(time.InHours), $"finished in {time}", IsFinished: true));

    private static PartEstimate Guessed(Part part, PartEstimate estimate) => estimate with
    {
        Title = part.Title,
        Guess = part.Guess?.HoursFor(part) is { } first ? Rounded.Hours(first) : null,
        Reguess = part.Reguess?.HoursFor(part) is { } second ? Rounded.Hours(second) : null,
    };
}

/// <summary>A part still to make.</summary>
/// <param name="Part">The part of the list.</param>
/// <param name="Planned">The part as the method sees it.</param>
/// <param name="Outlook">The outlook on it.</param>
/// <param name="IsAgain">Whether it is to be made once more, beside the part of the list.</param>
internal sealed record OpenPart(Part Part, PlannedPart Planned, Outlook Outlook, bool IsAgain = false)
{
    /// <summary>The parts of an undertaking still to make, in the order of its list.</summary>
    public static IReadOnlyList<OpenPart> Of(EstimateSubject undertaking, Knowledge knowledge) =>
    [
        .. from part in undertaking.Open
           let planned = knowledge.Planned(part, undertaking.SoFar.GetValueOrDefault(part.Id))
           select new OpenPart(part, planned, knowledge.Maker.OutlookOn(planned)),
    ];

    /// <summary>Parts of an undertaking to make once more from the beginning, with luck of their own.</summary>
    public static IReadOnlyList<OpenPart> Again(EstimateSubject undertaking, Knowledge knowledge, IReadOnlyList<Id<Part>> twice) =>
    [
        .. from part in undertaking.Parts.Where(part => twice.Contains(part.Id))
           let planned = knowledge.Planned(part, soFar: null) with { Name = $"{part.Id}/again" }
           select new OpenPart(part with { Title = $"{part.Title}, made again" }, planned, knowledge.Maker.OutlookOn(planned), IsAgain: true),
    ];

    /// <summary>What its range rests on.</summary>
    public string Basis(Knowledge knowledge) => Estimating.Basis.Of(Part, Planned, Outlook, knowledge.Maker, knowledge.History);
}
