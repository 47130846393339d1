namespace Journal.Cli.Tests.Writing;

public class StintTests
{
    [Fact]
    public void End_NoEntryTonight_MakesOneWithTheMinutes()
    {
        using var bench = new AtTheBench();

        Assert.Equal(0, bench.At("2025-10-03 19:10").Ask("stint", "begin", "--part", "quill", "--operation", "turning").Status);
        var ended = bench.At("2025-10-03 20:35").Ask("stint", "end");

        Assert.Equal((0, "1h25 at the bench: Bench drill, Quill, turning.\n"), (ended.Status, ended.Error));
        Assert.EndsWith("drill/2025-10-03-turning-quill.md\n", ended.Out.Replace('\\', '/'), StringComparison.Ordinal);
        Assert.Equal("---\ndate: 2025-10-03\njobs:\n  - {part: quill, operation: turning, hours: 1h25}\n---\n", bench.Text("drill/2025-10-03-turning-quill.md"));
        Assert.Empty(bench.Problems());
        Assert.Equal("No stint is running. Begin one with `journal stint begin`.\n", bench.Ask("stint", "show").Out);
    }

    [Fact]
    public void Begin_NothingSaid_TakesPartAndOperationOfLastTime()
    {
        using var bench = new AtTheBench();

        Assert.Equal("Begun at 21:00: Bench drill, Head casting, boring, as last time.\n", bench.Ask("stint", "begin").Error);
        Assert.Equal("A stint on Bench drill, Head casting, boring has been running since 21:00: 45m\nat the bench.\n", bench.At("2025-10-03 21:45").Ask("stint", "show").Out);
    }

    // A part that comes next was never worked on: what was done last was done to another one.
    [Fact]
    public void Begin_LastPartIsFinished_TakesTheNextOne_AndDoesNotSayAsLastTime()
    {
        using var bench = new AtTheBench();
        bench.Disk.With("drill/2025-10-02-head-done.md", "---\npart: head\noperation: boring\nhours: 1h\nfinished: head\n---\n");

        Assert.Equal("Begun at 21:00: Bench drill, Gib screw.\n", bench.Ask("stint", "begin").Error);
    }

    [Fact]
    public void Jot_WhileAStintRuns_ShowsIt()
    {
        using var bench = new AtTheBench();
        bench.Ask("stint", "begin");

        var jotted = bench.At("2025-10-03 21:45").Ask("jot", "It sings");

        Assert.Equal("Kept, 21:45: 1 remark for the entry of 2025-10-03.\nA stint on Bench drill, Head casting, boring has been running since 21:00: 45m at the bench.\n", jotted.Error);
        Assert.Contains("A stint on Bench drill, Head casting, boring has been running since 21:00: 50m at the bench.", bench.At("2025-10-03 21:50").Ask("next").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void End_SecondStintTonight_AddsItsJobAndTouchesNothingElse()
    {
        using var bench = new AtTheBench();
        const string Before = "\uFEFF---\r\ndate: 2025-10-03   # a Friday\r\njobs:\r\n    -  {part: head,  hours: 20m}  # odd spacing\r\n    # more to come\r\nnext: 'Face it'\r\n---\r\nText.\r\n";
        bench.Disk.With("drill/2025-10-03-head.md", Before);

        bench.Ask("stint", "begin", "--part", "head");
        bench.At("2025-10-03 21:30").Ask("stint", "end");

        var line = "    - {part: head, operation: boring, hours: 30m}\r\n";
        Assert.Equal(Before.Replace("    # more", line + "    # more", StringComparison.Ordinal), System.Text.Encoding.UTF8.GetString(File.ReadAllBytes(Path.Combine(bench.Disk.Folder, "drill/2025-10-03-head.md"))));
    }

    [Fact]
    public void End_EntryInShortForm_WritesASecondEntry()
    {
        using var bench = new AtTheBench();
        const string Before = "---\npart: head\noperation: boring\nhours: 20m\n---\n";
        bench.Disk.With("drill/2025-10-03-boring-head.md", Before);

        bench.Ask("stint", "begin");
        bench.At("2025-10-03 21:30").Ask("stint", "end");

        Assert.Equal(Before, bench.Text("drill/2025-10-03-boring-head.md"));
        Assert.Equal("---\ndate: 2025-10-03\njobs:\n  - {part: head, operation: boring, hours: 30m}\n---\n", bench.Text("drill/2025-10-03-boring-head-2.md"));
    }

    [Fact]
    public void Pause_TwoOfThem_AreLeftOut()
    {
        using var bench = new AtTheBench();

        bench.At("2025-10-03 19:00").Ask("stint", "begin");
        Assert.Equal("Paused at 19:30, 30m at the bench so far. `journal stint begin` continues it.\n", bench.At("2025-10-03 19:30").Ask("stint", "pause").Error);
        Assert.Equal(2, bench.Ask("stint", "pause").Status);
        Assert.Equal("Continued at 20:00, 30m at the bench so far.\n", bench.At("2025-10-03 20:00").Ask("stint", "begin").Error);
        bench.At("2025-10-03 20:15").Ask("stint", "pause");
        Assert.Equal("45m at the bench: Bench drill, Head casting, boring.\n", bench.At("2025-10-03 22:00").Ask("stint", "end").Error);
    }

    [Fact]
    public void Begin_WhileOneIsRunning_IsRefused()
    {
        using var bench = new AtTheBench();
        bench.Ask("stint", "begin");

        var again = bench.At("2025-10-03 21:10").Ask("stint", "begin", "--part", "quill");

        Assert.Equal((2, "A stint on Bench drill, Head casting, boring has been running since 21:00: 10m at the bench. End that one first: `journal stint end`.\n"), (again.Status, again.Error));
    }

    // The clocks of Europe went back at 01:00 UTC on 26 October 2025 and forward on 30 March 2025 (IANA time-zone database).
    [Theory]
    [InlineData("2025-10-25 22:30", "2025-10-26 01:30", "3h", "2025-10-25")]
    [InlineData("2025-03-29 23:30", "2025-03-30 01:15", "1h45", "2025-03-29")]
    public void End_ChangeOfSummerTimeInBetween_CountsRealMinutes(string begin, string end, string time, string evening)
    {
        using var bench = new AtTheBench("Europe/Dublin");

        bench.At(begin).Ask("stint", "begin");
        bench.At(end).Ask("stint", "end");

        Assert.Equal($"---\ndate: {evening}\njobs:\n  - {{part: head, operation: boring, hours: {time}}}\n---\n", bench.Text($"drill/{evening}-boring-head.md"));
    }

    [Fact]
    public void End_ForgottenOvernight_AsksWhatWasMeant()
    {
        using var bench = new AtTheBench();
        bench.At("2025-10-03 21:00").Ask("stint", "begin");

        var script = bench.At("2025-10-04 18:00").Ask("stint", "end");

        Assert.Equal(2, script.Status);
        Assert.Equal("The stint on Bench drill, Head casting, boring began 2025-10-03 at 21:00 and was not ended. Use `journal stint end --at 22:40` if you stopped at that time, `--now` if you worked through, or `--drop` to discard it.\n", script.Error);
        Assert.DoesNotContain(bench.Entries(), name => name.StartsWith("2025-10", StringComparison.Ordinal));

        var asked = bench.AskAndAnswer(["soon", "22:40"], "stint", "end");
        Assert.Contains("Give a time such as 22:40, `now` or `drop`.", asked.Error, StringComparison.Ordinal);
        Assert.Contains("hours: 1h40}", bench.Text("drill/2025-10-03-boring-head.md"), StringComparison.Ordinal);
    }

    [Fact]
    public void End_Forgotten_OffersTheLastSignOfLife()
    {
        using var bench = new AtTheBench();
        bench.At("2025-10-03 21:00").Ask("stint", "begin");
        bench.At("2025-10-03 22:15").Ask("jot", "It", "sings");

        var asked = bench.At("2025-10-05 10:00").AskAndAnswer([""], "stint", "end");

        Assert.Contains("Stopped at [22:15]: ", asked.Error, StringComparison.Ordinal);
        Assert.Contains("1h15 at the bench", asked.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--at", "00:30", "3h30")]
    [InlineData("--now", null, "21h")]
    public void End_ForgottenWithOption_DoesAsSaid(string option, string? value, string time)
    {
        using var bench = new AtTheBench();
        bench.At("2025-10-03 21:00").Ask("stint", "begin");

        bench.At("2025-10-04 18:00").Ask(["stint", "end", option, .. value is null ? Array.Empty<string>() : [value]]);

        Assert.Contains($"hours: {time}}}", bench.Text("drill/2025-10-03-boring-head.md"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2025-10-03 23:00", "--drop", "The stint was discarded; nothing was written.\n", 0)]
    [InlineData("2025-10-03 21:00", null, "Less than a minute at the bench: nothing was written.\n", 0)]
    [InlineData("2025-10-03 20:00", null, "By the clock the stint has not begun yet: it began 2025-10-03 at 21:00. Set the clock right, or use `--drop`.\n", 2)]
    [InlineData("2025-10-05 23:00", "--now", "That would be 50h, more than a day. Give the time you stopped with `--at 22:40`, or discard the stint with `--drop`.\n", 2)]
    public void End_NothingToCount_WritesNothing(string end, string? option, string error, int status)
    {
        using var bench = new AtTheBench();
        var before = bench.Entries();
        bench.At("2025-10-03 21:00").Ask("stint", "begin");

        var ended = bench.At(end).Ask(["stint", "end", .. option is null ? Array.Empty<string>() : [option]]);

        Assert.Equal((status, error, ""), (ended.Status, ended.Error, ended.Out));
        Assert.Equal(before, bench.Entries());
    }

    [Fact]
    public void Begin_WrongPart_NamesTheNearest()
    {
        using var bench = new AtTheBench();

        Assert.Equal((2, "Bench drill has no part `quil`. Did you mean `quill`?\n"), (bench.Ask("stint", "begin", "--part", "quil").Status, bench.Ask("stint", "begin", "--part", "quil").Error));
        Assert.Equal("`journal stint` has no command `beginn`. Did you mean `begin`? See `journal stint --help`.\n", bench.Ask("stint", "beginn").Error);
        Assert.Equal("`journal stint` needs one of begin, pause, end, show. See `journal stint --help`.\n", bench.Ask("stint").Error);
    }

    // What a crash between the entry and the slate leaves: the entry holds the job, the slate still has the stint.
    [Fact]
    public void End_AfterACrashBetweenEntryAndSlate_DoesNotCountTwice()
    {
        using var bench = new AtTheBench();
        bench.Ask("stint", "begin");
        var slate = Path.Combine(bench.Disk.Folder, ".bench", "slate.json");
        var running = File.ReadAllText(slate);
        bench.At("2025-10-03 21:30").Ask("stint", "end");
        var entry = bench.Text("drill/2025-10-03-boring-head.md");
        var digest = Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(System.Text.Encoding.UTF8.GetBytes(entry)));
        File.WriteAllText(slate, running.Replace("\"handover\": null", $$"""
            "handover": {"file": "drill/2025-10-03-boring-head.md", "sha256": "{{digest}}", "takesStint": true}
            """, StringComparison.Ordinal));

        var again = bench.Ask("stint", "end");

        Assert.Equal((2, "No stint is running. Begin one with `journal stint begin`.\n"), (again.Status, again.Error));
        Assert.Equal(entry, bench.Text("drill/2025-10-03-boring-head.md"));
    }

    [Theory]
    [InlineData("--part", "quill")]
    [InlineData("--operation", "turning")]
    [InlineData("--build", "vice")]
    public void Begin_AfterAPauseWithAnotherJob_IsRefused_ForItsHoursWouldGoToTheOldOne(string option, string word)
    {
        using var bench = new AtTheBench();
        bench.Ask("stint", "begin", "--part", "head", "--operation", "boring");
        bench.Ask("stint", "pause");

        var refused = bench.Ask("stint", "begin", option, word);

        Assert.Equal(2, refused.Status);
        Assert.Contains("End that one first: `journal stint end`. To continue it: `journal stint begin` without options.", refused.Error, StringComparison.Ordinal);
        Assert.Contains("Continued", bench.Ask("stint", "begin").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void End_ItsBuildIsGone_CanBeForgottenAllTheSame()
    {
        using var bench = new AtTheBench();
        bench.Ask("stint", "begin");
        Directory.Move(Path.Combine(bench.Disk.Folder, "drill"), Path.Combine(bench.Disk.Folder, "boring-machine"));

        Assert.Contains("began on the build `drill`, which is gone", bench.Ask("stint", "end").Error, StringComparison.Ordinal);
        Assert.Equal((0, "The stint was discarded; nothing was written.\n"), (bench.Ask("stint", "end", "--drop") is var end ? end.Status : 0, end.Error));
        Assert.Contains("No stint is running.", bench.Ask("stint", "show").Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--now", "--drop")]
    [InlineData("--at", "19:30", "--drop")]
    public void End_ContradictoryOptions_AreRefused(params string[] options)
    {
        using var bench = new AtTheBench();
        bench.Ask("stint", "begin");

        Assert.Equal((2, "Use only one of `--at`, `--now` and `--drop`.\n"), (bench.Ask(["stint", "end", .. options]) is var end ? end.Status : 0, end.Error));
        Assert.Contains("has been running", bench.Ask("stint", "show").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void End_ClockPutBack_KeepsTheStint_EvenWithNow()
    {
        using var bench = new AtTheBench();
        bench.At("2025-10-03 19:10").Ask("stint", "begin");

        Assert.Contains("By the clock the stint has not begun yet", bench.At("2025-10-03 18:00").Ask("stint", "end", "--now").Error, StringComparison.Ordinal);
        Assert.Contains("1h at the bench", bench.At("2025-10-03 20:10").Ask("stint", "end").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Begin_BuildUnderWayCannotBeRead_TakesNoOther()
    {
        using var bench = new AtTheBench();
        bench.Disk.With("drill/build.yaml", "title: *x\n").With("vice/build.yaml", "title: Vice\nstatus: under-way\nparts: [jaw]\n");

        var refused = bench.Ask("stint", "begin");

        Assert.Equal((2, "drill/build.yaml cannot be read, so it is unclear which build is under way. See `journal check`, or choose a build with `--build`.\n"), (refused.Status, refused.Error));
        Assert.Equal(0, bench.Ask("stint", "begin", "--build", "vice").Status);
    }

    [Fact]
    public void Begin_NothingUnderWay_AsksForTheBuild()
    {
        using var bench = new AtTheBench();
        bench.Disk.With("drill/build.yaml", "title: Drill\nstatus: finished\nparts: [head, quill, gib-screw]\n").With("vice/build.yaml", "title: Vice\nstatus: laid-aside\nparts: [jaw]\n");

        Assert.Equal("No build is under way. Choose one with `--build`: drill, vice; or add one with `journal add build <id>`.\n", bench.Ask("stint", "begin").Error);
    }
}
