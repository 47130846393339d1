using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Site.Charts;

namespace Journal.Site.Tests.Charts;

public sealed class PartsTimelineChartTests
{
    // A Monday, so that weeks and days from it are easy to count.
    private static readonly DateOnly Monday = new(2025, 9, 1);

    private static PartDays Part(string label, params (int Day, int Minutes)[] days) =>
        new(label, [.. days.Select(day => new TimeOf<DateOnly>(Monday.AddDays(day.Day), new Minutes(day.Minutes)))], 3, "drill/part/head.html");

    private static Drawn Draw(IReadOnlyList<PartDays> parts, IReadOnlyList<DateRange> idle, params MilestoneMark[] milestones) =>
        new(PartsTimelineChart.Draw("t", "T", "D", parts, idle, milestones, "../"));

    [Fact]
    public void Line_PartWorkedOnOverTwoWeeks_GoesFromTheFirstDayThroughTheLast()
    {
        // Four weeks in all because the second part is worked on in the fourth.
        var drawn = Draw([Part("Head", (0, 60), (13, 60)), Part("Stop", (27, 60))], []);

        Assert.Equal([0, 96.43], drawn.Numbers("line.span", "x1"));
        Assert.Equal([50, 100], drawn.Numbers("line.span", "x2"));
    }

    [Fact]
    public void Blocks_EveningsOfAWeek_StandTogetherAsHighAsTheyAreLong()
    {
        var drawn = Draw([Part("Head", (0, 60), (3, 60), (8, 60))], []);

        Assert.Equal([0, 50], drawn.Numbers("rect.solid", "x"));
        Assert.Equal([13, 6.5], drawn.Numbers("rect.solid", "height"));
    }

    [Fact]
    public void IdleStretch_TwoWeeksOfFour_IsSectionLinedAndNamed()
    {
        var drawn = Draw([Part("Head", (0, 60), (27, 60))], [new DateRange(Monday.AddDays(7), Monday.AddDays(20))]);

        var stretch = Assert.Single(drawn.Svg.QuerySelectorAll("rect[fill='url(#t-idle)']"));
        Assert.Equal(("25%", "50%"), (stretch.GetAttribute("x"), stretch.GetAttribute("width")));
        Assert.Contains("idle", drawn.Texts);
    }

    [Fact]
    public void Milestones_TwoOnOneDay_AreBothToBeRead()
    {
        var drawn = Draw([Part("Head", (0, 60))], [], new(Monday, "Unpacked"), new(Monday, "Cleaned"));

        Assert.Equal(2, drawn.Numbers("circle.flag", "cy").Distinct().Count());
        Assert.Equal(2, drawn.Key.QuerySelectorAll("li").Length);
    }

    [Fact]
    public void Table_PartBegunAndPartNot_GivesDaysSetUpsAndHours()
    {
        var rows = Draw([Part("Head", (0, 60), (3, 65)), new("Cap", [], 0)], []).View.Table.Rows;

        Assert.Equal(["2025-09-01", "2025-09-04", "2", "3", "2\u202fh\u202f05"], rows[0].Cells);
        Assert.Equal("drill/part/head.html", rows[0].Address);
        Assert.Equal(["–", "–", "0", "0", "0\u202fh"], rows[1].Cells);
    }

    [Fact]
    public void NoPartBegun_PartsWithoutDays_IsASentence() =>
        Assert.Contains("No part has been started yet.", PartsTimelineChart.Draw("t", "T", "D", [new("Cap", [], 0)], [], [], "").Svg.Markup, StringComparison.Ordinal);
}
