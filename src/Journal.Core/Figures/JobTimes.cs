using Journal.Core.Statistics;
using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>How long jobs take: the median, and the quartiles that half of them lie between.</summary>
/// <remarks>
/// Definition 7 of Hyndman and Fan, <i>Sample quantiles in statistical packages</i>, The American Statistician 50 (1996): the
/// value at 1 + (n − 1)p of the sorted times, interpolated. It is what most spreadsheets call a quartile.
/// </remarks>
/// <param name="Jobs">How many jobs, at least one.</param>
/// <param name="Lower">A quarter of them took no longer.</param>
/// <param name="Median">Half of them took no longer.</param>
/// <param name="Upper">Three quarters of them took no longer.</param>
public sealed record JobTimes(int Jobs, Minutes Lower, Minutes Median, Minutes Upper)
{
    /// <summary>The times to the minute, halves rounded up; null without jobs.</summary>
    public static JobTimes? Of(IEnumerable<Minutes> times)
    {
        double[] sorted = [.. times.Select(time => (double)time.Count).Order()];
        return sorted.Length == 0 ? null : new JobTimes(sorted.Length, At(0.25), At(0.5), At(0.75));

        Minutes At(double share) => new((int)Math.Round(Quantiles.OfSorted(sorted, share), MidpointRounding.AwayFromZero));
    }
}
