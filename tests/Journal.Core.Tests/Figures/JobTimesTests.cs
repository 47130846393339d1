using Journal.Core.Statistics;
using Journal.Core.Figures;
using Journal.Core.Model;
using MathNet.Numerics.Statistics;

namespace Journal.Core.Tests.Figures;

public sealed class JobTimesTests
{
    // The twelve resistivities of NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.6.2 (looked up). The page works the 90th
    // percentile by definition 6, p(n + 1): 95.1981; ours is definition 7, 1 + p(n - 1) = 10.9, worked by hand from the same data:
    // 95.1937 + 0.9 (95.1959 - 95.1937).
    private static readonly double[] Resistivities =
        [95.0610, 95.0925, 95.1065, 95.1195, 95.1442, 95.1567, 95.1591, 95.1682, 95.1772, 95.1937, 95.1959, 95.1990];

    [Fact]
    public void Quantile_HandbookData_IsDefinitionSeven()
    {
        Assert.Equal(95.19568, Quantiles.OfSorted(Resistivities, 0.9), 5);
        Assert.Equal(95.1981, Resistivities.QuantileCustom(0.9, QuantileDefinition.R6), 4);
    }

    [Theory]
    [InlineData(new[] { 60 })]
    [InlineData(new[] { 30, 60 })]
    [InlineData(new[] { 285, 345, 345, 210, 165, 290, 340, 230 })]
    [InlineData(new[] { 5, 5, 5, 600, 45, 90, 61, 62, 63, 64, 200 })]
    public void Of_Times_AgreesWithMathNet(int[] minutes)
    {
        var times = JobTimes.Of(minutes.Select(count => new Minutes(count)))!;

        double[] values = [.. minutes.Select(count => (double)count)];
        Assert.Equal(
            new[] { 0.25, 0.5, 0.75 }.Select(share => (int)Math.Round(values.QuantileCustom(share, QuantileDefinition.R7), MidpointRounding.AwayFromZero)),
            new[] { times.Lower, times.Median, times.Upper }.Select(time => time.Count));
        Assert.Equal(minutes.Length, times.Jobs);
    }

    [Fact]
    public void Of_NoJobs_IsNothing() => Assert.Null(JobTimes.Of([]));
}
