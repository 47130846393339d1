using Journal.Core.Model;

namespace Journal.Core.Statistics;

/// <summary>Medians and quantiles.</summary>
internal static class Quantiles
{
    /// <summary>The value below which a share of sorted values lies, interpolated (Hyndman and Fan 1996, definition 7).</summary>
    /// <param name="sorted">At least one value, in rising order.</param>
    /// <param name="share">From 0 to 1.</param>
    public static double OfSorted(ReadOnlySpan<double> sorted, double share)
    {
        var position = share * (sorted.Length - 1);
        var below = Math.Min((int)position, sorted.Length - 1);
        var above = Math.Min(below + 1, sorted.Length - 1);
        return sorted[below] + ((position - below) * (sorted[above] - sorted[below]));
    }

    /// <summary>The first sorted value by which at least a share of them is reached (definition 1): for whole days.</summary>
    public static T FirstReaching<T>(ReadOnlySpan<T> sorted, double share) =>
        sorted[Math.Clamp((int)Math.Ceiling((share * sorted.Length) - 1e-9) - 1, 0, sorted.Length - 1)];

    /// <summary>The middle value; the mean of the two in the middle where their number is even.</summary>
    public static double Median(IEnumerable<double> values)
    {
        double[] sorted = [.. values.Order()];
        return OfSorted(sorted, 0.5);
    }

    /// <summary>
    /// The value with half of the weight on either side; the mean of two neighbours where the half falls just between them.
    /// With equal weights this is the median.
    /// </summary>
    public static double WeightedMedian(IReadOnlyList<double> values, IReadOnlyList<double> weights)
    {
        int[] order = [.. Enumerable.Range(0, values.Count).OrderBy(i => values[i])];
        var (half, sum) = (weights.Sum() / 2, 0.0);
        for (var k = 0; k < order.Length - 1; k++)
        {
            sum += weights[order[k]];
            if (Math.Abs(sum - half) <= 1e-12 * half)
            {
                return (values[order[k]] + values[order[k + 1]]) / 2;
            }

            if (sum > half)
            {
                return values[order[k]];
            }
        }

        return values[order[^1]];
    }
}
