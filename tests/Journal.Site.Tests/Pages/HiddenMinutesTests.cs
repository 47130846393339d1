using System.Text.RegularExpressions;
using AngleSharp.Dom;
using Journal.Cli.Tests;
using Journal.Site.Tests.Publishing;

namespace Journal.Site.Tests.Pages;

/// <summary>Hidden evenings count in minutes of hours and nowhere else that viewers see (docs/figures.md, Hidden evenings).</summary>
public sealed partial class HiddenMinutesTests
{
    private const string Hidden = """
        title: A zz-title
        publish: never
        jobs:
          - {part: head, operation: boring, hours: 3h13, setup: half, held: zz-held, datum: zz-datum, tools: [lathe, boring-head], mends: slip}
          - {part: {quill: 2, gib-screw: 1}, operation: turning, hours: 17m, made: {id: zz-jig, title: The zz-jig, kind: jig, need: essential, cost: 13} }
          - {part: lever, operation: filing, hours: 41m}
        mistakes: {id: zz-mistake, what: The zz-what., cause: chatter, lost: 31m, outcome: scrap, repeats: indicate-both-ends}
        lessons: {id: zz-lesson, text: A zz-text on turning the head., verdict: never-again, better: zz-better}
        heeded: [clamp-it, indicate-both-ends]
        cleared: leak
        finished: [lever, {gib-screw: 2}]
        next: The zz-next.
        snags: {id: zz-snag, text: A zz-snag.}
        trials: {on: air, pressure: 2 bar, minutes: 5, result: zz-result}
        readings: {feature: quill.bore, required: 12 H7, actual: 12.03, with: zz-gauge}
        settings: {diameter: 12 mm, rpm: 300, cutter: zz-cutter, machine: lathe, verdict: it chattered}
        milestone: A zz-milestone
        story: A zz-story.
        bought: [{what: A zz-bought, cost: 313.37, because: slip}, {what: zz-stock, cost: 5, kind: stock, for: head}]
        departure: A zz-departure.
        """;

    [Fact]
    public void Sites_WithAndWithoutAHiddenEvening_DifferInMinutesAlone()
    {
        using var without = Journal();
        using var with = Journal().WithEntry("drill/2025-09-30-zz-hidden.md", Hidden, "See [the quill](part:quill), [the jig](tool:zz-jig) and [the first evening](entry:2025-09-06-head).");

        var (bare, full) = (without.Publish(), with.Publish());

        var pages = bare.Files.Where(file => file.EndsWith(".html", StringComparison.Ordinal)).ToList();
        Assert.Equal(pages, full.Files.Where(file => file.EndsWith(".html", StringComparison.Ordinal)));
        Assert.All(pages, page => Assert.Equal(Words(bare.Page(page)), Words(full.Page(page))));
        Assert.All(new[] { "feed.xml", "feed.json" }, feed => Assert.Equal(bare.Text(feed), full.Text(feed)));
        Assert.All(new[] { "zz-", "313.37" }, word => Assert.Empty(full.Holding(word)));
    }

    // A part of the list stays on it with its hours, also where only evenings that are not shown worked on it.
    [Fact]
    public void PartThatOnlyAHiddenEveningWorkedOn_StaysListedWithItsHours()
    {
        using var journal = Journal().WithEntry("drill/2025-09-30-zz-hidden.md", Hidden);

        var site = journal.Publish();

        var row = site.Page("drill/index.html").QuerySelectorAll("table.parts tbody tr").Single(row => row.TextContent.Contains("Lever", StringComparison.Ordinal));
        Assert.Contains("41 min", row.TextContent.Replace('\u202F', ' '), StringComparison.Ordinal);
        Assert.Contains("41 min", site.Page("drill/part/lever.html").Body!.TextContent.Replace('\u202F', ' '), StringComparison.Ordinal);
    }

    private static JournalOnDisk Journal()
    {
        var journal = JournalOnDisk.Small().WithEntry("drill/2025-09-10-shown.md", """
            jobs: [{part: head, operation: turning, hours: 1h, tools: lathe}]
            mistakes: {id: slip, what: It slipped., lost: 5m, lesson: {id: clamp-it, text: Clamp it.}}
            snags: {id: leak, text: It leaks.}
            """);
        File.AppendAllText(journal.PathOf("drill/build.yaml"), "\n  - {id: lever, title: Lever}\n");
        return journal;
    }

    // What is to be read on a page, times and what is reckoned from them left out; charts draw hours.
    private static string Words(IDocument page)
    {
        foreach (var chart in page.QuerySelectorAll("svg, figure, .chart").ToList())
        {
            chart.Remove();
        }

        return Times().Replace(string.Join(' ', page.DocumentElement.Descendants<IText>().Select(text => text.Data)).Replace('\u202F', ' ').Replace('\u2002', ' ') + string.Concat(page.QuerySelectorAll("meta[content]").Select(meta => meta.GetAttribute("content"))), "#");
    }

    [GeneratedRegex(@"\d+ h \d\d|\d+ h\b|\d+ min\b|–(?=\s)|[\d.]+ times over|\d+ %", RegexOptions.CultureInvariant)]
    private static partial Regex Times();
}
