namespace Journal.Benchmarks;

/// <summary>The middle of some values.</summary>
internal static class Median
{
    /// <summary>The median.</summary>
    public static double Of(IReadOnlyCollection<double> values)
    {
        var sorted = values.Order().ToList();
        return (sorted[(sorted.Count - 1) / 2] + sorted[sorted.Count / 2]) / 2;
    }
}
