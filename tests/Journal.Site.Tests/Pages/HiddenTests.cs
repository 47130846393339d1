using Journal.Cli.Tests;
using Journal.Core.Figures;
using Journal.Site.Tests.Publishing;

namespace Journal.Site.Tests.Pages;

public class HiddenTests
{
    private const string Never = "publish: never";
    private const string Later = "publish: after 2027-01-10";

    // Each marker word stands in one place of an entry that stays at home, or names what only it names.
    private static readonly string[] Markers =
    [
        "zz-entry", "zz-title", "zz-body", "zz-held", "zz-datum", "zz-unlisted-tool", "zz-made-tool", "zz-what", "zz-lesson", "zz-better", "zz-cause-lesson",
        "zz-next", "zz-snag", "zz-trial", "zz-pressure", "zz-speed", "zz-result", "zz-feature", "13.1313", "13.1317", "zz-cutter", "zz-coolant", "zz-verdict",
        "zz-note", "zz-milestone", "zz-story", "zz-bought", "zz-departure", "zz-caption", "zz-alt", "zz-mark", "zz-photo",
    ];

    // They stand in the crib: evenings that are not shown take nothing from it.
    private static readonly string[] CribTools = ["zz-crib-tool", "zz-gauge", "zz-machine", "zz-linked", "zz-for-tool"];

    [Theory]
    [InlineData(Never)]
    [InlineData(Later)]
    public void HiddenEntry_NothingOfIt_IsInAnyFile(string publish)
    {
        using var journal = WithHidden(publish);

        var site = journal.Publish();

        Assert.All(Markers, marker => Assert.Empty(site.Holding(marker)));
        Assert.All(Markers, marker => Assert.Empty(site.Holding(marker.Replace('-', ' '))));
        Assert.Empty(site.Holding("2025-09-28-"));
    }

    // A test that searches for what was never there would always pass.
    [Fact]
    public void TheSameEntry_OnTheDayAfter_IsAllThere()
    {
        using var journal = WithHidden(Later);

        var site = journal.Publish(new DateOnly(2027, 1, 11));

        Assert.All(Markers.Except(["zz-photo"]), marker => Assert.NotEmpty(site.Holding(marker).Concat(site.Holding(marker.Replace('-', ' ')))));
    }

    [Fact]
    public void HiddenEntry_ItsEvening_IsNotOnThePartSheet_AndIsNoEntryOfTheCount()
    {
        using var journal = JournalOnDisk.Small().With("drill/2025-10-01-head.md", $"---\n{Never}\npart: head\noperation: turning\nhours: 1h05\n---\n");

        var site = journal.Publish();

        var part = site.Page("drill/part/head.html");
        Assert.DoesNotContain("2025-10-01", part.Body!.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain(part.QuerySelectorAll("td"), cell => Plain(cell.TextContent) == "1 h 05");
        Assert.Equal("4", site.Page("index.html").QuerySelectorAll(".facts > div").Single(fact => fact.QuerySelector("dt")!.TextContent == "Entries").QuerySelector("dd")!.FirstChild!.TextContent.Trim());
    }

    [Theory]
    [InlineData("", "It rattles", "It leaks put right on 2025-10-09")]
    [InlineData(Never, "It leaks", "It rattles")]
    public void Snag_PutRightOnAnotherEvening_IsStruckOutOnItsOwn_UnlessThatIsHidden(string publish, params string[] told)
    {
        using var journal = JournalOnDisk.Small()
            .With("drill/2025-10-08-leak.md", "---\npart: head\noperation: turning\nhours: 1h\nsnags: [{id: leak, text: It leaks}, {id: rattle, text: It rattles}]\n---\n")
            .With("drill/2025-10-09-tight.md", $"---\n{publish}\npart: head\noperation: turning\nhours: 1h\ncleared: leak\n---\n");

        var snags = journal.Publish().Page("drill/entry/2025-10-08-leak.html").QuerySelectorAll(".snags li").Select(snag => snag.TextContent);

        Assert.Equal(told, snags);
    }

    [Fact]
    public void HiddenEntry_ItsHours_CountEverywhere()
    {
        using var journal = WithHidden(Never);

        var (hours, site) = (Hours.Of(journal.Model()), journal.Publish());

        var build = hours.Builds.Single(build => build.Build.Value == "drill");
        Assert.Equal(600 + 125, hours.Minutes.Count);
        Assert.Contains("12 h 05", Plain(site.Page("index.html").QuerySelector("dl.facts")!.TextContent), StringComparison.Ordinal);
        var foot = site.Page("drill/index.html").QuerySelectorAll("table.parts tfoot tr");
        Assert.Equal("12 h 05", Plain(foot[1].LastElementChild!.TextContent));
        Assert.Equal(34 + 125, build.General.Minutes.Count + build.Parts.Single(part => part.Part.Value == "zz-part").Minutes.Count);
        Assert.Equal("34 min", Plain(foot[0].LastElementChild!.TextContent));
    }

    [Fact]
    public void PublicLink_ToWhatIsHidden_IsPlainTextAndAWarningWithItsPlace()
    {
        using var journal = WithHidden(Never).WithEntry("drill/2025-09-29-links.md", "", """
            See [that evening](entry:2025-09-28), [the gadget](tool:zz-made-tool),
            and [what it taught](lesson:zz-lesson) on [the part](part:zz-part).
            But [the head](part:head) is there.
            """);

        var check = journal.AskToday("check", "--format", "json");
        var publish = journal.AskToday("publish", "--to", "site");

        var warnings = check.Json.GetProperty("problems").EnumerateArray().Where(problem => problem.GetProperty("code").GetString() == "hidden-target")
            .Select(problem => (problem.GetProperty("file").GetString(), problem.GetProperty("line").GetInt32(), problem.GetProperty("column").GetInt32(), problem.GetProperty("severity").GetString()));
        const string File = "drill/2025-09-29-links.md";
        Assert.Equal([(File, 7, 5, "warning"), (File, 7, 39, "warning"), (File, 8, 5, "warning")], warnings);
        Assert.Equal(0, publish.Status);
        Assert.Contains("plain text", publish.Error, StringComparison.Ordinal);
        var prose = journal.Site().Page("drill/entry/2025-09-29-links.html").QuerySelector(".prose")!;
        Assert.Equal(["the part", "the head"], prose.QuerySelectorAll("a").Select(link => link.TextContent));
        Assert.Contains("See that evening, the gadget,", prose.TextContent, StringComparison.Ordinal);
        Assert.All(Markers, marker => Assert.Empty(journal.Site().Holding(marker)));
    }

    [Fact]
    public void PublicEntry_ThatHeedsMendsOrClearsWhatIsHidden_DoesNotTellIt()
    {
        using var journal = WithHidden(Never).WithEntry("drill/2025-09-29-mends.md", """
            jobs: [{part: head, operation: turning, hours: 10m, mends: zz-mistake}]
            heeded: zz-lesson
            cleared: zz-snag
            mistakes: [{what: Forgot again., repeats: zz-lesson, made-on: 2025-09-28-zz-entry}]
            bought: {what: New tip, cost: 3, because: zz-mistake}
            """);

        var site = journal.Publish();
        Assert.All(Markers, marker => Assert.Empty(site.Holding(marker)));
    }

    [Fact]
    public void HiddenJob_OnAPartThatIsShown_LeavesNoWordsInItsRoute()
    {
        using var journal = JournalOnDisk.Small().WithEntry("drill/2025-09-29-quiet.md", $"""
            {Never}
            jobs: [{"{"}part: head, operation: facing, hours: 25m, held: zz-held between soft jaws, datum: zz-datum face, tools: zz-tool{"}"}]
            """);

        var site = journal.Publish();

        Assert.Empty(site.Holding("zz-"));
        Assert.DoesNotContain("25 min", Plain(site.Page("drill/part/head.html").QuerySelector("table.route")?.TextContent ?? ""), StringComparison.Ordinal);
        Assert.Contains(site.Page("drill/part/head.html").QuerySelectorAll("dd"), fact => Plain(fact.TextContent).Contains("8 h 17", StringComparison.Ordinal));
    }

    [Fact]
    public void HiddenPhoto_OfAShownEntry_IsNowhere()
    {
        using var journal = JournalOnDisk.Small()
            .WithPicture("drill/photos/zz-secret.png", grey: 10)
            .WithPicture("drill/photos/shown.png", grey: 90)
            .WithEntry("drill/2025-09-29-photos.md", $"""
                photos:
                  - {"{"}file: photos/zz-secret.png, caption: zz-caption, alt: zz-alt, publish: never{"}"}
                  - {"{"}file: photos/shown.png, caption: A picture{"}"}
                """, "Here ![zz-words](photos/zz-secret.png) it stood.");

        var site = journal.Publish();
        var pictures = site.Files.Where(file => file.StartsWith("photos/", StringComparison.Ordinal)).ToList();

        Assert.Empty(site.Holding("zz-"));
        Assert.NotEmpty(pictures);
        journal.With("drill/2025-09-29-photos.md", "---\nhours: 10m\nphotos: {file: photos/shown.png, caption: A picture}\n---\n").PublishTo("without");
        Assert.Equal(new SiteOnDisk(journal.PathOf("without")).Files.Where(file => file.StartsWith("photos/", StringComparison.Ordinal)), pictures);
    }

    [Fact]
    public void TimesOfDayAndDaysAway_AreNowhere()
    {
        using var journal = JournalOnDisk.Small()
            .With("plans/shaper.yaml", "title: Hand shaper\naway: [2031-12-20/2032-01-03]\nparts: [{id: ram, operations: [milling], guess: 3h}]\n")
            .WithEntry("drill/2025-09-29-evening.md", "part: head\noperation: turning\nhours: [\"19:13-21:57\", \"22:41-23:06\"]");

        var site = journal.Publish();

        foreach (var word in new[] { "19:13", "21:57", "22:41", "23:06", "19.13", "2031", "2032" })
        {
            Assert.Empty(site.Holding(word));
        }

        Assert.DoesNotMatch(@"T(?!00:00:00)\d\d:\d\d", site.Text("feed.xml") + site.Text("feed.json"));
    }

    private static JournalOnDisk WithHidden(string publish)
    {
        var journal = JournalOnDisk.Small()
            .With("tools.yaml", $"- {{id: lathe, title: Small lathe, kind: machine}}\n- {{id: boring-head, title: Boring head}}\n{string.Concat(CribTools.Select(id => $"- {{id: {id}, title: The {id}, link: \"https://example.org/{id}\"}}\n"))}")
            .WithPicture("drill/photos/zz-photo.png", grey: 10);
        var build = journal.PathOf("drill/build.yaml");
        File.AppendAllText(build, "\n  - {id: zz-part, title: The zz-part, material: brass zz-grade}\n");
        return journal.With("drill/2025-09-28-zz-entry.md", $$"""
            ---
            title: The zz-title of it
            {{publish}}
            jobs:
              - {part: zz-part, operation: turning, hours: 1h05, held: in the zz-held, datum: the zz-datum, tools: [zz-unlisted-tool, zz-crib-tool], made: {id: zz-made-tool, title: The zz-made-tool, kind: fixture} }
              - {part: zz-part, operation: milling, hours: 1h}
            mistakes: {id: zz-mistake, what: A zz-what., lost: 20m, lesson: {id: zz-lesson, text: Mind the zz-cause-lesson.} }
            lessons: {text: Another zz-better lesson., verdict: worked-but, better: the zz-better way}
            next: The zz-next.
            snags: {id: zz-snag, text: It has a zz-snag.}
            trials: {on: zz-trial, pressure: zz-pressure, speed: zz-speed, minutes: 5, result: zz-result}
            readings: {feature: zz-part.zz-feature, required: "13.1313 mm", actual: "13.1317 mm", with: zz-gauge}
            settings: {diameter: 12 mm, rpm: 300, cutter: zz-cutter, machine: zz-machine, coolant: zz-coolant, verdict: zz-verdict, note: zz-note}
            milestone: A zz-milestone
            story: A zz-story.
            bought: [{what: A zz-bought, cost: 4, for: zz-part}, {what: A zz-bought too, cost: 5, for: zz-for-tool}]
            departure: A zz-departure.
            photos: {file: photos/zz-photo.png, caption: A zz-caption, alt: A zz-alt, marks: {at: [10, 20], text: zz-mark} }
            ---
            The zz-body, with the [thing](tool:zz-linked).
            """);
    }

    private static string Plain(string text) => text.Replace('\u202F', ' ').Replace('\u2002', ' ');
}
