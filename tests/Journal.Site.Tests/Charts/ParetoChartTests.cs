using Journal.Core.Model;
using Journal.Site.Charts;

namespace Journal.Site.Tests.Charts;

public sealed class ParetoChartTests
{
    private static readonly CauseBar[] Causes = [new("Haste", 4, Drawn.Hours(1)), new("Setting-up", 2, Drawn.Hours(6)), new("Tool wear", 1, Drawn.Hours(3))];

    [Fact]
    public void Bars_ByTimeLost_GoFromTheGreatestDownAsSharesOfTheWhole()
    {
        var drawn = new Drawn(ParetoChart.Draw("p", "P", "D", Causes));

        Assert.Equal([60, 30, 10], drawn.Numbers("rect.bar", "width"));
        Assert.Equal(["Setting-up", "Tool wear", "Haste"], drawn.View.Table.Rows.Select(row => row.Name));
        Assert.Equal(["2", "6\u202fh", "60\u202f%", "60\u202f%"], drawn.View.Table.Rows[0].Cells);
    }

    [Fact]
    public void CumulativeLine_ThreeCauses_EndsAtTheWholeAndThe80PerCentMarkStandsAt80()
    {
        var drawn = new Drawn(ParetoChart.Draw("p", "P", "D", Causes));

        Assert.Equal([60, 90, 100], drawn.Numbers("circle.flag", "cx"));
        Assert.Equal("M600 0L900 500L1000 1000", drawn.Svg.QuerySelector("path.curve")!.GetAttribute("d"));
        Assert.Equal([80], drawn.Numbers("line.limit", "x1"));
        Assert.Equal("100\u202f%", drawn.View.Table.Rows[^1].Cells[^1]);
    }

    [Fact]
    public void Bars_ByCount_MeasureTheMistakes()
    {
        var drawn = new Drawn(ParetoChart.DrawByCount("p", "P", "D", Causes));

        Assert.Equal([57.14, 28.57, 14.29], drawn.Numbers("rect.bar", "width"));
        Assert.Contains("Tool wear · 1 mistake", drawn.Texts);
    }

    [Fact]
    public void CumulativeLine_TwoHundredCauses_EndsAtTheWholeWithTheRestTogether()
    {
        var causes = Enumerable.Range(1, 200).Select(i => new CauseBar($"Cause {i}", 1, new Minutes(i))).ToList();
        var drawn = new Drawn(ParetoChart.Draw("p", "P", "D", causes));

        Assert.Equal(24, drawn.Numbers("rect.bar", "width").Count);
        Assert.Equal(100, drawn.Numbers("rect.bar", "width").Sum(), 0.2);
        Assert.Equal(100, drawn.Numbers("circle.flag", "cx")[^1]);
        Assert.Equal(200, drawn.View.Table.Rows.Count);
    }

    [Fact]
    public void NothingLost_MistakesWithoutCost_IsASentenceAndATable()
    {
        var view = ParetoChart.Draw("p", "P", "D", [new("Haste", 2, Minutes.Zero)]);

        Assert.Contains("No time lost to a mistake.", view.Svg.Markup, StringComparison.Ordinal);
        Assert.Equal(["2", "0\u202fh", "0\u202f%", "0\u202f%"], view.Table.Rows[0].Cells);
    }
}
