using Journal.Site.Charts;

namespace Journal.Site.Tests.Charts;

public sealed class GatheredChartTests
{
    private static readonly DateOnly First = new(2025, 9, 6);

    private static ChartView Draw(IReadOnlyList<GatheredHours> days, params MilestoneMark[] milestones) => GatheredChart.Draw("g", "G", "D", days, milestones, "../");

    [Fact]
    public void Curve_TwoEveningsAWeekApart_BeginsAtNothingAndEndsAtTheTotal()
    {
        var drawn = new Drawn(Draw([new(First, Drawn.Hours(5)), new(First.AddDays(7), Drawn.Hours(10))]));

        // From the day before the first (0 per cent, at the foot) to the last (the whole width, at the top of the scale).
        Assert.Equal("M0 1000L125 500L1000 0", drawn.Svg.QuerySelector("path.curve")!.GetAttribute("d"));
    }

    [Fact]
    public void Curve_PauseOfAMonth_StaysFlatUntilTheDayBeforeWorkGoesOn()
    {
        var drawn = new Drawn(Draw([new(First, Drawn.Hours(5)), new(First.AddDays(39), Drawn.Hours(10))]));

        Assert.Equal("M0 1000L25 500L975 500L1000 0", drawn.Svg.QuerySelector("path.curve")!.GetAttribute("d"));
    }

    [Fact]
    public void Milestones_InThePictureAndTheKey_HaveTheSameNumbersAndLinkFromTheRoot()
    {
        var drawn = new Drawn(Draw(
            [new(First, Drawn.Hours(5)), new(First.AddDays(60), Drawn.Hours(10))],
            new(First, "Castings unpacked", "drill/entry/first.html"),
            new(First.AddDays(60), "First run")));

        Assert.Equal(["1", "2"], drawn.Svg.QuerySelectorAll("text.flag-text").Select(text => text.TextContent));
        Assert.Equal(["12025-09-06 Castings unpacked", "22025-11-05 First run"], drawn.Key.QuerySelectorAll("li").Select(line => line.TextContent));
        Assert.Equal("../drill/entry/first.html", drawn.Key.QuerySelector("a")!.GetAttribute("href"));
    }

    [Fact]
    public void Milestones_ManyInOneWeek_CoverNoneOfTheOthers()
    {
        var marks = Enumerable.Range(0, 9).Select(i => new MilestoneMark(First.AddDays(i / 2), $"Day {i}")).ToArray();
        var drawn = new Drawn(Draw([new(First, Drawn.Hours(5)), new(First.AddDays(90), Drawn.Hours(10))], marks));

        var places = drawn.Numbers("circle.flag", "cx").Zip(drawn.Numbers("circle.flag", "cy")).ToList();
        var pairs = from a in places from b in places where a != b select (Across: Math.Abs(a.First - b.First), Down: Math.Abs(a.Second - b.Second));
        Assert.Equal(9, places.Distinct().Count());
        Assert.All(pairs, pair => Assert.True(pair.Across * Lettering.NarrowestPicture / 100 >= 19 || pair.Down >= 19));
        Assert.All(places, place => Assert.InRange(place.Second, 9.5, double.MaxValue));
    }

    [Fact]
    public void Axis_OverNewYear_NamesMonthsAndTheYearWhereItChanges()
    {
        var texts = new Drawn(Draw([new(new(2025, 11, 20), Drawn.Hours(5)), new(new(2026, 3, 31), Drawn.Hours(10))])).Texts;

        Assert.Equal(["Dec", "Jan", "2026", "Feb", "Mar"], texts.Where(text => !text.EndsWith('h')));
    }

    [Fact]
    public void Axis_EightYears_NamesYearsWhereThereIsRoom()
    {
        var texts = new Drawn(Draw([new(new(2016, 6, 1), Drawn.Hours(5)), new(new(2024, 6, 1), Drawn.Hours(10))])).Texts;

        Assert.Equal(Enumerable.Range(2017, 7).Select(year => $"{year}"), texts.Where(text => text.Length == 4 && text.StartsWith("20", StringComparison.Ordinal)));
    }

    [Fact]
    public void Table_TwoDays_GivesEachDaysHoursAndTheSum()
    {
        var rows = Draw([new(First, Drawn.Hours(5)), new(First.AddDays(1), Drawn.Hours(7, 30))]).Table.Rows;

        Assert.Equal(["5\u202fh", "5\u202fh"], rows[0].Cells);
        Assert.Equal("2025-09-07", rows[1].Name);
        Assert.Equal(["2\u202fh\u202f30", "7\u202fh\u202f30"], rows[1].Cells);
    }
}
