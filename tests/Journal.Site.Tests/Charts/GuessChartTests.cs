using Journal.Core.Model;
using Journal.Site.Charts;

namespace Journal.Site.Tests.Charts;

public sealed class GuessChartTests
{
    private static ChartView Draw(params TakenAndGuess[] items) => GuessChart.Draw("g", "G", "D", items);

    [Fact]
    public void BarsAndDimensions_TakenAndGuessed_ShareOneScale()
    {
        var drawn = new Drawn(Draw(new("Head", Drawn.Hours(20), Drawn.Hours(10)), new("Stop", Drawn.Hours(5), Drawn.Hours(15))));

        Assert.Equal([100, 25], drawn.Numbers("rect.bar", "width"));
        Assert.Equal([50, 75], drawn.Numbers("line.dimension", "x2"));
        Assert.Contains("guess 10\u202fh", drawn.Texts);
    }

    [Fact]
    public void Guess_GreaterThanAnyTaken_SetsTheScale()
    {
        var drawn = new Drawn(Draw(new TakenAndGuess("Head", Drawn.Hours(4), Drawn.Hours(16))));

        Assert.Equal([25], drawn.Numbers("rect.bar", "width"));
        Assert.Equal([100], drawn.Numbers("line.dimension", "x2"));
    }

    [Fact]
    public void NoGuess_OneOfTwo_HasABarAndADashInTheTable()
    {
        var drawn = new Drawn(Draw(new("Head", Drawn.Hours(20), null), new("Stop", Drawn.Hours(5), Drawn.Hours(4))));

        Assert.Single(drawn.Svg.QuerySelectorAll("line.dimension"));
        Assert.Equal(["20\u202fh", "–", "–"], drawn.View.Table.Rows[0].Cells);
        Assert.Equal(["5\u202fh", "4\u202fh", "1.25"], drawn.View.Table.Rows[1].Cells);
    }

    [Fact]
    public void Ratio_GuessOfNothing_IsNotDividedBy() =>
        Assert.Equal(["1\u202fh", "0\u202fh", "–"], Draw(new TakenAndGuess("Head", Drawn.Hours(1), Minutes.Zero)).Table.Rows[0].Cells);
}
