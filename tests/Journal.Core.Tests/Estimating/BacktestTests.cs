using Journal.Core.Estimating;
using static Journal.Core.Tests.Estimating.Shop;

namespace Journal.Core.Tests.Estimating;

/// <summary>The history held against itself.</summary>
public sealed class BacktestTests
{
    [Fact]
    public void Of_TheFirstBuild_HasNothingBeforeItAndIsNotForecast()
    {
        var backtest = Backtest.Of(History.Of(new Shop().WithDrill(4).Journal(), Day("2026-01-05")), seed: 1);

        Assert.Equal((0, null, null), (backtest.Kits, backtest.Covered50, backtest.Covered80));
        Assert.Equal((0, null), (backtest.Parts, backtest.PartsCovered80));
    }

    [Fact]
    public void Of_TwoMoreBuilds_ForecastsEachFromWhatCameBefore()
    {
        var shop = new Shop().WithDrill(8).WithDrill(6, "shaper", "2025-06-02").WithDrill(5, "planer", "2025-09-01");

        var backtest = Backtest.Of(History.Of(shop.Journal(), Day("2026-01-05")), seed: 1);

        Assert.Equal(["shaper", "planer"], backtest.Forecasts.Select(kit => kit.Build));
        Assert.All(backtest.Forecasts, kit => Assert.InRange(kit.Hours, kit.P10, kit.P90));
        Assert.Equal((2, 1.0, 14), (backtest.Kits, backtest.Covered80, backtest.Parts));
    }

    [Fact]
    public void Of_ABuildThatRanTenTimesOver_FallsOutsideItsRange()
    {
        var shop = new Shop().WithDrill(8).With(
            "shaper", Model.BuildStatus.Finished, [Part("ram", 5), Part("slide", 5)],
            ("2025-09-01", "ram", "turning", 50, "ram"),
            ("2025-09-02", "slide", "turning", 50, "slide"));

        var backtest = Backtest.Of(History.Of(shop.Journal(), Day("2026-01-05")), seed: 1);

        Assert.Equal((1, 0.0, 0.0), (backtest.Kits, backtest.Covered50, backtest.Covered80));
    }

    [Fact]
    public void Of_ALaterBuildChanged_LeavesTheForecastsBeforeItAsTheyWere()
    {
        var before = Backtest.Of(History.Of(new Shop().WithDrill(8).WithDrill(6, "shaper", "2025-06-02").Journal(), Day("2026-01-05")), seed: 1);
        var after = Backtest.Of(History.Of(new Shop().WithDrill(8).WithDrill(6, "shaper", "2025-06-02").WithDrill(9, "planer", "2025-09-01").Journal(), Day("2026-01-05")), seed: 1);

        Assert.Equal(before.Forecasts[0], after.Forecasts[0]);
    }
}
