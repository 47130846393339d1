using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Journal.Core.Writing.Bench;
using Microsoft.Playwright;
using Newtonsoft.Json;
using static Microsoft.Playwright.Assertions;

namespace Journal.Browser.Tests.Bench;

/// <summary>Tonight on a phone by the lathe: a whole evening, out of reach and back, and what everyone must be able to read and press.</summary>
[Collection(SharedDemo.Name)]
public sealed class PhoneTests(DemoSite site) : IDisposable
{
    private static readonly AxeRunOptions Rules = new WithoutFetching { RunOnly = RunOnlyOptions.Tags("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa") };

    private readonly RunningBench bench = new();
    private int taps;

    [Fact]
    public async Task Evening_OnAPhone_TakesFewTapsAndStandsInTheJournal()
    {
        var page = await Paired();
        var loaded = await page.GotoAsync(new Uri(bench.Phones, "tonight").AbsoluteUri);
        Assert.InRange((await loaded!.BodyAsync()).Length, 1, 60_000);

        // Last time's job: one tap.
        await Counted(1, () => Tap(page.GetByRole(AriaRole.Button, new() { NameRegex = new("^Begin ") }).First));
        await Expect(page.Locator("#switch")).ToHaveClassAsync(new System.Text.RegularExpressions.Regex(@"\bon\b"));
        Assert.NotNull(bench.Slate.Stint);

        // A remark: one, and the words.
        foreach (var words in new[] { "The tap squealed until I oiled it", "Second hole better", "Third as good" })
        {
            await Counted(1, () => Tap(page.GetByLabel("Remark", new() { Exact = true })));
            await page.Keyboard.TypeAsync(words);
            await page.Keyboard.PressAsync("Enter");
            await Kept(page, words);
        }

        // A picture: the camera's own button, which the system answers.
        for (var i = 0; i < 2; i++)
        {
            await page.Locator("input[type=file][capture]").SetInputFilesAsync(new FilePayload { Name = $"../../evil{i}.jpg", MimeType = "image/jpeg", Buffer = Picture(i) });
            await Expect(page.Locator("#so-far li", new() { HasText = "Picture" })).ToHaveCountAsync(i + 1);
        }

        // A size: three, and the digits; out of limits is said at once.
        await Counted(3, async () =>
        {
            await Tap(page.Locator("#size > summary"));
            await Tap(page.Locator("#size .pick", new() { HasText = "20 H7" }).First);
            await page.Keyboard.TypeAsync("20,05");
            await Tap(page.Locator("#size").GetByRole(AriaRole.Button, new() { Name = "Keep" }));
        });
        await Expect(page.Locator("#told .verdict.out")).ToContainTextAsync("too large");

        await Tap(page.Locator("#wrong > summary"));
        await page.Locator("#wrong [name=what]").FillAsync("Bored past the line");
        await page.Locator("#wrong [name=cause]").SelectOptionAsync("haste");
        await page.Locator("#wrong [name=lost]").FillAsync("20m");
        await Tap(page.Locator("#wrong").GetByRole(AriaRole.Button, new() { Name = "Keep" }));
        await Kept(page, "Bored past the line");

        // Another job: three.
        await Counted(3, async () =>
        {
            await Tap(page.Locator("#switch summary"));
            await Tap(page.Locator("#switch label.pick").Nth(1));
            await Tap(page.Locator("#switch button.pick").Nth(1));
        });
        await Expect(page.Locator("#told")).ToContainTextAsync("Begun at");
        await page.GetByRole(AriaRole.Button, new() { Name = "End", Exact = true }).TapAsync();
        await Expect(page.Locator("#switch")).ToHaveClassAsync(new System.Text.RegularExpressions.Regex(@"\boff\b"));
        await page.Context.CloseAsync();

        // A minute at the bench is needed for an entry of its own; what was noted goes into one that says its hours.
        var written = bench.Ask("write", "--hours", "1h30", "--part", "body", "--operation", "boring");
        Assert.True(written.Status == 0, written.Error);
        var entry = await File.ReadAllTextAsync(written.Out.Trim());
        Assert.Contains("- {what: Bored past the line, cause: haste, lost: 20m", entry, StringComparison.Ordinal);
        Assert.Contains("actual: 20.05", entry, StringComparison.Ordinal);
        Assert.Contains("- Second hole better", entry, StringComparison.Ordinal);
        Assert.Equal(2, entry.Split("photos/").Length - 1);
        Assert.DoesNotContain("evil", entry, StringComparison.Ordinal);
        Assert.Empty(bench.Slate.Jots);
        Assert.DoesNotContain(bench.Problems, problem => problem.Contains(Path.GetFileName(written.Out.Trim()), StringComparison.Ordinal));
    }

    [Fact]
    public async Task OutOfReach_WithTheServerKilledAndThePageReloaded_LosesAndDoublesNothing()
    {
        var page = await Paired();
        await page.EvaluateAsync("navigator.serviceWorker.ready.then(() => true)");
        await page.ReloadAsync();
        await Remark(page, "Before");
        await Kept(page, "Before");

        await page.Context.SetOfflineAsync(true);
        await Remark(page, "First without a network");
        await page.GetByRole(AriaRole.Button, new() { NameRegex = new("^Begin ") }).First.TapAsync();
        await page.Locator("input[type=file][multiple]").SetInputFilesAsync([new FilePayload { Name = "a.jpg", MimeType = "image/jpeg", Buffer = Picture(3) }, new FilePayload { Name = "b.jpg", MimeType = "image/jpeg", Buffer = Picture(4) }]);
        await Waiting(page, 4);
        bench.Kill();
        await page.ReloadAsync();
        await Waiting(page, 4);
        await Remark(page, "Second without a network");
        await Waiting(page, 5);
        await Expect(page.Locator("#queue")).ToContainTextAsync("5 wait to be sent");

        bench.Start();
        await page.Context.SetOfflineAsync(false);
        await page.EvaluateAsync("dispatchEvent(new Event('online'))");
        await Expect(page.Locator("#queue")).ToBeHiddenAsync(new() { Timeout = 30_000 });
        await page.ReloadAsync();

        Assert.NotNull(bench.Slate.Stint);
        Assert.Equal(["Before", "First without a network", "Second without a network"], bench.Slate.Jots.Where(jot => jot.Kind is null).Select(jot => jot.Text));
        Assert.Equal(2, bench.Slate.Jots.Where(jot => jot.Kind == JotKind.Photo).Select(jot => jot["file"]).Distinct().Count());
        var times = bench.Slate.Jots.Select(jot => jot.At).ToList();
        Assert.Equal(times.Order(), times);
        Assert.Equal(5, await page.Locator("#so-far li[id]").CountAsync());
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Forms_WithoutScripts_WorkOneByOne()
    {
        var page = await Paired(javaScript: false);

        await page.GetByRole(AriaRole.Button, new() { NameRegex = new("^Begin ") }).First.TapAsync();
        await Expect(page.Locator("#switch")).ToHaveClassAsync(new System.Text.RegularExpressions.Regex(@"\bon\b"));
        await page.GetByLabel("Remark", new() { Exact = true }).FillAsync("Without a script");
        await page.Locator(".remark").GetByRole(AriaRole.Button).TapAsync();
        await Expect(page.Locator("#so-far")).ToContainTextAsync("Without a script");
        await page.Locator("input[type=file][capture]").SetInputFilesAsync(new FilePayload { Name = "a.jpg", MimeType = "image/jpeg", Buffer = Picture(5) });
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep the picture" }).TapAsync();
        await Expect(page.Locator("#so-far")).ToContainTextAsync("Picture");
        await page.Locator("#so-far li", new() { HasText = "Without a script" }).GetByRole(AriaRole.Button, new() { NameRegex = new("^Take back") }).TapAsync();
        await Expect(page.Locator("#so-far")).Not.ToContainTextAsync("Without a script");

        Assert.Equal(JotKind.Photo, Assert.Single(bench.Slate.Jots).Kind);
        await page.Context.CloseAsync();
    }

    [Theory]
    [InlineData(320, ColorScheme.Light)]
    [InlineData(360, ColorScheme.Dark)]
    [InlineData(1280, ColorScheme.Light)]
    public async Task Page_AtAnyWidthAndLight_CanBeReadAndPressedByEveryone(int width, ColorScheme scheme)
    {
        var page = await Paired(width, scheme);
        await Remark(page, "Something to change");
        await Kept(page, "Something to change");
        await page.EvaluateAsync("document.querySelectorAll('details').forEach(one => one.open = true)");

        var result = await page.RunAxe(Rules);
        Faults.None([.. result.Violations.SelectMany(fault => fault.Nodes.Select(node => $"{fault.Id}, {fault.Help}: {node.Html}"))]);
        Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"), "It scrolls sideways.");
        Faults.None(await page.EvaluateAsync<string[]>("""
            [...document.querySelectorAll('main button, main summary, main select, main textarea, main input:not([type=hidden]):not([type=radio]):not([type=file]), main .as-button, main .pick span, .jump a')]
              .filter(one => one.checkVisibility() && one.getBoundingClientRect().height < 56)
              .map(one => `${one.outerHTML.slice(0, 80)} is ${one.getBoundingClientRect().height} high`)
            """));
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Page_WithTheKeyboardAlone_BeginsAndNotes()
    {
        var page = await Paired(1280);
        await TabTo(page, "button.begin");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("#switch")).ToHaveClassAsync(new System.Text.RegularExpressions.Regex(@"\bon\b"));
        await TabTo(page, "#text");
        await page.Keyboard.TypeAsync("By keyboard");
        await page.Keyboard.PressAsync("Enter");
        await Kept(page, "By keyboard");
        await TabTo(page, "#size summary");
        await page.Keyboard.PressAsync("Enter");
        await TabTo(page, "#size input[type=radio]");
        await page.Keyboard.PressAsync("Space");
        for (var choice = 0; choice < 12 && !await page.EvaluateAsync<bool>("document.activeElement.parentElement.textContent.includes('H7')"); choice++)
        {
            await page.Keyboard.PressAsync("ArrowDown");
        }

        await TabTo(page, "#actual");
        await page.Keyboard.TypeAsync("12.01");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("#told .verdict")).ToBeVisibleAsync();
        await page.Context.CloseAsync();
    }

    public void Dispose() => bench.Dispose();

    private static async Task TabTo(IPage page, string selector)
    {
        for (var stop = 0; stop < 150; stop++)
        {
            if (await page.EvaluateAsync<bool>("selector => document.activeElement.matches(selector)", selector))
            {
                return;
            }

            await page.Keyboard.PressAsync("Tab");
        }

        Assert.Fail($"The keyboard does not lead to {selector}.");
    }

    private async Task<IPage> Paired(int width = 360, ColorScheme scheme = ColorScheme.Light, bool javaScript = true)
    {
        var page = await site.Phone(width, scheme, javaScript);
        await page.GotoAsync(new Uri(bench.Phones, "pair").AbsoluteUri);
        await page.GetByLabel("The six digits on the terminal").FillAsync(bench.Code);
        await page.GetByRole(AriaRole.Button, new() { Name = "Pair" }).TapAsync();
        await Expect(page.Locator("h1")).ToContainTextAsync("Tonight");
        return page;
    }

    private async Task Tap(ILocator target)
    {
        taps++;
        await target.TapAsync();
    }

    private async Task Counted(int wanted, Func<Task> work)
    {
        taps = 0;
        await work();
        Assert.Equal(wanted, taps);
    }

    private static async Task Remark(IPage page, string words)
    {
        await page.GetByLabel("Remark", new() { Exact = true }).FillAsync(words);
        await page.Keyboard.PressAsync("Enter");
    }

    private static Task Kept(IPage page, string words) => Expect(page.Locator("#so-far")).ToContainTextAsync(words);

    private static Task Waiting(IPage page, int count) => Expect(page.Locator("#queue")).ToHaveAttributeAsync("data-waiting", $"{count}");

    // A picture of eight by eight, each of another grey.
    private static byte[] Picture(int grey)
    {
        using var image = new SixLabors.ImageSharp.Image<SixLabors.ImageSharp.PixelFormats.L8>(8, 8, new SixLabors.ImageSharp.PixelFormats.L8((byte)(20 * grey)));
        using var stream = new MemoryStream();
        image.Save(stream, new SixLabors.ImageSharp.Formats.Jpeg.JpegEncoder());
        return stream.ToArray();
    }

    private sealed class WithoutFetching : AxeRunOptions
    {
        [JsonProperty("preload")]
        public bool Preload { get; }
    }
}
