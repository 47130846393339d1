using System.Diagnostics;
using System.Text;
using Journal.Core.Parsing.Problems;

namespace Journal.Core.Tests.Parsing;

/// <summary>
/// What would hang, crash or fill the memory if it were read as it is. The time limits guard against hangs alone;
/// each of these takes well under a second.
/// </summary>
public sealed class HostileFilesTests
{
    private static readonly TimeSpan Limit = TimeSpan.FromSeconds(8);

    [Theory]
    [InlineData("[a](", 64, "text-too-nested")]
    [InlineData("[", 10, "text-too-nested")]
    [InlineData("[", 64, "text-too-nested")]
    [InlineData("![", 64, "text-too-nested")]
    [InlineData("[a][", 64, "text-too-nested")]
    [InlineData("**a ", 64, "text-too-nested")]
    [InlineData("*a _b ", 64, "text-too-nested")]
    [InlineData("> ", 64, "text-too-nested")]
    [InlineData(">", 64, "text-too-nested")]
    [InlineData("1. ", 64, "text-too-nested")]
    [InlineData("+ ", 64, "text-too-nested")]
    [InlineData("- 1) ", 64, "text-too-nested")]
    [InlineData("|", 64, "table-too-large")]
    [InlineData("|a\n", 64, "table-too-large")]
    [InlineData("[a]: b\n", 64, "text-too-nested")]
    [InlineData("`", 64, null)]
    [InlineData("` ", 64, null)]
    [InlineData("``a`", 64, null)]
    [InlineData("<div>", 64, "text-too-nested")]
    [InlineData("<div>\n", 64, "text-too-nested")]
    [InlineData("<b></b>", 64, null)]
    [InlineData("<br>", 64, null)]
    [InlineData("<a href=\"", 64, null)]
    [InlineData("<!--", 64, null)]
    [InlineData("&#", 64, null)]
    [InlineData("\\", 64, null)]
    [InlineData("- a\n", 64, null)]
    [InlineData("- ", 64, null)]
    [InlineData("* ", 20, null)]
    [InlineData("* ", 64, "text-too-nested")]
    [InlineData("***", 10, null)]
    [InlineData("```\n", 64, null)]
    public void Body_OfOneSign_IsReadOrRefusedAtOnce(string piece, int kilobytes, string? code)
    {
        var body = string.Concat(Enumerable.Repeat(piece, (kilobytes * 1024 / piece.Length) - 1));

        var problems = ReadBody(body);

        Assert.Equal(code is null ? [] : [code], problems.Select(problem => problem.Kind.Code));
        Assert.All(problems, problem => Assert.True(problem.Place.Line >= 6));
    }

    public static IEnumerable<object?[]> Shapes =>
    [
        ["lists by indentation", string.Concat(Enumerable.Range(0, 240).Select(i => $"{new string(' ', 2 * i)}- a\n")), "text-too-nested"],
        ["wide head, short rows", $"{Repeat("|a", 64)}|\n{Repeat("|-", 64)}|\n{Repeat("|\n", 15000)}", "table-too-large"],
        ["thousands of columns", $"{Repeat("|a", 5000)}|\n{Repeat("|-", 5000)}|\n", "table-too-large"],
        ["backticks of every length", string.Concat(Enumerable.Range(1, 350).Select(i => new string('`', i) + " ")), null],
        ["definitions by the thousand", string.Concat(Enumerable.Range(0, 1900).Select(i => $"[a{i}]: part:head\n")) + string.Concat(Enumerable.Range(0, 1900).Select(i => $"[a{i}] ")), null],
        ["50,000 open brackets in code", "```\n" + Repeat("[", 50_000) + "\n```\n", "text-too-nested"],
        ["NUL and lone surrogates", "a\u0001\u0002 \\ud800 [x](part:head%00) ![\u202E](a%00.gif)", "unknown-link-target"],
    ];

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Body_OfABadShape_IsReadOrRefusedAtOnce(string shape, string body, string? code)
    {
        Assert.NotEmpty(shape);

        var problems = ReadBody(body);

        Assert.Equal(code, problems.Select(problem => problem.Kind.Code).FirstOrDefault());
    }

    [Theory]
    [InlineData("A rule.\n\n* * * * * * * * * * * * * * * * * * * * * * * * * * * * * * * * * *\n\n- - - - - - - - - - - - - - - - - - - - - - - - - - - - - -\n")]
    [InlineData("Contents ..............................................................\n......................................................................\n")]
    [InlineData("2025-10-03. A date at the start.\n\n1.5 mm of cut, then 1.1.1.1.1.1.1.1.1.1.1.1.1.1.1.1.1.1.1.1.1.1.1.1.1.1.1.1.1.\n")]
    [InlineData("```\n                                                                                                                                                    far in\n```\n")]
    [InlineData(">>> as said >>> in a letter\n\n- a\n  - b\n    - c\n      - d\n        - e\n          1. f\n             1. g\n")]
    public void Body_OfAnHonestEvening_Passes(string body)
    {
        Assert.Empty(ReadBody(body));
    }

    [Fact]
    public void Body_VeryLongEveningWith300LinksAndATable_Passes()
    {
        var body = new StringBuilder();
        for (var i = 0; i < 300; i++)
        {
            body.Append("Then I *packed* the **head** on [the face plate](part:head) and took 0.2_mm_ off; see <https://example.org/> [again](entry:2025-10-03).\n\n");
        }

        body.Append("| pass | depth | went |\n|---|---|---|\n");
        for (var i = 0; i < 200; i++)
        {
            body.Append("| 1 | 0.2 | well |\n");
        }

        Assert.Empty(ReadBody(body.ToString()));
    }

    [Theory]
    [InlineData("[", 500, "yaml-too-deep")]
    [InlineData("{", 500, "yaml-too-deep")]
    [InlineData("- ", 500, "yaml-too-deep")]
    [InlineData("? ", 500, "yaml-too-deep")]
    [InlineData("[a,", 500, "yaml-too-deep")]
    [InlineData("{a: ", 500, "yaml-too-deep")]
    [InlineData("a: ", 500, "not-yaml")]
    [InlineData("\"", 500, null)]
    [InlineData("'", 500, null)]
    [InlineData("a\n", 500, "not-keys")]
    [InlineData("\t", 500, null)]
    [InlineData("-\n", 500, "not-keys")]
    [InlineData("a: b\n", 500, "unknown-key")]
    [InlineData("---\n", 500, null)]
    [InlineData("&a ", 500, null)]
    [InlineData("*a ", 500, null)]
    [InlineData("!!a ", 500, null)]
    [InlineData("%\n", 500, "not-yaml")]
    [InlineData("<<: *a\n", 10, "yaml-alias")]
    public void Yaml_OfOneSign_IsRefusedAtOnceWithAPlace(string piece, int kilobytes, string? code)
    {
        var text = string.Concat(Enumerable.Repeat(piece, kilobytes * 1024 / piece.Length));
        using var journal = JournalOnDisk.WithDrill().Write("drill/build.yaml", text);

        var problems = Within(() => journal.Read().Problems.ToArray());

        Assert.NotEmpty(problems);
        Assert.True(problems.Length <= 502);
        Assert.Equal(code ?? problems[0].Kind.Code, problems[0].Kind.Code);
        Assert.All(problems, problem => Assert.True(problem.Place is { File: "drill/build.yaml", Line: >= 1, Column: >= 1 }));
    }

    public static IEnumerable<object[]> Values =>
    [
        ["hours: [" + Repeat("19:00-19:00, ", 35_000) + "]"],
        ["hours: [" + Repeat("19:00-20:00, ", 35_000) + "]"],
        ["hours: \"" + new string('1', 500_000) + "\""],
        ["hours: \"" + Repeat("1h ", 100_000) + "\""],
        ["title: \"" + new string('x', 500_000) + "\""],
        [new string('x', 500_000) + ": 1"],
        ["tools: [" + string.Concat(Enumerable.Range(0, 40_000).Select(i => $"tool-{i}, ")) + "]"],
        ["part: [" + Repeat("haed, ", 80_000) + "]"],
        ["part: {" + string.Concat(Enumerable.Range(0, 45_000).Select(i => $"p{i}: 1, ")) + "}"],
        ["title: \"\\ud800\\udc00 \\ud800 \\0 \\x07\""],
        ["photos: [\"a\\0b.gif\", \"\\ud800.gif\", \"/etc/passwd\", \"" + new string('a', 5000) + ".gif\", \"../../../../dev/zero\"]"],
        ["next: !!binary gg==\nstory: !foo bar\nmilestone: !!int x"],
        ["mistakes:\n" + Repeat("  - {what: A, lost: 9999h}\n", 18_000)],
        ["made:\n" + Repeat("  - {id: a}\n", 35_000)],
    ];

    [Theory]
    [MemberData(nameof(Values))]
    public void Entry_HostileValues_AreReadOrRefusedAtOnce(string lines)
    {
        var problems = Within(() => JournalOnDisk.ReadEntry(lines).Problems);

        Assert.All(problems, problem => Assert.True(problem is { Place: { Line: >= 1, Column: >= 1 }, Message.Length: < 2000, Remedy.Length: < 3000 }));
        Assert.DoesNotContain(problems, problem => problem.Message.Any(char.IsControl) || problem.Remedy.Any(char.IsControl));
    }

    [Fact]
    public void File_Of50Megabytes_IsRefusedUnread()
    {
        using var journal = JournalOnDisk.WithDrill();
        using (var file = File.Create(journal.PathOf("drill/2025-10-03.md")))
        {
            file.SetLength(50L * 1024 * 1024);
        }

        Assert.Equal(["drill/2025-10-03.md:1:1 file-too-large"], Within(journal.Problems));
    }

    [Fact]
    public void File_Utf16WithoutMark_IsToldByItsNul()
    {
        using var journal = JournalOnDisk.WithDrill().Write("drill/2025-10-03.md", Encoding.Unicode.GetBytes("---\nhours: 1h\n---\n"));

        Assert.Equal(["drill/2025-10-03.md:1:2 not-utf-8"], journal.Problems());
    }

    [Fact]
    public void Messages_WithNamesOfManyLinesAndTurnedText_StayOnOneLine()
    {
        using var journal = JournalOnDisk.WithDrill();
        journal.WriteEntry("a\nb").WriteEntry("a\u202Eb").WriteEntry("2025-10-03", "\"x\\ny\\u202e\\e[31m\": 1");

        var problems = journal.Read().Problems;

        Assert.Equal(3, problems.Count);
        Assert.All(problems, problem => Assert.DoesNotMatch("[\\p{Cc}\\u202E]", problem.Message + problem.Remedy));
    }

    [Theory]
    [InlineData("con")]
    [InlineData("NUL")]
    [InlineData("Boring")]
    [InlineData("aaa--b")]
    [InlineData("🔩")]
    public void Name_ThatCannotBeAnAddress_IsReportedAlone(string name)
    {
        using var journal = JournalOnDisk.WithDrill().WriteEntry(name);

        Assert.Single(journal.Read().Problems);
    }

    [Fact]
    public void Name_Of250Characters_IsReported()
    {
        using var journal = JournalOnDisk.WithDrill().WriteEntry(new string('a', 250)).WriteEntry("2025-10-03", "lessons: [{id: " + new string('b', 300) + ", text: A}]");

        Assert.Equal(["bad-file-name", "not-an-id"], journal.Read().Problems.Select(problem => problem.Kind.Code).Order());
    }

    [Fact]
    public void Folder_WithThousandsOfFiles_IsReadInGoodTime()
    {
        using var journal = JournalOnDisk.WithDrill();
        for (var i = 0; i < 3000; i++)
        {
            File.WriteAllText(journal.PathOf($"drill/note-{i}.txt"), "");
        }

        Assert.Empty(Within(journal.Problems));
    }

    private static IReadOnlyList<Problem> ReadBody(string body) => Within(() => JournalOnDisk.ReadEntry("part: head\noperation: boring\nhours: 1h", body).Problems);

    private static string Repeat(string text, int times) => string.Concat(Enumerable.Repeat(text, times));

    private static T Within<T>(Func<T> read)
    {
        var watch = Stopwatch.StartNew();
        var result = read();
        Assert.True(watch.Elapsed < Limit, $"took {watch.Elapsed}");
        return result;
    }
}
