using Journal.Core.Statistics;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.Statistics;

namespace Journal.Core.Tests.Estimating;

/// <summary>The arithmetic of chance against outside references: MathNet.Numerics, and values published with the algorithms.</summary>
public sealed class ChanceTests
{
    [Fact]
    public void Exp_OverTheWholeRange_AgreesWithThePlatform()
    {
        for (var x = -700.0; x <= 700; x += 0.37)
        {
            Assert.InRange(SameEverywhere.Exp(x) / Math.Exp(x), 1 - 1e-15, 1 + 1e-15);
        }
    }

    [Fact]
    public void Ln_OverTheWholeRange_AgreesWithThePlatform()
    {
        for (var x = 1e-12; x < 1e12; x *= 1.0137)
        {
            Assert.InRange(SameEverywhere.Ln(x) - Math.Log(x), -1e-15 * Math.Max(1, Math.Abs(Math.Log(x))), 1e-15 * Math.Max(1, Math.Abs(Math.Log(x))));
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Ln_NotAPositiveNumber_Throws(double x) => Assert.Throws<ArgumentOutOfRangeException>(() => SameEverywhere.Ln(x));

    [Fact]
    public void Exp_TheseNumbers_GivesTheSameBitsOnEveryMachine()
    {
        // Recorded on Linux x64; a machine on which they differ would give different estimates.
        Assert.Equal(0x4005BF0A8B14576AL, BitConverter.DoubleToInt64Bits(SameEverywhere.Exp(1)));
        Assert.Equal(0x3FE62E42FEFA39EFL, BitConverter.DoubleToInt64Bits(SameEverywhere.Ln(2)));
    }

    [Fact]
    public void Quantile_FromTailToTail_AgreesWithMathNet()
    {
        foreach (var share in new[] { 1e-9, 1e-4, 0.0249, 0.05, 0.1, 0.25, 0.5, 0.75, 0.9, 0.95, 0.9751, 0.9999 })
        {
            Assert.Equal(Normal.InvCDF(0, 1, share), StandardNormal.Quantile(share), 1e-9);
        }
    }

    [Fact]
    public void Below_FromTailToTail_AgreesWithMathNet()
    {
        for (var z = -8.0; z <= 8; z += 0.05)
        {
            var expected = Normal.CDF(0, 1, z);
            Assert.Equal(expected, StandardNormal.Below(z), 1e-12 * Math.Max(expected, 1e-4));
        }
    }

    [Fact]
    public void Below_OfAQuantile_GivesTheShareBack()
    {
        foreach (var share in new[] { 1e-12, 1e-6, 0.01, 0.3, 0.5, 0.8, 0.999 })
        {
            Assert.InRange(StandardNormal.Below(StandardNormal.Quantile(share)) / share, 1 - 1e-12, 1 + 1e-12);
        }
    }

    [Fact]
    public void Luck_ThePublishedSeed_GivesThePublishedNumbers()
    {
        // The test numbers commonly published for SplitMix64 with seed 1234567, seen in several public test suites.
        var luck = Luck.Of(1234567);

        ulong[] numbers = [.. Enumerable.Range(0, 5).Select(_ => luck.Next())];

        Assert.Equal(
            [6457827717110365317UL, 3203168211198807973UL, 9817491932198370423UL, 4593380528125082431UL, 16408922859458223821UL],
            numbers);
    }

    [Fact]
    public void Luck_OtherSeedOrPurpose_IsAnotherStream()
    {
        var first = Luck.For(1, "head").Next();

        Assert.Equal(first, Luck.For(1, "head").Next());
        Assert.NotEqual(first, Luck.For(2, "head").Next());
        Assert.NotEqual(first, Luck.For(1, "quill").Next());
    }

    [Fact]
    public void Normals_HundredThousand_FollowTheNormalDistribution()
    {
        var luck = Luck.For(3, "normals");

        double[] sorted = [.. Enumerable.Range(0, 100_000).Select(_ => luck.Normal()).Order()];

        // Kolmogorov–Smirnov at 1 %: 1.63 / √n.
        var distance = sorted.Select((z, i) => Math.Max(Math.Abs(Normal.CDF(0, 1, z) - (i / 1e5)), Math.Abs(Normal.CDF(0, 1, z) - ((i + 1) / 1e5)))).Max();
        Assert.True(distance < 1.63 / Math.Sqrt(1e5), $"distance {distance}");
    }

    [Fact]
    public void Shuffle_ManyTimes_PutsEveryItemInEveryPlaceEquallyOften()
    {
        var luck = Luck.For(5, "places");
        var counts = new int[36];
        for (var turn = 0; turn < 60_000; turn++)
        {
            int[] items = [0, 1, 2, 3, 4, 5];
            luck.Shuffle(items);
            for (var place = 0; place < 6; place++)
            {
                counts[(place * 6) + items[place]]++;
            }
        }

        // Chi-square of the 6 × 6 table with fixed margins: 25 degrees of freedom, 1 % point.
        var chi = counts.Sum(count => Math.Pow(count - 10_000, 2) / 10_000);
        Assert.True(chi < ChiSquared.InvCDF(25, 0.99), $"chi-square {chi}");
    }

    [Fact]
    public void OfSorted_ManyShares_AgreesWithMathNetDefinition7()
    {
        var luck = Luck.For(7, "values");
        double[] sorted = [.. Enumerable.Range(0, 137).Select(_ => luck.Normal()).Order()];

        for (var share = 0.0; share <= 1; share += 0.01)
        {
            Assert.Equal(sorted.QuantileCustom(share, QuantileDefinition.R7), Quantiles.OfSorted(sorted, share), 1e-12);
        }
    }

    [Fact]
    public void FirstReaching_ManyShares_AgreesWithMathNetDefinition1()
    {
        double[] sorted = [.. Enumerable.Range(0, 50).Select(i => i * i * 1.0)];

        foreach (var share in new[] { 0.01, 0.1, 0.5, 0.505, 0.8, 0.9, 1 })
        {
            Assert.Equal(sorted.QuantileCustom(share, QuantileDefinition.R1), Quantiles.FirstReaching<double>(sorted, share));
        }
    }

    [Theory]
    [InlineData(new[] { 3.0, 1, 2 }, new[] { 1.0, 1, 1 }, 2)]
    [InlineData(new[] { 4.0, 1, 3, 2 }, new[] { 1.0, 1, 1, 1 }, 2.5)]
    [InlineData(new[] { 1.0, 2, 3 }, new[] { 0.1, 0.1, 0.8 }, 3)]
    [InlineData(new[] { 1.0, 2, 3 }, new[] { 0.5, 0.25, 0.25 }, 1.5)]
    [InlineData(new[] { 7.0 }, new[] { 0.2 }, 7)]
    public void WeightedMedian_HasHalfTheWeightOnEitherSide(double[] values, double[] weights, double expected) =>
        Assert.Equal(expected, Quantiles.WeightedMedian(values, weights), 1e-12);
}
