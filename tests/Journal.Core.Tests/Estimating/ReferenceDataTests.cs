using Journal.Core.Statistics;

namespace Journal.Core.Tests.Estimating;

/// <summary>
/// Means, variances and slopes against the Statistical Reference Datasets of NIST (StRD, univariate and linear regression;
/// itl.nist.gov/div898/strd). Data and certified values as quoted in public test suites, looked up, not taken from the site itself.
/// </summary>
public sealed class ReferenceDataTests
{
    private static readonly double[] NorrisX =
    [
        0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4, 0.6, 775.5, 666.9, 338.0, 447.5, 11.6,
        556.0, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8, 339.1, 887.2, 999.0, 779.0, 11.1, 118.3, 229.2, 669.1, 448.9, 0.5,
    ];

    private static readonly double[] NorrisY =
    [
        0.1, 338.8, 118.1, 888.0, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1, 778.1, 668.8, 339.3, 448.9, 10.8,
        557.7, 228.3, 998.0, 888.8, 119.6, 0.3, 0.6, 557.6, 339.3, 888.0, 998.5, 778.9, 10.2, 117.6, 228.9, 668.4, 449.2, 0.2,
    ];

    [Fact]
    public void Slope_Norris_AsCertified()
    {
        var line = new WeightedLine(NorrisX, NorrisY, Ones(36));
        var slope = line.Slope(penalty: 0);

        Assert.Equal(1.00211681802045, slope, 1e-13);
        Assert.Equal(-0.262323073774029, line.MeanY - (slope * line.MeanX), 1e-11);
        Assert.Equal(26.6173985294224, line.SquaresAbout(slope), 1e-10);
    }

    // NumAcc1: 10000001, 10000003, 10000002. NumAcc3 and 4: 1000000.2 (10000000.2) once, then 500 pairs of …0.1 and …0.3.
    [Theory]
    [InlineData(10000002, 1, 1, 1e-12)]
    [InlineData(1000000.2, 0.1, 500, 1e-9)]
    [InlineData(10000000.2, 0.1, 500, 1e-8)]
    public void MeanAndDeviation_NumAcc_AsCertified(double mean, double deviation, int pairs, double tolerance)
    {
        double[] values = [mean, .. Enumerable.Repeat(0, pairs).SelectMany(_ => new[] { mean - deviation, mean + deviation })];
        var line = new WeightedLine(values, values, Ones(values.Length));

        Assert.Equal(mean, line.MeanX, 1e-8);
        Assert.Equal(deviation, Math.Sqrt(line.SquaresX / (values.Length - 1)), tolerance);
    }

    [Fact]
    public void Weights_AWholeNumber_CountAsSoManyEqualPoints()
    {
        var weighted = new WeightedLine([1, 2, 4], [2, 1, 5], [1, 3, 2]);
        var repeated = new WeightedLine([1, 2, 2, 2, 4, 4], [2, 1, 1, 1, 5, 5], Ones(6));

        Assert.Equal(repeated.Slope(0.7), weighted.Slope(0.7), 1e-12);
        Assert.Equal(repeated.VarianceY, weighted.VarianceY, 1e-12);
        Assert.Equal(repeated.SquaresAbout(0.3), weighted.SquaresAbout(0.3), 1e-12);
    }

    private static double[] Ones(int count) => [.. Enumerable.Repeat(1.0, count)];
}
