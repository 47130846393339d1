using System.Text.Json;

namespace Journal.Cli.Tests;

public class SearchTests
{
    [Fact]
    public void Find_WordsOfAnEvening_ShowsThemInContext()
    {
        using var journal = JournalOnDisk.Small();

        var found = journal.Ask("find", "BOSS");

        Assert.Equal((0, ""), (found.Status, found.Error));
        Assert.Equal(
            """
            2 evenings
            2025-09-30  The head again (drill/2025-09-30-head-again)
                Face the back of the boss.
            2025-09-06  Boring the head (drill/2025-09-06-head)
                It came out off the boss.

            """,
            found.Out);
    }

    [Theory]
    [InlineData("indic", "lesson indicate-both-ends,entry 2025-09-06-head")]
    [InlineData("silver", "entry 2025-09-06-head")]
    [InlineData("gib", "part gib-screw")]
    [InlineData("lathe", "tool lathe,entry 2025-09-06-head,entry 2025-09-07-quill")]
    [InlineData("average rough", "lesson indicate-both-ends")]
    [InlineData("nowhere", "")]
    [InlineData("ndicate", "")]
    public void Find_BeginningOfWords_IsEnough(string words, string expected)
    {
        using var journal = JournalOnDisk.Small();

        var found = journal.Ask(["find", .. words.Split(' '), "--format", "json"]).Json.GetProperty("found").EnumerateArray().Select(thing => $"{Text(thing, "kind")} {Text(thing, "id")}");

        Assert.Equal(expected.Split(',', StringSplitOptions.RemoveEmptyEntries).Order(), found.Order());
    }

    [Theory]
    [InlineData("2025-09-30-head-again", "--operation", "boring", "--since", "2025-09-07")]
    [InlineData("2025-09-06-head", "--tool", "boring-head", "head", "--until", "2025-09-06")]
    [InlineData("2025-09-07-second", "--part", "whole")]
    [InlineData("2025-09-07-quill", "--part", "drill/quill", "--operation", "lapping")]
    public void Find_Filters_NarrowDown(string expected, params string[] words)
    {
        using var journal = JournalOnDisk.Small();

        var found = journal.Ask(["find", .. words, "--format", "json"]).Json.GetProperty("found").EnumerateArray().Where(thing => Text(thing, "kind") == "entry");

        Assert.Equal([expected], found.Select(thing => Text(thing, "id")));
    }

    [Fact]
    public void Find_ReadingsAndRemarksOfTonight_AreFoundToo()
    {
        using var journal = JournalOnDisk.Small();
        journal.Ask("jot", "The spindle squeals");
        journal.Ask("amend", "--reading", "spigot 12.009");

        Assert.Contains("1 remark\n2025-10-03  Not in an entry yet\n    The spindle squeals\n", journal.Ask("find", "squeal").Out, StringComparison.Ordinal);
        var reading = journal.Ask("find", "spigot", "--format", "json").Json.GetProperty("found")[0];
        Assert.Equal(("reading", "head.spigot", "spigot 12.009", "2025-09-30-head-again"), (Text(reading, "kind"), Text(reading, "id"), Text(reading, "title"), Text(reading, "entry")));
        Assert.Equal("kind,build,id,date,entry,title,text\r\nreading,drill,head.spigot,2025-09-30,2025-09-30-head-again,spigot 12.009,\r\n", journal.Ask("find", "spigot", "--format", "csv").Out);
    }

    [Fact]
    public void Find_AccentsAndCapitals_DoNotCount()
    {
        using var journal = JournalOnDisk.Small().With("drill/2025-10-01-late.md", "---\npart: head\nhours: 1h\n---\nDas Öl lief über, the café closed.\n");

        Assert.Contains("2025-10-01-late", journal.Ask("find", "ol", "CAFE").Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Say what to look for, such as `journal find slipped`. See `journal find --help`.")]
    [InlineData("There is no part `haed`. Did you mean `head`? See `journal find --help`.", "--part", "haed")]
    [InlineData("There is no tool `lath`. Did you mean `lathe`? See `journal find --help`.", "--tool", "lath")]
    [InlineData("There is no build `dril`. Did you mean `drill`? See `journal find --help`.", "--build", "dril")]
    [InlineData("`--operation` does not know `borring`. Did you mean `boring`? See `journal find --help`.", "--operation", "borring")]
    [InlineData("`--until` comes before `--since`. See `journal find --help`.", "x", "--since", "2025-09-02", "--until", "2025-09-01")]
    public void Find_WhatCannotBe_IsRefused(string error, params string[] words)
    {
        using var journal = JournalOnDisk.Small();

        Assert.Equal((2, error + "\n"), (journal.Ask(["find", .. words]).Status, journal.Ask(["find", .. words]).Error));
    }

    [Fact]
    public void Show_AnEntry_HasAllOfIt()
    {
        using var journal = JournalOnDisk.Small();

        Assert.Equal(
            $"""
            Boring the head
            2025-09-06, Bench drill: 2h45

            Work      Boring: Head casting, 2h45, 1h10 of it setting up
            With      50 mm boring head, "the good one" and Small lathe
            Mistake   Indicated in one place only. (setting up; cost 1h15; used as is)
            Lesson    Indicate a rough casting at both ends, and average.
                      (indicate-both-ends)
            Bought    stub of silver steel, 4.50 EUR
            Milestone The first bore

            It came out off the boss.

            {Path.Combine(journal.Folder, "drill", "2025-09-06-head.md")}

            """,
            journal.Ask("show", "2025-09-06").Out);
    }

    [Fact]
    public void Show_Formats_HaveTheShape()
    {
        using var journal = JournalOnDisk.Small();

        var json = journal.Ask("show", "quill", "--format", "json").Json;

        Assert.Equal(("drill", "2025-09-07-quill", "drill/2025-09-07-quill.md", 161), (Text(json, "build"), Text(json, "entry"), Text(json, "file"), json.GetProperty("minutes").GetInt32()));
        Assert.Equal(["turning", "lapping"], json.GetProperty("jobs")[0].GetProperty("operations").EnumerateArray().Select(one => one.GetString()!));
        Assert.Equal("do-again", Text(json.GetProperty("lessons")[0], "verdict"));
        Assert.Equal(
            "build,entry,date,job,parts,operations,minutes,setUpMinutes,tools\r\ndrill,2025-09-07-quill,2025-09-07,1,quill,turning lapping,61,0,lathe\r\ndrill,2025-09-07-quill,2025-09-07,2,head quill,fitting,100,0,\r\n",
            journal.Ask("show", "quill", "--format", "csv").Out);
    }

    [Theory]
    [InlineData("There is no entry `nothing like it`. Name it by its id, its date or words in it; the latest is `2025-09-30-head-again`. See `journal show --help`.", "nothing", "like", "it")]
    [InlineData("There is no build `dril`. Did you mean `drill`? See `journal show --help`.", "--build", "dril")]
    public void Show_WhatCannotBe_IsRefused(string error, params string[] words)
    {
        using var journal = JournalOnDisk.Small();

        Assert.Equal((2, error + "\n"), (journal.Ask(["show", .. words]).Status, journal.Ask(["show", .. words]).Error));
    }

    [Fact]
    public void Words_AList_HasMeaningsAndOtherSpellings()
    {
        using var journal = JournalOnDisk.Small().With("journal.yaml", "title: The Lean-to\noperations: [gilding]\n");

        var operations = journal.Ask("words", "operations");
        Assert.Matches(@"\nblackening +blueing and chemical black +blueing, bluing\n", operations.Out);
        Assert.Matches(@"\ngilding +Gilding \(your own word\)\n", operations.Out);
        Assert.EndsWith("A word of your own: write it under `operations` in journal.yaml.\n", operations.Out, StringComparison.Ordinal);

        var word = Assert.Single(journal.Ask("words", "bluing", "--format", "json").Json.GetProperty("words").EnumerateArray());
        Assert.Equal(("operations", "blackening", "Blackening"), (Text(word, "list"), Text(word, "word"), Text(word, "title")));
        Assert.Equal(["blueing", "bluing"], word.GetProperty("also").EnumerateArray().Select(one => one.GetString()!));
        Assert.False(word.GetProperty("own").GetBoolean());
        Assert.Equal(["purchase-kinds", "time-kinds", "tool-kinds"], journal.Ask("words", "kinds", "--format", "csv").Lines.Skip(1).Select(line => line.Split(',')[0]).Distinct().Order());
        Assert.Equal((2, "There is no list and no word `cuases`. Did you mean `causes`? See `journal words --help`.\n"), (journal.Ask("words", "cuases").Status, journal.Ask("words", "cuases").Error));
    }

    [Fact]
    public void Words_EveryWordOfOurs_HasAMeaning()
    {
        using var journal = JournalOnDisk.Empty();

        var words = journal.Ask("words", "--format", "json").Json.GetProperty("words").EnumerateArray().ToList();

        Assert.True(words.Count > 180);
        Assert.Equal([], words.Where(word => word.GetProperty("meaning").ValueKind == JsonValueKind.Null).Select(word => $"{Text(word, "list")}: {Text(word, "word")}"));
    }

    private static string Text(JsonElement element, string name) => element.GetProperty(name).GetString()!;
}
