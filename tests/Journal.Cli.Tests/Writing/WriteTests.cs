using Journal.Core.Checking;

namespace Journal.Cli.Tests.Writing;

public class WriteTests
{
    [Fact]
    public void Write_Script_TakesEverythingAsOptions()
    {
        using var bench = new AtTheBench();
        bench.Ask("jot", "It sings: at 300");
        bench.Ask("jot", "Better at 180");

        var written = bench.Ask(
            "write", "--part", "head", "--operation", "reaming", "--hours", "1h30", "--tool", "lathe", "--tool", "boring-head", "--title", "The bore, at last",
            "--mistake", "Forgot the oil.", "--mistake", "Lost count: twice", "--next", "Face the back");

        Assert.Equal((0, ""), (written.Status, written.Error));
        Assert.Equal(
            """
            ---
            title: "The bore, at last"
            date: 2025-10-03
            part: head
            operation: reaming
            hours: 1h30
            tools: [lathe, boring-head]
            next: Face the back
            mistakes:
              - Forgot the oil.
              - "Lost count: twice"
            ---
            - It sings: at 300
            - Better at 180

            """,
            bench.Text("drill/2025-10-03-reaming-head.md"));
        Assert.Empty(bench.Problems());
    }

    [Fact]
    public void Write_RemarkMadeWhileItAsks_GoesIntoTheTextToo()
    {
        using var bench = new AtTheBench();
        bench.Ask("jot", "Before the questions");
        using var answers = new Meanwhile("\n\n\n\n\n\n", () => Assert.Equal(0, bench.Ask("jot", "Between two questions").Status));

        var written = Answer.To(bench.Disk.Folder, terminal => terminal with { Now = Answer.Evening, CanAsk = true, In = answers }, "write", "--part", "head", "--operation", "boring", "--hours", "1h");

        Assert.Equal(0, written.Status);
        Assert.EndsWith("---\n- Before the questions\n- Between two questions\n", bench.Text("drill/2025-10-03-boring-head.md"), StringComparison.Ordinal);
        Assert.DoesNotContain("questions", bench.Text(".bench/slate.json"), StringComparison.Ordinal);
    }

    [Fact]
    public void Write_TwiceAtOnce_PutsARemarkIntoOneEntry()
    {
        using var bench = new AtTheBench();
        bench.Ask("jot", "Only once");
        using var answers = new Meanwhile("\n\n\n\n\n\n", () => bench.Ask("write", "--hours", "1h"));

        Answer.To(bench.Disk.Folder, terminal => terminal with { Now = Answer.Evening, CanAsk = true, In = answers }, "write", "--part", "head", "--operation", "boring", "--hours", "1h");

        Assert.EndsWith("---\nOnly once\n", bench.Text("drill/2025-10-03-boring-head.md"), StringComparison.Ordinal);
        Assert.EndsWith("---\n", bench.Text("drill/2025-10-03-boring-head-2.md"), StringComparison.Ordinal);
    }

    [Fact]
    public void Write_AnswerOfBytesThatAreNotUtf8_IsAskedAgain()
    {
        using var bench = new AtTheBench();

        var written = bench.AskAndAnswer(["", "Schr\uFFFDg", "Schräg", "", "", ""], "write", "--part", "head", "--operation", "boring", "--hours", "1h");

        Assert.Contains("“Schr\uFFFDg” contains bytes that are not UTF-8", written.Error, StringComparison.Ordinal);
        Assert.Contains("title: Schräg\n", bench.Text("drill/2025-10-03-boring-head.md"), StringComparison.Ordinal);
    }

    [Fact]
    public void Write_Twice_GivesTheSecondItsOwnName()
    {
        using var bench = new AtTheBench();
        bench.Ask("write", "--hours", "1h", "--title", "First");
        var first = bench.Text("drill/2025-10-03-boring-head.md");

        bench.Ask("write", "--hours", "2h", "--title", "Second");

        Assert.Equal(first, bench.Text("drill/2025-10-03-boring-head.md"));
        Assert.Contains("title: Second", bench.Text("drill/2025-10-03-boring-head-2.md"), StringComparison.Ordinal);
        Assert.Empty(bench.Problems());
    }

    [Fact]
    public void Write_BeforeFourInTheMorning_IsStillLastEvening()
    {
        using var bench = new AtTheBench("Europe/Dublin");

        bench.At("2025-10-04 02:59").Ask("write", "--hours", "1h");
        Assert.Contains("2025-10-03-boring-head.md", bench.Entries());
        bench.At("2025-10-04 03:00").Ask("write", "--hours", "1h");
        Assert.Contains("2025-10-04-boring-head.md", bench.Entries());
        bench.Ask("write", "--hours", "1h", "--date", "2025-09-15");
        Assert.Contains("2025-09-15-boring-head.md", bench.Entries());
    }

    [Fact]
    public void Write_AfterStintEnd_AddsToTheEntryThatTheStintMade()
    {
        using var bench = new AtTheBench();
        bench.Ask("stint", "begin");
        bench.Ask("jot", "It sings.");
        bench.At("2025-10-03 22:00").Ask("stint", "end");

        bench.Ask("write", "--title", "Boring on", "--tool", "lathe", "--mistake", "Forgot the oil.", "--next", "Face it");

        Assert.Equal(
            "---\ndate: 2025-10-03\njobs:\n  - {part: head, operation: boring, hours: 1h}\ntitle: Boring on\ntools: [lathe]\nnext: Face it\nmistakes:\n  - Forgot the oil.\n---\nIt sings.\n",
            bench.Text("drill/2025-10-03-boring-head.md"));
        Assert.Single(bench.Entries(), name => name.StartsWith("2025-10-03", StringComparison.Ordinal));
        bench.Ask("write", "--hours", "10m");
        Assert.Equal(2, bench.Entries().Count(name => name.StartsWith("2025-10-03", StringComparison.Ordinal)));
        Assert.Empty(bench.Problems());
    }

    [Fact]
    public void Write_WhileAStintIsRunning_EndsItAndWritesItUp()
    {
        using var bench = new AtTheBench();
        bench.Ask("stint", "begin");

        bench.At("2025-10-03 21:50").Ask("write", "--title", "Boring on");

        Assert.Equal("---\ndate: 2025-10-03\njobs:\n  - {part: head, operation: boring, hours: 50m}\ntitle: Boring on\n---\n", bench.Text("drill/2025-10-03-boring-head.md"));
        Assert.Equal("No stint is running. Begin one with `journal stint begin`.\n", bench.Ask("stint", "show").Out);
    }

    [Fact]
    public void Write_OnATerminal_EnterAcceptsWhatIsKnown()
    {
        using var bench = new AtTheBench();

        var written = bench.AskAndAnswer(["", "", "nonsense", "2h", "", "The bore", "", ""], "write");

        Assert.Equal(0, written.Status);
        Assert.Equal("---\ntitle: The bore\ndate: 2025-10-03\npart: head\noperation: boring\nhours: 2h\ntools: [boring-head, lathe]\n---\n", bench.Text("drill/2025-10-03-boring-head.md"));
        Assert.Contains("Part [head]: ", written.Error, StringComparison.Ordinal);
        Assert.Contains("Was next  Face the back of the boss.\nSnags     It still sings at 300 rpm.\nLessons   Indicate a rough casting", written.Error, StringComparison.Ordinal);
        Assert.Contains("`nonsense` is not a time.", written.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Write_PartByItsNumber_OperationByAnotherSpelling()
    {
        using var bench = new AtTheBench();

        bench.AskAndAnswer(["2", "parting", "20m", "none", "", "", ""], "write");

        Assert.Equal("---\ndate: 2025-10-03\npart: gib-screw\noperation: parting-off\nhours: 20m\n---\n", bench.Text("drill/2025-10-03-parting-off-gib-screw.md"));
    }

    [Fact]
    public void Write_InputEnds_WritesNothing()
    {
        using var bench = new AtTheBench();
        var before = bench.Entries();

        Assert.Equal(3, bench.AskAndAnswer(["", ""], "write").Status);
        Assert.Equal(before, bench.Entries());
    }

    [Theory]
    [InlineData("How long did it take? Use `--hours 1h30`, or time it with `journal stint begin` and `journal stint end`.")]
    [InlineData("`2:75` is not a time. Write `1h30`, `45m`, `1.5`, `1:30` or `19:10-20:40`.", "--hours", "2:75")]
    [InlineData("There is no operation `borng`. Did you mean `boring`?", "--hours", "1h", "--operation", "borng")]
    [InlineData("There is no build `dril`. Did you mean `drill`?", "--hours", "1h", "--build", "dril")]
    [InlineData("`Boring Head` is not a valid tool id. Use lower-case words joined by hyphens, such as boring-head.", "--hours", "1h", "--tool", "Boring Head")]
    public void Write_WrongWords_WritesNothingAndSaysWhatWouldDo(string error, params string[] options)
    {
        using var bench = new AtTheBench();
        var before = bench.Entries();

        var written = bench.Ask(["write", .. options]);

        Assert.Equal((2, "", error + "\n"), (written.Status, written.Out, written.Error));
        Assert.Equal(before, bench.Entries());
    }

    [Fact]
    public void Jot_OtherEvening_StaysForItsOwnEntry()
    {
        using var bench = new AtTheBench();
        bench.At("2025-10-02 21:00").Ask("jot", "Yesterday");
        Assert.Equal("Kept, 02:00: 1 remark for the entry of 2025-10-03.\n", bench.At("2025-10-04 02:00").Ask("jot", "Tonight,", "late").Error);

        bench.Ask("write", "--hours", "1h");

        Assert.EndsWith("---\nTonight, late\n", bench.Text("drill/2025-10-03-boring-head.md"), StringComparison.Ordinal);
        bench.Ask("write", "--hours", "1h", "--date", "2025-10-02");
        Assert.EndsWith("---\nYesterday\n", bench.Text("drill/2025-10-02-boring-head.md"), StringComparison.Ordinal);
    }

    [Fact]
    public void Write_EditorSet_OpensTheEntryOnATerminalAlone()
    {
        using var bench = new AtTheBench();
        var opened = new List<string>();
        Answer In(bool canAsk) => Answer.To(bench.Disk.Folder, terminal => terminal with { Now = Answer.Evening, Edit = opened.Add, CanAsk = canAsk, In = new StringReader("\n\n\n\n\n\n\n") }, "write", "--hours", "1h");

        Assert.Equal(0, In(canAsk: false).Status);
        Assert.Empty(opened);
        Assert.Equal(In(canAsk: true).Out.Trim(), Assert.Single(opened));
    }

    [Fact]
    public void Write_EntryHasWordsAlready_AddsBelowThem_AndTellsWhatItKeptAsItWas()
    {
        using var bench = new AtTheBench();
        bench.At("2025-10-03 19:10").Ask("stint", "begin");
        bench.At("2025-10-03 19:40").Ask("stint", "end");
        bench.Ask("write", "--title", "First", "--next", "Face it");
        var file = Path.Combine(bench.Disk.Folder, "drill/2025-10-03-boring-head.md");
        File.AppendAllText(file, "By hand.\n");
        bench.At("2025-10-03 20:10").Ask("stint", "begin");
        bench.Ask("jot", "- 0.05 under");

        var written = bench.At("2025-10-03 20:40").Ask("write", "--title", "Second", "--mistake", "Too deep.", "--next", "Ream it");

        Assert.Equal(0, written.Status);
        Assert.Contains("already has `title`, which is kept. Not written: Second", written.Error, StringComparison.Ordinal);
        Assert.Contains("already has `next`, which is kept. Not written: Ream it", written.Error, StringComparison.Ordinal);
        var text = File.ReadAllText(file);
        Assert.Contains("title: First\n", text, StringComparison.Ordinal);
        Assert.Contains("  - Too deep.\n", text, StringComparison.Ordinal);
        Assert.EndsWith("By hand.\n\\- 0.05 under\n", text.Replace("\n\n", "\n", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Empty(bench.Problems());
    }

    [Fact]
    public void Write_StintIsInItsEntry_TakesNoOtherJobForIt()
    {
        using var bench = new AtTheBench();
        bench.At("2025-10-03 19:10").Ask("stint", "begin");
        bench.At("2025-10-03 19:40").Ask("stint", "end");

        Assert.Equal((2, "The stint’s job is in drill/2025-10-03-boring-head.md already, and `quill` would not change it. Change it there; or use `--hours` for another entry.\n"), (bench.Ask("write", "--part", "quill") is var refused ? refused.Status : 0, refused.Error));
        Assert.Contains("The stint was on `drill`.", bench.Ask("write", "--build", "vice").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Write_OfAnotherEvening_LeavesTonightsStintAlone()
    {
        using var bench = new AtTheBench();
        bench.At("2025-10-03 19:10").Ask("stint", "begin");

        Assert.Contains("How long did it take?", bench.At("2025-10-03 19:40").Ask("write", "--date", "2025-09-20", "--next", "For that evening").Error, StringComparison.Ordinal);
        Assert.Equal(0, bench.Ask("write", "--date", "2025-09-20", "--hours", "1h", "--next", "For that evening").Status);
        Assert.Contains("next: For that evening\n", bench.Text("drill/2025-09-20-boring-head.md"), StringComparison.Ordinal);
        Assert.Contains("has been running", bench.Ask("stint", "show").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Write_NextMorning_WritesUpTheStint_AndTellsOfRemarksThatWait()
    {
        using var bench = new AtTheBench();
        bench.At("2025-10-02 19:10").Ask("jot", "From the day before");
        bench.At("2025-10-03 19:10").Ask("stint", "begin");
        bench.At("2025-10-03 19:40").Ask("stint", "end");
        bench.Ask("jot", "Of the evening");

        var written = bench.At("2025-10-04 08:00").Ask("write", "--title", "In the morning");

        Assert.Equal((0, "1 remark of 2025-10-02 waits for an entry: `journal write --date 2025-10-02`, with its `--hours`.\n"), (written.Status, written.Error));
        Assert.EndsWith("---\nOf the evening\n", bench.Text("drill/2025-10-03-boring-head.md"), StringComparison.Ordinal);
    }

    [Fact]
    public void Next_RemarksWithoutAnEntry_TellsOfThemAndHowToWriteThem()
    {
        using var bench = new AtTheBench();
        Assert.Equal("", bench.At("2025-10-02 19:05").Ask("next").Error);
        bench.At("2025-10-02 19:10").Ask("jot", "From the day before");
        bench.At("2025-10-03 19:10").Ask("stint", "begin");
        bench.Ask("jot", "One");
        bench.Ask("jot", "Two");

        var next = bench.Ask("next");

        Assert.Equal((0, "A stint on Bench drill, Head casting, boring has been running since 19:10: 0m at the bench.\n1 remark of 2025-10-02 waits for an entry: `journal write --date 2025-10-02`, with its `--hours`.\n2 remarks of 2025-10-03 wait for an entry: `journal write`.\n"), (next.Status, next.Error));
        Assert.Equal("", bench.Ask("next", "--format", "json").Error);
        File.WriteAllText(Path.Combine(bench.Disk.Folder, ".bench", "slate.json"), "{");
        Assert.Contains("cannot be read", bench.Ask("next").Error, StringComparison.Ordinal);
        Assert.Equal(0, bench.Ask("next").Status);
    }

    [Fact]
    public void Write_OfTheEveningBefore_WhileAStintRunsTonight_WritesThatUpAlone()
    {
        using var bench = new AtTheBench();
        bench.At("2025-10-02 19:10").Ask("stint", "begin");
        bench.At("2025-10-02 19:40").Ask("stint", "end");
        bench.At("2025-10-03 19:10").Ask("stint", "begin");

        var written = bench.At("2025-10-03 19:40").Ask("write", "--date", "2025-10-02", "--title", "Of yesterday");

        Assert.Equal((0, ""), (written.Status, written.Error));
        Assert.Contains("title: Of yesterday\n", bench.Text("drill/2025-10-02-boring-head.md"), StringComparison.Ordinal);
        Assert.Contains("has been running", bench.Ask("stint", "show").Out, StringComparison.Ordinal);
        Assert.DoesNotContain(bench.Entries(), name => name.StartsWith("2025-10-03", StringComparison.Ordinal));
    }

    [Fact]
    public void Write_ToolThatCanHaveNoId_IsAskedAgain()
    {
        using var bench = new AtTheBench();

        var written = bench.AskAndAnswer(["…", "Lathe", "", "", ""], "write", "--part", "head", "--operation", "boring", "--hours", "1h");

        Assert.Equal(0, written.Status);
        Assert.Contains("`…` is not a valid tool id.", written.Error, StringComparison.Ordinal);
        Assert.Contains("tools: [lathe]\n", bench.Text("drill/2025-10-03-boring-head.md"), StringComparison.Ordinal);
    }

    // Before any is made of it: a tool that the crib has by another name is not to be a second one.
    [Fact]
    public void Write_ToolsInTheMakersWords_AreMatchedWithTheCrib()
    {
        using var bench = new AtTheBench();
        bench.Disk.With("tools.yaml", "- {id: hand-files, title: Set of files}\n- {id: scriber, title: Scribing block}\n- {id: surface-gauge, title: Surface gauge}\n");

        var written = bench.AskAndAnswer(["files, scribing block, small surface gauge, emery", "1", "1", "", "", ""], "write", "--part", "head", "--operation", "fettling", "--hours", "1h");

        Assert.Contains("The crib has no `files`. Perhaps one of these?  1 hand-files\nIts number or id (Enter: a new tool, `files`): ", written.Error, StringComparison.Ordinal);
        Assert.Contains("The crib has no `emery`.", written.Error, StringComparison.Ordinal);
        Assert.Contains("tools: [hand-files, scriber, surface-gauge, emery]\n", bench.Text("drill/2025-10-03-fettling-head.md"), StringComparison.Ordinal);
    }

    [Fact]
    public void Write_AfterAMistake_AsksWhyWhatItCostAndTheLesson_AndForTheNextStepInItsOwnPlace()
    {
        using var bench = new AtTheBench();

        var written = bench.AskAndAnswer(
            ["none", "", "Bored: too deep.", "setting up", "20m", "Set the stop, first.", "Lost count", "", "soon", "", "", "", "Face the back"],
            "write", "--part", "head", "--operation", "boring", "--hours", "1h");

        Assert.Equal(0, written.Status);
        Assert.Contains("`soon` is not a time. Write `20m` or `1h30`.", written.Error, StringComparison.Ordinal);
        Assert.Contains("What is the next step? (Enter: not said): ", written.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("Next time?", written.Error, StringComparison.Ordinal);
        Assert.EndsWith(
            "next: Face the back\nmistakes:\n  - {what: \"Bored: too deep.\", cause: setting-up, lost: 20m, lesson: \"Set the stop, first.\"}\n  - Lost count\n---\n",
            bench.Text("drill/2025-10-03-boring-head.md"),
            StringComparison.Ordinal);
        Assert.Empty(bench.Problems());
    }

    [Fact]
    public void Write_SeveralOperations_ShareTheHours()
    {
        using var bench = new AtTheBench();

        bench.Ask("write", "--part", "head", "--operation", "drilling", "--operation", "reaming", "--hours", "1h");
        bench.AskAndAnswer(["quill", "turning, lapping", "2h", "none", "", "", ""], "write", "--date", "2025-10-02");

        Assert.Equal("---\ndate: 2025-10-03\npart: head\noperation: [drilling, reaming]\nhours: 1h\n---\n", bench.Text("drill/2025-10-03-drilling-head.md"));
        Assert.Equal("---\ndate: 2025-10-02\npart: quill\noperation: [turning, lapping]\nhours: 2h\n---\n", bench.Text("drill/2025-10-02-turning-quill.md"));
        Assert.Empty(bench.Problems());
    }

    [Fact]
    public void Write_AgainTheSameEvening_AsksWhetherToAddToItsEntry()
    {
        using var bench = new AtTheBench();
        bench.Ask("write", "--part", "head", "--operation", "boring", "--hours", "1h");

        var written = bench.AskAndAnswer(["", "lathe", "The bore", "Forgot the oil.", "", "", "", "", "Face it"], "write");

        Assert.Contains("There is an entry of tonight: Boring head (Bench drill, Head casting, boring, 1h). Add to it? (`no`: another job, in an entry of its own) [yes]: ", written.Error, StringComparison.Ordinal);
        Assert.Equal(
            "---\ndate: 2025-10-03\npart: head\noperation: boring\nhours: 1h\ntitle: The bore\ntools: [lathe]\nnext: Face it\nmistakes:\n  - Forgot the oil.\n---\n",
            bench.Text("drill/2025-10-03-boring-head.md"));
        Assert.Single(bench.Entries(), name => name.StartsWith("2025-10-03", StringComparison.Ordinal));

        bench.AskAndAnswer(["no", "quill", "lapping", "30m", "none", "", "", ""], "write");
        Assert.Contains("2025-10-03-lapping-quill.md", bench.Entries());
        Assert.Empty(bench.Problems());
    }

    [Fact]
    public void Write_AfterStintEndAndAWriteUp_DoesNotAskForTheJobAgain()
    {
        using var bench = new AtTheBench();
        bench.Ask("stint", "begin");
        bench.At("2025-10-03 22:00").Ask("stint", "end");
        bench.Ask("write", "--title", "The bore", "--tool", "lathe");

        var again = bench.AskAndAnswer(["", "Forgot the oil.", "", "", "", "", "Face it"], "write");

        Assert.Equal(0, again.Status);
        Assert.Single(bench.Entries(), name => name.StartsWith("2025-10-03", StringComparison.Ordinal));
        Assert.Contains("next: Face it\n", bench.Text("drill/2025-10-03-boring-head.md"), StringComparison.Ordinal);
    }

    // What a script says is written in any case; it hears of it, and so does who looks with `check`.
    [Fact]
    public void Write_TheSameJobTwiceByAScript_IsTold_AndCheckWarns()
    {
        using var bench = new AtTheBench();
        Assert.Equal("", bench.Ask("write", "--part", "head", "--operation", "boring", "--hours", "1h30").Error);

        var again = bench.Ask("write", "--part", "head", "--operation", "boring", "--hours", "90m");

        Assert.Equal((0, "There is an entry of 2025-10-03 with the same part, operation and hours: drill/2025-10-03-boring-head.md. This is another one; if it tells of the same work, delete one of them.\n"), (again.Status, again.Error));
        Assert.Equal("drill/2025-10-03-boring-head.md:5:8: The same part, operation and hours stand under 2025-10-03 in drill/2025-10-03-boring-head-2.md, line 5.", Assert.Single(bench.Problems()));
    }

    [Fact]
    public void Write_TwoBuildsUnderWay_AsksWhich_AndAScriptHearsWhichWasTaken()
    {
        using var bench = new AtTheBench();
        bench.Disk.With("vice/build.yaml", "title: Toolmaker's vice\nstarted: 2025-10-02\nparts: [jaw]\n");

        Assert.Equal("Taken for Toolmaker's vice, the last worked on of the builds under way. For another say `--build drill`.\n", bench.Ask("write", "--part", "jaw", "--operation", "milling", "--hours", "1h").Error);
        var asked = bench.AskAndAnswer(["2", "head", "boring", "2h", "none", "", "", ""], "write");

        Assert.Contains("  1 vice  2 drill\nBuild [vice]: ", asked.Error, StringComparison.Ordinal);
        Assert.Contains("2025-10-03-boring-head.md", bench.Entries());
    }

    // What `check` would call an error, and no site could be published with.
    [Theory]
    [InlineData("--hours", "25h", "`25h` is more than a day.")]
    [InlineData("--hours", "2000m", "`2000m` is more than a day.")]
    [InlineData("--date", "2025-10-04", "2025-10-04 is in the future; this is the evening of 2025-10-03.")]
    public void Write_WhatCannotBe_IsRefused(string option, string word, string why)
    {
        using var bench = new AtTheBench();
        var before = bench.Entries();

        var refused = bench.Ask(option == "--hours" ? ["write", option, word] : ["write", "--hours", "1h", option, word]);

        Assert.Equal(2, refused.Status);
        Assert.Contains(why, refused.Error, StringComparison.Ordinal);
        Assert.Equal(before, bench.Entries());
    }

    [Theory]
    [InlineData("- 0.05 mm under", "\\- 0.05 mm under")]
    [InlineData("+ 0.1 over", "\\+ 0.1 over")]
    [InlineData("1986. was the year", "1986\\. was the year")]
    [InlineData("# 3 drill", "\\# 3 drill")]
    [InlineData("> 30 rpm sings", "\\> 30 rpm sings")]
    [InlineData("1.5 mm pitch", "1.5 mm pitch")]
    [InlineData("-0.05 again", "-0.05 again")]
    [InlineData("*slanted* words", "*slanted* words")]
    public void Write_RemarkThatBeginsLikeAMarkOfMarkdown_IsReadAsItWasSaid(string said, string text)
    {
        using var bench = new AtTheBench();
        bench.Ask("jot", said);
        bench.Ask("write", "--hours", "1h");

        Assert.EndsWith($"---\n{text}\n", bench.Text("drill/2025-10-03-boring-head.md"), StringComparison.Ordinal);
        var body = JournalReader.Read(bench.Disk.Folder, DateOnly.MaxValue).Journal!.Entries.Single(entry => entry.Id.Value == "2025-10-03-boring-head").Body;
        Assert.IsType<Markdig.Syntax.ParagraphBlock>(Assert.Single(body.Document));
    }

    // Something happens before the second answer is read.
    private sealed class Meanwhile(string answers, Action happens) : StringReader(answers)
    {
        private int lines;

        public override string? ReadLine()
        {
            if (++lines == 2)
            {
                happens();
            }

            return base.ReadLine();
        }
    }
}
