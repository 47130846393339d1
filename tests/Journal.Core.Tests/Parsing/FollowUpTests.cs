namespace Journal.Core.Tests.Parsing;

/// <summary>One fault gives one problem.</summary>
public sealed class FollowUpTests
{
    private const string User = "heeded: ends\nmends: zero\ncleared: leak\nmade: [block]\nmistakes: [{what: Slip, made-on: 2025-10-03, repeats: drill-2025-10-03-2}]";
    private const string Links = "[a](entry:2025-10-03) [b](lesson:ends) [c](tool:block) [d](entry:drill/2025-10-03)\n";

    [Theory]
    [InlineData("---\nhours: 1h\ntitle: [\nlessons: [{id: ends, text: A}]\nmistakes: [{id: zero, what: B, lesson: C}]\nsnags: [{id: leak, text: D}]\nmade: {id: block}\n---\n", "not-yaml")]
    [InlineData("hours: 1h\nlessons: [{id: \"ends\", text: A}]\nmistakes: [{id: zero, what: B, lesson: C}]\nsnags: [{id: leak, text: D}]\nmade: {id: block}\n---\n", "front-matter-missing")]
    [InlineData("---\npart: head\ndate: 2025-10-33\nhours: 1h\nlessons: [{id: ends, text: A}]\nmistakes: [{id: zero, what: B, lesson: C}]\nsnags: [{id: leak, text: D}]\nmade: {id: block}\n---\n", "not-a-date")]
    public void Entry_Unreadable_WhatPointsIntoItIsNotReportedToo(string text, string code)
    {
        using var journal = JournalOnDisk.WithDrill().Write("drill/2025-10-03.md", text).WriteEntry("2025-10-04", User, Links);

        Assert.Equal(code, Assert.Single(journal.Read().Problems).Kind.Code);
    }

    [Fact]
    public void Entry_NotEvenText_WhatPointsIntoItIsNotReportedToo()
    {
        using var journal = JournalOnDisk.WithDrill().Write("drill/2025-10-03.md", [0xFF, 0xFE, 0x2D, 0x00]).WriteEntry("2025-10-04", User, Links);

        Assert.Equal(["drill/2025-10-03.md:1:1 not-utf-8"], journal.Problems());
    }

    [Fact]
    public void Entry_Unreadable_OtherUnknownIdsAreStillReported()
    {
        using var journal = JournalOnDisk.WithDrill().Write("drill/2025-10-03.md", "nothing").WriteEntry("2025-10-04", "heeded: other", "[a](entry:2025-10-02)\n");

        Assert.Equal(["drill/2025-10-03.md:1:1 front-matter-missing", "drill/2025-10-04.md:5:9 unknown-lesson", "drill/2025-10-04.md:7:1 unknown-link-target"], journal.Problems());
    }

    [Fact]
    public void Build_Unreadable_ItsEntriesAreCheckedButNotForParts()
    {
        using var journal = new JournalOnDisk();
        journal.Write("drill/build.yaml", "title: [\n").WriteEntry("2025-10-03", "finished: head\nreadings: {feature: bore, part: quill}\nbought: {what: A, cost: 1, for: head}\nnxt: A", "[a](part:quill)\n");
        journal.Write("vice/build.yaml", "title: Vice\n").Write("vice/2025-10-01.md", "---\nhours: 1h\n---\n[a](part:drill/head) [b](entry:drill/2025-10-03)\n");
        journal.Write("plans/a.yaml", "title: A\nparts: [{id: b, like: drill/head}]\n");

        Assert.Equal(["drill/2025-10-03.md:8:1 unknown-key", "drill/build.yaml:1:8 not-yaml"], journal.Problems());
    }

    [Fact]
    public void Tools_Unreadable_NoToolIsReported()
    {
        using var journal = JournalOnDisk.WithDrill().Write("tools.yaml", "- {id: lathe\n").WriteEntry("2025-10-03", "tools: lathe", "[a](tool:lathe)\n");

        Assert.Equal("not-yaml", Assert.Single(journal.Read().Problems).Kind.Code);
    }

    [Fact]
    public void Journal_Unreadable_TheRestIsCheckedButNotForItsOwnWords()
    {
        using var journal = JournalOnDisk.WithDrill().Write("journal.yaml", "title: [\n").Write("drill/2025-10-03.md", "---\npart: haed\noperation: gilding\nhours: 1h\n---\n");

        var reading = journal.Read();

        Assert.Null(reading.Journal);
        Assert.Equal(["drill/2025-10-03.md:2:7 unknown-part", "journal.yaml:1:8 not-yaml"], JournalOnDisk.Lines(reading.Problems));
    }

    [Fact]
    public void Definition_WithoutItsText_StillHasItsId()
    {
        using var journal = JournalOnDisk.WithDrill();
        journal.WriteEntry("2025-10-03", "mistakes: [{id: zero, cause: haste}]\nlessons: [{id: ends}]\nsnags: [{id: leak}]").WriteEntry("2025-10-04", "mends: zero\nheeded: ends\ncleared: leak");

        Assert.All(journal.Read().Problems, problem => Assert.Equal("missing", problem.Kind.Code));
        Assert.Equal(3, journal.Problems().Length);
    }

    [Fact]
    public void Problems_ReadTwice_AreTheSameInTheSameOrder()
    {
        using var journal = JournalOnDisk.WithDrill();
        foreach (var day in Enumerable.Range(10, 20))
        {
            journal.WriteEntry($"2025-10-{day}", "lessons: [{id: ends, text: A}]\nhours: 2h\ntools: [x, y]\nheeded: none", "[a](part:b) [c](part:d)\n");
        }

        var first = journal.Problems();

        Assert.Equal(first, journal.Problems());
        Assert.Equal(19 + (20 * 6), first.Length);
        Assert.Contains("drill/2025-10-11.md:5:16 duplicate-id", first);
    }
}
