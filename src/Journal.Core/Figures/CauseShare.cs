using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>
/// A cause and its part in all that went wrong, as one bar of a Pareto chart (Juran, <i>Quality Control Handbook</i>,
/// from memory): bars from the greatest down, and a line of what they come to together.
/// </summary>
/// <param name="Cause">The cause; null for mistakes that name none.</param>
/// <param name="Mistakes">How many mistakes had it.</param>
/// <param name="MinutesLost">What they cost in time.</param>
/// <param name="Share">Its share of the whole, 0 to 1; 0 for all where nothing was lost.</param>
/// <param name="Cumulative">Its share with those before it, 0 to 1; the last has 1, or 0 where nothing was lost.</param>
public sealed record CauseShare(Id<Cause>? Cause, int Mistakes, Minutes MinutesLost, double Share, double Cumulative)
{
    /// <summary>Its share in whole per cent; those of all causes add up to a hundred.</summary>
    public int Percent { get; init; }

    /// <summary>The sum of its per cent and those before it.</summary>
    public int PercentTogether { get; init; }

    /// <summary>By time lost; ties by count, then in the vocabulary's order, no cause last.</summary>
    public static IReadOnlyList<CauseShare> ByMinutes(IEnumerable<MistakeCost> mistakes, Vocabulary vocabulary) =>
        WithShares(
            [.. Bars(mistakes, vocabulary).OrderByDescending(bar => bar.MinutesLost).ThenByDescending(bar => bar.Mistakes)],
            bar => bar.MinutesLost.Count);

    /// <summary>By count; ties by time lost, then in the vocabulary's order, no cause last.</summary>
    public static IReadOnlyList<CauseShare> ByCount(IEnumerable<MistakeCost> mistakes, Vocabulary vocabulary) =>
        WithShares(
            [.. Bars(mistakes, vocabulary).OrderByDescending(bar => bar.Mistakes).ThenByDescending(bar => bar.MinutesLost)],
            bar => bar.Mistakes);

    /// <summary>The causes in the vocabulary's order, which later sorting keeps among equals.</summary>
    private static IEnumerable<CauseShare> Bars(IEnumerable<MistakeCost> mistakes, Vocabulary vocabulary)
    {
        var ranks = vocabulary.Causes.Ranks();
        return mistakes.GroupBy(cost => cost.Mistake.Cause)
            .OrderBy(group => ranks.RankOf(group.Key))
            .ThenBy(group => group.Key is null)
            .Select(group => new CauseShare(group.Key, group.Count(), group.Sum(cost => cost.Minutes), 0, 0));
    }

    private static IReadOnlyList<CauseShare> WithShares(IReadOnlyList<CauseShare> bars, Func<CauseShare, int> measure)
    {
        var total = bars.Sum(measure);
        if (total == 0)
        {
            return bars;
        }

        var (gathered, together) = (0, 0);
        return
        [
            .. bars.Zip(WholePercents.Of([.. bars.Select(measure)]), (bar, percent) => bar with
            {
                Share = (double)measure(bar) / total,
                Cumulative = (double)(gathered += measure(bar)) / total,
                Percent = percent,
                PercentTogether = together += percent,
            }),
        ];
    }
}
