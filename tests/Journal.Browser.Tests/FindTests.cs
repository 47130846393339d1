using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Journal.Browser.Tests;

/// <summary>Searching in the browser, over HTTP and from the file system.</summary>
[Collection(SharedDemo.Name)]
public sealed class FindTests(DemoSite site)
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Find_MisspeltTool_IsReachedWithTheKeyboardAlone(bool fromFiles)
    {
        var page = await Begin(fromFiles);
        await page.Keyboard.TypeAsync("telescopng");
        await page.GetByRole(AriaRole.Heading, new() { Name = "Tools" }).WaitForAsync();

        Assert.Contains("searched for “telescoping”", await Status(page), StringComparison.Ordinal);
        await page.Keyboard.PressAsync("ArrowDown");
        Assert.Equal("Telescoping gauges", await page.EvaluateAsync<string>("document.activeElement.textContent"));
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page).ToHaveURLAsync(new Regex("tooling\\.html#telescoping-gauges$"));
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Find_FirstLetters_GroupsByKindAndMarksWordsInContext()
    {
        var page = await Begin(fromFiles: false);
        await page.Keyboard.TypeAsync("scrap");
        await page.Locator("#find-results li p mark").First.WaitForAsync();

        var headings = await page.Locator("#find-results h2").AllInnerTextsAsync();
        Assert.Contains(headings, heading => heading.StartsWith("Operations", StringComparison.Ordinal));
        Assert.Contains(headings, heading => heading.StartsWith("Entries", StringComparison.Ordinal));
        var marks = await page.Locator("#find-results mark").AllInnerTextsAsync();
        Assert.All(marks, mark => Assert.StartsWith("scrap", mark, StringComparison.OrdinalIgnoreCase));
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Find_Plan_LeadsToItsEstimateSheet()
    {
        var page = await Begin(fromFiles: false);
        await page.Keyboard.TypeAsync("bench shaper");
        await page.Locator("#find-results a").First.WaitForAsync();

        Assert.Contains(await page.Locator("#find-results h2").AllInnerTextsAsync(), heading => heading.StartsWith("Estimates", StringComparison.Ordinal));
        Assert.EndsWith("/plan/bench-shaper.html", await page.Locator("#find-results section:has(h2:text('Estimates')) a").First.GetAttributeAsync("href"), StringComparison.Ordinal);
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Find_ArrowKeys_GoDownAndBackToTheField()
    {
        var page = await Begin(fromFiles: false);
        await page.Keyboard.TypeAsync("quill");
        await page.Locator("#find-results a").First.WaitForAsync();

        await page.Keyboard.PressAsync("Enter");
        Assert.Equal("A", await Focused(page));
        await page.Keyboard.PressAsync("ArrowDown");
        Assert.Equal("A", await Focused(page));
        await page.Keyboard.PressAsync("ArrowUp");
        await page.Keyboard.PressAsync("ArrowUp");
        Assert.Equal("INPUT", await Focused(page));
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Find_SeveralWords_AllStandInWhatIsFound()
    {
        var page = await Begin(fromFiles: false);
        await page.Keyboard.TypeAsync("split block");
        await page.Locator("#find-results a").First.WaitForAsync();

        Assert.Equal("Split block for the quill", await page.Locator("#find-results a").First.InnerTextAsync());
        await page.Context.CloseAsync();
    }

    [Theory]
    [InlineData("faceplate", "Face plate")]
    [InlineData("QUÏLL", "Quill")]
    [InlineData("borring hed", "boring head")]
    public async Task Find_OtherSpelling_FindsTheSame(string typed, string found)
    {
        var page = await Begin(fromFiles: false);
        await page.Keyboard.TypeAsync(typed);
        await page.Locator("#find-results a").First.WaitForAsync();

        Assert.Contains(await page.Locator("#find-results a").AllInnerTextsAsync(), title => title.Contains(found, StringComparison.OrdinalIgnoreCase));
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Find_Nothing_SaysWhatToDoAndShowsTheLists()
    {
        var page = await Begin(fromFiles: false);
        await page.Keyboard.TypeAsync("zzzzzz");
        await Assertions.Expect(page.Locator("#find-status")).ToContainTextAsync("Nothing found");

        Assert.True(await page.Locator("#lists").IsVisibleAsync());
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Find_BeforeAnyoneTypes_LoadsNoIndex()
    {
        var asked = new List<string>();
        var page = await site.Open();
        page.Request += (_, request) => asked.Add(request.Url);
        await page.GotoAsync(new Uri(site.Http, "find.html").AbsoluteUri, new() { WaitUntil = WaitUntilState.NetworkIdle });

        Assert.DoesNotContain(asked, url => url.Contains("index.js", StringComparison.Ordinal) || url.Contains("matcher.js", StringComparison.Ordinal) || url.Contains("text-", StringComparison.Ordinal));
        await page.Keyboard.TypeAsync("bo");
        await page.Locator("#find-results a").First.WaitForAsync();
        Assert.Contains(asked, url => url.EndsWith("find/index.js", StringComparison.Ordinal));
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Find_BackFromAResult_ShowsTheSameSearch()
    {
        var page = await Begin(fromFiles: true);
        await page.Keyboard.TypeAsync("pinion");
        await page.Locator("#find-results a").First.ClickAsync();
        await page.GoBackAsync();
        await page.Locator("#find-results a").First.WaitForAsync();

        Assert.Equal("pinion", await page.Locator("#words").InputValueAsync());
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Find_WithoutScripts_SaysSoAndShowsTheLists()
    {
        var page = await site.Open(javaScript: false);
        await page.GotoAsync(new Uri(site.File, "find.html").AbsoluteUri);

        Assert.Contains("Search needs JavaScript", await page.Locator("main").InnerTextAsync(), StringComparison.Ordinal);
        Assert.False(await page.Locator("#words").IsVisibleAsync());
        Assert.True(await page.Locator("#lists").IsVisibleAsync());
        await page.Context.CloseAsync();
    }

    private async Task<IPage> Begin(bool fromFiles)
    {
        var page = await site.Open();
        await page.GotoAsync(new Uri(fromFiles ? site.File : site.Http, "find.html").AbsoluteUri);
        await page.Locator("#words").FocusAsync();
        return page;
    }

    private static Task<string> Status(IPage page) => page.Locator("#find-status").InnerTextAsync();

    private static Task<string> Focused(IPage page) => page.EvaluateAsync<string>("document.activeElement.tagName");
}
