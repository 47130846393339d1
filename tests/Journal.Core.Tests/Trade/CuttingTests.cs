using Journal.Core.Model;
using Journal.Core.Trade;

namespace Journal.Core.Tests.Trade;

public sealed class CuttingTests
{
    // Looked up: Turning and Boring, a specialized treatise for machinists (New York, 1914), rules for calculating cutting speeds:
    // 60 feet per minute on work 5 inches in diameter wants 60 × 12 / (3.1416 × 5) = 46 revolutions per minute, rounded.
    [Fact]
    public void SurfaceSpeed_WorkedExampleOfATreatiseOnTurning_Agrees() =>
        Assert.Equal(60m, decimal.Round(SurfaceSpeed.Of(Length("5 in"), 46).FeetPerMinute));

    // Looked up: a question of workshop technology, a shaft of 20 mm turned at 40 m/min; its answer, 636.6 rpm, worked by hand.
    [Fact]
    public void SurfaceSpeed_MetricExample_Agrees() =>
        Assert.Equal(40.0m, decimal.Round(SurfaceSpeed.Of(Length("20 mm"), 636.6m).MetresPerMinute, 1));

    // Worked by hand from π = 3.14159265: 25.4 mm at 1000 rpm is 79.796 m/min, and 1 in the same is 261.799 ft/min.
    [Fact]
    public void SurfaceSpeed_InchAndMillimetre_AgreeExactly()
    {
        var (inch, metric) = (SurfaceSpeed.Of(Length("1 in"), 1000), SurfaceSpeed.Of(Length("25.4 mm"), 1000));
        Assert.Equal(metric, inch);
        Assert.Equal(79.796m, decimal.Round(inch.MetresPerMinute, 3));
        Assert.Equal(261.799m, decimal.Round(inch.FeetPerMinute, 3));
    }

    // Looked up: a milling handbook of 1973 by a maker of cutters: 0.004 in a tooth, 32 teeth and 88 rpm give 0.128 in a turn and
    // 11.2 in a minute (11.264, cut).
    [Fact]
    public void Feed_WorkedExampleOfAMillingHandbook_Agrees()
    {
        var feed = Feed("0.004 in/tooth");
        Assert.Equal(Length("0.128 in"), feed.PerTurn(88, 32));
        Assert.Equal(Length("11.264 in"), feed.PerMinute(88, 32));
    }

    [Theory]
    [InlineData("0.1 mm/rev")]
    [InlineData("0.1/rev")]
    [InlineData("0.1 mm per turn")]
    [InlineData("0.05 mm/tooth")]
    [InlineData("60 mm/min")]
    [InlineData("60mm / min")]
    public void Feed_WhicheverWayGiven_ComesToTheSame(string text)
    {
        var feed = Feed(text);
        Assert.Equal(Length("0.1 mm"), feed.PerTurn(600, 2));
        Assert.Equal(Length("0.05 mm"), feed.PerTooth(600, 2));
        Assert.Equal(Length("60 mm"), feed.PerMinute(600, 2));
    }

    [Theory]
    [InlineData("4 thou/rev", "0.004 in", FeedPer.Turn)]
    [InlineData("2.5 ipm", "2.5 in", FeedPer.Minute)]
    [InlineData("0.004 ipr", "0.004 in", FeedPer.Turn)]
    [InlineData("0.002 ipt", "0.002 in", FeedPer.Tooth)]
    [InlineData("0.002 in/tooth", "0.002 in", FeedPer.Tooth)]
    public void Feed_InInches_StaysInInches(string text, string amount, FeedPer per) =>
        Assert.Equal(new Feed(Length(amount), per), Feed(text));

    [Fact]
    public void Feed_ByHand_HasNoNumbers()
    {
        var feed = Feed("hand");
        Assert.Equal(FeedPer.Hand, feed.Per);
        Assert.Null(feed.PerTurn(600, 2) ?? feed.PerMinute(600, 2) ?? feed.PerTooth(600, 2));
    }

    [Fact]
    public void Feed_WithoutSpeedOrTeeth_GivesOnlyWhatFollows()
    {
        Assert.Null(Feed("120 mm/min").PerTurn(null, 2));
        Assert.Null(Feed("0.1 mm/rev").PerTooth(600, null));
        Assert.Equal(Length("0.1 mm"), Feed("0.1 mm/rev").PerTurn(null, null));
    }

    [Theory]
    [InlineData("0.1", FaultCode.FeedPerWhat, 3)]
    [InlineData("0.1 mm", FaultCode.FeedPerWhat, 6)]
    [InlineData("0.1 mm/fortnight", FaultCode.FeedPerWhat, 7)]
    [InlineData("0 mm/rev", FaultCode.NotPositive, 0)]
    [InlineData("slow", FaultCode.NotANumber, 0)]
    [InlineData("0,1 mm/rev", FaultCode.CommaDecimal, 1)]
    [InlineData("0.1 mm/rev or so", FaultCode.LeftOver, 11)]
    public void Feed_BadInput_NamesTheFaultAndItsPlace(string text, FaultCode code, int offset)
    {
        Assert.False(Core.Trade.Feed.TryParse(text, LengthUnit.Millimetre, out _, out var fault));
        Assert.Equal((code, offset), (fault.Code, fault.Offset));
    }

    // Looked up: an exercise on drilling, 2.25 in diameter fed at 0.196 in a minute: 0.78 cubic inches a minute.
    [Fact]
    public void RemovalRate_WorkedExampleOfDrilling_Agrees() =>
        Assert.Equal(0.78m, decimal.Round(RemovalRate.OfDrilling(Length("2.25 in"), Length("0.196 in")).CubicInchesPerMinute, 2));

    // By hand: 100 m/min × 0.2 mm × 2 mm = 40 cm³/min; 10 mm × 2 mm × 150 mm/min = 3 cm³/min.
    [Fact]
    public void RemovalRate_TurningAndMilling_AreCubicCentimetres()
    {
        Assert.Equal(40m, RemovalRate.OfTurning(new(100), Length("0.2 mm"), Length("2 mm")).CubicCentimetresPerMinute);
        Assert.Equal(3m, RemovalRate.OfMilling(Length("10 mm"), Length("2 mm"), Length("150 mm")).CubicCentimetresPerMinute);
    }

    private static Feed Feed(string text)
    {
        Assert.True(Core.Trade.Feed.TryParse(text, LengthUnit.Millimetre, out var feed, out var fault), fault?.What);
        return feed;
    }

    private static Length Length(string text)
    {
        Assert.True(Core.Trade.LengthText.TryParse(text, LengthUnit.Millimetre, out var length, out _));
        return length;
    }
}
