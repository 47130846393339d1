using System.Text;

namespace Journal.Core.Tests.Parsing;

/// <summary>Lines and columns count from 1 in the whole file, columns in UTF-16 units, whatever the file's bytes look like.</summary>
public sealed class PlaceTests
{
    private const string Entry = """
        ---
        part: head   # a remark
        hours: 1h

        title: "🔩 tight"
        mistakes:
          - what: "Slip 🔩🔩"
            cause: hury
          - {what: "🔩", cause: hury}
        tools: ["🔩", lahte]
        ---
        # Evening 🔩

        See 🔩 [the quill](part:qill), *[again](part:qill)*
        and on the next line [a tool](tool:lahte).

        - first
          - nested [entry](entry:none) here

        > quoted [lesson](lesson:none)

        | a | b |
        |---|---|
        | x | 🔩 [cell](part:qill) |

        	[ref][r] after a tab is code
        A [ref][r] is not, nor <part:qill>.

        ![no words](a.gif) and ![](b.gif)

        [r]: part:qill
        """;

    [Theory]
    [InlineData("\n", false)]
    [InlineData("\r\n", false)]
    [InlineData("\n", true)]
    [InlineData("\r\n", true)]
    public void Place_BesideEmojiAfterMarkAndAnyLineEnd_IsWhereAnEditorShowsIt(string lineEnd, bool mark)
    {
        using var journal = JournalOnDisk.WithDrill();
        var text = Entry.ReplaceLineEndings(lineEnd);
        journal.Write("drill/2025-10-03.md", [.. mark ? Encoding.UTF8.Preamble : [], .. Encoding.UTF8.GetBytes(text)]);

        var places = journal.Read().Problems.Select(problem => $"{problem.Place.Line}:{problem.Place.Column} {problem.Kind.Code}");

        string[] expected =
        [
            At(8, "hury", "unknown-cause"), At(9, "hury", "unknown-cause"), At(10, "\"🔩\"", "not-an-id"), At(10, "lahte", "unknown-tool"),
            At(14, "[the quill]", "unknown-link-target"), At(14, "[again]", "unknown-link-target"), At(15, "[a tool]", "unknown-link-target"),
            At(18, "[entry]", "unknown-link-target"), At(20, "[lesson]", "unknown-link-target"), At(24, "[cell]", "unknown-link-target"),
            At(27, "[ref]", "unknown-link-target"), At(27, "<part", "unknown-link-target"), At(29, "![no", "picture-missing"), At(29, "![]", "picture-missing"),
        ];
        Assert.Equal(expected, places);
    }

    [Fact]
    public void Place_AfterUnicodeLineSeparatorInAValue_StaysRight()
    {
        var (_, problems) = JournalOnDisk.ReadEntry("part: head\ntitle: \"One\u2028two\u0085three\"\nhours: long");

        Assert.Equal(["drill/2025-10-03.md:4:8 not-a-time"], JournalOnDisk.Lines(problems));
    }

    [Theory]
    [InlineData("title: tap #10-32", "2:8 #10-32")]
    [InlineData("title: tap the\n  long #6 hole", "2:8 #6")]
    [InlineData("tools: [tap #10-32\n  ]", "2:9 #10-32")]
    [InlineData("snags:\n  - drill #30 is blunt", "3:5 #30")]
    [InlineData("snags:\n  - {text: drill #30 is blunt\n    }", "3:12 #30")]
    [InlineData("next: #10 first", "2:7 #10")]
    [InlineData("title: tap\t#10-32", "2:8 #10-32")]
    public void Value_CutShortByAHash_IsReportedWithWhatIsLost(string lines, string expected)
    {
        var (_, problems) = JournalOnDisk.ReadEntry($"{lines}\npart: head\nhours: 1h");

        var problem = Assert.Single(problems, problem => problem.Kind.Code == "cut-short");
        Assert.StartsWith(expected[..expected.IndexOf(' ', StringComparison.Ordinal)], $"{problem.Place.Line}:{problem.Place.Column}", StringComparison.Ordinal);
        Assert.Contains($"“{expected[(expected.IndexOf(' ', StringComparison.Ordinal) + 1)..]}”", problem.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("title: tap # ten")]
    [InlineData("title: tap  ## ten")]
    [InlineData("title: tap#10-32")]
    [InlineData("title: \"tap #10-32\"")]
    [InlineData("title: 'tap #10-32'")]
    [InlineData("title: |\n  tap #10-32")]
    [InlineData("#title: off")]
    [InlineData("title: A #")]
    public void Value_WithARemarkOrAHashInQuotes_IsNotReported(string lines)
    {
        var (_, problems) = JournalOnDisk.ReadEntry($"{lines}\npart: head\nhours: 1h");

        Assert.Empty(problems);
    }

    [Theory]
    [InlineData("---  \npart: head\nhours: 1h\n---\t\nText")]
    [InlineData("---\r\npart: head\r\nhours: 1h\r\n---\r\nText")]
    [InlineData("---\npart: head\nhours: 1h\n---")]
    [InlineData("---\rpart: head\rhours: 1h\r---\rText")]
    [InlineData("---\npart: head\nhours: 1h\n---\n---\n\nText after a rule\n\n---\n")]
    public void FrontMatter_FencesInAnyDress_AreSeen(string text)
    {
        using var journal = JournalOnDisk.WithDrill().Write("drill/2025-10-03.md", text);

        Assert.Empty(journal.Problems());
    }

    [Fact]
    public void Links_OfEveryScheme_FindTheirTargets()
    {
        using var journal = JournalOnDisk.WithDrill();
        journal.Write("tools.yaml", "- {id: lathe}\n");
        journal.Write("vice/build.yaml", "title: Vice\nparts: [jaw]\n").Write("vice/2025-09-01-start.md", "---\npart: jaw\nhours: 1\n---\n");
        journal.WriteEntry("2025-10-03", "lessons: [{id: slow, text: Slow}]");
        journal.WriteEntry("2025-10-04", body: "[a](tool:lathe) [b](lesson:slow) [c](part:quill) [d](entry:2025-10-03) [e](part:vice/jaw) [f](entry:vice/2025-09-01) [g](entry:vice/2025-09-01-start) [h](https://example.org) <mailto:a@example.org> [i]\n\n[i]: part:head\n");

        var reading = journal.Read();

        Assert.Empty(JournalOnDisk.Lines(reading.Problems));
        Assert.Equal(
            ["Tool  lathe", "Lesson  slow", "Part drill quill", "Entry drill 2025-10-03", "Part vice jaw", "Entry vice 2025-09-01-start", "Entry vice 2025-09-01-start", "Part drill head"],
            reading.Journal!.Builds[0].Entries[1].Body.Links.Select(link => $"{link.Target?.Kind} {link.Target?.Build} {link.Target?.Id}"));
    }

    private static string At(int line, string needle, string code)
    {
        var row = Entry.ReplaceLineEndings("\n").Split('\n')[line - 1];
        return $"{line}:{row.IndexOf(needle, StringComparison.Ordinal) + 1} {code}";
    }
}
