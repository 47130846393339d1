using Journal.Site.Charts;

namespace Journal.Site.Tests.Charts;

public sealed class EstimateChartsTests
{
    // 50 h is 98.04 per cent of the width: a little room is left at the right.
    [Fact]
    public void Range_PartOfAnEstimate_HasItsEndsItsMiddleAndTheGuess()
    {
        var drawn = new Drawn(RangeChart.Draw("r", "R", "D", [new("Ram", Drawn.Hours(10), Drawn.Hours(25), Drawn.Hours(50), Drawn.Hours(20))]));

        Assert.Equal([19.61, 19.61, 98.04], drawn.Numbers("line.range", "x1"));
        Assert.Equal([49.02], drawn.Numbers("line.mid", "x1"));
        Assert.Equal([39.22], drawn.Numbers("svg > svg", "x"));
        Assert.Equal(["20\u202fh", "10\u202fh", "25\u202fh", "50\u202fh"], drawn.View.Table.Rows[0].Cells);
    }

    [Fact]
    public void Range_WithoutGuesses_HasNoLozengeAndDoesNotExplainOne()
    {
        var drawn = new Drawn(RangeChart.Draw("r", "R", "D", [new("Ram", Drawn.Hours(10), Drawn.Hours(25), Drawn.Hours(50))]));

        Assert.Empty(drawn.Svg.QuerySelectorAll("path.own"));
        Assert.DoesNotContain("Diamond", drawn.Key.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Backtest_OneWithinAndOneOutside_AreToldApartByShapeAndCounted()
    {
        var drawn = new Drawn(BacktestChart.Draw("b", "B", "D", [
            new("Base", Drawn.Hours(5), Drawn.Hours(8), Drawn.Hours(12), Drawn.Hours(12)),
            new("Head", Drawn.Hours(5), Drawn.Hours(8), Drawn.Hours(12), Drawn.Hours(12, 1)),
        ]));

        Assert.Single(drawn.Svg.QuerySelectorAll("circle.solid"));
        Assert.Single(drawn.Svg.QuerySelectorAll("path.own"));
        Assert.StartsWith("1 of 2 within their 80 % range", drawn.Key.TextContent, StringComparison.Ordinal);
        Assert.Equal(["yes", "no"], drawn.View.Table.Rows.Select(row => row.Cells[^1]));
    }

    [Fact]
    public void Backtest_Thirty_ShowsTheLatestAndKeepsAllInTheTable()
    {
        var forecasts = Enumerable.Range(1, 30).Select(i => new ForecastAndTaken($"Part {i}", Drawn.Hours(1), Drawn.Hours(2), Drawn.Hours(3), Drawn.Hours(2))).ToList();
        var drawn = new Drawn(BacktestChart.Draw("b", "B", "D", forecasts));

        Assert.DoesNotContain("Part 7", drawn.Texts);
        Assert.Contains("Part 8", drawn.Texts);
        Assert.Contains("and 7 more, in the table", drawn.Texts);
        Assert.Equal(30, drawn.View.Table.Rows.Count);
    }

    // Shares added up in steps of 0.05, as the estimate's quantiles are, come out a hair off 0.5, 0.8 and 0.9.
    [Fact]
    public void Curve_QuantilesInSteps_AreMarkedAt50And80And90PerCent()
    {
        var share = 0.0;
        var drawn = new Drawn(CurveChart.Draw("c", "C", "D", [.. Enumerable.Range(1, 19).Select(i => new HoursChance(share += 0.05, 10 * i))]));

        Assert.Equal(["100\u202fh", "160\u202fh", "180\u202fh"], drawn.Svg.QuerySelectorAll("text.limit-text").Select(text => text.TextContent));
        Assert.Equal([50, 80, 90], drawn.Numbers("circle.flag", "cx"));
    }

    [Fact]
    public void Curve_MarkBetweenTwoPoints_IsFoundBetweenThem()
    {
        var drawn = new Drawn(CurveChart.Draw("c", "C", "D", [new(0.4, 40), new(0.6, 60), new(0.7, 80)]));

        Assert.Equal(["50\u202fh"], drawn.Svg.QuerySelectorAll("text.limit-text").Select(text => text.TextContent));
    }

    [Fact]
    public void Curve_Days_AreMarkedByDate()
    {
        var drawn = new Drawn(CurveChart.DrawDays("c", "C", "D", [new(0.5, new(2027, 2, 21)), new(0.8, new(2027, 4, 4)), new(0.9, new(2027, 5, 1))]));

        Assert.Equal(["2027-02-21", "2027-04-04", "2027-05-01"], drawn.Svg.QuerySelectorAll("text.limit-text").Select(text => text.TextContent));
        Assert.Equal(["50\u202f%", "80\u202f%", "90\u202f%"], drawn.View.Table.Rows.Select(row => row.Name));
    }
}
