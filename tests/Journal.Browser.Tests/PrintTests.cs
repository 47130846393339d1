using System.Text;
using System.Text.RegularExpressions;

namespace Journal.Browser.Tests;

/// <summary>On paper: a part sheet is a shop copy on one page.</summary>
[Collection(SharedDemo.Name)]
public sealed partial class PrintTests(DemoSite site)
{
    [Theory]
    [InlineData("A4")]
    [InlineData("Letter")]
    public async Task PartSheet_Every_PrintsOnOnePage(string format)
    {
        var faults = new List<string>();
        var page = await site.Open();
        foreach (var address in site.OfKind("part"))
        {
            await page.GotoAsync(new Uri(site.Http, address).AbsoluteUri);
            var count = await PagesOf(page, format);
            if (count != 1)
            {
                faults.Add($"{address}: {count} pages");
            }
        }

        await page.Context.CloseAsync();
        Faults.None(faults);
    }

    [Fact]
    public async Task Entry_TheLongest_PrintsOnAFewPages()
    {
        var page = await site.Open();
        await page.GotoAsync(new Uri(site.Http, site.OfKind("entry")[0]).AbsoluteUri);

        Assert.InRange(await PagesOf(page, "A4"), 1, 4);
        await page.Context.CloseAsync();
    }

    private static async Task<int> PagesOf(Microsoft.Playwright.IPage page, string format)
    {
        var pdf = await page.PdfAsync(new() { Format = format, PreferCSSPageSize = false });
        return PageObject().Count(Encoding.Latin1.GetString(pdf));
    }

    // ISO 32000-1, 7.7.3.3: each page is an object whose Type is Page.
    [GeneratedRegex(@"/Type\s*/Page\b")]
    private static partial Regex PageObject();
}
