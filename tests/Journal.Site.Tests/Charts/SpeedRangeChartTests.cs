using Journal.Site.Charts;

namespace Journal.Site.Tests.Charts;

public sealed class SpeedRangeChartTests
{
    [Fact]
    public void Speeds_WorkedAndChattered_AreDotsInABandAndLozenges()
    {
        var drawn = new Drawn(SpeedRangeChart.Draw("s", "S", "D", [new("Grey iron, high-speed steel", [10, 15, 20], [40])]));

        Assert.Equal([25, 37.5, 50], drawn.Numbers("circle.solid", "cx"));
        Assert.Equal([25], drawn.Numbers("rect.inner", "x"));
        Assert.Equal([25], drawn.Numbers("rect.inner", "width"));
        Assert.Single(drawn.Svg.QuerySelectorAll("path.own"));
    }

    // A foot is 0.3048 m exactly: 30.48 m/min is 100 ft/min.
    [Fact]
    public void Table_SpeedsInMetres_GivesFeetTogether() =>
        Assert.Equal(["15 – 30", "50 – 100", "61", "200"], SpeedRangeChart.Draw("s", "S", "D", [new("Mild steel", [15.24, 30.48], [60.96])]).Table.Rows[0].Cells);

    [Fact]
    public void Speeds_NoneWorked_SaysSo() =>
        Assert.Contains("none worked", new Drawn(SpeedRangeChart.Draw("s", "S", "D", [new("Silver steel", [], [28])])).Texts);
}
