using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Newtonsoft.Json;

namespace Journal.Browser.Tests;

/// <summary>No violation of WCAG 2.2, levels A and AA, that axe can find.</summary>
[Collection(SharedDemo.Name)]
public sealed class AccessibilityTests(DemoSite site)
{
    private static readonly int[] Widths = [360, 820, 1440];

    private static readonly AxeRunOptions Rules = new WithoutFetching
    {
        RunOnly = RunOnlyOptions.Tags("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"),
    };

    // What another colour scheme can break.
    private static readonly AxeRunOptions RulesOfColour = new WithoutFetching { RunOnly = RunOnlyOptions.Rules("color-contrast", "link-in-text-block") };

    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task Pages_OfEveryKind_HaveNoViolation(ColorScheme scheme)
    {
        var page = await site.Open(scheme: scheme);
        var faults = new List<string>();
        for (var i = 0; i < site.Samples.Count; i++)
        {
            var width = Widths[(i + (int)scheme) % Widths.Length];
            await page.SetViewportSizeAsync(width, 900);
            await page.GotoAsync(new Uri(site.Http, site.Samples[i]).AbsoluteUri);
            await page.EvaluateAsync("document.querySelectorAll('details').forEach(one => one.open = true)");
            faults.AddRange(await Violations(page, $"{site.Samples[i]} at {width}", scheme == ColorScheme.Light ? Rules : RulesOfColour));
        }

        await page.Context.CloseAsync();
        Faults.None(faults);
    }

    [Theory]
    [InlineData(ColorScheme.Light, 360)]
    [InlineData(ColorScheme.Dark, 1440)]
    public async Task Find_WithResults_HasNoViolation(ColorScheme scheme, int width)
    {
        var page = await site.Open(width, scheme);
        await page.GotoAsync(new Uri(site.Http, "find.html#q=bore").AbsoluteUri);
        await page.Locator("#find-results mark").First.WaitForAsync();

        var faults = (await Violations(page, "find.html", Rules)).ToList();

        await page.Context.CloseAsync();
        Faults.None(faults);
    }

    private static async Task<IEnumerable<string>> Violations(IPage page, string where, AxeRunOptions rules)
    {
        var result = await page.RunAxe(rules);
        return result.Violations.SelectMany(fault => fault.Nodes.Select(node => $"{where}: {fault.Id}, {fault.Help}: {node.Html}")).Take(5);
    }

    // Axe's own fetch of the style sheet would be refused by the page's policy.
    private sealed class WithoutFetching : AxeRunOptions
    {
        [JsonProperty("preload")]
        public bool Preload { get; }
    }
}
