using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Journal.Site.Charts;

namespace Journal.Site.Tests.Charts;

public sealed class LimitsGaugeTests
{
    private static IElement Gauge(decimal? least, decimal? nominal, decimal? greatest, decimal actual) =>
        new HtmlParser().ParseDocument(LimitsGauge.Draw(least, nominal, greatest, actual).Markup).QuerySelector("svg.limits")!;

    private static double DotAt(IElement gauge) => Drawn.Number(gauge.QuerySelector("circle")!.GetAttribute("cx")!);

    // ISO 286-2: 32 H7 is 32 +0.025 / 0.
    [Theory]
    [InlineData("32.000", 20)]
    [InlineData("32.0125", 50)]
    [InlineData("32.025", 80)]
    public void Dot_WithinLimits_StandsInProportion(string actual, double expected)
    {
        var gauge = Gauge(32m, 32m, 32.025m, decimal.Parse(actual, System.Globalization.CultureInfo.InvariantCulture));

        Assert.Equal(expected, DotAt(gauge));
        Assert.False(gauge.QuerySelector("circle")!.ClassList.Contains("out"));
    }

    [Theory]
    [InlineData(31.9999, 4, 15.5)]
    [InlineData(32.0251, 84.5, 96)]
    [InlineData(20, 4, 4)]
    [InlineData(90, 96, 96)]
    public void Dot_Outside_StandsClearlyOutsideAndInThePicture(double actual, double from, double to)
    {
        var gauge = Gauge(32m, 32m, 32.025m, (decimal)actual);

        Assert.InRange(DotAt(gauge), from, to);
        Assert.True(gauge.QuerySelector("circle")!.ClassList.Contains("out"));
    }

    [Fact]
    public void OneLimit_GreatestOnly_HasOneEndAndOpensTheOther()
    {
        var gauge = Gauge(null, null, 0.05m, 0.02m);

        Assert.Equal("0", gauge.QuerySelector("rect")!.GetAttribute("x"));
        Assert.Equal(2, gauge.QuerySelectorAll("line").Length);
        Assert.InRange(DotAt(gauge), 4, 79);
    }

    [Fact]
    public void OneLimit_LeastNotReached_IsOutside() => Assert.NotNull(Gauge(10m, null, null, 9m).QuerySelector("circle.out"));

    [Fact]
    public void EqualLimits_HitExactly_StandInTheMiddle() => Assert.Equal(50, DotAt(Gauge(1m, 1m, 1m, 1m)));

    [Fact]
    public void NoLimits_NominalOnly_IsNothing() => Assert.True(LimitsGauge.Draw(null, 10m, null, 10m).IsEmpty);
}
