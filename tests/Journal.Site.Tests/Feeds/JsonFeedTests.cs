using System.Globalization;
using System.Text.Json;
using AngleSharp.Html.Parser;
using Journal.Core.Model;
using Journal.Site.Tests.Publishing;

namespace Journal.Site.Tests.Feeds;

// JSON Feed, version 1.1 (jsonfeed.org/version/1.1): what it requires, and the types and meanings of what we write.
[Collection(DemoCollection.Name)]
public class JsonFeedTests(DemoSite demo)
{
    private static readonly string[] OfTheFeed = ["version", "title", "home_page_url", "feed_url", "language", "authors", "items"];
    private static readonly string[] OfAnItem = ["id", "url", "title", "summary", "content_html", "image", "date_published", "tags"];

    [Fact]
    public void Feed_TopLevel_HasWhatIsRequiredInTheRightTypes()
    {
        foreach (var site in new[] { demo.Site, demo.WithoutAddress })
        {
            var feed = Parse(site);

            Assert.Equal("https://jsonfeed.org/version/1.1", feed.GetProperty("version").GetString());
            Assert.Equal("The Lean-to", feed.GetProperty("title").GetString());
            Assert.Equal(JsonValueKind.Array, feed.GetProperty("items").ValueKind);
            Assert.Equal(["Wren"], feed.GetProperty("authors").EnumerateArray().Select(author => author.GetProperty("name").GetString()));
            Assert.Equal("en-GB", feed.GetProperty("language").GetString());
            Assert.Empty(feed.EnumerateObject().Select(one => one.Name).Except(OfTheFeed));
        }
    }

    [Fact]
    public void Feed_Addresses_StandOnlyWhereTheSiteHasOne()
    {
        Assert.Equal("https://example.org/bench/", Parse(demo.Site).GetProperty("home_page_url").GetString());
        Assert.Equal("https://example.org/bench/feed.json", Parse(demo.Site).GetProperty("feed_url").GetString());
        Assert.False(Parse(demo.WithoutAddress).TryGetProperty("home_page_url", out _));
        Assert.False(Parse(demo.WithoutAddress).TryGetProperty("feed_url", out _));
    }

    [Fact]
    public void Items_EachHas_AnIdContentAndADateOfRfc3339()
    {
        foreach (var (site, home) in new[] { (demo.Site, "https://example.org/bench/"), (demo.WithoutAddress, "") })
        {
            var items = Parse(site).GetProperty("items").EnumerateArray().ToList();

            Assert.NotEmpty(items);
            Assert.Equal(items.Count, items.Select(item => item.GetProperty("id").GetString()).Distinct().Count());
            foreach (var item in items)
            {
                Assert.Empty(item.EnumerateObject().Select(one => one.Name).Except(OfAnItem));
                Assert.False(string.IsNullOrEmpty(item.GetProperty("content_html").GetString()));
                Assert.Equal(JsonValueKind.Array, item.GetProperty("tags").ValueKind);
                var date = item.GetProperty("date_published").GetString()!;
                Assert.True(DateTimeOffset.TryParseExact(date, "yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out _), date);
                var url = item.GetProperty("url").GetString()!;
                Assert.StartsWith(home, url, StringComparison.Ordinal);
                Assert.True(site.Has(url[home.Length..]), url);
            }
        }
    }

    [Fact]
    public void Items_AreTheLatestShownEntriesNewestFirst()
    {
        var dates = Parse(demo.Site).GetProperty("items").EnumerateArray().Select(item => item.GetProperty("date_published").GetString()![..10]).ToList();
        var expected = demo.Model.Entries.Where(entry => entry.Publish == Publication.Always).OrderByDescending(entry => entry.Date).Take(dates.Count).Select(entry => $"{entry.Date:yyyy-MM-dd}");

        Assert.Equal(expected, dates);
    }

    // A reader shows the text elsewhere, so its links must not hang on where the page stood.
    [Fact]
    public void Items_LinksInTheirText_LeadToPagesOfTheSite()
    {
        var checkedLinks = 0;
        foreach (var (site, home) in new[] { (demo.Site, "https://example.org/bench/"), (demo.WithoutAddress, "") })
        {
            foreach (var item in Parse(site).GetProperty("items").EnumerateArray())
            {
                var text = new HtmlParser().ParseDocument(item.GetProperty("content_html").GetString()!);
                foreach (var address in text.All.SelectMany(element => new[] { element.GetAttribute("href"), element.GetAttribute("src") }).OfType<string>().Where(address => home.Length > 0 ? address.StartsWith(home, StringComparison.Ordinal) : !address.Contains(':', StringComparison.Ordinal)))
                {
                    Assert.True(site.Has(address[home.Length..].Split('#')[0]), address);
                    checkedLinks++;
                }

                Assert.DoesNotContain("\"../", text.Body!.InnerHtml, StringComparison.Ordinal);
            }
        }

        Assert.True(checkedLinks > 10, $"Only {checkedLinks} links were found.");
    }

    private static JsonElement Parse(SiteOnDisk site)
    {
        using var json = JsonDocument.Parse(File.ReadAllBytes(site.PathOf("feed.json")));
        return json.RootElement.Clone();
    }
}
