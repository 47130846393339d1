using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Journal.Core.Checking;
using Journal.Site.Pages;
using Journal.Site.Templates;

namespace Journal.Site.Tests.Pages;

/// <summary>The pages of the lessons book, laid out from real files.</summary>
public sealed class LessonsBookTests
{
    private static readonly TemplateEngine Engine = new(TemplateFiles.Own());

    private static readonly Lazy<Dictionary<string, IDocument>> Demo = new(() => LaidOut(Path.Combine(Root(), "journal")));

    private static readonly string[] Orders = ["lessons.html", "lessons/by-cause.html", "lessons/by-part.html", "lessons/by-tool.html", "lessons/by-cost.html", "lessons/by-date.html"];

    [Fact]
    public void Book_Demo_HasAPageForEachOrderLinkedFromAllOthers() => Assert.All(Orders, order =>
    {
        var links = Demo.Value[order].QuerySelectorAll(".orders a");

        Assert.Equal(Orders, links.Select(link => Target(order, link)));
        Assert.Equal(order, Target(order, Assert.Single(links, link => link.HasAttribute("aria-current"))));
    });

    [Fact]
    public void Book_Demo_EveryOrderHoldsEveryLesson()
    {
        var lessons = Demo.Value.Keys.Where(page => page.StartsWith("lesson/", StringComparison.Ordinal)).Order().ToList();

        Assert.True(lessons.Count >= 25);
        Assert.All(Orders, order => Assert.Equal(lessons, Demo.Value[order].QuerySelectorAll(".lessons a").Select(link => Target(order, link)).Distinct().Order()));
    }

    [Fact]
    public void Book_Demo_SetsWhatWorkedBesideWhatWentWrong()
    {
        var boring = Demo.Value["lessons.html"].QuerySelector("section[aria-labelledby=of_boring] .pair")!;

        Assert.Equal(["What went wrong", "What worked"], boring.QuerySelectorAll("h3").Select(heading => heading.TextContent));
    }

    [Fact]
    public void Book_Demo_TellsNoScore() => Assert.All(Orders, order =>
        Assert.DoesNotMatch("(?i)per hundred|per 100|in a hundred hours|score", Demo.Value[order].Body!.TextContent));

    [Fact]
    public void Book_FirstPage_HasBothParetosAndTheTotals()
    {
        var page = Demo.Value["lessons.html"];

        Assert.Equal(2, page.QuerySelectorAll(".causes-section .chart").Length);
        Assert.Equal(3, page.QuerySelectorAll(".totals-section tbody tr").Length);
        Assert.Contains("days", page.QuerySelector(".totals-section .note")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Lesson_ForgottenThreeTimes_TellsStoryCostAndEachTime()
    {
        var page = Demo.Value["lesson/write-the-count.html"];

        Assert.Contains("I talked to the dog", page.QuerySelector(".from-section .prose")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(3, page.QuerySelectorAll(".repeated-section .remark").Length);
        Assert.Equal(4, page.QuerySelectorAll(".heeded-section .entries li").Length);
        Assert.Equal("11\u202Fh\u202F30", page.QuerySelector(".costs-section tfoot .num")!.TextContent);
        Assert.Equal(["Operation", "Part", "Material", "Tools", "Cause"], page.QuerySelectorAll(".about-list dt").Select(label => label.TextContent));
    }

    [Fact]
    public void Lesson_NothingNear_ShowsNoLessonsLikeIt() => Assert.Null(Demo.Value["lesson/write-the-count.html"].QuerySelector(".like-section"));

    [Fact]
    public void Lesson_SomethingNear_LinksToIt() => Assert.Contains(
        "lesson/once-round-with-a-pencil.html",
        Demo.Value["lesson/cutter-on-centre.html"].QuerySelectorAll(".like-section a").Select(link => Target("lesson/cutter-on-centre.html", link)));

    [Fact]
    public void Lesson_RepeatedOnAnEveningKeptAtHome_NeitherCountsNorTellsOfIt()
    {
        var pages = LaidOutFrom(
            ("journal.yaml", "title: The Lean-to\n"),
            ("drill/build.yaml", "title: Drill\nparts: [{id: head}]\n"),
            ("drill/2025-10-03-first.md", "---\npart: head\noperation: boring\nhours: 2h\nmistakes: {what: The slide moved., lost: 30m, lesson: {id: lock, text: Lock the slides.}}\n---\nThe slide moved as I bored.\n"),
            ("drill/2025-10-09-secret.md", "---\ntitle: Hush\npart: head\noperation: boring\nhours: 2h\npublish: never\nmistakes: {what: It moved in secret., lost: 1h, repeats: lock}\nlessons: {id: hushed, text: Say nothing.}\n---\nSecret prose.\n"));

        var lesson = pages["lesson/lock.html"];

        Assert.DoesNotContain("lesson/hushed.html", pages.Keys);
        Assert.DoesNotMatch("Hush|secret|Secret|Say nothing", string.Concat(pages.Values.Select(page => page.DocumentElement.OuterHtml)));
        Assert.Contains("Forgottennever", lesson.QuerySelector(".facts")!.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("1\u202Fh\u202F30", lesson.DocumentElement.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Book_LongList_KeepsTheRestAClickAway()
    {
        var lessons = string.Concat(Enumerable.Range(0, 25).Select(i => $"  - Lesson number {i} of many.\n"));
        var pages = LaidOutFrom(
            ("journal.yaml", "title: The Lean-to\n"),
            ("drill/build.yaml", "title: Drill\n"),
            ("drill/2025-10-03-first.md", $"---\noperation: boring\nhours: 2h\nlessons:\n{lessons}---\n"));

        var group = pages["lessons.html"].QuerySelector("section[aria-labelledby=of_boring]")!;

        Assert.Equal(25, group.QuerySelectorAll(".lessons li").Length);
        Assert.Equal("15 more", group.QuerySelector("summary")!.TextContent);
    }

    private static Dictionary<string, IDocument> LaidOutFrom(params (string File, string Text)[] files)
    {
        var folder = Directory.CreateTempSubdirectory("journal-").FullName;
        try
        {
            foreach (var (file, text) in files)
            {
                var path = Path.Combine(folder, file);
                Directory.CreateDirectory(Path.GetDirectoryName(path)!);
                File.WriteAllText(path, text);
            }

            return LaidOut(folder);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static Dictionary<string, IDocument> LaidOut(string folder)
    {
        var reading = JournalReader.Read(folder, DateOnly.MaxValue);
        Assert.False(reading.HasErrors);
        var book = new SiteFigures(reading.Journal!, new DateOnly(2030, 1, 1), _ => null);
        return PageList.OfLessons(book).ToDictionary(page => page.Address, page => (IDocument)new HtmlParser().ParseDocument(Engine.Fill(page.Template, page.Model())));
    }

    private static string Target(string page, IElement link) =>
        new Uri(new Uri(new Uri("https://bench.example/"), page), link.GetAttribute("href")!).AbsolutePath[1..];

    private static string Root()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Journal.sln")))
            {
                return folder.FullName;
            }
        }

        throw new DirectoryNotFoundException("Journal.sln is not above the tests.");
    }
}
