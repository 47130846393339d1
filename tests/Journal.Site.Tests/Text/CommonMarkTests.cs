using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using Journal.Cli.Tests;
using Journal.Core.Model;
using Journal.Site.Text;
using Journal.Site.Tests.Publishing;

namespace Journal.Site.Tests.Text;

/// <summary>
/// The examples of the CommonMark specification (spec.txt of the npm package commonmark-spec, CC BY-SA 4.0, fetched by
/// tests/run.sh), each as an entry's text through our whole pipeline, compared element by element. Where our pages
/// differ on purpose, the expected HTML is changed by the rule that says so, and only by that rule:
/// headings begin at the second level; code blocks can be reached by the keyboard and have no class; links go to https,
/// http, mailto and our own schemes alone; pictures come from the journal alone, else their words stand; raw HTML goes
/// through the sanitiser.
/// </summary>
public sealed partial class CommonMarkTests : IDisposable
{
    // Reference labels match by Unicode case folding, which makes `ẞ` of `SS`; the library compares letter by letter.
    private static readonly int[] NotByTheLibrary = [540];

    private readonly JournalOnDisk journal = JournalOnDisk.Empty().With("spec/build.yaml", "title: The specification\n");

    [Fact]
    public void EveryExample_DiffersOnlyWhereOurRulesSaySo()
    {
        var examples = Examples().ToList();
        foreach (var (number, markdown, _) in examples)
        {
            journal.With($"spec/2025-10-03-example-{number}.md", $"---\nhours: 1m\n---\n{markdown}");
        }

        var bodies = journal.Model().Entries.ToDictionary(entry => entry.Id.Value, entry => entry.Body);
        var (different, byRule) = (new List<string>(), new SortedDictionary<string, int>(StringComparer.Ordinal));
        foreach (var (number, markdown, html) in examples)
        {
            var body = bodies[$"2025-10-03-example-{number}"];
            var rules = new SortedSet<string>(StringComparer.Ordinal);
            var (expected, actual) = (Canonical(Expected(html, body, rules)), Canonical(new BodyHtml(new NoTargets()).Render(body).Markup));
            byRule[string.Join(", ", rules.DefaultIfEmpty("as the specification has it"))] = byRule.GetValueOrDefault(string.Join(", ", rules.DefaultIfEmpty("as the specification has it"))) + 1;
            if (expected != actual && !NotByTheLibrary.Contains(number))
            {
                different.Add($"Example {number} [{string.Join(", ", rules)}]\n{markdown}\nexpected {expected}\nactual   {actual}\n");
            }
        }

        Assert.Equal(652, examples.Count);
        Assert.True(different.Count == 0, string.Join('\n', different.Take(12)) + $"\n{different.Count} differ.");
        Assert.True(byRule["as the specification has it"] > 300, string.Join('\n', byRule));
    }

    public void Dispose() => journal.Dispose();

    private static IEnumerable<(int Number, string Markdown, string Html)> Examples()
    {
        var spec = File.ReadAllText(Path.Combine(Repository.Root, "tests/.tools/node_modules/commonmark-spec/spec.txt")).ReplaceLineEndings("\n");
        spec = spec[..spec.IndexOf("<!-- END TESTS -->", StringComparison.Ordinal)];
        return Example().Matches(spec).Select((match, i) => (i + 1, match.Groups[1].Value.Replace('→', '\t'), match.Groups[2].Value.Replace('→', '\t')));
    }

    private static string Expected(string html, Body body, SortedSet<string> rules)
    {
        var document = new HtmlParser().ParseDocument("<body>" + html);
        Headings(document, rules);
        Code(document, rules);
        if (body.HoldsHtml)
        {
            rules.Add("raw HTML");
            html = new Sanitiser().Clean(document.Body!.InnerHtml, new HashSet<string>());
            document = new HtmlParser().ParseDocument("<body>" + html);
        }

        Links(document, rules);
        Pictures(document, rules);
        return document.Body!.InnerHtml;
    }

    private static void Headings(IHtmlDocument document, SortedSet<string> rules)
    {
        var headings = document.QuerySelectorAll("h1, h2, h3, h4, h5, h6").ToList();
        var shift = 2 - headings.Select(heading => heading.LocalName[1] - '0').DefaultIfEmpty(2).Min();
        foreach (var heading in headings.Where(_ => shift != 0))
        {
            rules.Add("headings");
            var moved = document.CreateElement($"h{Math.Clamp(heading.LocalName[1] - '0' + shift, 2, 6)}");
            moved.Append([.. heading.ChildNodes]);
            heading.Replace(moved);
        }
    }

    private static void Code(IHtmlDocument document, SortedSet<string> rules)
    {
        foreach (var code in document.QuerySelectorAll("pre > code"))
        {
            rules.Add("code blocks");
            code.ParentElement!.SetAttribute("tabindex", "0");
            code.RemoveAttribute("class");
        }
    }

    private static void Links(IHtmlDocument document, SortedSet<string> rules)
    {
        foreach (var link in document.QuerySelectorAll("a[href]").Where(link => !SafeAddress.IsSafe(link.GetAttribute("href")!)))
        {
            rules.Add("links");
            link.Replace([.. link.ChildNodes]);
        }
    }

    private static void Pictures(IHtmlDocument document, SortedSet<string> rules)
    {
        foreach (var picture in document.QuerySelectorAll("img"))
        {
            rules.Add("pictures");
            picture.Replace(document.CreateTextNode(picture.GetAttribute("alt") ?? ""));
        }
    }

    // Element by element, attributes in order of their names, white space between blocks left out.
    private static string Canonical(string html)
    {
        var document = new HtmlParser().ParseDocument("<body>" + html);
        foreach (var text in document.Body!.Descendants<IText>().Where(text => text.Ancestors<IElement>().All(element => element.LocalName != "pre")).ToList())
        {
            text.TextContent = Blanks().Replace(text.TextContent, " ");
        }

        foreach (var element in document.Body!.QuerySelectorAll("*"))
        {
            var attributes = element.Attributes.OrderBy(attribute => attribute.Name, StringComparer.Ordinal).Select(attribute => (attribute.Name, attribute.Value)).ToList();
            attributes.ForEach(attribute => element.RemoveAttribute(attribute.Name));
            attributes.ForEach(attribute => element.SetAttribute(attribute.Name, attribute.Value));
        }

        document.Body!.Normalize();
        return BesideTags().Replace(document.Body!.InnerHtml, "$1").Trim();
    }

    private sealed class NoTargets : ITextTargets
    {
        public string? AddressOf(LinkTarget target) => null;

        public TextPicture? PictureOf(string written) => null;
    }

    [GeneratedRegex(@"^`{32} example\n([\s\S]*?)^\.\n([\s\S]*?)^`{32}$", RegexOptions.Multiline)]
    private static partial Regex Example();

    [GeneratedRegex(@"[ \t\r\n]+")]
    private static partial Regex Blanks();

    [GeneratedRegex(@" ?(</?(?:p|ul|ol|li|blockquote|h[1-6]|pre|hr|table|thead|tbody|tr|td|th|div|br)(?: [^>]*)?>) ?")]
    private static partial Regex BesideTags();
}
