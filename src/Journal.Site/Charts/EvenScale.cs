namespace Journal.Site.Charts;

/// <summary>Numbers laid out evenly, with round numbers (1, 2 or 5 and noughts) on the axis.</summary>
/// <param name="Least">The number at the beginning.</param>
/// <param name="Step">From one number on the axis to the next.</param>
/// <param name="Steps">How many steps, at least 1.</param>
internal sealed record EvenScale(long Least, long Step, long Steps)
{
    /// <summary>The number at the end.</summary>
    public long Greatest => Least + (Step * Steps);

    /// <summary>The round numbers, from least to greatest.</summary>
    public IEnumerable<long> Ticks
    {
        get
        {
            for (var i = 0L; i <= Steps; i++)
            {
                yield return Least + (i * Step);
            }
        }
    }

    /// <summary>A scale that holds all numbers between two, neither below 0.</summary>
    /// <param name="least">The least number.</param>
    /// <param name="greatest">The greatest number.</param>
    /// <param name="mostSteps">How many steps there is room for, at least 2.</param>
    public static EvenScale Between(double least, double greatest, int mostSteps)
    {
        foreach (var step in RoundNumbers())
        {
            var from = (long)Math.Floor(least / step);
            var to = Math.Max((long)Math.Ceiling(greatest / step), from + 1);
            if (to - from <= mostSteps)
            {
                return new EvenScale(from * step, step, to - from);
            }
        }

        throw new ArgumentOutOfRangeException(nameof(greatest), greatest, "No scale is long enough.");
    }

    /// <summary>Where a number stands, as a share of the whole, 0 to 1.</summary>
    public double At(double number) => (number - Least) / (Greatest - Least);

    private static IEnumerable<long> RoundNumbers()
    {
        for (var ten = 1L; ten < long.MaxValue / 100; ten *= 10)
        {
            yield return ten;
            yield return 2 * ten;
            yield return 5 * ten;
        }
    }
}
