using System.Net;

namespace Journal.Bench.Tests;

/// <summary>A plan by its forms alone, held against what <c>journal estimate</c> says.</summary>
public sealed class PlanTests
{
    private const string File = "plans/bench-shaper.yaml";

    [Fact]
    public async Task Page_OfAPlan_SaysWhatEstimateSays()
    {
        await using var bench = await ServedBench.Start();
        using var desk = await Opened(bench);

        AssertSays(bench, desk);
        Assert.Equal(["12h", "", "{low: 6h, likely: 9h, high: 16h}"], Guesses(desk));
    }

    [Fact]
    public async Task Estimate_OfGuessesThatAreTyped_IsThatOfThePlanWithThem()
    {
        await using var bench = await ServedBench.Start();
        using var desk = await Opened(bench);
        var before = Sentence(desk);

        await Send(desk, ("guess-ram", "20h"), ("guess-screw", "{low: 2h, likely: 4h, high: 9h}"));

        Assert.NotEqual(before, Sentence(desk));
        var typed = Sentence(desk);
        Assert.Contains("guess: 12h", bench.Text(File), StringComparison.Ordinal);
        await Send(desk, ("guess-ram", "20h"), ("guess-screw", "{low: 2h, likely: 4h, high: 9h}"), ("save", "yes"));
        Assert.Equal(typed, Sentence(desk));
        AssertSays(bench, desk);
    }

    [Fact]
    public async Task Save_OfGuesses_TouchesNothingElse()
    {
        await using var bench = await ServedBench.Start();
        using var desk = await Opened(bench);
        var before = bench.Text(File);

        await Send(desk, ("guess-ram", "20h"), ("guess-screw", "5h"), ("guess-slide", ""), ("save", "yes"));

        Assert.Equal(
            before.Replace("guess: 12h", "guess: 20h", StringComparison.Ordinal)
                .Replace("screw-cutting: 1h30}}", "screw-cutting: 1h30}, guess: 5h}", StringComparison.Ordinal)
                .Replace(", guess: {low: 6h, likely: 9h, high: 16h}}   #", "}   #", StringComparison.Ordinal),
            bench.Text(File));
    }

    [Fact]
    public async Task Save_OfAGuessThatWasChangedElsewhere_SavesNothing()
    {
        await using var bench = await ServedBench.Start();
        using var desk = await Opened(bench);
        bench.Disk.With(File, bench.Text(File).Replace("guess: 12h", "guess: 15h", StringComparison.Ordinal));

        await Send(desk, ("guess-ram", "20h"), ("save", "yes"));

        Assert.Contains("15h", desk.Page.QuerySelector("#told")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("guess: 15h", bench.Text(File), StringComparison.Ordinal);
        Assert.Equal("20h", Guesses(desk)[0]);
    }

    [Fact]
    public async Task Estimate_WithoutAPart_SaysTheDifference()
    {
        await using var bench = await ServedBench.Start();
        using var desk = await Opened(bench);

        await Send(desk, ("without", "slide"));

        Assert.Contains("Without slide", desk.Page.QuerySelector("#lines")!.TextContent, StringComparison.Ordinal);
        Assert.Contains(Sentence(desk), bench.Ask("estimate", "bench-shaper", "--without", "slide", "--today", "2025-10-03").Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("a lot")]
    [InlineData("{low: 6h")]
    [InlineData("6h, quantity: 9")]
    [InlineData("6h # about")]
    public async Task Save_OfAGuessThatMeansNothing_SaysSoAndSavesNothingWrong(string guess)
    {
        await using var bench = await ServedBench.Start();
        using var desk = await Opened(bench);

        await Send(desk, ("guess-ram", guess));

        Assert.Contains("guess", desk.Page.QuerySelector("main")!.TextContent, StringComparison.OrdinalIgnoreCase);
        Assert.Equal("There is no estimate.", Sentence(desk));
        Assert.Equal(guess, Guesses(desk)[0]);
        Assert.Contains("guess: 12h", bench.Text(File), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Begin_OfAPlan_MakesItABuildOnce()
    {
        await using var bench = await ServedBench.Start();
        using var desk = await Opened(bench);
        var page = desk.Page;
        var begin = page.QuerySelector("form[action^='/begin/']")!.GetAttribute("action")!;

        await desk.Send(begin);
        Assert.Contains("Begun", desk.Page.QuerySelector("#told")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("guess: 12h", bench.Text("bench-shaper/build.yaml"), StringComparison.Ordinal);
        desk.Stay(page);
        await desk.Send(begin);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, desk.Status);
        Assert.Null(desk.Page.QuerySelector("form[action^='/begin/']"));
    }

    private static void AssertSays(ServedBench bench, BenchClient desk) =>
        Assert.Contains(Sentence(desk), bench.Ask("estimate", "bench-shaper", "--today", "2025-10-03").Out.ReplaceLineEndings(" "), StringComparison.Ordinal);

    private static string Sentence(BenchClient desk) => desk.Page.QuerySelector("#sentence")!.TextContent;

    private static string[] Guesses(BenchClient desk) => [.. desk.Page.QuerySelectorAll("[name^=guess-]").Select(field => field.GetAttribute("value")!)];

    private static async Task<BenchClient> Opened(ServedBench bench)
    {
        var desk = await bench.Desk();
        await desk.Look("/plans");
        return await desk.Look(desk.Page.QuerySelectorAll(".files a").Single().GetAttribute("href")!);
    }

    private static Task<BenchClient> Send(BenchClient desk, params (string Name, string Value)[] changed)
    {
        var form = desk.Page.QuerySelector("#plan")!;
        var fields = form.QuerySelectorAll("input").OfType<AngleSharp.Html.Dom.IHtmlInputElement>().Where(field => field.Type != "checkbox" || field.IsChecked).Select(field => (Name: field.Name!, field.Value));
        return desk.Post(form.GetAttribute("action")!, [.. fields.Where(field => changed.All(one => one.Name != field.Name)), .. changed]);
    }
}
