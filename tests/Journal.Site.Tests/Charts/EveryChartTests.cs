using System.Globalization;
using System.Text.RegularExpressions;
using Journal.Site.Charts;

namespace Journal.Site.Tests.Charts;

public sealed partial class EveryChartTests
{
    private const string Hostile = "</text><script>alert(1)</script> \" onload='x' & \u0001\u202e ]]>";

    public static TheoryData<int> Counts => [1, 2, 24, 25, 200];

    [Theory]
    [MemberData(nameof(Counts))]
    public void Picture_AnyNumberOfItems_IsWellFormedXml(int count) =>
        Assert.All(EveryChart.Of(count), view => Assert.Equal("svg", new Drawn(view).AsXml().Name.LocalName));

    // WAI-ARIA 1.2, role img: what is inside is not read out, so it needs a name and a description of its own.
    [Theory]
    [MemberData(nameof(Counts))]
    public void Picture_AnyNumberOfItems_IsNamedAndDescribed(int count) => Assert.All(EveryChart.Of(count, id: "hours"), view =>
    {
        var svg = new Drawn(view).Svg;
        Assert.Equal("img", svg.GetAttribute("role"));
        Assert.Equal("hours-title hours-desc", svg.GetAttribute("aria-labelledby"));
        Assert.Equal("A chart", svg.QuerySelector("title#hours-title")!.TextContent);
        Assert.Equal("What it shows.", svg.QuerySelector("desc#hours-desc")!.TextContent);
    });

    [Fact]
    public void Ids_InEveryPicture_AreUniqueAndBeginWithTheChartsOwn() => Assert.All(EveryChart.Of(3, id: "hours"), view =>
    {
        var ids = new Drawn(view).Svg.QuerySelectorAll("[id]").Select(element => element.Id!).ToList();
        Assert.All(ids, id => Assert.StartsWith("hours-", id, StringComparison.Ordinal));
        Assert.Equal(ids.Distinct(), ids);
    });

    [Fact]
    public void References_InEveryPicture_LeadToSomethingInIt() => Assert.All(EveryChart.Of(3, id: "hours"), view =>
    {
        var svg = new Drawn(view).Svg;
        var targets = Reference().Matches(view.Svg.Markup).Select(match => match.Groups[1].Value).Distinct();
        Assert.All(targets, target => Assert.NotNull(svg.QuerySelector("#" + target)));
    });

    // A policy without inline styles blocks the style attribute.
    [Fact]
    public void Picture_Any_HasNoStylesAndNoScripts() => Assert.All(EveryChart.Of(5, Hostile, title: Hostile, description: Hostile), view =>
    {
        var svg = new Drawn(view).Svg;
        Assert.Empty(svg.QuerySelectorAll("[style], style, script, [onload], foreignObject"));
        Assert.Empty(new Drawn(view).Key.QuerySelectorAll("[style], style, script, [onload]"));
    });

    [Fact]
    public void HostileText_InLabelsTitleAndDescription_StaysText() => Assert.All(EveryChart.Of(5, Hostile, title: Hostile, description: Hostile), view =>
    {
        var drawn = new Drawn(view);
        var title = drawn.AsXml().Elements().First(element => element.Name.LocalName == "title").Value;
        Assert.Contains("</text><script>alert(1)</script> \" onload='x' &", title, StringComparison.Ordinal);
        Assert.DoesNotContain('\u202e', view.Svg.Markup);
    });

    [Fact]
    public void HostileId_InEveryPicture_StaysInItsAttribute() => Assert.All(
        EveryChart.Of(2, id: "a\"><script>"),
        view => Assert.Empty(new Drawn(view).Svg.QuerySelectorAll("script")));

    [Fact]
    public void NoItems_EveryChart_IsASentenceAndAnEmptyTable() => Assert.All(EveryChart.Of(0), view =>
    {
        Assert.DoesNotContain("<svg", view.Svg.Markup, StringComparison.Ordinal);
        Assert.EndsWith(".</p>", view.Svg.Markup, StringComparison.Ordinal);
        Assert.True(view.Key.IsEmpty);
        Assert.Empty(view.Table.Rows);
        Assert.Null(view.Table.Total);
    });

    [Theory]
    [MemberData(nameof(Counts))]
    public void Table_AnyNumberOfItems_HasARowForEachAndACellForEachColumn(int count) => Assert.All(EveryChart.Of(count), view =>
    {
        Assert.Equal(count, view.Table.Rows.Count);
        Assert.All(view.Table.Rows.Append(view.Table.Total ?? view.Table.Rows[0]), row => Assert.Equal(view.Table.Columns.Count - 1, row.Cells.Count));
    });

    // Two hundred rows one below the other would be 7,600 px: more than ten screens of a phone.
    [Fact]
    public void TwoHundredItems_EveryChart_StaysReadable() => Assert.All(EveryChart.Of(200), view =>
        Assert.InRange(Drawn.Number(new Drawn(view).Svg.GetAttribute("height")!), 1, 1800));

    [Fact]
    public void LongLabel_EveryChart_TakesTwoLinesAtMostAndNoMoreWidthThanThereIs() => Assert.All(
        EveryChart.Of(2, string.Join(' ', Enumerable.Repeat("clamping bosses", 40))),
        view => Assert.All(new Drawn(view).Texts, text => Assert.True(Lettering.Width(text) <= Lettering.NarrowestPicture, text)));

    [Fact]
    public void Numbers_EveryPicture_HaveTwoDecimalsAtMost() => Assert.All(
        EveryChart.Of(7),
        view => Assert.DoesNotMatch(@"\d\.\d{3}|NaN|Infinity|E[+-]\d", view.Svg.Markup));

    [Fact]
    public void SameFigures_DrawnTwice_GiveTheSameText() => Assert.Equal(EveryChart.Of(30).Select(view => view.Svg), EveryChart.Of(30).Select(view => view.Svg));

    // The program knows no cultures but the invariant one, so these are made by hand: decimal comma and other signs as
    // in Turkish, other digits' separators as in Persian, and a calendar that counts other years.
    [Theory]
    [InlineData(",", "−", ".")]
    [InlineData("٫", "\u200e−", "٬")]
    public void OtherCulture_EveryChart_GivesTheSameText(string point, string minus, string group)
    {
        var expected = EveryChart.Of(30).Select(view => (view.Svg, view.Key, Rows(view))).ToList();
        var other = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        other.NumberFormat.NumberDecimalSeparator = point;
        other.NumberFormat.NegativeSign = minus;
        other.NumberFormat.NumberGroupSeparator = group;
        other.DateTimeFormat.AbbreviatedMonthNames = ["Oca", "Şub", "Mar", "Nis", "May", "Haz", "Tem", "Ağu", "Eyl", "Eki", "Kas", "Ara", ""];
        other.DateTimeFormat.AbbreviatedMonthGenitiveNames = other.DateTimeFormat.AbbreviatedMonthNames;

        var actual = In(other, () => EveryChart.Of(30).Select(view => (view.Svg, view.Key, Rows(view))).ToList());

        Assert.Equal(expected, actual);
    }

    // A slip such as the year 9999 is the maker's to mend and must not stop the site.
    [Theory]
    [InlineData("0001-01-01")]
    [InlineData("9999-12-31")]
    public void DayAtTheEndOfTheCalendar_ChartsWithDates_AreDrawn(string text)
    {
        var day = DateOnly.Parse(text, CultureInfo.InvariantCulture);
        MilestoneMark[] milestones = [new(day, "First run")];
        ChartView[] views =
        [
            GatheredChart.Draw("g", "G", "D", [new(day, Drawn.Hours(1))], milestones, ""),
            PartsTimelineChart.Draw("p", "P", "D", [new("Head", [new(day, Drawn.Hours(1))], 1)], [new(day, day)], milestones, ""),
            PartsTimelineChart.Draw("q", "Q", "D", [new("Head", [new(DateOnly.MinValue, Drawn.Hours(1)), new(DateOnly.MaxValue, Drawn.Hours(1))], 1)], [], [], ""),
            CurveChart.DrawDays("c", "C", "D", [new(0.5, day)]),
        ];

        Assert.All(views, view => Assert.Equal("svg", new Drawn(view).AsXml().Name.LocalName));
    }

    private static string Rows(ChartView view) => string.Join('\n', view.Table.Rows.Select(row => $"{row.Name}|{string.Join('|', row.Cells)}"));

    private static T In<T>(CultureInfo culture, Func<T> work)
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = culture;
            return work();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [GeneratedRegex(@"url\(#([^)]+)\)")]
    private static partial Regex Reference();
}
