using System.Text.Json;
using AngleSharp.Html.Parser;
using Journal.Cli.Tests;
using Journal.Site.Tests.Pages;
using Journal.Site.Tests.Publishing;

namespace Journal.Site.Tests.Text;

/// <summary>A journal that has every text of Data/hostile-texts.txt in every place that holds words, published once.</summary>
public sealed class HostileSite : IDisposable
{
    private readonly JournalOnDisk journal = JournalOnDisk.Empty();

    public HostileSite()
    {
        Texts = [.. File.ReadAllLines(Repository.Data("hostile-texts.txt")).Where(line => line.Length > 0 && line[0] != '#')];
        journal.With("tools.yaml", string.Concat(Texts.Select((text, i) => $"- {{id: tool-{i}, title: {Quoted(text)}, kind: machine, disclose: {Quoted(text)}}}\n")))
            .With("drill/build.yaml", $"title: {Quoted(Texts[0])}\nparts:\n{string.Concat(Texts.Select((text, i) => $"  - {{id: part-{i}, item: {Quoted(text)}, title: {Quoted(text)}, drawing: {Quoted(text)}, material: {Quoted("brass " + text)}, supplied: {Quoted(text)}}}\n"))}")
            .WithPicture("drill/photos/plain.png");
        foreach (var (i, text) in Texts.Index())
        {
            journal.With($"drill/2025-10-03-text-{i}.md", $$"""
                ---
                title: {{Quoted(text)}}
                jobs:
                  - {part: part-{{i}}, operation: turning, hours: 5m, tools: [tool-{{i}}], held: {{Quoted(text)}}, datum: {{Quoted(text)}} }
                mistakes: {what: {{Quoted(text)}}, lost: 1m, lesson: {id: lesson-{{i}}, text: {{Quoted(text)}}, better: {{Quoted(text)}} } }
                next: {{Quoted(text)}}
                snags: {{Quoted(text)}}
                trials: {on: {{Quoted(text)}}, pressure: {{Quoted(text)}}, result: {{Quoted(text)}} }
                readings: {feature: {{Quoted(text)}}, required: 12 mm, actual: 12.01 mm }
                settings: {cutter: {{Quoted(text)}}, coolant: {{Quoted(text)}}, note: {{Quoted(text)}}, verdict: {{Quoted(text)}} }
                milestone: {{Quoted(text)}}
                story: {{Quoted(text)}}
                bought: {what: {{Quoted(text)}}, cost: 1}
                departure: {{Quoted(text)}}
                photos: {file: photos/plain.png, caption: {{Quoted(text)}}, alt: {{Quoted(text)}}, marks: {at: [50, 50], text: {{Quoted(text)}} } }
                ---
                {{text}}

                In a line: {{text}} and on.

                > {{text}}

                | a table | of it |
                | --- | ---: |
                | {{text}} | 1 |
                """);
        }

        Site = journal.Publish();
    }

    internal IReadOnlyList<string> Texts { get; }

    internal SiteOnDisk Site { get; }

    public void Dispose() => journal.Dispose();

    // Every JSON text is a YAML text in double quotes.
    private static string Quoted(string text) => JsonSerializer.Serialize(text);
}

public class HostileTextsTests(HostileSite hostile) : IClassFixture<HostileSite>
{
    [Fact]
    public void EveryPage_HoldsOnlyWhatMayStandOnAPage()
    {
        Assert.True(hostile.Texts.Count > 100);
        Assert.All(hostile.Site.Pages, page => Assert.Empty(PageRules.Broken(hostile.Site.Page(page)).Select(broken => $"{page}: {broken}")));
    }

    [Fact]
    public void EveryPage_KeepsItsOwnFrame()
    {
        foreach (var page in hostile.Site.Pages)
        {
            var document = hostile.Site.Page(page);

            Assert.Single(document.QuerySelectorAll("h1"));
            Assert.Single(document.QuerySelectorAll("main"));
            Assert.Single(document.QuerySelectorAll("title:not(svg title)"));
            Assert.Single(document.QuerySelectorAll("head meta[http-equiv]"));
            Assert.NotNull(document.QuerySelector("body > footer.foot a[href$='feed.xml']"));
            Assert.Empty(document.QuerySelectorAll("[id]").GroupBy(element => element.GetAttribute("id")).Where(same => same.Count() > 1).Select(same => $"{page}#{same.Key}"));
        }
    }

    [Fact]
    public void EveryRelativeLink_LeadsWithinTheSite()
    {
        var home = new Uri("https://example.org/");
        foreach (var page in hostile.Site.Pages)
        {
            var within = hostile.Site.Page(page).All.SelectMany(element => new[] { element.GetAttribute("href"), element.GetAttribute("src") }).Where(PageRules.IsWithin);

            Assert.All(within, address => Assert.True(hostile.Site.Has(Uri.UnescapeDataString(new Uri(new Uri(home, page), address).AbsolutePath[1..])), $"{page}: {address}"));
        }
    }

    [Fact]
    public void EveryTitle_StandsOnItsPageWordForWord()
    {
        foreach (var (i, text) in hostile.Texts.Index())
        {
            Assert.Equal(text.Trim(), hostile.Site.Page($"drill/entry/2025-10-03-text-{i}.html").QuerySelector("h1")!.TextContent);
        }
    }

    [Fact]
    public void EveryText_OfTheFeeds_HoldsOnlyWhatMayStandOnAPage()
    {
        using var json = JsonDocument.Parse(hostile.Site.Text("feed.json"));
        var items = json.RootElement.GetProperty("items").EnumerateArray().Select(item => item.GetProperty("content_html").GetString()!).ToList();
        var atom = System.Xml.Linq.XDocument.Load(hostile.Site.PathOf("feed.xml")).Descendants().Where(element => element.Name.LocalName == "content").Select(content => content.Value).ToList();

        Assert.Equal(items, atom);
        Assert.NotEmpty(items);
        Assert.All(items, html => Assert.Empty(PageRules.Broken(new HtmlParser().ParseDocument(html))));
    }
}
