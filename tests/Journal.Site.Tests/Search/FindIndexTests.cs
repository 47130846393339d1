using System.Globalization;
using System.IO.Compression;
using System.Text.RegularExpressions;
using Journal.Core.Model;
using Journal.Site.Search;
using Journal.Site.Templates;

namespace Journal.Site.Tests.Search;

public sealed class FindIndexTests
{
    [Fact]
    public void Size_FiveHundredEntriesOf250Words_StaysUnder160KilobytesZipped()
    {
        using var journal = LongJournal(entries: 500, words: 250);

        var index = FindIndex.Of(FindableThings.Of(journal.SiteFigures()));
        var scripts = index.Pieces.Select(piece => index.TextsOf(piece).ToArray()).ToList();

        var library = TemplateFiles.Own().Plain.Where(file => file.Key is "find/find.js" or "find/matcher.js").ToList();
        Assert.Equal(2, library.Count);
        Assert.InRange(Zipped(index.Script().ToArray()) + library.Sum(file => Zipped(file.Value)), 60_000, 160_000);
        Assert.InRange(scripts.Count, 30, 60);
        Assert.All(scripts, script => Assert.InRange(script.Length, 1, 40_000));
    }

    [Fact]
    public void Index_WhatStaysAtHome_IsInNoFileOfTheSite()
    {
        using var journal = new PublishedJournal()
            .With("tools.yaml", "- {id: secret-gauge, title: Zanzibar gauge, kind: gauge}\n- {id: file, title: Flat file, kind: hand}\n")
            .With("drill/build.yaml", "title: Drill\nparts: [{id: head}, {id: hidden-part, title: Xylograph}]\n")
            .With("drill/2025-01-01-shown.md", "---\npart: head\noperation: filing\nhours: 1\ntools: [file]\nphotos: [{file: photos/a.jpg, caption: Wyvern, publish: never}]\n---\nPlainly said.\n")
            .With("drill/2025-01-02-hidden.md", "---\ntitle: Quixotry\npart: hidden-part\noperation: woodworking\nhours: 1\ntools: [secret-gauge]\npublish: never\nmistakes: [{what: Yclept wrongly, lesson: {id: kept, text: Jabberwock}}]\n---\nBrillig.\n")
            .With("drill/2025-01-03-later.md", "---\ntitle: Vorpal\npart: head\noperation: filing\nhours: 1\npublish: after 2026-12-31\n---\nSnicker.\n");
        journal.Publish();

        foreach (var (address, text) in journal.Texts())
        {
            // The crib and the parts list are no evening's: what they name stays listed, whoever used it.
            foreach (var word in new[] { "Wyvern", "Quixotry", "Yclept", "Jabberwock", "Brillig", "Vorpal", "Snicker" })
            {
                Assert.False(text.Contains(word, StringComparison.OrdinalIgnoreCase), $"{address} tells of {word}");
            }
        }

        Assert.Contains("plainly", journal.Text("find/index.js"), StringComparison.Ordinal);
        Assert.Contains(journal.Texts(), file => file.Address.StartsWith("find/text-", StringComparison.Ordinal) && file.Text.Contains("Plainly said", StringComparison.Ordinal));
    }

    [Fact]
    public void Index_SameJournalTwice_IsTheSame()
    {
        using var journal = LongJournal(entries: 20, words: 40);

        byte[] Script() => FindIndex.Of(FindableThings.Of(journal.SiteFigures())).Script().ToArray();
        Assert.Equal(Script(), Script());
    }

    [Fact]
    public void Words_AccentsCapitalsAndNumbers_AreFolded() =>
        Assert.Equal(["uberwurf", "ø", "32", "10", "32", "0.005", "in", "1/2", "h7", "maker", "s"], WordsOf("ÜBERWURF, Ø 32: 10-32; 0.005 in, 1/2 H7 maker’s"));

    // The rule as matcher.js has it: the two must split alike.
    [Theory]
    [InlineData("3.5mm 10mm 1.2.3. .5 4/5/6 7/ 8./9 m3.5 ½ 2½ x²")]
    [InlineData("e\u0301te\u0301 ǅ İstanbul ΆΈ Ёлка 中文 a\u0300.1")]
    [InlineData("")]
    public void Words_AnyText_AreSplitByTheRuleOfTheBrowser(string text) =>
        Assert.Equal(Regex.Matches(string.Concat(WordsOf(text, whole: true)), @"\p{N}+(?:[./]\p{N}+)+|[\p{L}\p{N}]+").Select(match => match.Value), WordsOf(text));

    [Fact]
    public void Pieces_OneEntryMore_LeavesMostPiecesAsTheyWere()
    {
        var text = new string('a', 900);
        List<Findable> things = [.. Enumerable.Range(0, 400).Select(i => new Findable(FindKind.Entry, "A", Line($"drill/entry/{i}.html"), "", text))];
        var before = FindPiece.Cut(things).ToList();
        things.Insert(57, new Findable(FindKind.Entry, "B", "drill/entry/new.html", "", text));

        var after = FindPiece.Cut(things).ToList();

        Assert.Equal(Enumerable.Range(0, things.Count), after.SelectMany(piece => Enumerable.Range(piece.First, piece.Count)));
        Assert.InRange(after.Select(piece => (piece.Name, piece.Count)).Except(before.Select(piece => (piece.Name, piece.Count))).Count(), 1, 3);
    }

    [Fact]
    public void Postings_TwoWordsOfEightThings_AreWrittenAsDescribed()
    {
        var postings = new Postings(things: 8);
        postings.Add([0, 1, 5]); // Three: 011. 3·3·2 > 16, so no parameter; steps 0, 0, 3: 0 0 1110.
        postings.Add([6]); // One: 1. 3·2² <= 16, so the parameter is 2; step 6 = 1·4 + 2: 10 10.

        Assert.Equal(Letters("011" + "0" + "0" + "1110" + "1" + "10" + "10"), postings.ToString());
    }

    private static List<string> WordsOf(string text, bool whole = false)
    {
        if (whole)
        {
            return [string.Concat(text.Where(letter => char.GetUnicodeCategory(letter) != UnicodeCategory.NonSpacingMark).Select(char.ToLowerInvariant)
                .Select(letter => SearchTokens.Accented.IndexOf(letter) is >= 0 and var at ? SearchTokens.Plain[at] : letter))];
        }

        var words = new List<string>();
        foreach (var word in new SearchTokens(text))
        {
            words.Add(word.ToString());
        }

        return words;
    }

    private static string Letters(string bits) => string.Concat(bits.PadRight((bits.Length + 5) / 6 * 6, '0').Chunk(6)
        .Select(six => "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_"[Convert.ToInt32(new string(six), 2)]));

    private static PublishedJournal LongJournal(int entries, int words)
    {
        var generated = new GeneratedWords(seed: 7);
        var journal = new PublishedJournal().With("drill/build.yaml", "title: Bench drill\nparts:\n" + string.Concat(Enumerable.Range(0, 40).Select(i => Line($"  - {{id: part-{i}, title: {generated.Text(2)}}}\n"))));
        journal.With("tools.yaml", string.Concat(Enumerable.Range(0, 120).Select(i => Line($"- {{id: tool-{i}, title: {generated.Text(3)}, kind: cutting}}\n"))));
        string[] operations = ["boring", "turning", "milling", "drilling", "fitting", "scraping", "reaming"];
        for (var i = 0; i < entries; i++)
        {
            var date = new DateOnly(2023, 1, 1).AddDays(i * 2).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
            var lesson = i % 3 == 0 ? Line($"lessons: [{{id: lesson-{i}, text: \"{generated.Text(12)}\"}}]\n") : "";
            journal.With($"drill/{date}-{i}.md", Line($"---\ntitle: {generated.Text(5)}\npart: part-{i % 40}\noperation: {operations[i % operations.Length]}\nhours: 2\ntools: [tool-{i % 120}, tool-{i * 7 % 120}]\n{lesson}---\n{generated.Text(words)}\n"));
        }

        return journal;
    }

    private static string Line(FormattableString text) => FormattableString.Invariant(text);

    private static int Zipped(byte[] bytes)
    {
        using var zipped = new MemoryStream();
        using (var zip = new GZipStream(zipped, CompressionLevel.Optimal, leaveOpen: true))
        {
            zip.Write(bytes);
        }

        return (int)zipped.Length;
    }
}
