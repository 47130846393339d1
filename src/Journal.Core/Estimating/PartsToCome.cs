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
    public static PartsToCome Of(Undertaking undertaking, Knowledge knowledge, EstimateOptions options)
    {
        List<Part> open = [.. undertaking.Open];
        List<PlannedPart> planned = [.. open.Select(part => knowledge.Planned(part, undertaking.SpentOn(part.Id)))];
        List<Outlook> outlooks = [.. planned.Select(knowledge.Maker.OutlookOn)];
        var draws = Draws.Of(outlooks, knowledge.Luck, options.Seed, options.Draws);
        var closed = undertaking.Spent.Values.Sum() - open.Sum(part => undertaking.SpentOn(part.Id));

        var estimates = new Dictionary<Id<Part>, PartEstimate>();
        for (var j = 0; j < open.Count; j++)
        {
            var basis = Basis.Of(open[j], planned[j], outlooks[j], knowledge.Maker, knowledge.History);
            estimates[open[j].Id] = Estimated(open[j].Id, outlooks[j], draws.Hours[j], knowledge.Luck, basis, undertaking);
        }

        return new PartsToCome(
            [.. undertaking.Parts.Select(part => estimates.GetValueOrDefault(part.Id) ?? Taken(part.Id, undertaking.SpentOn(part.Id)))],
            [.. open.Zip(draws.Hours, (part, hours) => (part.Id.Value, hours))],
            [.. draws.Totals().Select(hours => hours + closed.InHours)]);
    }

    // A part not begun is log-normal, exactly; of one begun the draws tell.
    private static PartEstimate Estimated(Id<Part> part, Outlook outlook, double[] draws, SharedLuck luck, string basis, Undertaking undertaking)
    {
        if (outlook.Spent == 0)
        {
            return new(part.Value, Exact(0.1), Exact(0.5), Exact(0.9), basis);
        }

        var sorted = Estimator.Sorted(draws);
        return new(
            part.Value,
            Estimator.At(sorted, 0.1, 0),
            Estimator.At(sorted, 0.5, 0),
            Estimator.At(sorted, 0.9, 0),
            $"{basis}; {undertaking.SpentOn(part)} spent so far");

        double Exact(double share) => Rounded.Hours(outlook.Quantile(share, luck));
    }

    private static PartEstimate Taken(Id<Part> part, Minutes time) => new(
        part.Value, Rounded.Hours(time.InHours), Rounded.Hours(time.InHours), Rounded.Hours(time.InHours), $"finished in {time}", IsFinished: true);
}
