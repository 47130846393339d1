namespace Journal.Browser.Tests;

/// <summary>Pages keep to themselves: no fault in the console, no request elsewhere, nothing wider than the screen.</summary>
[Collection(SharedDemo.Name)]
public sealed class QuietPagesTests(DemoSite site)
{
    [Fact]
    public async Task Pages_AllOverHttpAt320Pixels_FitAndKeepToThemselves()
    {
        // WCAG 2.2, 1.4.10: no scrolling in two directions at a width of 320 CSS pixels.
        var faults = await Visit(site.Http, site.Pages, width: 320);

        Faults.None(faults);
    }

    [Fact]
    public async Task Pages_FromTheFileSystem_KeepToThemselves()
    {
        // The page for what was not found is only ever shown by a server.
        var faults = await Visit(site.File, [.. site.Samples.Where(page => page != "404.html")], width: 820);

        Faults.None(faults);
    }

    [Fact]
    public async Task NotFound_AtAnyDepth_IsShownWithItsStyle()
    {
        var page = await site.Open();
        await page.GotoAsync(new Uri(site.Http, "bench-drill/entry/no/such/page.html").AbsoluteUri);

        Assert.Equal("Page not found", await page.Locator("h1").InnerTextAsync());
        Assert.True(await page.EvaluateAsync<bool>("getComputedStyle(document.body).getPropertyValue('--paper') !== ''"));
        await page.Locator("main a").First.ClickAsync();
        Assert.Equal("The Lean-to", await page.Locator("h1").InnerTextAsync());
        await page.Context.CloseAsync();
    }

    private async Task<List<string>> Visit(Uri root, IReadOnlyList<string> addresses, int width)
    {
        var faults = new List<string>();
        var here = "";
        var page = await site.Open(width);
        page.Console += (_, message) => Note(message.Type is "error" or "warning", $"{here}: console says {message.Text}");
        page.PageError += (_, error) => Note(true, $"{here}: {error}");
        page.Request += (_, request) => Note(!request.Url.StartsWith(root.AbsoluteUri, StringComparison.Ordinal), $"{here}: asks for {request.Url}");
        foreach (var address in addresses)
        {
            here = address;
            await page.GotoAsync(new Uri(root, address).AbsoluteUri);
            var wide = await page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth");
            Note(wide > 0, $"{here}: {wide} pixels too wide");
        }

        await page.Context.CloseAsync();
        return faults;

        void Note(bool isFault, string words)
        {
            if (isFault)
            {
                lock (faults)
                {
                    faults.Add(words);
                }
            }
        }
    }
}
