using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;

namespace Journal.Site.Tests.Machines;

/// <summary>What pages say of themselves to machines.</summary>
public sealed class MetadataTests
{
    private const string Entry = "drill/entry/2025-01-01-one.html";

    [Fact]
    public void Page_WithAnAddress_HasCanonicalAndOpenGraphAddresses()
    {
        using var journal = Small("address: https://example.org/bench/\n");
        var page = Publish(journal, Entry);

        Assert.Equal("https://example.org/bench/" + Entry, page.QuerySelector("link[rel=canonical]")?.GetAttribute("href"));
        Assert.Equal("https://example.org/bench/" + Entry, Property(page, "og:url"));
        Assert.Equal("article", Property(page, "og:type"));
        Assert.Equal("One </script> evening", Property(page, "og:title"));
        Assert.StartsWith("https://example.org/bench/photos/", Property(page, "og:image"), StringComparison.Ordinal);
        Assert.Contains("Sitemap: https://example.org/bench/sitemap.xml", journal.Text("robots.txt"), StringComparison.Ordinal);
        Assert.Contains($"<loc>https://example.org/bench/{Entry}</loc>", journal.Text("sitemap.xml"), StringComparison.Ordinal);
    }

    [Fact]
    public void Site_WithoutAnAddress_HasNoAbsoluteAddressOfItsOwn()
    {
        using var journal = Small("");
        journal.Publish();

        Assert.False(File.Exists(Path.Combine(journal.Site, "sitemap.xml")));
        foreach (var (address, text) in journal.Texts().Where(one => one.Address.EndsWith(".html", StringComparison.Ordinal)))
        {
            var page = Parse(text);
            Assert.Null(page.QuerySelector("link[rel=canonical], meta[property='og:url'], meta[property='og:image']"));
            Assert.All(page.QuerySelectorAll("[href^=http], [src^=http]"), link => Assert.Equal("https://video.example/1", link.GetAttribute("href")!.Split('#')[0]));
            Assert.NotEqual("", address);
        }
    }

    [Fact]
    public void Entry_DataBlock_IsAnArticleWithPicturesAndCaptions()
    {
        using var journal = Small("address: https://example.org/bench/\n");
        var page = Publish(journal, Entry);
        using var data = JsonDocument.Parse(page.QuerySelector("script[type='application/ld+json']")!.TextContent);
        var article = data.RootElement;

        Assert.Equal("https://schema.org", article.GetProperty("@context").GetString());
        Assert.Equal("Article", article.GetProperty("@type").GetString());
        Assert.Equal("One </script> evening", article.GetProperty("headline").GetString());
        Assert.Equal("2025-01-01", article.GetProperty("datePublished").GetString());
        Assert.Equal("Wren", article.GetProperty("author").GetProperty("name").GetString());
        var picture = article.GetProperty("image")[0];
        Assert.Equal("ImageObject", picture.GetProperty("@type").GetString());
        Assert.Equal("A <b>boss</b>", picture.GetProperty("caption").GetString());
        Assert.Equal(32, picture.GetProperty("width").GetInt32());
        Assert.StartsWith("https://example.org/bench/photos/", picture.GetProperty("contentUrl").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Policy_OfEveryPage_AllowsTheSiteAndItsOwnDataBlockAlone()
    {
        using var journal = Small("");
        journal.Publish();

        foreach (var (address, text) in journal.Texts().Where(one => one.Address.EndsWith(".html", StringComparison.Ordinal)))
        {
            var page = Parse(text);
            var blocks = page.QuerySelectorAll("script:not([src])").ToList();
            var hashes = string.Concat(blocks.Select(block => $" 'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(block.TextContent)))}'"));
            Assert.Equal(
                $"default-src 'none'; style-src 'self'; img-src 'self'; script-src 'self'{hashes}; base-uri 'none'; form-action 'none'",
                page.QuerySelector("meta[http-equiv='Content-Security-Policy']")?.GetAttribute("content"));
            Assert.All(blocks, block => Assert.Equal("application/ld+json", block.GetAttribute("type")));
            Assert.Empty(page.QuerySelectorAll("[style], style, [onclick], [onload]"));
            Assert.Equal(2, page.QuerySelectorAll("link[rel=alternate]").Length);
            Assert.True(page.Title!.Length > 0 && page.QuerySelector("meta[name=description]")!.GetAttribute("content")!.Length > 0, address);
        }
    }

    [Fact]
    public void Video_Card_StandsOnTheBuildAndOnWhatItCovers()
    {
        using var journal = Small("");
        journal.Publish();

        Assert.Equal(["drill/entry/2025-01-01-one.html", "drill/index.html", "drill/part/head.html"], journal.Texts()
            .Where(one => one.Text.Contains("https://video.example/1#t=200", StringComparison.Ordinal)).Select(one => one.Address).Order(StringComparer.Ordinal));
        Assert.Equal("0:00 Part 1\n3:20 Setting up\n1:00:05 Done\n", journal.Text("drill/video-1-chapters.txt"));
        Assert.Contains("drill/video-1-chapters.txt", journal.Text("drill/index.html"), StringComparison.Ordinal);
    }

    [Fact]
    public void Story_OfABuild_GoesPartByPartAndEndsWithTheWhole()
    {
        using var journal = Small("")
            .With("drill/2024-12-01-box.md", "---\ntitle: Box\npart: whole\noperation: planning\nhours: 1\nstory: It came in a box.\n---\n")
            .With("drill/2025-01-02-two.md", "---\ntitle: Two\npart: whole\noperation: assembly\nhours: 1\nstory: It stood up.\n---\n")
            .With("drill/2025-01-03-three.md", "---\ntitle: Three\npart: head\noperation: boring\nhours: 1\nstory: The hole went through.\n---\n");
        journal.Publish();

        Assert.Equal(
            "Drill\n=====\n\nThe beginning\n  2024-12-01  It came in a box.\n\nHead\n  2025-01-01  The face was flat.\n  2025-01-03  The hole went through.\n\nBuild as a whole\n  2025-01-02  It stood up.\n",
            journal.Text("drill/story.txt"));
    }

    [Fact]
    public void NotFound_WithAnAddress_FindsItsStyleFromAnyDepthAndNamesNoCanonical()
    {
        using var journal = Small("address: https://example.org/bench/\n");
        var page = Publish(journal, "404.html");

        Assert.Equal("/bench/style.css", page.QuerySelector("link[rel=stylesheet]")?.GetAttribute("href"));
        Assert.Null(page.QuerySelector("link[rel=canonical]"));
        Assert.DoesNotContain("404.html", journal.Text("sitemap.xml"), StringComparison.Ordinal);
    }

    private static PublishedJournal Small(string more)
    {
        var journal = new PublishedJournal()
            .With("journal.yaml", "title: The Lean-to\nmaker: Wren\n" + more)
            .With("drill/build.yaml", "title: Drill\nparts: [{id: head}, {id: base}]\nvideos:\n  - {url: https://video.example/1, title: Part 1, covers: [head, 2025-01-01/2025-01-01], chapters: [{at: \"3:20\", title: Setting up}, {at: \"1:00:05\", title: Done}]}\n")
            .With("drill/2025-01-01-one.md", "---\ntitle: One </script> evening\npart: head\noperation: boring\nhours: 1\nstory: The face was flat.\nphotos: [{file: photos/a.png, caption: A <b>boss</b>}]\n---\nDone.\n")
            .With("drill/2025-01-05-base.md", "---\ntitle: Base\npart: base\noperation: milling\nhours: 1\n---\nDone.\n");
        var photo = Path.Combine(journal.Folder, "drill/photos/a.png");
        Directory.CreateDirectory(Path.GetDirectoryName(photo)!);
        using var picture = new SixLabors.ImageSharp.Image<SixLabors.ImageSharp.PixelFormats.Rgb24>(32, 24);
        SixLabors.ImageSharp.ImageExtensions.SaveAsPng(picture, photo);
        return journal;
    }

    private static IDocument Publish(PublishedJournal journal, string address)
    {
        journal.Publish();
        return Parse(journal.Text(address));
    }

    private static IDocument Parse(string html) => new HtmlParser().ParseDocument(html);

    private static string? Property(IDocument page, string name) => page.QuerySelector($"meta[property='{name}']")?.GetAttribute("content");
}
