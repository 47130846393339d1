namespace Journal.Core.Trade;

/// <summary>Which pieces to cut from which bar.</summary>
public static class BarCutting
{
    /// <summary>
    /// First-fit decreasing: the longest piece first, each from the first bar that still has room for it. It never takes more
    /// than eleven ninths of the fewest bars and one more (D. S. Johnson, <i>Near-optimal bin packing algorithms</i>, thesis,
    /// MIT, 1973).
    /// </summary>
    /// <param name="pieces">The pieces; of equal ones the first comes first.</param>
    /// <param name="length">What a piece takes of a bar, more than none.</param>
    /// <param name="bar">How long a bar is. A piece that is longer gets a bar of its own.</param>
    /// <returns>The bars, each with its pieces, in the order in which they are begun.</returns>
    public static IReadOnlyList<IReadOnlyList<T>> FirstFitDecreasing<T>(IEnumerable<T> pieces, Func<T, decimal> length, decimal bar)
    {
        var bars = new List<(List<T> Pieces, decimal Left)>();
        foreach (var piece in pieces.OrderByDescending(length))
        {
            var first = bars.FindIndex(one => one.Left >= length(piece));
            if (first < 0)
            {
                bars.Add(([piece], bar - length(piece)));
            }
            else
            {
                bars[first].Pieces.Add(piece);
                bars[first] = (bars[first].Pieces, bars[first].Left - length(piece));
            }
        }

        return [.. bars.Select(one => (IReadOnlyList<T>)one.Pieces)];
    }
}
