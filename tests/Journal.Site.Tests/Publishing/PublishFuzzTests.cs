using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Xml.Linq;
using Journal.Cli.Tests;
using Journal.Core.Model;
using Journal.Core.Parsing.Problems;
using Journal.Site.Tests.Pages;
using Journal.Tests.Shared;

namespace Journal.Site.Tests.Publishing;

/// <summary>
/// Random bodies and titles, most of them bad, through reading and on to pages, feeds and the find index: what is not refused
/// is published, within two seconds, and every page keeps to <see cref="PageRules"/>. <c>JOURNAL_PUBLISH_FUZZ=20000</c> asks
/// for more entries, <c>JOURNAL_FUZZ_SEED</c> for another beginning.
/// </summary>
public sealed class PublishFuzzTests
{
    private const int Together = 40;

    private static readonly TimeSpan Limit = TimeSpan.FromSeconds(2);

    private static readonly string[] Pieces =
    [
        "> ", "- ", "1. ", "1) ", "* ", "+ ", "    ", "\t", "#", "# ", "===", "\n---\n", "```", "~~~", "`", "``", "*", "**", "***", "_", "__", "~~", "[", "]", "(", ")", "![", "](", "[a](b)", "[a][b]", "[b]: part:head\n", "[b]: <x> 'y'\n", "[^1]", "[^1]: a\n",
        "|", "|a", "|-", "\n|a|b|\n|-|-:|\n|1|2|\n", "|:-:|", "\\|", "<", ">", "<b>", "</b>", "<div>", "</div>", "<a href=\"javascript:x\">", "<img src=x onerror=y>", "<!--", "-->", "<![CDATA[", "]]>", "<?x", "<script>", "</script>", "<style>", "<svg><a xlink:href=x>", "<math>", "<table><tr><td>", "<template>", "<plaintext>", "<textarea>", "<title>", "<base href=x>",
        "&amp;", "&#0;", "&#x110000;", "&#8238;", "&lt;", "\\", "\\\n", "  \n", "\r", "\r\n", "\n", "\n\n", "\0", "\u0001", "\u001B", "\u007F", "\u0085", "\u00A0", "\u00AD", "\u200B", "\u200D", "\u200F", "\u2028", "\u2029", "\u202E", "\u2066", "\uFEFF", "\uFFFE", "\uFFFF", "\U0001F529", "\U000E0041", "e\u0301", "\u0301", "é", "İ", "ı", "ß", "ﬀ", "٣", "１２", "½", "中", "ש",
        "https://example.org/", "<https://example.org/>", "http://[::1]/", "http://%00/", "https://xn--a/", "https://a@b:99999/", "mailto:a@b", "data:text/html,x", "file:///etc/passwd", "//host/x", "../../x", "..\\..\\x", "%2e%2e/", "part:head", "[a](part:head)", "[a](entry:drill/", "[a](tool:lathe 'b')", "![a](photos/a.png)", "![](../x.png)",
        "{{ page.title }}", "{{ for i in 1..9 }}", "}}", "{%", "${x}", "`+x+`", "'", "\"", "0.1 mm", "1/2 in", "25 H7", "999999999999999999999999", "word ", "a", "A sentence about boring the head. ",
    ];

    private const string Good = "It came out [well](part:head).\n\n- one\n  - two\n\n> quoted\n\n| a | b |\n|---|--:|\n| 1 | 2 |\n\n```\ncode\n```\n\n1. *a* **b** `c`\n\n[d][r] ![e](photos/a.png) <b>f</b>\n\n[r]: tool:lathe\n";

    [Fact]
    public void Publishing_RandomTexts_NeverFailsAndKeepsEveryPageInItsRules()
    {
        var count = Number("JOURNAL_PUBLISH_FUZZ", 120);
        var random = new Random(Number("JOURNAL_FUZZ_SEED", 20251003));
        using var journal = JournalOnDisk.Empty()
            .With("tools.yaml", "- {id: lathe}\n")
            .With("drill/build.yaml", "title: Drill\nparts: [{id: head}]\n")
            .WithPicture("drill/photos/a.png");
        var (published, peakBefore) = (0, Peak());
        for (var done = 0; done < count; done += Together)
        {
            var texts = Enumerable.Range(0, Together).Select(_ => (Title: Words(random), Body: Body(random))).ToList();
            published += Publish(journal, texts, done);
        }

        Tries.Add("texts", count);
        Assert.InRange(published, count / 3, count);
        Assert.True(Peak() - peakBefore < 1L << 30);
    }

    // Other tests run in this process too, so what counts is how far it rises here.
    private static long Peak()
    {
        using var process = Process.GetCurrentProcess();
        return process.PeakWorkingSet64;
    }

    // Of all together; one by one where that took long or failed, to name the one at fault.
    private static int Publish(JournalOnDisk journal, List<(string Title, string Body)> texts, int first)
    {
        try
        {
            var published = PublishThese(journal, texts, out var took);
            if (took > Limit && texts.Count > 1)
            {
                // A busy machine is slow once, a hang is slow again.
                Assert.All(texts, (text, i) => Publish(journal, [text], first + i));
            }
            else if (took > Limit)
            {
                PublishThese(journal, texts, out took);
                Assert.True(took < Limit, $"took {took}");
            }

            return published;
        }
        catch (Exception e) when (texts.Count > 1)
        {
            Assert.All(texts, (text, i) => Publish(journal, [text], first + i));
            throw new InvalidOperationException($"Texts {first} to {first + texts.Count} fail together, not alone.", e);
        }
        catch (Exception e)
        {
            throw new InvalidOperationException($"text {first}, {e.Message}: {JsonSerializer.Serialize(new[] { texts[0].Title, texts[0].Body })}", e);
        }
    }

    private static int PublishThese(JournalOnDisk journal, List<(string Title, string Body)> texts, out TimeSpan took)
    {
        foreach (var old in Directory.EnumerateFiles(journal.PathOf("drill"), "*.md"))
        {
            File.Delete(old);
        }

        foreach (var (i, (title, body)) in texts.Index())
        {
            var quoted = JsonSerializer.Serialize(title);
            journal.With($"drill/2025-10-03-text-{i}.md", $"---\ntitle: {quoted}\npart: head\noperation: boring\nhours: 5m\nlessons: {{id: lesson-{i}, text: {quoted}}}\nstory: {quoted}\nphotos: {{file: photos/a.png, caption: {quoted}}}\n---\n{body}");
        }

        var watch = Stopwatch.StartNew();
        RemoveRefused(journal);
        var site = journal.Publish();
        took = watch.Elapsed;
        foreach (var page in site.Pages.Where(page => page.Contains("/entry/", StringComparison.Ordinal) || page.StartsWith("lesson", StringComparison.Ordinal)))
        {
            Assert.Empty(PageRules.Broken(site.Page(page)).Select(broken => $"{page}: {broken}"));
            Assert.Single(site.Page(page).QuerySelectorAll("h1"));
            Assert.NotNull(site.Page(page).QuerySelector("body > footer.foot a[href$='feed.xml']"));
        }

        XDocument.Load(site.PathOf("feed.xml"));
        JsonDocument.Parse(site.Text("feed.json")).Dispose();
        return site.Pages.Count(page => page.Contains("/entry/", StringComparison.Ordinal));
    }

    // While a file is refused, links into it are not judged: some faults come to light when it is gone.
    private static void RemoveRefused(JournalOnDisk journal)
    {
        while (journal.Read().Problems.Where(problem => problem.Severity == Severity.Error).ToLookup(problem => problem.Place.File) is { Count: > 0 } refused)
        {
            foreach (var file in refused)
            {
                Assert.All(file, problem => AssertInside(problem.Place, File.ReadAllText(journal.PathOf(file.Key))));
                File.Delete(journal.PathOf(file.Key));
            }
        }
    }

    private static void AssertInside(Place place, string text)
    {
        var lines = text.Replace("\r\n", "\n", StringComparison.Ordinal).Split('\n', '\r');
        Assert.True(place.Line >= 1 && place.Line <= lines.Length && place.Column >= 1 && place.Column <= lines[place.Line - 1].Length + 1, $"{place}");
    }

    private static string Body(Random random)
    {
        var body = new StringBuilder();
        for (var times = random.Next(1, 8); times > 0; times--)
        {
            body.Append(random.Next(6) switch
            {
                0 => Repeated(random, Piece(random) + (random.Next(2) == 0 ? Piece(random) : "")),
                1 => Words(random),
                2 => string.Concat(Enumerable.Range(0, random.Next(2, 30)).Select(deep => $"{new string(' ', 2 * deep)}{Pieces[deep % 6]}a\n")),
                3 => Good[random.Next(Good.Length)..],
                4 => Good[..random.Next(Good.Length)] + Piece(random),
                _ => $"\n{Good.Replace(Piece(random), Repeated(random, Piece(random)), StringComparison.Ordinal)}\n",
            });
            body.Append(random.Next(2) == 0 ? "\n\n" : Piece(random));
        }

        return body.ToString();
    }

    // Mostly few, at times thousands.
    private static string Repeated(Random random, string piece) => string.Concat(Enumerable.Repeat(piece, (int)Math.Pow(10, random.NextDouble() * (random.Next(10) == 0 ? 3.7 : 1.5))));

    private static string Words(Random random) => "x" + string.Concat(Enumerable.Range(0, random.Next(1, 12)).Select(_ => Piece(random)));

    private static string Piece(Random random) => Pieces[random.Next(Pieces.Length)];

    private static int Number(string variable, int otherwise) =>
        int.TryParse(Environment.GetEnvironmentVariable(variable), NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : otherwise;
}
