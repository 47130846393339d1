using Journal.Cli.Tests;
using Journal.Site.Publishing;
using Journal.Site.Tests.Publishing;

namespace Journal.Site.Tests.Pages;

/// <summary>Ways by which what stays at home might come out after all: other files, other figures, other spellings, an older site.</summary>
public sealed class HiddenByEveryWayTests
{
    [Theory]
    [InlineData("![zz-words](photos/zz-secret.png)")]
    [InlineData("![zz-words](./photos/zz-secret.png \"zz-title\")")]
    [InlineData("![zz-words](photos/../photos/zz-secret.png)")]
    [InlineData("![zz-words](photos//zz-secret.png)")]
    [InlineData("![zz-words](photos/./zz-secret.png)")]
    [InlineData("![zz-words](photos/zz%2Dsecret.png)")]
    [InlineData("![zz-words](../drill/photos/zz-secret.png)")]
    [InlineData("![zz-words][p]\n\n[p]: photos/zz-secret.png 'zz-title'")]
    [InlineData("[![zz-words](photos/../photos/zz-secret.png)](part:head)")]
    [InlineData("[There](photos/zz-secret.png) it stood.")]
    [InlineData("<img src=\"photos/zz-secret.png\" alt=\"zz-words\">")]
    [InlineData("<a href=\"photos/zz-secret.png\">There</a> it stood.")]
    public void HiddenPicture_HoweverTheTextNamesIt_IsNowhere(string text)
    {
        using var journal = JournalOnDisk.Small()
            .WithPicture("drill/photos/zz-secret.png", grey: 10)
            .WithEntry("drill/2025-09-29-photos.md", "photos: {file: photos/zz-secret.png, caption: zz-caption, publish: never}", text);

        var site = journal.Publish();

        Assert.Empty(site.Holding("zz-"));
        Assert.DoesNotContain(site.Files, file => file.StartsWith("photos/", StringComparison.Ordinal));
    }

    // The words under a picture that cannot be published stand in its place, but not of one that is not to be.
    [Theory]
    [InlineData("zz-gone.png")]
    [InlineData("zz-empty.png")]
    [InlineData("zz-text.txt")]
    [InlineData("../../zz-above.png")]
    [InlineData("../../../zz-outside.png")]
    public void HiddenPicture_ThatCannotBeRead_IsNowhereEither(string file)
    {
        using var journal = JournalOnDisk.Small()
            .With("drill/photos/zz-empty.png", "").With("drill/photos/zz-text.txt", "text")
            .WithEntry("drill/2025-09-29-photos.md", $"photos: {{file: photos/{file}, caption: zz-caption, publish: never}}", $"A look: ![zz-words](photos/{file}).");

        var site = journal.Publish();

        Assert.Empty(site.Holding("zz-"));
    }

    [Theory]
    [InlineData("photos/../photos/shown.png")]
    [InlineData("./photos//shown.png")]
    [InlineData("../drill/photos/shown.png")]
    [InlineData("photos/shown%2Epng")]
    public void ShownPicture_HoweverTheTextNamesIt_StandsInIt(string written)
    {
        using var journal = JournalOnDisk.Small().WithPicture("drill/photos/shown.png").WithEntry("drill/2025-09-29-photos.md", "", $"Here ![it stood]({written}).");

        Assert.NotNull(journal.Publish().Page("drill/entry/2025-09-29-photos.html").QuerySelector(".prose img"));
    }

    [Fact]
    public void HiddenEntry_ThatPointsToWhatIsShown_IsNotToldThere()
    {
        using var journal = WithAddress(JournalOnDisk.Small())
            .WithEntry("drill/2025-09-10-shown.md", "mistakes: {id: slip, what: It slipped., lost: 5m, lesson: {id: clamp-it, text: Clamp it.}}\nsnags: {id: leak, text: It leaks.}", "Shown.")
            .WithEntry("drill/2025-09-29-zz-entry.md", """
                title: A zz-title
                publish: never
                jobs:
                  - {part: head, operation: turning, hours: "19:13-21:57", setup: half, held: zz-held, datum: zz-datum, tools: lathe, mends: slip}
                  - {part: {quill: 2, gib-screw: 1}, operation: tapping, hours: 5m, made: {id: zz-jig, title: The zz-jig, kind: jig, need: essential, cost: 13, link: "https://example.org/zz-link"} }
                mistakes: {id: zz-mistake, what: The zz-what., cause: zz-cause, lost: 31m, outcome: scrap, made-on: 2025-09-10-shown, repeats: clamp-it}
                lessons: {id: zz-lesson, text: A zz-text on turning the head., verdict: never-again, better: zz-better}
                heeded: [clamp-it, indicate-both-ends]
                cleared: leak
                finished: {gib-screw: 2}
                next: The zz-next.
                bought: {what: zz-what, cost: 7, because: slip, for: head}
                readings: {feature: head.zz-bore, required: "17.1717 mm", actual: "17.1718 mm", with: lathe}
                settings: {diameter: 12 mm, rpm: 300, machine: lathe, cutter: zz-cutter, coolant: zz-coolant, note: zz-note}
                trials: {on: zz-on, result: zz-result}
                """, "Of [the head](part:head), [the lathe](tool:lathe), [that](lesson:clamp-it), [then](entry:2025-09-10) and zz-body.");
        var head = journal.PathOf("journal.yaml");
        File.AppendAllText(head, "causes: [zz-cause]\n");
        File.AppendAllText(journal.PathOf("drill/build.yaml"), "\naway: [2033-03-03/2033-03-09]\n");

        var site = journal.Publish();

        var told = site.Files.SelectMany(file => Words(site, file).Where(word => word != "zz-cause").Select(word => $"{file}: {word}"));
        Assert.Empty(told);
        Assert.All((string[])["17.1717", "17.1718", "19:13", "21:57", "2033-03", "2025-09-29-"], word => Assert.Empty(site.Holding(word)));
        Assert.True(site.Has("sitemap.xml"));
        Assert.Contains("application/ld+json", site.Text("drill/entry/2025-09-10-shown.html"), StringComparison.Ordinal);
    }

    [Fact]
    public void PartThatOnlyAHiddenEveningWorkedOn_IsListedAsItsBuildHasIt_AndTheEveningIsNowhere()
    {
        using var journal = WithAddress(JournalOnDisk.Small())
            .With("drill/build.yaml", """
                title: Bench drill
                status: finished
                parts:
                  - {id: head, title: Head casting, material: cast-iron, guess: 3h}
                  - {id: quill, title: Quill, guess: 1h}
                  - {id: gib-screw, title: Gib screw, quantity: 4}
                  - {id: zz-part, item: zz-item, title: The zz-part, material: brass zz-grade, stock: round zz-stock, supplied: zz-supplied, drawing: zz-sheet, guess: {turning: 2h}, reguess: 4h}
                mates:
                  - {hole: head.bore, shaft: zz-part.diameter}
                videos:
                  - {url: "https://example.org/v", title: A film, covers: [zz-part, head], chapters: [{at: "3:20", title: Begin}]}
                """)
            .With("plans/shaper.yaml", "title: Hand shaper\nparts: [{id: ram, operations: [turning], guess: 3h, like: drill/zz-part}, {id: nut, operations: [boring], guess: 1h, like: drill/head}]\n")
            .WithEntry("drill/2025-09-29-zz-entry.md", "publish: never\npart: zz-part\noperation: turning\nhours: 3h\nfinished: zz-part\nreadings: {feature: zz-part.diameter, required: 12 f7, actual: 11.99 mm}", "Hidden.")
            .WithEntry("drill/2025-09-30-bore.md", "part: head\noperation: boring\nhours: 1h\nreadings: {feature: head.bore, required: 12 H7, actual: 12.01 mm}", "Shown.");

        var site = journal.Publish();

        Assert.All(new[] { "zz-entry", "Hidden.", "11.99" }, word => Assert.Empty(site.Holding(word)));
        Assert.Contains("3\u202Fh", site.Page("drill/part/zz-part.html").QuerySelector("dl.facts")!.TextContent, StringComparison.Ordinal);
        Assert.True(site.Has("plan/shaper.html"));
    }

    // A plan that was begun shows the parts of its build, those too that only evenings at home have worked on; of a
    // finished build it shows what was foreseen.
    [Theory]
    [InlineData("under-way")]
    [InlineData("finished")]
    public void HiddenEvening_OfABuildThatWasPlanned_IsNowhere(string status)
    {
        using var journal = WithAddress(JournalOnDisk.Small())
            .With("plans/shaper.yaml", "title: Hand shaper\nparts: [{id: ram, operations: [turning], guess: 3h}]\n")
            .With("shaper/build.yaml", $$"""
                title: Hand shaper
                status: {{status}}
                parts:
                  - {id: ram, title: Ram, operations: [turning], guess: 3h}
                  - {id: zz-part, title: The zz-part, material: brass zz-grade, stock: round zz-stock, operations: [turning], guess: 30h, reguess: 90h, like: drill/head}
                  - {id: nut, title: Nut, operations: [turning], guess: 1h, like: shaper/zz-part}
                """)
            .WithEntry("shaper/2025-09-28-ram.md", "part: ram\noperation: turning\nhours: 1h", "Shown.")
            .WithEntry("shaper/2025-09-29-zz-entry.md", "publish: never\npart: zz-part\noperation: turning\nhours: 3h", "Hidden.");

        var site = journal.Publish();

        Assert.All(new[] { "zz-entry", "Hidden." }, word => Assert.Empty(site.Holding(word)));
        Assert.Contains("Ram", site.Text("plan/shaper.html"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("publish: never")]
    [InlineData("publish: after 2031-05-05")]
    public void HiddenPlan_IsNowhere(string publish)
    {
        using var journal = WithAddress(JournalOnDisk.Small())
            .With("plans/zz-plan.yaml", $"title: The zz-title\n{publish}\naway: [2033-03-03/2033-03-09]\nparts: [{{id: zz-ram, title: zz-ram, material: brass zz-grade, operations: [turning], guess: 3h, like: drill/head}}]\n");

        Assert.Empty(journal.Publish().Holding("zz-"));
    }

    [Fact]
    public void Entry_HiddenAfterItWasPublished_IsGoneFromEveryFile()
    {
        using var journal = WithAddress(JournalOnDisk.Small())
            .WithPicture("drill/photos/zz-secret.png", grey: 10)
            .WithEntry("drill/2025-09-29-zz-entry.md", "title: A zz-title\nlessons: zz-lesson\nphotos: {file: photos/zz-secret.png, caption: zz-caption}", "A zz-body.");
        using var elsewhere = JournalOnDisk.Bare();
        var order = new PublishOrder(journal.Folder, journal.PathOf("site"), Journals.Today) { Cache = elsewhere.PathOf("cache") };
        SitePublisher.Publish(order);
        Assert.NotEmpty(journal.Site().Holding("zz-"));
        var pictures = journal.Site().Files.Count(file => file.StartsWith("photos/", StringComparison.Ordinal));
        Assert.NotEqual(0, pictures);

        journal.With("drill/2025-09-29-zz-entry.md", File.ReadAllText(journal.PathOf("drill/2025-09-29-zz-entry.md")).Replace("title: A zz-title", "publish: never\ntitle: A zz-title", StringComparison.Ordinal));
        SitePublisher.Publish(order);

        Assert.Empty(journal.Site().Holding("zz-"));
        Assert.DoesNotContain(journal.Site().Files, file => file.StartsWith("photos/", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("See [it](tool:zz-tool).")]
    [InlineData("See [it](lesson:zz-lesson).")]
    [InlineData("See [it](entry:2025-09-29-zz-entry).")]
    [InlineData("See ![it](photos/../photos/zz-secret.png).")]
    public void Words_ThatComeToNameWhatIsHidden_AreShownWithoutIt(string words)
    {
        using var journal = JournalOnDisk.Small()
            .WithPicture("drill/photos/zz-secret.png", grey: 10)
            .WithEntry("drill/2025-09-28-shown.md", "photos: {file: photos/zz-secret.png, caption: zz-caption, publish: never}", "A shown text.")
            .WithEntry("drill/2025-09-29-zz-entry.md", "publish: never\npart: head\noperation: turning\nhours: 1h\nmade: {id: zz-tool, title: The zz-tool, kind: jig}\nlessons: {id: zz-lesson, text: A zz-lesson.}");
        using var elsewhere = JournalOnDisk.Bare();
        var order = new PublishOrder(journal.Folder, elsewhere.PathOf("site"), Journals.Today) { Cache = elsewhere.PathOf("cache") };
        SitePublisher.Publish(order);

        File.AppendAllText(journal.PathOf("drill/2025-09-28-shown.md"), $"\n{words}\n");
        SitePublisher.Publish(order);
        SitePublisher.Publish(order with { To = elsewhere.PathOf("clean") });

        var site = new SiteOnDisk(elsewhere.PathOf("site"));
        Assert.Contains("See ", site.Text("drill/entry/2025-09-28-shown.html"), StringComparison.Ordinal);
        Assert.Empty(site.Holding("zz-"));
        Assert.Equal(new SiteOnDisk(elsewhere.PathOf("clean")).Hashes, site.Hashes);
    }

    private static JournalOnDisk WithAddress(JournalOnDisk journal) => journal.With("journal.yaml", "title: The Lean-to\naddress: https://example.org/bench/\n");

    private static IEnumerable<string> Words(SiteOnDisk site, string file) =>
        (file + " " + site.Text(file)).Split(' ', '"', '<', '>', '/', '.', ',', '#', ':', '\\', '\n', '=', '&', ';', '(', ')').Where(word => word.Contains("zz-", StringComparison.OrdinalIgnoreCase)).Distinct();
}
