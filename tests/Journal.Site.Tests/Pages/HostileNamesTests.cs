using System.Text.Json;
using Journal.Cli.Tests;
using Journal.Site.Tests.Publishing;

namespace Journal.Site.Tests.Pages;

public class HostileNamesTests
{
    public static TheoryData<string> Names => new(
        """The "good" head & 'its' <b>cap</b>""",
        "</title><h1>Mine</h1>",
        "{{ page.title }} {{ include 'top' }}",
        "🔧 Bore 👩‍🔧 ±0.01 — naïve “Größe”",
        "\u202Eright to left\u202C and \u200Fmarked",
        "נגרות בסדנה",
        "A bell \u0007, a null-like \u0001, an escape \u001B[31m, a noncharacter \uFFFE",
        "&amp; &lt;script&gt; &#x3C;",
        "]]> <!-- --> <![CDATA[",
        "C:\\bench\\head.md",
        "-",
        string.Concat(Enumerable.Repeat("A very long title that goes on ", 200)),
        new string('w', 4000));

    [Theory]
    [MemberData(nameof(Names))]
    public void Title_OfAnyKind_StandsOnItsPagesAsItIs(string name)
    {
        var quoted = JsonSerializer.Serialize(name);
        using var journal = JournalOnDisk.Bare()
            .With("journal.yaml", $"title: {quoted}\nmaker: {quoted}\naddress: https://example.org/\noperations: [{{id: odd, title: {quoted}}}]\ncauses: [{{id: odd, title: {quoted}}}]\n")
            .With("tools.yaml", $"- {{id: odd, title: {quoted}, kind: machine, disclose: {quoted}}}\n")
            .With("drill/build.yaml", $"title: {quoted}\ndrawings: {quoted}\nparts:\n  - {{id: odd, item: 1, title: {quoted}, guess: 1h, drawing: {quoted}, material: brass}}\n")
            .WithEntry("drill/2025-10-03-odd.md", $$"""
                title: {{quoted}}
                part: odd
                operation: odd
                hours: 1h
                held: {{quoted}}
                tools: odd
                mistakes: {what: {{quoted}}, cause: odd, lost: 10m, lesson: {id: odd, text: {{quoted}} } }
                story: {{quoted}}
                milestone: {{quoted}}
                next: {{quoted}}
                snags: {{quoted}}
                trials: {on: hand, result: {{quoted}} }
                """);

        var site = journal.Publish();

        var shown = string.Concat(name.Trim().Select(letter => letter is '\u0007' or '\u0001' or '\u001B' or '\uFFFE' ? '\uFFFD' : letter));
        Assert.Equal(shown.Trim(), site.Page("drill/entry/2025-10-03-odd.html").QuerySelector("h1")!.TextContent.Trim());
        Assert.Contains(shown.Trim(), site.Page("drill/part/odd.html").QuerySelector("h1")!.TextContent, StringComparison.Ordinal);
        Assert.Contains(shown.Trim(), site.Page("tooling.html").GetElementById("odd")!.TextContent, StringComparison.Ordinal);
        foreach (var page in site.Pages.Where(page => page != "404.html"))
        {
            Assert.Empty(PageRules.Broken(site.Page(page)));
            Assert.Single(site.Page(page).QuerySelectorAll("h1"));
            Assert.DoesNotContain(site.Text(page), letter => (char.IsControl(letter) && letter is not ('\n' or '\t' or '\r')) || letter == '\uFFFE');
        }

        Assert.Equal(shown.Trim(), System.Xml.Linq.XDocument.Load(site.PathOf("feed.xml")).Descendants().First(element => element.Name.LocalName == "entry").Elements().First(element => element.Name.LocalName == "title").Value);
    }

    // Ids of a maker stand beside ids of our own on some pages.
    [Theory]
    [InlineData("sheet")]
    [InlineData("hours")]
    [InlineData("kind-machine")]
    [InlineData("causes")]
    [InlineData("parts")]
    public void Id_ThatAPageMightUseItself_StaysAlone(string id)
    {
        using var journal = JournalOnDisk.Empty()
            .With("journal.yaml", $"title: The Lean-to\noperations: [{id}, {id}-heading, {id}-title]\ntool-kinds: [{id}]\n")
            .With("tools.yaml", $"- {{id: {id}, title: Odd, kind: {id}}}\n- {{id: kind-{id}, title: Odder, kind: machine}}\n")
            .With($"{id}/build.yaml", $"title: Odd\nparts: [{{id: {id}, item: 1}}, {{id: {id}-title}}]\n")
            .With($"{id}-parts/build.yaml", "title: Odder\n")
            .WithEntry($"{id}/2025-10-03-odd.md", $"part: {id}\noperation: [{id}, {id}-heading, {id}-title]\nhours: 1h\ntools: [{id}, kind-{id}]\nmistakes: {{what: Odd., lost: 5m, lesson: {{id: {id}, text: Odd.}}}}\nlessons: {{id: {id}-title, text: Odder.}}")
            .WithEntry($"{id}-parts/2025-10-04-odder.md");

        var site = journal.Publish();

        Assert.All(site.Pages, page => Assert.Empty(site.Page(page).QuerySelectorAll("[id]").GroupBy(element => element.GetAttribute("id")).Where(same => same.Count() > 1).Select(same => $"{page}#{same.Key}")));
        Assert.NotNull(site.Page("tooling.html").GetElementById(id));
    }
}
