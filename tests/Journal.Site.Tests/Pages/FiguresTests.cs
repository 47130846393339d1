using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using AngleSharp.Html.Dom;
using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Site.Tests.Publishing;

namespace Journal.Site.Tests.Pages;

[Collection(DemoCollection.Name)]
public partial class FiguresTests(DemoSite demo)
{
    [Fact]
    public void Hours_AsJson_AddUpToTheFrontMatterOfTheEntries()
    {
        var sums = FrontMatterSums.OfDemo();

        var builds = demo.OnDisk.AskToday("hours", "--format", "json").Json.GetProperty("builds").EnumerateArray().ToList();

        Assert.Equal(sums, builds.ToDictionary(build => build.GetProperty("build").GetString()!, build => build.GetProperty("minutes").GetInt32()));
        foreach (var build in builds)
        {
            var minutes = build.GetProperty("minutes").GetInt32();
            Assert.Equal(minutes, build.GetProperty("general").GetInt32() + Sum(build, "parts"));
            Assert.Equal(minutes, Sum(build, "operations"));
            Assert.Equal(minutes, Sum(build, "kinds"));
            Assert.Equal(minutes, Sum(build, "weeks"));
            Assert.All(build.GetProperty("parts").EnumerateArray(), part => Assert.Equal(part.GetProperty("minutes").GetInt32(), Sum(part, "operations")));
        }
    }

    [Fact]
    public void FrontPage_Hours_AreThoseOfTheFrontMatter()
    {
        var (all, sums) = (Fact(demo.Site.Page("index.html"), "At the bench"), FrontMatterSums.OfDemo());

        Assert.Equal(sums.Values.Sum(), all);
        foreach (var (build, minutes) in sums)
        {
            var card = demo.Site.Page("index.html").QuerySelectorAll("article.build").Single(card => card.QuerySelector($"a[href='{build}/index.html']") is not null);
            Assert.Equal(minutes, MinutesIn(card.QuerySelector("p.small")!.TextContent.Split('·')[0]));
        }
    }

    [Fact]
    public void BuildPage_PartsAndTheWhole_AddUpToTheBuild()
    {
        var hours = Hours.Of(demo.Model);
        foreach (var build in hours.Builds)
        {
            var page = demo.Site.Page($"{build.Build}/index.html");
            var rows = page.QuerySelectorAll("table.parts tbody tr").ToDictionary(row => row.QuerySelector("th a")!.GetAttribute("href")!, row => MinutesIn(row.LastElementChild!.TextContent));
            var foot = page.QuerySelectorAll("table.parts tfoot tr").Select(row => MinutesIn(row.LastElementChild!.TextContent)).ToList();

            Assert.Equal(build.Minutes.Count, Fact(page, "Hours"));
            Assert.Equal(build.Parts.ToDictionary(part => $"../{build.Build}/part/{part.Part}.html", part => part.Minutes.Count), rows);
            Assert.Equal([build.General.Minutes.Count, build.Minutes.Count], foot);
            Assert.Equal(build.Minutes.Count, rows.Values.Sum() + foot[0]);
        }
    }

    [Fact]
    public void PartPage_HoursAndRoute_AreThoseOfTheBuild()
    {
        foreach (var build in Hours.Of(demo.Model).Builds)
        {
            foreach (var part in build.Parts)
            {
                var page = demo.Site.Page($"{build.Build}/part/{part.Part}.html");

                Assert.Equal(part.Minutes.Count, Fact(page, "Hours"));
                if (page.QuerySelector("table.route tfoot") is { } foot)
                {
                    Assert.Contains(part.Minutes.Count, foot.QuerySelectorAll("td.num").Select(cell => MinutesIn(cell.TextContent)));
                }
            }
        }
    }

    [Fact]
    public void EveryChart_TableOfFigures_AddsUpToItsTotal()
    {
        var checkedTables = 0;
        foreach (var page in demo.Site.Pages)
        {
            foreach (var table in demo.Site.Page(page).QuerySelectorAll("figure.chart table").Where(table => table.QuerySelector("tfoot") is not null && table.QuerySelector("thead th:nth-child(2)")!.TextContent == "Hours"))
            {
                var (rows, total) = (table.QuerySelectorAll("tbody tr td:nth-child(2)").Sum(cell => MinutesIn(cell.TextContent)), MinutesIn(table.QuerySelector("tfoot td")!.TextContent));

                Assert.True(rows == total, $"{page}: rows give {rows} min, the total {total}.");
                checkedTables++;
            }
        }

        Assert.True(checkedTables > 20, $"Only {checkedTables} tables were found.");
    }

    private static int Sum(JsonElement of, string list) => of.GetProperty(list).EnumerateArray().Sum(one => one.GetProperty("minutes").GetInt32());

    private static int Fact(IHtmlDocument page, string label) =>
        MinutesIn(page.QuerySelectorAll("dl.facts > div").Single(fact => fact.QuerySelector("dt")!.FirstChild!.TextContent.Trim(',', ' ') == label).QuerySelector("dd")!.TextContent);

    // `173 h 45`, `45 min`, `–`; the spaces on the page are narrow.
    private static int MinutesIn(string text)
    {
        var match = Time().Match(text.Trim());
        Assert.True(match.Success, $"“{text}” is no time.");
        static int Number(Group group) => group.Length == 0 ? 0 : int.Parse(group.Value, CultureInfo.InvariantCulture);
        return Number(match.Groups["h"]) * 60 + Number(match.Groups["m"]) + Number(match.Groups["min"]);
    }

    [GeneratedRegex(@"^(?:–|(?<min>\d+)\s*min|(?<h>\d+)\s*h(?:\s*(?<m>\d\d))?)$")]
    private static partial Regex Time();
}
