namespace Journal.Browser.Tests;

/// <summary>A page is there at once on a phone, and stays where it is while its pictures arrive.</summary>
[Collection(SharedDemo.Name)]
public sealed class FirstPaintTests(DemoSite site)
{
    private const int Most = 60_000;

    [Fact]
    public void Entry_WithoutItsPhotos_IsAtMost60Kilobytes()
    {
        var style = new FileInfo(Path.Combine(site.Folder, "style.css")).Length;

        Assert.All(site.OfKind("entry"), entry => Assert.InRange(style + new FileInfo(Path.Combine(site.Folder, entry)).Length, 1, Most));
    }

    [Fact]
    public async Task Pages_OfEveryKind_WaitForNothingButTheStyleSheet()
    {
        var page = await site.Open();
        foreach (var address in site.Samples)
        {
            await page.GotoAsync(new Uri(site.Http, address).AbsoluteUri);
            var blocking = await page.EvaluateAsync<string[]>("performance.getEntriesByType('resource').filter(one => one.renderBlockingStatus === 'blocking').map(one => one.name)");
            Assert.Equal([new Uri(site.Http, "style.css").AbsoluteUri], blocking);
            Assert.Equal(0, await page.EvaluateAsync<int>("[...document.querySelectorAll('script[src]')].filter(one => !one.defer).length"));
        }

        await page.Context.CloseAsync();
    }

    [Theory]
    [InlineData(360)]
    [InlineData(1440)]
    public async Task Entry_WhilePicturesArrive_DoesNotShift(int width)
    {
        var page = await site.Open(width);
        await page.RouteAsync("**/photos/**", async route =>
        {
            await Task.Delay(250);
            await route.ContinueAsync();
        });
        await page.AddInitScriptAsync("window.shift = 0; new PerformanceObserver(list => list.getEntries().forEach(one => window.shift += one.value)).observe({ type: 'layout-shift', buffered: true });");
        foreach (var address in new[] { "index.html", "bench-drill/entry/2025-10-03-head-face-plate.html", "bench-drill/story.html" })
        {
            await page.GotoAsync(new Uri(site.Http, address).AbsoluteUri);
            await page.EvaluateAsync("document.querySelectorAll('img').forEach(one => one.loading = 'eager')");
            var shown = await page.EvaluateAsync<int>("Promise.all([...document.images].map(one => one.decode())).then(all => new Promise(done => requestAnimationFrame(() => requestAnimationFrame(() => done(all.length)))))");

            Assert.NotEqual(0, shown);
            Assert.Equal(0, await page.EvaluateAsync<double>("window.shift"), 3);
            Assert.Equal(0, await page.EvaluateAsync<int>("document.querySelectorAll('img:not([width][height])').length"));
        }

        await page.Context.CloseAsync();
    }
}
