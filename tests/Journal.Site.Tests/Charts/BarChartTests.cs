using Journal.Core.Model;
using Journal.Site.Charts;

namespace Journal.Site.Tests.Charts;

public sealed class BarChartTests
{
    [Fact]
    public void Bars_ThreeParts_AreProportionalToTheHours()
    {
        var drawn = new Drawn(BarChart.Draw("b", "B", "D", [new("Base", Drawn.Hours(8)), new("Head", Drawn.Hours(10)), new("Stop", Drawn.Hours(1))]));

        Assert.Equal([80, 100, 10], drawn.Numbers("rect.bar", "width"));
        Assert.Equal(["Base", "8\u202fh", "Head", "10\u202fh", "Stop", "1\u202fh"], drawn.Texts);
    }

    [Fact]
    public void Table_ThreeParts_GivesTheSameFiguresTheirSumAndTheirPages()
    {
        var table = BarChart.Draw("b", "B", "D", [new("Head", Drawn.Hours(31, 5), "drill/part/head.html"), new("Stop", new Minutes(45)), new("Cap", Minutes.Zero)]).Table;

        Assert.Equal(["Part", "Hours"], table.Columns);
        Assert.Equal(["31\u202fh\u202f05", "45\u202fmin", "0\u202fh"], table.Rows.Select(row => row.Cells[0]));
        Assert.Equal("drill/part/head.html", table.Rows[0].Address);
        Assert.Equal("31\u202fh\u202f50", table.Total!.Cells[0]);
    }

    [Fact]
    public void Bars_AllAtZero_HaveNoLength()
    {
        var drawn = new Drawn(BarChart.Draw("b", "B", "D", [new("Base", Minutes.Zero), new("Head", Minutes.Zero)]));

        Assert.Equal([0, 0], drawn.Numbers("rect.bar", "width"));
    }

    [Fact]
    public void Bars_OneItem_FillsTheWidthAndNeedsNoSum()
    {
        var drawn = new Drawn(BarChart.Draw("b", "B", "D", [new("Head", Drawn.Hours(3))], "Operation"));

        Assert.Equal([100], drawn.Numbers("rect.bar", "width"));
        Assert.Null(drawn.View.Table.Total);
        Assert.Equal("Operation", drawn.View.Table.Columns[0]);
    }

    [Fact]
    public void Bars_TwentyFour_AreAllShown() =>
        Assert.Equal(24, new Drawn(BarChart.Draw("b", "B", "D", Drawn.Bars(24))).Numbers("rect.bar", "width").Count);

    [Fact]
    public void Bars_TwoHundred_TheGreatestInTheirOrderAndTheRestTogetherWithABreak()
    {
        var drawn = new Drawn(BarChart.Draw("b", "B", "D", Drawn.Bars(200)));
        var labels = drawn.Texts.Where((_, i) => i % 2 == 0).ToList();

        Assert.Equal([.. Enumerable.Range(178, 23).Select(i => $"Part {i}"), "Everything else (177)"], labels);
        Assert.Equal(ChartText.Hours(new Minutes(177 * 178 / 2)), drawn.Texts[^1]);
        Assert.Equal(100, drawn.Numbers("rect.bar", "width")[^1]);
        Assert.Single(drawn.Svg.QuerySelectorAll("path.clear"));
    }

    [Fact]
    public void Label_TooLongForALine_GoesOnInASecondAndMovesWhatFollows()
    {
        var drawn = new Drawn(BarChart.Draw("b", "B", "D", [new("Table arm with the long clamping boss and its cotter", Drawn.Hours(2)), new("Stop", Drawn.Hours(1))]));

        Assert.Equal(["Table arm with the long clamping boss", "and its cotter", "2\u202fh", "Stop", "1\u202fh"], drawn.Texts);
        Assert.Equal([34, 72], drawn.Numbers("rect.bar", "y"));
    }
}
