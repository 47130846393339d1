using System.Xml.Linq;
using Journal.Site.Tests.Publishing;

namespace Journal.Site.Tests.Feeds;

// The sitemaps.org protocol, 0.9, from memory: an urlset of urls, each with its absolute address in loc.
[Collection(DemoCollection.Name)]
public class SiteMapTests(DemoSite demo)
{
    private static readonly XNamespace Map = "http://www.sitemaps.org/schemas/sitemap/0.9";

    [Fact]
    public void SiteMap_WithAnAddress_NamesEveryPageOnce()
    {
        var root = XDocument.Load(demo.Site.PathOf("sitemap.xml")).Root!;

        Assert.Equal(Map + "urlset", root.Name);
        Assert.Equal(
            demo.Site.Pages.Where(page => page != "404.html" && demo.Site.Page(page).QuerySelector("meta[http-equiv=refresh]") is null).Select(page => "https://example.org/bench/" + page).Order(StringComparer.Ordinal),
            root.Elements(Map + "url").Select(url => url.Element(Map + "loc")!.Value));
        Assert.Contains("Sitemap: https://example.org/bench/sitemap.xml", demo.Site.Text("robots.txt"), StringComparison.Ordinal);
    }

    [Fact]
    public void Site_WithoutAnAddress_NamesNoneAnywhere()
    {
        Assert.False(demo.WithoutAddress.Has("sitemap.xml"));
        Assert.DoesNotContain("Sitemap", demo.WithoutAddress.Text("robots.txt"), StringComparison.Ordinal);
        Assert.Empty(demo.WithoutAddress.Holding("example.org/bench"));
        Assert.All(demo.WithoutAddress.Pages, page => Assert.Null(demo.WithoutAddress.Page(page).QuerySelector("link[rel=canonical]")));
    }

    [Fact]
    public void EveryPage_WithAnAddress_SaysWhereItStands() => Assert.All(
        demo.Site.Pages.Where(page => page != "404.html" && demo.Site.Page(page).QuerySelector("meta[http-equiv=refresh]") is null),
        page => Assert.Equal("https://example.org/bench/" + page, demo.Site.Page(page).QuerySelector("link[rel=canonical]")?.GetAttribute("href")));
}
