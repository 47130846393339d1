using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>Shares in whole per cent that add up to a hundred: by largest remainders, as minutes are shared (docs/figures.md, Causes).</summary>
public static class WholePercents
{
    private static readonly Minutes Hundred = new(100);

    /// <summary>The share of each measure; 0 for all where there is nothing to share.</summary>
    /// <param name="measures">0 or more each.</param>
    public static IReadOnlyList<int> Of(IReadOnlyList<int> measures) =>
        measures.All(measure => measure == 0) ? [.. measures.Select(_ => 0)] : [.. Hundred.Share([.. measures.Select(measure => (decimal)measure)]).Select(share => share.Count)];
}
