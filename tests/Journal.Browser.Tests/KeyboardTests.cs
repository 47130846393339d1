using Microsoft.Playwright;

namespace Journal.Browser.Tests;

/// <summary>Everything can be reached and seen with the keyboard alone.</summary>
[Collection(SharedDemo.Name)]
public sealed class KeyboardTests(DemoSite site)
{
    private const int Stops = 30;

    [Fact]
    public async Task SkipLink_OfEveryKindOfPage_LeadsToTheText()
    {
        var page = await site.Open(360);
        foreach (var address in site.Samples)
        {
            await page.GotoAsync(new Uri(site.Http, address).AbsoluteUri);
            Assert.Equal("skip", await page.EvaluateAsync<string>("document.querySelector('a, button, input, summary, [tabindex]').className"));
            await page.Locator(".skip").FocusAsync();
            Assert.True(await page.EvaluateAsync<double>("document.activeElement.getBoundingClientRect().top") >= 0, $"{address}: the skip link cannot be seen");
            await page.Keyboard.PressAsync("Enter");
            Assert.Equal("the_sheet", await page.EvaluateAsync<string>("document.activeElement.id"));
        }

        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Focus_OnEveryStop_CanBeSeen()
    {
        // WCAG 2.2, 2.4.7 and 2.4.11: focus visible, and not hidden.
        var page = await site.Open(820);
        var faults = new List<string>();
        foreach (var address in site.Samples)
        {
            await page.GotoAsync(new Uri(site.Http, address).AbsoluteUri);
            for (var stop = 0; stop < Stops; stop++)
            {
                await page.Keyboard.PressAsync("Tab");
                var fault = await page.EvaluateAsync<string>("""
                    (() => {
                      const one = document.activeElement, style = getComputedStyle(one), box = one.getBoundingClientRect();
                      if (one === document.body) { return ''; }
                      if (style.outlineStyle === 'none' || parseFloat(style.outlineWidth) < 2) { return one.outerHTML.slice(0, 90) + ' has no outline'; }
                      if (box.width < 1 || box.bottom < 0 || box.top > innerHeight || box.right < 0 || box.left > innerWidth) { return one.outerHTML.slice(0, 90) + ' is out of sight'; }
                      return '';
                    })()
                    """);
                if (fault.Length > 0)
                {
                    faults.Add($"{address}: {fault}");
                }
            }
        }

        await page.Context.CloseAsync();
        Faults.None(faults);
    }

    [Fact]
    public async Task Ways_ByTabAndEnter_LeadThroughTheSite()
    {
        var page = await site.Open();
        await page.GotoAsync(new Uri(site.File, "bench-drill/part/head.html").AbsoluteUri);
        foreach (var (way, title) in new[] { ("Timeline", "Timeline"), ("Lessons", "Lessons"), ("Tooling", "Tooling"), ("Find", "Find"), ("Builds", "The Lean-to") })
        {
            await page.Locator(".skip").FocusAsync();
            for (var stop = 0; stop < 10 && await page.EvaluateAsync<string>("document.activeElement.textContent") != way; stop++)
            {
                await page.Keyboard.PressAsync("Tab");
            }

            await page.Keyboard.PressAsync("Enter");
            await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync(title);
        }

        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Table_BehindAChart_OpensWithEnter()
    {
        var page = await site.Open();
        await page.GotoAsync(new Uri(site.Http, "bench-drill/index.html").AbsoluteUri);
        var summary = page.Locator(".chart summary").First;
        await summary.FocusAsync();
        await page.Keyboard.PressAsync("Enter");

        Assert.True(await page.Locator(".chart details table").First.IsVisibleAsync());
        await page.Context.CloseAsync();
    }
}
