using Journal.Core.Checking;

namespace Journal.Cli.Tests.Writing;

public class AmendTests
{
    private const string Latest = "drill/2025-09-30-head-again.md";

    [Fact]
    public void Amend_Latest_AddsLinesAndTouchesNothing()
    {
        using var bench = new AtTheBench();
        var before = bench.Text(Latest);

        var amended = bench.Ask(
            "amend", "--mistake", "Forgot the oil, twice", "--cause", "haste", "--lost", "20m", "--lesson", "Oil: before reaming", "--reading", "bore 12 H7 = 12.009 with lathe",
            "--setting", "480 rpm, depth 0.5, verdict good", "--finished", "gib-screw:2", "--cleared", "sings", "--snag", "The gib is loose");

        Assert.Equal((0, ""), (amended.Status, amended.Error));
        Assert.Equal(Path.Combine(bench.Disk.Folder, "drill", "2025-09-30-head-again.md") + "\n", amended.Out);
        var after = bench.Text(Latest);
        Assert.Equal(
            before.Replace("snags: {id: chatter, text: It still sings at 300 rpm.}", "snags: \n  - {id: chatter, text: It still sings at 300 rpm.}\n  - The gib is loose", StringComparison.Ordinal).Replace(
                "turns freely}\n",
                """
                turns freely}
                mistakes:
                  - {what: "Forgot the oil, twice", cause: haste, lost: 20m, lesson: "Oil: before reaming"}
                finished:
                  - {gib-screw: 2}
                cleared:
                  - chatter
                readings:
                  - {feature: bore, required: 12 H7, actual: 12.009, with: lathe}
                settings:
                  - {rpm: 480, depth: 0.5, verdict: good}

                """,
                StringComparison.Ordinal),
            after);
        Assert.Empty(bench.Problems());
    }

    [Fact]
    public void Amend_OneThingAlone_BecomesAListOfIt()
    {
        using var bench = new AtTheBench();

        Assert.Equal(0, bench.Ask("amend", "2025-09-07-quill", "--finished", "gib-screw", "--lesson", "Warm the oil, then pour").Status);

        var text = bench.Text("drill/2025-09-07-quill.md");
        Assert.Contains("finished: \n  - quill\n  - gib-screw\n", text, StringComparison.Ordinal);
        Assert.Contains("lessons: \n  - {id: lap-last, text: Lap after everything else., verdict: do-again}\n  - \"Warm the oil, then pour\"\n", text, StringComparison.Ordinal);
        Assert.Empty(bench.Problems());
    }

    [Fact]
    public void Amend_WindowsLineEnds_Stay()
    {
        using var bench = new AtTheBench();
        bench.Disk.With("drill/2025-10-01-late.md", "---\r\npart: head\r\noperation: boring\r\nhours: 1h\r\nlessons: Oil first # really\r\n---\r\nText.\r\n");

        Assert.Equal(0, bench.Ask("amend", "--lesson", "Then turn", "--snag", "Loose").Status);

        Assert.Equal(
            "---\r\npart: head\r\noperation: boring\r\nhours: 1h\r\nlessons: \r\n  - Oil first # really\r\n  - Then turn\r\nsnags:\r\n  - Loose\r\n---\r\nText.\r\n",
            bench.Text("drill/2025-10-01-late.md"));
        Assert.Empty(bench.Problems());
    }

    [Theory]
    [InlineData("drill/2025-09-06-head.md", "2025-09-06")]
    [InlineData("drill/2025-09-06-head.md", "2025-09-06-head")]
    [InlineData("drill/2025-09-06-head.md", "drill/2025-09-06-head")]
    [InlineData("drill/2025-09-06-head.md", "off", "the", "boss")]
    [InlineData("drill/2025-09-30-head-again.md", "head again")]
    public void Amend_EntryByIdDateOrWords_IsFound(string file, params string[] entry)
    {
        using var bench = new AtTheBench();

        Assert.Equal(0, bench.Ask(["amend", .. entry, "--snag", "The gib is loose"]).Status);

        Assert.Contains("The gib is loose", bench.Text(file), StringComparison.Ordinal);
    }

    [Fact]
    public void Amend_DateOfTwoEntries_NamesThem()
    {
        using var bench = new AtTheBench();

        var refused = bench.Ask("amend", "2025-09-07", "--snag", "Loose");

        Assert.Equal(2, refused.Status);
        Assert.Equal("`2025-09-07` may mean 2 entries; name one by its id: `drill/2025-09-07-quill` (Quill), `drill/2025-09-07-second` (Second).\n", refused.Error);
    }

    [Fact]
    public void Amend_OnATerminal_AsksUntilAnEmptyLine()
    {
        using var bench = new AtTheBench();

        var amended = bench.AskAndAnswer(["mis Forgot the oil", "hast", "haste", "", "Oil it first", "r bore 12.009", "next Ream it", "lesson", "Keep the swarf out", "x", ""], "amend");

        Assert.Equal(0, amended.Status);
        Assert.Contains("There is no cause `hast`. Did you mean `haste`?\n", amended.Error, StringComparison.Ordinal);
        Assert.Contains("It has a next step already: “Face the back of the boss.” Change that in the editor.\n", amended.Error, StringComparison.Ordinal);
        Assert.Contains("Begin with one of lesson, reading, setting,", amended.Error, StringComparison.Ordinal);
        var text = bench.Text(Latest);
        Assert.Contains("mistakes:\n  - {what: Forgot the oil, cause: haste, lesson: Oil it first}\nlessons:\n  - Keep the swarf out\nreadings:\n  - {feature: bore, actual: 12.009}\n", text, StringComparison.Ordinal);
        Assert.Empty(bench.Problems());
    }

    [Fact]
    public void Amend_NothingSaid_OpensTheEditor()
    {
        using var bench = new AtTheBench();
        var opened = "";

        var amended = Answer.To(bench.Disk.Folder, terminal => terminal with { CanAsk = true, In = new StringReader("\n"), Edit = path => opened = path }, "amend");

        Assert.Equal(0, amended.Status);
        Assert.Equal(Path.Combine(bench.Disk.Folder, "drill", "2025-09-30-head-again.md"), opened);
        Assert.Equal(opened + "\n", amended.Out);
    }

    [Fact]
    public void Amend_InputEnds_WritesNothing()
    {
        using var bench = new AtTheBench();
        var before = bench.Text(Latest);

        var stopped = bench.AskAndAnswer(["lesson Oil it first"], "amend");

        Assert.Equal(3, stopped.Status);
        Assert.Equal(before, bench.Text(Latest));
    }

    [Theory]
    [InlineData("There is no entry `2025-09-06-haed`. Did you mean `2025-09-06-head`?", "2025-09-06-haed", "--snag", "x")]
    [InlineData("Say what to add, such as `--lesson \"Oil it first\"`. See `journal amend --help`.")]
    [InlineData("Bench drill has no part `quil`. Did you mean `quill`?", "--finished", "quil")]
    [InlineData("Quill is finished already.", "--finished", "quill")]
    [InlineData("Gib screw: 4 pieces are still to be finished, not 5.", "--finished", "gib-screw:5")]
    [InlineData("“bore” is not a reading. Write what was measured and the size, such as `bore 12.009`; with what the drawing asks for, `bore 12 H7 = 12.009`; and `with bore-gauge` behind it where you want.", "--reading", "bore")]
    [InlineData("There is no tool `lath`. Did you mean `lathe`?", "--reading", "bore 12.0 with lath")]
    [InlineData("“fast” is not a setting. Write keys with their values and commas between them, such as `480 rpm, depth 0.5, verdict good`.", "--setting", "fast")]
    [InlineData("“fast” is not a speed. Write turns a minute as a number, such as `480 rpm`.", "--setting", "fast rpm")]
    [InlineData("“squeal” means no open snag. Open: `chatter` (It still sings at 300 rpm.)", "--cleared", "squeal")]
    [InlineData("“soon” is not a time. Write `45m` or `1h15`.", "--mistake", "x", "--lost", "soon")]
    [InlineData("`--cause` and `--lost` belong to one `--mistake`; say just one.", "--cause", "haste")]
    [InlineData("drill/2025-09-30-head-again.md: It has a `next` already, which stays as it is. Change it in the editor.", "--snag", "x", "--next", "Ream it")]
    [InlineData("2025-09-30-head-again has no pictures.", "--caption", "The bore")]
    [InlineData("There is no build `dril`. Did you mean `drill`?", "--build", "dril", "--snag", "x")]
    public void Amend_WhatCannotBe_IsRefused(string error, params string[] words)
    {
        using var bench = new AtTheBench();
        var before = bench.Text(Latest);

        var refused = bench.Ask(["amend", .. words]);

        Assert.Equal((2, error + "\n"), (refused.Status, refused.Error));
        Assert.Equal(before, bench.Text(Latest));
    }

    [Fact]
    public void Amend_ReadingThatCheckWouldRefuse_IsRefused()
    {
        using var bench = new AtTheBench();

        var refused = bench.Ask("amend", "--reading", "bore 12 H7 = 120.09");

        Assert.Equal(2, refused.Status);
        Assert.Contains("The actual size is ten times the required", refused.Error, StringComparison.Ordinal);
    }

    // A lesson without an id is known by its number: one put in before it would take its page.
    [Fact]
    public void Amend_LessonBeforeOneWithoutAnId_IsRefused()
    {
        using var bench = new AtTheBench();
        bench.Disk.With("drill/2025-10-01-late.md", "---\npart: head\nhours: 1h\nlessons: [Oil first]\nmistakes: {what: Too fast, lesson: Go slower}\n---\n");

        var refused = bench.Ask("amend", "--lesson", "Then turn");

        Assert.Equal(2, refused.Status);
        Assert.Contains("The lesson would stand before “Go slower”, which has no id and is known by its number. Give that one an id first: `journal rename lesson drill-2025-10-01-late-2 <id>`.", refused.Error, StringComparison.Ordinal);
        Assert.Equal(0, bench.Ask("amend", "--mistake", "Too slow", "--lesson", "Go faster").Status);
        Assert.Equal(["Oil first", "Go slower", "Go faster"], JournalReader.Read(bench.Disk.Folder, DateOnly.MaxValue).Journal!.Builds[0].Entries[^1].Lessons.Select(lesson => lesson.Text));
    }

    [Fact]
    public void Captions_OfAnyEntry_AreAskedForAndWrittenBesideThePictures()
    {
        using var bench = new AtTheBench();
        bench.Disk
            .With("drill/photos/a.jpg", "x").With("drill/photos/b.jpg", "x").With("drill/photos/c.jpg", "x").With("drill/photos/d.jpg", "x")
            .With("drill/2025-10-01-late.md", "---\npart: head\nhours: 1h\nphotos:\n  - photos/a.jpg\n  - {file: photos/b.jpg, publish: never} # hidden\n  - file: photos/c.jpg\n    publish: never\n---\n![](photos/d.jpg)\n");

        var walked = bench.AskAndAnswer(["The bore", "The \"boss\"", "", "Done"], "write", "--captions", "--entry", "2025-10-01");

        Assert.Equal(0, walked.Status);
        Assert.Equal(
            "---\npart: head\nhours: 1h\nphotos:\n  - {file: photos/a.jpg, caption: The bore}\n  - {file: photos/b.jpg, publish: never, caption: \"The \\\"boss\\\"\"} # hidden\n  - file: photos/c.jpg\n    publish: never\n  - {file: photos/d.jpg, caption: Done}\n---\n![](photos/d.jpg)\n",
            bench.Text("drill/2025-10-01-late.md"));

        Assert.Equal(0, bench.Ask("amend", "--caption", "c.jpg: The other side").Status);
        Assert.Contains("  - file: photos/c.jpg\n    caption: The other side\n    publish: never\n", bench.Text("drill/2025-10-01-late.md"), StringComparison.Ordinal);
        Assert.Equal("All pictures of 2025-10-01-late have their words already.\n", bench.Ask("amend", "--caption", "c.jpg: Again").Error);
        Assert.Empty(bench.Problems());
    }
}
