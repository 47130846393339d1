using AngleSharp.Html.Dom;
using Journal.Core.Model;
using Journal.Site.Tests.Publishing;

namespace Journal.Site.Tests.Pages;

[Collection(DemoCollection.Name)]
public class WalkTests(DemoSite demo)
{
    private const string NotFound = "404.html";

    public static TheoryData<string> Homes => new("file:///home/wren/published%20site/", "https://example.org/", "https://example.net/some/way/down/");

    [Theory]
    [MemberData(nameof(Homes))]
    public void EveryLink_OfEveryPage_ResolvesInTheSite(string home)
    {
        foreach (var site in new[] { demo.Site, demo.WithoutAddress })
        {
            foreach (var page in site.Pages.Where(page => page != NotFound))
            {
                var missing = Addresses(site.Page(page)).Where(PageRules.IsWithin).Where(address => !Resolves(site, new Uri(home), page, address));

                Assert.True(!missing.Any(), $"{page} leads nowhere: {string.Join(", ", missing)}");
            }
        }
    }

    [Fact]
    public void EveryPage_HasNoAbsolutePathAndNoRequestElsewhere()
    {
        foreach (var site in new[] { demo.Site, demo.WithoutAddress })
        {
            foreach (var page in site.Pages.Where(page => page != NotFound || site == demo.WithoutAddress))
            {
                Assert.Empty(PageRules.Broken(site.Page(page)));
                Assert.DoesNotContain(Addresses(site.Page(page)), address => address.StartsWith('/') || address.StartsWith('\\') || address.StartsWith("file:", StringComparison.Ordinal));
            }
        }
    }

    // A server shows this page at any address that does not exist, so relative links would lead astray.
    [Fact]
    public void NotFound_OfASiteWithAnAddress_LeadsFromTheTopOfItsHost()
    {
        var inside = Addresses(demo.Site.Page(NotFound)).Where(address => !address.StartsWith('#')).ToList();

        Assert.NotEmpty(inside);
        Assert.All(inside, address => Assert.StartsWith("/bench/", address, StringComparison.Ordinal));
        Assert.All(inside, address => Assert.True(demo.Site.Has(address["/bench/".Length..]), address));
    }

    [Fact]
    public void EveryPage_HasOneHeadingOfTheFirstLevelAndNoIdTwice()
    {
        foreach (var page in demo.Site.Pages)
        {
            var document = demo.Site.Page(page);

            Assert.True(document.QuerySelectorAll("h1").Length == 1, $"{page} needs one h1.");
            Assert.True(document.Title!.Length > 0, page);
            Assert.Empty(document.QuerySelectorAll("[id]").GroupBy(element => element.GetAttribute("id")).Where(same => same.Count() > 1).Select(same => $"{page}#{same.Key}"));
        }
    }

    [Fact]
    public void EveryReferenceToAnId_OfEveryPage_IsThere()
    {
        string[] naming = ["aria-labelledby", "aria-describedby", "aria-controls", "for", "headers", "list"];
        string[] drawing = ["fill", "stroke", "clip-path", "marker-start", "marker-end", "marker-mid", "mask"];
        foreach (var page in demo.Site.Pages)
        {
            var document = demo.Site.Page(page);
            var named = document.All.SelectMany(element => naming.SelectMany(name => (element.GetAttribute(name) ?? "").Split(' ', StringSplitOptions.RemoveEmptyEntries)));
            var drawn = document.All.SelectMany(element => drawing.Select(name => element.GetAttribute(name)))
                .Where(value => value?.StartsWith("url(", StringComparison.Ordinal) == true).Select(value => value!["url(#".Length..^1]);

            Assert.Empty(named.Concat(drawn).Where(id => document.GetElementById(id) is null).Select(id => $"{page}: #{id}"));
        }
    }

    [Fact]
    public void EveryPage_IsReachedFromTheFrontPage()
    {
        var (seen, next) = (new HashSet<string> { "index.html" }, new Queue<string>(["index.html"]));
        while (next.TryDequeue(out var page))
        {
            foreach (var target in demo.Site.Page(page).QuerySelectorAll("a[href]").Select(link => link.GetAttribute("href")!).Where(PageRules.IsWithin).Select(address => Target(page, address)))
            {
                if (target.EndsWith(".html", StringComparison.Ordinal) && seen.Add(target))
                {
                    next.Enqueue(target);
                }
            }
        }

        // What leads on from a former address is reached by old links alone.
        Assert.Equal([NotFound], demo.Site.Pages.Except(seen).Where(page => demo.Site.Page(page).QuerySelector("meta[http-equiv=refresh]") is null));
    }

    // Addresses are permanent: readers and search engines keep them.
    [Fact]
    public void EveryPermanentAddress_Exists()
    {
        var journal = demo.Model;
        List<string> addresses = ["index.html", "timeline.html", "lessons.html", "tooling.html", "find.html", "feed.xml", "feed.json", "sitemap.xml"];
        addresses.AddRange(journal.Plans.Select(plan => $"plan/{plan.Id}.html"));
        addresses.AddRange(journal.Builds.Select(build => $"{build.Id}/index.html"));
        addresses.AddRange(journal.Builds.SelectMany(build => build.Parts.Select(part => $"{build.Id}/part/{part.Id}.html")));
        addresses.AddRange(journal.Entries.Where(entry => entry.Publish == Publication.Always).Select(entry => $"{entry.Build}/entry/{entry.Id}.html"));
        addresses.AddRange(journal.Entries.Where(entry => entry.Publish == Publication.Always).SelectMany(entry => entry.Lessons).Select(lesson => $"lesson/{lesson.Id}.html"));
        addresses.AddRange(journal.Entries.Where(entry => entry.Publish == Publication.Always).SelectMany(entry => entry.Jobs).SelectMany(job => job.Operations).Select(id => $"operation/{id}.html"));
        var anchors = demo.Site.Page("tooling.html").All.Select(element => element.Id).ToHashSet();

        Assert.All(addresses.Distinct(), address => Assert.True(demo.Site.Has(address), address));
        Assert.All(journal.Tools, tool => Assert.Contains(tool.Id.Value, anchors));
    }

    [Fact]
    public void EveryTarget_OfALinkInAText_SaysWhatPointsToIt()
    {
        var links = demo.Model.Entries.Where(entry => entry.Publish == Publication.Always)
            .SelectMany(entry => entry.Body.Links, (entry, link) => (entry, target: link.Target!.Value))
            .Where(link => link.target.Kind != LinkKind.Entry || link.target.Id != link.entry.Id.Value)
            .ToList();

        Assert.NotEmpty(links);
        foreach (var (entry, target) in links)
        {
            var page = target.Kind switch
            {
                LinkKind.Part => $"{target.Build}/part/{target.Id}.html",
                LinkKind.Tool => "tooling.html",
                LinkKind.Lesson => $"lesson/{target.Id}.html",
                _ => $"{target.Build}/entry/{target.Id}.html",
            };
            var from = $"{entry.Build}/entry/{entry.Id}.html";
            var scope = target.Kind == LinkKind.Tool ? demo.Site.Page(page).GetElementById(target.Id) : demo.Site.Page(page).DocumentElement;

            Assert.True(scope!.QuerySelectorAll("a[href]").Any(link => Target(page, link.GetAttribute("href")!) == from), $"{page} does not say that {from} points to {target.Id}.");
        }
    }

    private static IEnumerable<string> Addresses(IHtmlDocument page) =>
        page.All.Where(element => element is not IHtmlLinkElement { Relation: "canonical" })
            .SelectMany(element => new[] { element.GetAttribute("href"), element.GetAttribute("src") })
            .Concat(page.QuerySelectorAll("[srcset]").SelectMany(element => element.GetAttribute("srcset")!.Split(',').Select(one => (string?)one.Trim().Split(' ')[0])))
            .OfType<string>();

    private static bool Resolves(SiteOnDisk site, Uri home, string page, string address)
    {
        var target = new Uri(new Uri(home, page), address);
        if (!target.AbsoluteUri.StartsWith(home.AbsoluteUri, StringComparison.Ordinal))
        {
            return false;
        }

        var file = Uri.UnescapeDataString(target.GetLeftPart(UriPartial.Path)[home.AbsoluteUri.Length..]);
        var anchor = Uri.UnescapeDataString(target.Fragment.TrimStart('#'));
        return site.Has(file) && (anchor.Length == 0 || site.Ids(file).Contains(anchor));
    }

    private static string Target(string page, string address)
    {
        var home = new Uri("https://example.org/");
        return new Uri(new Uri(home, page), address).GetLeftPart(UriPartial.Path)[home.AbsoluteUri.Length..];
    }
}
