using AngleSharp.Dom;

namespace Journal.Site.Tests.Pages;

/// <summary>Readings, mates and settings on the pages of a site published from real files.</summary>
public sealed class ReadingPagesTests(PublishedReadings site) : IClassFixture<PublishedReadings>
{
    [Fact]
    public void PartSheet_Record_IsInTheOrderOfTheDrawingWithLimitsAndShare()
    {
        var rows = Rows(site.Page("drill/part/head.html"), "readings");

        Assert.Equal(["bore", "thread", "runout", "length", "slot", "slot"], rows.Select(row => Words(row.QuerySelector("th")!.ChildNodes.First())));
        var bore = Cells(rows[0]);

        // ISO 286-2:2010: 12 H7 is +18 and 0 micrometres.
        Assert.Equal("12 mm [0.472 in]12 H7", bore[0]);
        Assert.Equal("12.000 mm [0.47244 in]12.018 mm [0.47315 in]", bore[1]);
        Assert.Equal("12.021 mm [0.47327 in]", bore[2]);
        Assert.Equal("+0.021 mm [+0.00083 in]", bore[3]);
        Assert.Equal("outside, 133 %", bore[4]);
        Assert.Equal("Dial caliper", bore[5]);
        Assert.Equal(("M6", "", "go", "right"), (Cells(rows[1])[0], Cells(rows[1])[1], Cells(rows[1])[2], Cells(rows[1])[4]));
        Assert.Equal("at most0.02 mm [0.0008 in]", Cells(rows[2])[1]);
        Assert.Equal("1.5 in [38.10 mm]1.5 ±0.005 in", Cells(rows[3])[0]);
    }

    [Fact]
    public void PartSheet_Record_ShowsWhereASizeLiesBetweenItsLimits()
    {
        var gauges = site.Page("drill/part/head.html").QuerySelectorAll(".readings-section svg.limits");

        Assert.Equal(5, gauges.Length);
        Assert.NotNull(gauges[0].QuerySelector("circle.out"));
        Assert.Null(gauges[1].QuerySelector("circle.out"));
    }

    [Fact]
    public void PartSheet_OutOfLimits_SaysWhatBecameOfIt()
    {
        var page = site.Page("drill/part/head.html");
        var told = page.QuerySelectorAll(".readings-section .held").Select(Words).ToList();

        Assert.Equal("What became of it: used as it is, 2025-10-01.", told[0][..(told[0].IndexOf('.') + 1)]);
        Assert.Contains("Dial caliper: read to 0.02 mm (0.0008 in); a tolerance of 0.018 mm (0.00071 in) needs", told[0], StringComparison.Ordinal);
        Assert.Contains(told, text => text == "What became of it: a departure from the drawing, 2025-10-03; right on 2025-10-05.");
        Assert.NotNull(page.QuerySelector(".readings-section .held a[href='../../drill/entry/2025-10-01-bore.html']"));
    }

    [Fact]
    public void BuildPage_Out_ListsAllThatIsOutWithItsConcession()
    {
        var rows = Rows(site.Page("drill/index.html"), "out");

        Assert.Equal(2, rows.Count);
        Assert.Equal("Head castingbore2025-10-01", Words(rows[0].QuerySelector("th")!));
        Assert.Equal("used as it is, 2025-10-01", Cells(rows[0])[^1]);
        Assert.Equal("a departure from the drawing, 2025-10-03; right on 2025-10-05", Cells(rows[1])[^1]);
    }

    [Fact]
    public void BuildPage_Mates_AreAsRequiredAndAsBuilt()
    {
        var row = Assert.Single(Rows(site.Page("drill/index.html"), "mates"));

        // ISO 286-2:2010: 12 H7 is 12.000 to 12.018, 12 h6 is 11.989 to 12.000.
        Assert.Equal("Head casting, bore", Words(row.QuerySelector("th")!));
        Assert.Equal(
            ["Quill, diameter", "0.000 mm [0.00000 in]", "+0.029 mm [+0.00114 in]clearance", "+0.026 mm [+0.00102 in]clearance", "yes"],
            Cells(row));
    }

    [Fact]
    public void EntryPage_Settings_HaveBothUnitsAndTheComputedSpeed()
    {
        var used = site.Page("drill/entry/2025-10-01-bore.html").QuerySelectorAll("[aria-label='Table: Settings 1'] tbody tr").ToDictionary(row => Words(row.QuerySelector("th")!), row => Words(row.QuerySelector("td")!));

        // 3.14159 × 30 × 480 / 1000 = 45.2 m/min; over 0.3048, 148.4 ft/min; times 0.1 × 0.5 = 2.26 cm³/min.
        Assert.Equal("30 mm [1.181 in]", used["Diameter of the work"]);
        Assert.Equal("45 m/min [148 ft/min]", used["Surface speed"]);
        Assert.Equal("0.1 mm/turn [0.004 in/turn]", used["Feed"]);
        Assert.Equal("48.0 mm/min [1.890 in/min]", used["Feed a minute"]);
        Assert.Equal("2.26 cm³/min [0.138 in³/min]", used["Removed"]);
        Assert.Equal("480 rev/min", used["Speed"]);
    }

    [Fact]
    public void EntryPage_Readings_HaveBothUnitsAndAreJudged()
    {
        var text = Words(site.Page("drill/entry/2025-10-01-bore.html").QuerySelector("[aria-label='Table: Readings of this evening']")!);

        Assert.Contains("12.021 mm [0.47327 in]", text, StringComparison.Ordinal);
        Assert.Contains("outside, 133 %", text, StringComparison.Ordinal);
        Assert.Contains("off by +0.021 mm [+0.00083 in]", text, StringComparison.Ordinal);
    }

    [Fact]
    public void OperationPage_Settings_AreInARangePlotByMaterialAndCutter()
    {
        var page = site.Page("operation/boring.html");
        var row = page.QuerySelectorAll(".settings-section figure table tbody tr").Single();

        Assert.Equal("Grey iron, boring bar", Words(row.QuerySelector("th")!));
        Assert.Equal(["19", "62", "45", "148"], Cells(row));
        Assert.Equal(["45 m/min [148 ft/min]", "19 m/min [62 ft/min]"], Rows(page, "settings").Where(one => one.QuerySelectorAll("td").Length > 5).Select(one => Cells(one)[2]));
    }

    [Fact]
    public void HiddenEntry_ItsReadingsAndSettings_AppearNowhere()
    {
        foreach (var file in Directory.EnumerateFiles(site.Folder, "*.html", SearchOption.AllDirectories))
        {
            var text = File.ReadAllText(file);
            Assert.DoesNotContain("secret", text, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("77.7", text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Tables_EveryLength_IsShownInBothUnits()
    {
        var sizes = new[] { "drill/part/head.html", "drill/index.html", "drill/entry/2025-10-01-bore.html", "operation/boring.html" }
            .SelectMany(page => site.Page(page).QuerySelectorAll("main .size"))
            .Select(Words)
            .Where(size => size.Any(char.IsAsciiDigit))
            .ToList();

        Assert.InRange(sizes.Count, 40, int.MaxValue);
        Assert.All(sizes, size => Assert.Matches(@" (mm|in|m/min|ft/min|cm³/min|in³/min)(/\w+)? \[.+ (mm|in|m/min|ft/min|cm³/min|in³/min)(/\w+)?\]$", size));
    }

    private static List<IElement> Rows(IDocument page, string section) =>
        [.. page.QuerySelectorAll($".{section}-section tbody tr").Where(row => row.QuerySelector("th") is not null && row.Closest("figure") is null)];

    private static string[] Cells(IElement row) => [.. row.QuerySelectorAll("td").Select(Words)];

    private static string Words(INode node) => string.Join(' ', node.TextContent.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
}
