using AngleSharp.Html.Parser;

namespace Journal.Site.Tests.Pages;

/// <summary>Addresses that were given to viewers once: they lead to where the page is now.</summary>
public sealed class FormerAddressesTests
{
    private const string Entry = "---\npart: head\noperation: gilding\nhours: 1h\ntools: [lathe]\nlessons:\n  - {id: clamp-it, text: Clamp it, formerly: drill-2025-10-03-all-1}\n  - Oil it\n---\n";

    [Theory]
    [InlineData("drill/part/old-head.html", "drill/part/head.html")]
    [InlineData("lesson/drill-2025-10-03-all-1.html", "lesson/clamp-it.html")]
    [InlineData("operation/gold-leaf.html", "operation/gilding.html")]
    [InlineData("old-drill/index.html", "drill/index.html")]
    [InlineData("old-drill/part/head.html", "drill/part/head.html")]
    [InlineData("old-drill/part/old-head.html", "drill/part/head.html")]
    [InlineData("old-drill/entry/2025-10-03-all.html", "drill/entry/2025-10-03-all.html")]
    [InlineData("lesson/old-drill-2025-10-03-all-2.html", "lesson/drill-2025-10-03-all-2.html")]
    public void FormerAddress_LeadsToThePageAsItIsNow(string old, string now)
    {
        using var journal = Published();
        var page = new HtmlParser().ParseDocument(journal.Text(old));
        var up = string.Concat(Enumerable.Repeat("../", old.Count(letter => letter == '/')));

        Assert.True(File.Exists(Path.Combine(journal.Site, now)), now);
        Assert.Equal($"0; url={up}{now}", page.QuerySelector("meta[http-equiv=refresh]")?.GetAttribute("content"));
        Assert.Equal($"https://example.org/bench/{now}", page.QuerySelector("link[rel=canonical]")?.GetAttribute("href"));
        Assert.Equal($"{up}{now}", page.QuerySelector(".gist a")?.GetAttribute("href"));
    }

    [Fact]
    public void FormerAddress_IsInNoSiteMapNorFound()
    {
        using var journal = Published();

        Assert.DoesNotContain("old-", journal.Text("sitemap.xml"), StringComparison.Ordinal);
        Assert.Contains("drill/part/head.html", journal.Text("sitemap.xml"), StringComparison.Ordinal);
    }

    [Fact]
    public void FormerTool_LeadsToItsLineOfTheBill()
    {
        using var journal = Published();

        var line = new HtmlParser().ParseDocument(journal.Text("tooling.html")).GetElementById("old-lathe");

        Assert.Equal("lathe", line?.Closest("tr")?.Id);
    }

    // The name of another thing by now: its page is there, and nothing leads away from it.
    [Fact]
    public void FormerAddress_ThatAnotherPageHasNow_IsThatPage()
    {
        using var journal = Published("  - {id: old-head, title: The other}\n");

        Assert.Contains("The other", journal.Text("drill/part/old-head.html"), StringComparison.Ordinal);
        Assert.DoesNotContain("refresh", journal.Text("drill/part/old-head.html"), StringComparison.Ordinal);
    }

    private static PublishedJournal Published(string part = "")
    {
        var journal = new PublishedJournal()
            .With("journal.yaml", "title: The Lean-to\naddress: https://example.org/bench/\noperations: [{id: gilding, kind: finishing, formerly: gold-leaf}]\n")
            .With("tools.yaml", "- {id: lathe, title: Lathe, kind: machine, formerly: old-lathe}\n")
            .With("drill/build.yaml", $"title: Drill\nformerly: old-drill\nparts:\n  - {{id: head, title: Head, formerly: old-head}}\n{part}")
            .With("drill/2025-10-03-all.md", Entry);
        journal.Publish();
        return journal;
    }
}
