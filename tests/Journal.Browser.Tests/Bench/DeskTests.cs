using System.Globalization;
using System.Text.RegularExpressions;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Newtonsoft.Json;
using static Microsoft.Playwright.Assertions;

namespace Journal.Browser.Tests.Bench;

/// <summary>The pages for the desk: an evening written up, files as text, pictures and plans.</summary>
[Collection(SharedDemo.Name)]
public sealed class DeskTests(DemoSite site) : IDisposable
{
    private const string Pictured = "dividing-head/2026-11-27-pictures.md";
    private const int Pictures = 20;

    private static readonly AxeRunOptions Rules = new WithoutFetching { RunOnly = RunOnlyOptions.Tags("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa") };

    private readonly RunningBench bench = new();

    [Fact]
    public async Task Pictures_WithTheKeyboardAlone_GetTheirWords()
    {
        WritePictures();
        var page = await Open("/pictures", Pictured);
        var sent = 0;
        page.Request += (_, request) => sent += request.Method == "POST" ? 1 : 0;
        await page.Locator("[data-word]").First.FocusAsync();
        for (var i = 1; i <= Pictures; i++)
        {
            await page.Keyboard.TypeAsync($"Picture {i}: what it shows");
            await page.Keyboard.PressAsync("Enter");
            await page.Keyboard.TypeAsync($"Said of {i}");
            await page.Keyboard.PressAsync("Enter");
        }

        await Expect(page.Locator("#told")).ToHaveTextAsync("Saved.");
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true })).ToBeFocusedAsync();
        await page.WaitForFunctionAsync("() => [...document.querySelectorAll('[name^=\"was-alt-\"]')].every(one => one.value !== '')");
        Assert.InRange(sent, 1, 2 * Pictures);
        var lines = Enumerable.Range(1, Pictures).Select(i => $"  - {{file: photos/p{i:00}.gif, caption: \"Picture {i}: what it shows\", alt: Said of {i}}}\n");
        Assert.Equal($"---\npart: body\noperation: filming\nhours: 1h\nphotos:\n{string.Concat(lines)}---\nTwenty of them.\n", Read(Pictured));
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Pictures_ClickedOnAndDragged_GetBalloonsAndAnotherOrder()
    {
        WritePictures();
        var page = await Open("/pictures", Pictured);
        await page.SetViewportSizeAsync(1280, 1600); // Two pictures are seen at once.
        var first = page.Locator(".picture").First;
        var plate = first.Locator(".plate");
        await plate.Locator("img").EvaluateAsync("one => one.decode()");
        var box = (await plate.BoundingBoxAsync())!;
        await page.Mouse.ClickAsync(box.X + (box.Width * .25f), box.Y + (box.Height * .5f));
        await page.Keyboard.TypeAsync("the edge");
        await page.Keyboard.PressAsync("Tab");
        await Expect(page.Locator("#told")).ToHaveTextAsync("Saved.");
        await WaitFor(() => IsAt(25, 50));

        box = (await plate.BoundingBoxAsync())!;
        await page.Mouse.MoveAsync(box.X + (box.Width * .25f), box.Y + (box.Height * .5f));
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(box.X + (box.Width * .5f), box.Y + (box.Height * .75f), new() { Steps = 4 });
        await page.Mouse.UpAsync();
        await WaitFor(() => IsAt(50, 75));

        await page.EvaluateAsync("scrollTo(0, 0)");
        var (from, to) = (await first.Locator(".number").BoundingBoxAsync(), await page.Locator(".picture").Nth(1).BoundingBoxAsync());
        await page.Mouse.MoveAsync(from!.X + 10, from.Y + 10);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(to!.X + 20, to.Y + 20, new() { Steps = 4 });
        await page.Mouse.UpAsync();
        await WaitFor(() => Read(Pictured).IndexOf("p02", StringComparison.Ordinal) < Read(Pictured).IndexOf("p01", StringComparison.Ordinal));
        await page.Locator(".picture").Nth(1).GetByRole(AriaRole.Button, new() { NameRegex = new("^Earlier") }).ClickAsync();
        await WaitFor(() => Read(Pictured).IndexOf("p01", StringComparison.Ordinal) < Read(Pictured).IndexOf("p02", StringComparison.Ordinal));
        await page.Locator(".picture").Nth(2).GetByLabel("Never publish").CheckAsync();
        await WaitFor(() => Read(Pictured).Contains("{file: photos/p03.gif, publish: never}", StringComparison.Ordinal));
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Text_AsItIsTyped_ShowsItsPageItsProblemsAndTheMend()
    {
        bench.Write("dividing-head/2026-11-27-typed.md", "---\npart: body\noperation: boring\nhours: 1h\n---\nOnce.\n");
        var page = await Open("/files", "dividing-head/2026-11-27-typed.md");
        var text = page.GetByRole(AriaRole.Textbox, new() { NameRegex = new("^Text of") });
        await Expect(page.FrameLocator("#preview").Locator("body")).ToContainTextAsync("Once.");

        await text.PressAsync("Control+End");
        await page.Keyboard.TypeAsync("Twice *loud*.");
        await Expect(page.FrameLocator("#preview").Locator("em")).ToHaveTextAsync("loud");

        // A word that is nearly right is mended by one press.
        await text.PressAsync("Control+Home");
        await page.Keyboard.PressAsync("ArrowDown");
        await page.Keyboard.PressAsync("End");
        await page.Keyboard.TypeAsync("y");
        await Expect(page.Locator("#problems li")).ToContainTextAsync("Line 2");
        await page.Locator("#problems .mend").ClickAsync();
        await Expect(page.Locator("#problems li")).ToHaveCountAsync(0);

        // Words are offered while they are typed.
        await text.PressAsync("Control+Home");
        await page.Keyboard.PressAsync("ArrowDown");
        await page.Keyboard.PressAsync("ArrowDown");
        await page.Keyboard.PressAsync("End");
        for (var letter = 0; letter < "boring".Length; letter++)
        {
            await page.Keyboard.PressAsync("Backspace");
        }

        await page.Keyboard.TypeAsync("ream");
        await Expect(page.Locator(".cm-tooltip-autocomplete li").First).ToContainTextAsync("reaming");
        await page.WaitForTimeoutAsync(100); // A list that has just come takes no key, so that none is taken by mistake.
        await page.Keyboard.PressAsync("Enter");
        await page.Keyboard.PressAsync("Control+s");
        await Expect(page.Locator("#told")).ToHaveTextAsync(new Regex("Saved"));

        Assert.Equal("---\npart: body\noperation: reaming\nhours: 1h\n---\nOnce.\nTwice *loud*.", Read("dividing-head/2026-11-27-typed.md"));
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task WriteUp_FromRemarks_FollowsTheFormAndIsSaved()
    {
        Assert.Equal(0, bench.Ask("jot", "turned the spindle for an hour").Status);
        var page = await Desk();

        // The words that the editor completes come late; what is typed before them counts.
        await page.RouteAsync(new Regex("words"), async route =>
        {
            await Task.Delay(1500);
            await route.ContinueAsync();
        });
        await page.GotoAsync(new Uri(bench.Desk, "/write-up").AbsoluteUri);

        await page.GetByLabel("Title, if you want one").FillAsync("At the lathe");
        await Expect(page.FrameLocator("#preview").Locator("h1")).ToHaveTextAsync("At the lathe");
        await page.GetByLabel("Hours", new() { Exact = true }).FillAsync("2:75");
        await Expect(page.Locator("#draft-note")).ToContainTextAsync("2:75");
        await page.GetByLabel("Hours", new() { Exact = true }).FillAsync("2h15");
        await Expect(page.Locator("#draft-note")).ToBeHiddenAsync();

        // What was typed by hand stays when the form changes.
        await page.GetByRole(AriaRole.Textbox, new() { NameRegex = new("^Text of") }).PressAsync("Control+End");
        await page.Keyboard.TypeAsync("By hand.");
        await page.GetByLabel("Next step").FillAsync("Lap it.");
        await Expect(page.Locator("#draft-note")).ToContainTextAsync("it stays");
        await page.GetByRole(AriaRole.Button, new() { Name = "Save the entry" }).ClickAsync();
        await Expect(page.Locator("#told")).ToHaveTextAsync(new Regex("Saved"));

        var file = (await page.Locator("h1").TextContentAsync())!.Trim();
        var entry = Read(file);
        Assert.Contains("title: At the lathe\n", entry, StringComparison.Ordinal);
        Assert.Contains("hours: 2h15\n", entry, StringComparison.Ordinal);
        Assert.EndsWith("By hand.", entry, StringComparison.Ordinal);
        Assert.Empty(bench.Slate.Jots);
        Assert.DoesNotContain(bench.Problems, problem => problem.Contains(file, StringComparison.Ordinal));
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Plan_AsAGuessIsTyped_MovesItsEstimate()
    {
        var page = await Desk();
        await page.GotoAsync(new Uri(bench.Desk, "/plans").AbsoluteUri);
        await page.GetByRole(AriaRole.Link, new() { Name = "Hand-lever bench shaper" }).ClickAsync();
        var sentence = await page.Locator("#sentence").TextContentAsync();

        await page.GetByLabel("Guess for Bed").FillAsync("40h");
        await Expect(page.Locator("#sentence")).Not.ToHaveTextAsync(sentence!);
        await page.GetByLabel("Guess for Bed").FillAsync("14h");
        await Expect(page.Locator("#sentence")).ToHaveTextAsync(sentence!);
        await page.GetByLabel("Without Ram").CheckAsync();
        await Expect(page.Locator("#lines")).ToContainTextAsync("Without ram");
        await page.Context.CloseAsync();
    }

    [Theory]
    [InlineData(360, ColorScheme.Light)]
    [InlineData(1280, ColorScheme.Dark)]
    public async Task Pages_AtAnyWidthAndLight_CanBeReadByEveryone(int width, ColorScheme scheme)
    {
        WritePictures();
        Assert.Equal(0, bench.Ask("jot", "turned the spindle for an hour; wasted 20 minutes because I misread the dial").Status);
        var page = await Desk(width, scheme);
        foreach (var address in new[] { "/write-up", await AddressOf(page, "/pictures", Pictured), await AddressOf(page, "/plans", "Hand-lever bench shaper"), await AddressOf(page, "/files", "bench-drill/build.yaml") })
        {
            await page.GotoAsync(new Uri(bench.Desk, address).AbsoluteUri);
            await page.EvaluateAsync("document.querySelectorAll('details').forEach(one => one.open = true)");

            var result = await page.RunAxe(new AxeRunContext { Exclude = [new AxeSelector("#preview")] }, Rules);
            Faults.None([.. result.Violations.SelectMany(fault => fault.Nodes.Select(node => $"{address} {fault.Id}, {fault.Help}: {node.Html}"))]);
            foreach (var wide in new[] { width, 1920 })
            {
                await page.SetViewportSizeAsync(wide, 900);
                Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"), $"{address} scrolls sideways at {wide}.");
            }

            await page.SetViewportSizeAsync(width, 900);
        }

        await page.Context.CloseAsync();
    }

    public void Dispose() => bench.Dispose();

    private async Task<IPage> Desk(int width = 1280, ColorScheme scheme = ColorScheme.Light)
    {
        var page = await site.Phone(width, scheme);
        await page.GotoAsync(bench.Desk.AbsoluteUri);
        return page;
    }

    private async Task<IPage> Open(string list, string name)
    {
        var page = await Desk();
        await page.GotoAsync(new Uri(bench.Desk, await AddressOf(page, list, name)).AbsoluteUri);
        return page;
    }

    // What a list leads to, by the file's name or the title.
    private async Task<string> AddressOf(IPage page, string list, string name)
    {
        await page.GotoAsync(new Uri(bench.Desk, list).AbsoluteUri);
        var row = list == "/pictures" ? page.GetByRole(AriaRole.Link, new() { Name = "Pictures", Exact = true }).Last : page.Locator(".files li").Filter(new() { HasText = name }).First.Locator("a");
        return (await row.GetAttributeAsync("href"))!;
    }

    // To the pixel: a click lies on one, and a per cent may lie between two.
    private bool IsAt(double across, double down) =>
        Regex.Match(Read(Pictured), @"photos/p01\.gif, marks: \[\{at: \[([\d.]+), ([\d.]+)\], text: the edge\}\]\}") is { Success: true } at
        && Math.Abs(double.Parse(at.Groups[1].Value, CultureInfo.InvariantCulture) - across) < 1 && Math.Abs(double.Parse(at.Groups[2].Value, CultureInfo.InvariantCulture) - down) < 1;

    private string Read(string file) => File.ReadAllText(Path.Combine(bench.Journal, file));

    private void WritePictures()
    {
        for (var i = 1; i <= Pictures; i++)
        {
            using var image = new SixLabors.ImageSharp.Image<SixLabors.ImageSharp.PixelFormats.L8>(200, 100, new SixLabors.ImageSharp.PixelFormats.L8((byte)(10 * i)));
            using var stream = new MemoryStream();
            image.Save(stream, new SixLabors.ImageSharp.Formats.Gif.GifEncoder());
            bench.Write($"dividing-head/photos/p{i:00}.gif", stream.ToArray());
        }

        bench.Write(Pictured, $"---\npart: body\noperation: filming\nhours: 1h\nphotos:\n{string.Concat(Enumerable.Range(1, Pictures).Select(i => $"  - photos/p{i:00}.gif\n"))}---\nTwenty of them.\n");
    }

    private static async Task WaitFor(Func<bool> isSo)
    {
        for (var tries = 0; !isSo(); tries++)
        {
            Assert.True(tries < 100, "It did not come to be so within ten seconds.");
            await Task.Delay(100);
        }
    }

    private sealed class WithoutFetching : AxeRunOptions
    {
        [JsonProperty("preload")]
        public bool Preload { get; }
    }
}
