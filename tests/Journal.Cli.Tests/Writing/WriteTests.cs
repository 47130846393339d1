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

        Assert.Contains("“Schr\uFFFDg” holds bytes that are not UTF-8", written.Error, StringComparison.Ordinal);
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
        Assert.Equal("No stint is running. `journal stint begin` begins one.\n", bench.Ask("stint", "show").Out);
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
    [InlineData("How long was it? Say `--hours 1h30`, or measure with `journal stint begin` and `journal stint end`.")]
    [InlineData("`2:75` is not a time. Write `1h30`, `45m`, `1.5`, `1:30` or `19:10-20:40`.", "--hours", "2:75")]
    [InlineData("There is no operation `borng`. Did you mean `boring`?", "--hours", "1h", "--operation", "borng")]
    [InlineData("There is no build `dril`. Did you mean `drill`?", "--hours", "1h", "--build", "dril")]
    [InlineData("`Boring Head` is not the id of a tool. Write lower-case words joined by hyphens, such as boring-head.", "--hours", "1h", "--tool", "Boring Head")]
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
