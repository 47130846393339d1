using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Journal.Core.Checking;
using Journal.Core.Estimating;
using Journal.Core.Model;
using Journal.Site.Pages;
using Journal.Site.Publishing;

namespace Journal.Site.Tests.Pages;

public sealed class PlanPageTests : IDisposable
{
    private static readonly DateOnly PublishedOn = new(2026, 6, 1);
    private readonly string root = Directory.CreateTempSubdirectory("plan-").FullName;

    public PlanPageTests()
    {
        Write("journal.yaml", "title: The Lean-to\nmaker: Wren\n");
        Write("tools.yaml", "- {id: lathe, title: Small lathe, got: had}\n- {id: gauge, title: Bore gauge, got: borrowed}\n");
        Write("drill/build.yaml", $"title: Bench drill\nparts:\n{string.Concat(Enumerable.Range(0, 8).Select(i => $"  - {{id: part-{i}, title: Part {i}, guess: {4 + (i % 3)}h}}\n"))}");
        for (var i = 0; i < 8; i++)
        {
            var day = new DateOnly(2025, 9, 1).AddDays(7 * i);
            Write($"drill/{day:yyyy-MM-dd}-evening.md", $"---\npart: part-{i}\noperation: boring\nhours: {5 + (i % 4)}h\ntools: [lathe, gauge]\nfinished: part-{i}\n---\n");
        }

        Write("plans/shaper.yaml", """
            title: Bench shaper
            start: 2025-12-01
            hours-a-week: 5
            away: [2026-01-17/2026-01-29]
            parts:
              - {id: ram, title: Ram, material: cast-iron, operations: [milling, boring], guess: 12h, like: drill/part-2}
              - {id: screw, title: Screw, quantity: 2, operations: {turning: 1h, screw-cutting: 1h30}}
            whole: {assembly: 8h}
            """);
    }

    [Fact]
    public void Sheet_SameDateAndSeed_ShowsTheFiguresOfTheCommand()
    {
        var journal = Journal();
        var estimate = Estimate.Of(journal, journal.Plans[0], new EstimateOptions { Today = journal.LatestDate!.Value }).Estimate!;

        var page = Page("plan/shaper.html");

        Assert.Equal(EstimateWords.Hours(estimate.Hours.P50), Fact(page, "Half under"));
        Assert.Equal(EstimateWords.Hours(estimate.Hours.P80), Fact(page, "8 in 10 under"));
        Assert.Equal(Show.Date(estimate.Finish!.P50!.Value), Fact(page, "Done by, even odds"));
        Assert.Equal(Show.Date(estimate.Finish.P80!.Value), Fact(page, "Done by, 8 in 10"));
        Assert.Equal("25 h", Fact(page, "Own guess").Replace('\u202F', ' '));
        Assert.Contains(EstimateWords.Odds(estimate, Show.PlainDate), page.QuerySelector(".gist")!.TextContent, StringComparison.Ordinal);
        var rows = page.QuerySelectorAll(".parts-section tbody tr").Select(row => row.Children.Select(cell => cell.TextContent).ToList()).ToList();
        Assert.Equal(["Ram", "Screw, 2 off", "Build as a whole"], rows.Select(row => row[0]));
        Assert.Equal(Show.Hours(new Minutes((int)Math.Round(60 * estimate.Parts[0].P90, MidpointRounding.AwayFromZero))), rows[0][4]);
        Assert.Equal(19, page.QuerySelectorAll(".chance-section table")[0].QuerySelectorAll("tbody tr").Length);
        Assert.Equal(19, page.QuerySelectorAll(".chance-section table")[1].QuerySelectorAll("tbody tr").Length);
        Assert.Equal(3, page.QuerySelectorAll(".backtest-section tbody tr").Length);
    }

    [Fact]
    public void Sheet_WordsBasisToolsAndCautions_AreForViewers()
    {
        var page = Page("plan/shaper.html");

        Assert.Contains("own guess 12h × ", page.Body!.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("your ", page.QuerySelector(".columns")!.TextContent, StringComparison.OrdinalIgnoreCase);
        Assert.Equal("../drill/part/part-2.html", page.QuerySelector(".plan-section td a")!.GetAttribute("href"));
        Assert.Equal("Bore gauge borrowed last time · boring", page.QuerySelector(".needs-section ul li")!.TextContent.Trim());
        Assert.Contains(page.QuerySelectorAll(".cautions-section summary"), caution => caution.TextContent == "Nothing loose near anything that turns");
    }

    [Fact]
    public void Away_IsNowhereOnTheSite()
    {
        var site = Publish();

        Assert.All(Directory.EnumerateFiles(site, "*.*", SearchOption.AllDirectories), file =>
        {
            var text = File.ReadAllText(file);
            Assert.DoesNotContain("2026-01-17", text, StringComparison.Ordinal);
            Assert.DoesNotContain("2026-01-29", text, StringComparison.Ordinal);
        });
    }

    [Fact]
    public void Plan_IsReachedFromTheFrontPageAndFromEveryPage()
    {
        var site = Publish();

        var (front, part) = (Parse(site, "index.html"), Parse(site, "drill/part/part-0.html"));

        Assert.Equal("plan/shaper.html", front.QuerySelector(".plans-section a")!.GetAttribute("href"));
        Assert.Equal("../../plan/shaper.html", part.QuerySelectorAll(".ways a").Single(way => way.TextContent == "Next").GetAttribute("href"));
        Assert.Equal("page", Parse(site, "plan/shaper.html").QuerySelectorAll(".ways a").Single(way => way.TextContent == "Next").GetAttribute("aria-current"));
    }

    [Fact]
    public void Links_OfTheSheet_AllResolve()
    {
        var site = Publish();

        foreach (var address in Parse(site, "plan/shaper.html").QuerySelectorAll("[href]").Select(link => link.GetAttribute("href")!).Where(address => address[0] != '#'))
        {
            Assert.True(File.Exists(Path.Combine(site, "plan", address.Split('#')[0])), address);
        }
    }

    [Theory]
    [InlineData("never")]
    [InlineData("after 2026-06-01")]
    public void Plan_KeptAtHome_LeavesNoTrace(string publish)
    {
        File.AppendAllText(Path.Combine(root, "plans/shaper.yaml"), $"\npublish: {publish}\n");

        var site = Publish();

        Assert.False(Directory.Exists(Path.Combine(site, "plan")));
        Assert.All(Directory.EnumerateFiles(site, "*.*", SearchOption.AllDirectories), file => Assert.DoesNotContain("shaper", File.ReadAllText(file), StringComparison.Ordinal));
    }

    [Fact]
    public void BegunPlan_KeepsItsAddressAndTellsWhatIsLeft()
    {
        Write("shaper/build.yaml", "title: Bench shaper\nstatus: under-way\nstarted: 2025-11-01\nhours-a-week: 5\nparts:\n  - {id: ram, title: Ram, guess: 12h, reguess: 20h}\n");
        Write("shaper/2025-11-02-ram.md", "---\npart: ram\noperation: milling\nhours: 3h\n---\n");

        var (page, front) = (Page("plan/shaper.html"), Page("index.html"));

        Assert.Equal("3 h", Fact(page, "So far").Replace('\u202F', ' '));
        Assert.Contains(" h more, done by ", page.QuerySelector(".gist")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("12 h, then 20 h", page.QuerySelector(".plan-section")!.TextContent.Replace('\u202F', ' '), StringComparison.Ordinal);
        Assert.Equal("Under way", front.QuerySelector(".plans-section .kind")!.TextContent);
        Assert.DoesNotContain(front.QuerySelectorAll(".ways a"), way => way.TextContent == "Next");
        Assert.Equal("../plan/shaper.html", Page("shaper/index.html").QuerySelector(".parts-section .note a")!.GetAttribute("href"));
        Assert.Null(Page("drill/index.html").QuerySelector(".parts-section .note"));
    }

    [Fact]
    public void FinishedPlan_TellsWhatWasForeseenAndWhatItTook()
    {
        var eve = Estimate.Of(Journal(), Journal().Plans[0], new EstimateOptions { Today = new DateOnly(2025, 10, 31) }).Estimate!;
        Write("shaper/build.yaml", "title: Bench shaper\nstatus: finished\nstarted: 2025-11-01\nparts:\n  - {id: ram, title: Ram, guess: 12h}\n");
        Write("shaper/2025-11-02-ram.md", "---\npart: ram\noperation: milling\nhours: 23h\n---\n");

        var page = Page("plan/shaper.html");

        Assert.Equal(EstimateWords.Hours(eve.Hours.P50), Fact(page, "Half under"));
        Assert.EndsWith("It took 23 h.", page.QuerySelector(".gist")!.TextContent.Replace('\u202F', ' '), StringComparison.Ordinal);
    }

    [Fact]
    public void FinishedBuild_ThatBeganAsAPlan_SaysHowTheEstimateDidPartByPart()
    {
        Write("shaper/build.yaml", "title: Bench shaper\nstatus: finished\nstarted: 2025-11-01\nparts:\n  - {id: ram, title: Ram, guess: 12h}\n  - {id: screw, title: Screw, guess: 5h}\n");
        Write("shaper/2025-11-02-ram.md", "---\npart: ram\noperation: milling\nhours: 23h\n---\n");
        Write("shaper/2026-02-02-screw.md", "---\npart: screw\noperation: turning\nhours: 5h\n---\n");
        var outcome = EstimateOutcome.Of(Journal().Plans[0], Journal())!;

        var section = Page("shaper/index.html").QuerySelector(".outcome-section")!;

        var text = section.TextContent.Replace('\u202F', ' ');
        Assert.Contains($"Foreseen on the eve of the work: {EstimateWords.Hours(outcome.Foreseen.Hours.P50)} at even odds", text, StringComparison.Ordinal);
        Assert.Contains($"It took 28 h: of a hundred such builds {OutcomeView.InAHundred(outcome.HoursPlace)} would have taken less.", text, StringComparison.Ordinal);
        Assert.Contains($"It was finished on 2 February 2026: of a hundred {OutcomeView.InAHundred(outcome.DayPlace!.Value)} would have been done before.", text, StringComparison.Ordinal);
        Assert.Contains($"{outcome.Parts.Count(part => part.Held)} of 2 within their 80", text, StringComparison.Ordinal);
        Assert.Equal(2, section.QuerySelectorAll("tbody tr").Length);
        Assert.Null(Page("drill/index.html").QuerySelector(".outcome-section"));
    }

    [Fact]
    public void Timeline_PartsWithGuesses_ShowsGuessesOverTimeAndWhatTheyCannotTell()
    {
        var guesses = GuessesOverTime.Of(Journal(), Journal().LatestDate!.Value)!;

        var section = Page("timeline.html").QuerySelector(".guesses-section")!;

        Assert.Equal(8, section.QuerySelectorAll("tbody tr").Length);
        Assert.Equal(guesses.Parts.Count, section.QuerySelectorAll("circle").Length);
        Assert.Contains(GuessesOverTime.WhatCannotBeTold, section.TextContent, StringComparison.Ordinal);
        Assert.Equal("drill/part/part-0.html", section.QuerySelector("tbody a")!.GetAttribute("href"));
    }

    [Fact]
    public void Timeline_NoGuesses_HasNoSuchSection()
    {
        Write("drill/build.yaml", $"title: Bench drill\nparts:\n{string.Concat(Enumerable.Range(0, 8).Select(i => $"  - {{id: part-{i}, title: Part {i}}}\n"))}");

        Assert.Null(Page("timeline.html").QuerySelector(".guesses-section"));
    }

    [Fact]
    public void PlanWithoutAnythingToGoOn_SaysSoInsteadOfFigures()
    {
        Write("plans/shaper.yaml", "title: Bench shaper\nparts: []\n");

        var page = Page("plan/shaper.html");

        Assert.StartsWith("No estimate yet. Bench shaper has no parts", page.QuerySelector(".note")!.TextContent, StringComparison.Ordinal);
        Assert.Empty(page.QuerySelectorAll(".facts, svg"));
    }

    [Fact]
    public void Sheet_PublishedTwice_HasTheSameBytes()
    {
        var first = File.ReadAllBytes(Path.Combine(Publish(), "plan/shaper.html"));

        Assert.Equal(first, File.ReadAllBytes(Path.Combine(Publish(), "plan/shaper.html")));
    }

    /// <inheritdoc/>
    public void Dispose() => Directory.Delete(root, recursive: true);

    private void Write(string file, string text)
    {
        var path = Path.Combine(root, file);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
    }

    private MakerJournal Journal()
    {
        var reading = JournalReader.Read(root, PublishedOn);
        Assert.False(reading.HasErrors, string.Join('\n', reading.Problems));
        return reading.Journal!;
    }

    private string Publish()
    {
        var site = Path.Combine(root, ".sites", Guid.NewGuid().ToString("N"));
        Directory.CreateDirectory(Path.GetDirectoryName(site)!);
        Assert.NotNull(SitePublisher.Publish(new PublishOrder(root, site, PublishedOn)).Published);
        return site;
    }

    private IDocument Page(string address) => Parse(Publish(), address);

    private static IDocument Parse(string site, string address) => new HtmlParser().ParseDocument(File.ReadAllText(Path.Combine(site, address)));

    private static string Fact(IDocument page, string label) =>
        page.QuerySelectorAll(".facts > div").Single(fact => fact.QuerySelector("dt")!.TextContent == label).QuerySelector("dd")!.TextContent;
}
