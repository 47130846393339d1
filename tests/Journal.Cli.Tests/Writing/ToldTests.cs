using System.Globalization;
using Journal.Core.Checking;

namespace Journal.Cli.Tests.Writing;

/// <summary><c>journal write --from</c>: an evening told in plain words becomes an entry. The accounts are invented for these tests.</summary>
public class ToldTests
{
    private const string Plain = "Bored the head for an hour and a half, half an hour of that setting up.\n\nThe bore came out at 25.02 mm.\n\nNext: face the back of the boss.\n";

    private const string TwoJobs = "Turned the quill for 40 minutes. Then drilled the head, 20 minutes. Made a drill jig for the head. I bought a tin of cutting oil.\n";

    [Fact]
    public void WriteFrom_Yes_AccountIsTheTextAndItsKeysStandAbove()
    {
        using var bench = new AtTheBench();
        bench.Disk.With("evening.txt", Plain);

        var written = bench.Ask("write", "--from", "evening.txt", "--yes");

        Assert.Equal((0, ""), (written.Status, written.Error));
        Assert.Equal(
            $"""
            ---
            date: 2025-10-03
            part: head
            operation: boring
            hours: 1h30
            setup: 30m
            next: face the back of the boss
            readings:
              - {"{"}feature: bore, actual: 25.02 mm{"}"}
            ---
            {Plain}
            """,
            Entry(bench, written));
        Assert.Empty(bench.Problems());
    }

    [Theory]
    [InlineData("typed", "Quill. Turned it to size 1 1/2 hrs, 3-jaw then between centres. Dia came out 19.99 mm.\r\nSnag: the keyway needs a file.\r\n")]
    [InlineData("dictated", "okay so tonight was the head again two hours boring it on the lathe I took it too deep and lost twenty minutes because I misread the dial so next time I'll set the stop first")]
    [InlineData("narrated", "Good evening, and welcome back.\n\n\tTonight we bored the head, which took an hour and twenty minutes.\n\nAnd then, because I could not help myself, I lapped the quill for forty minutes.\n\n\n")]
    [InlineData("gib screws", "- turned three of the gib screws, 50 min\n- finished\n# not a heading, a number: #3 drill\n---\n")]
    [InlineData("odd letters", "Bored the head for 1 hour. “Fläche”, naïve, 12 µm, 𝟙, \u00a0and {braces}: [brackets] & <b>more</b>\n")]
    public void WriteFrom_Accounts_StandInTheTextToTheLetterAndPassCheck(string style, string account)
    {
        using var bench = new AtTheBench();
        bench.Disk.With("evening.txt", account);

        var written = bench.Ask("write", "--from", "evening.txt", "--yes");

        Assert.True(written.Status == 0, $"{style}: {written.Error}");
        Assert.Equal(account.EndsWith('\n') ? account : account + "\n", TextOf(Entry(bench, written)));
        Assert.Empty(bench.Problems());
        Assert.Equal(0, bench.Ask("check").Status);
    }

    // Whatever is read in them, nothing of it may be an entry that check has something against. Read from the accounts beside the tests of Core.
    [Fact]
    public void WriteFrom_AccountsOfOthers_AllPassCheckAndKeepTheirWords()
    {
        var folders = Directory.GetDirectories(Path.Combine(Demo.Root, "tests", "Journal.Core.Tests", "PlainWords", "Accounts"));
        Assert.NotEmpty(folders);
        foreach (var maker in folders)
        {
            using var bench = JournalOnDisk.Bare();
            foreach (var file in Directory.GetFiles(Path.Combine(maker, "journal"), "*", SearchOption.AllDirectories))
            {
                bench.With(Path.GetRelativePath(Path.Combine(maker, "journal"), file), File.ReadAllText(file));
            }

            var before = Problems(bench);
            foreach (var file in Directory.GetFiles(Path.Combine(maker, "open"), "*.json").Order(StringComparer.Ordinal))
            {
                var account = System.Text.Json.JsonDocument.Parse(File.ReadAllText(file)).RootElement;
                var (text, date) = (account.GetProperty("text").GetString()!, account.GetProperty("date").GetString()!);
                var written = Answer.To(
                    bench.Folder,
                    terminal => terminal with { In = new StringReader(text), Now = DateTimeOffset.Parse("2027-01-01T12:00Z", CultureInfo.InvariantCulture) },
                    "write", "--from", "-", "--yes", "--date", date, "--build", account.GetProperty("build").GetString()!);
                Assert.True(written.Status is 0 or 2, $"{file}: {written.Error}");
                if (written.Status == 0)
                {
                    Assert.Equal(text.EndsWith('\n') ? text : text + "\n", TextOf(File.ReadAllText(written.Out.Trim())));
                }
            }

            Assert.Equal(before, Problems(bench));
        }

        static IEnumerable<string> Problems(JournalOnDisk bench) =>
            [.. JournalReader.Read(bench.Folder, new DateOnly(2027, 1, 1)).Problems.Select(problem => $"{problem.Place}: {problem.Message}")];
    }

    [Fact]
    public void WriteFrom_Yes_ListsWhatItLeftOut_AndWritesNoLineElsewhere()
    {
        using var bench = new AtTheBench();
        bench.Disk.With("evening.txt", TwoJobs);
        var crib = bench.Text("tools.yaml");

        var written = bench.Ask("write", "--from", "evening.txt", "--yes");

        Assert.Equal(0, written.Status);
        Assert.Contains("Left out: bought tin of cutting oil: no cost was said.", written.Error, StringComparison.Ordinal);
        Assert.Contains("Left out: made drill jig: it needs your yes", written.Error, StringComparison.Ordinal);
        Assert.Contains("journal add tool drill-jig", written.Error, StringComparison.Ordinal);
        var text = Entry(bench, written);
        Assert.Contains("jobs:\n  - {part: quill, operation: turning, hours: 40m}\n  - {part: head, operation: drilling, hours: 20m}\n", text, StringComparison.Ordinal);
        Assert.DoesNotContain("made:", text, StringComparison.Ordinal);
        Assert.Equal(crib, bench.Text("tools.yaml"));
        Assert.Empty(bench.Problems());
    }

    [Fact]
    public void WriteFrom_TotalAlone_StandsOverTheJobsTogether()
    {
        using var bench = new AtTheBench();
        bench.Disk.With("evening.txt", "Two and a half hours in all. Turned the quill and drilled the head.\n");

        var written = bench.Ask("write", "--from", "evening.txt", "--yes");

        Assert.Contains("part: [quill, head]\noperation: [turning, drilling]\nhours: 2h30\n", Entry(bench, written), StringComparison.Ordinal);
        Assert.Empty(bench.Problems());
    }

    [Fact]
    public void WriteFrom_Options_CountInsteadOfTheAccount()
    {
        using var bench = new AtTheBench();
        bench.Disk.With("evening.txt", Plain);

        var written = bench.Ask(
            "write", "--from", "evening.txt", "--yes", "--part", "quill", "--operation", "lapping", "--operation", "reaming", "--hours", "2h", "--tool", "lathe", "--title", "The quill",
            "--mistake", "Forgot the oil.", "--next", "Clean up", "--date", "2025-10-01");

        var text = Entry(bench, written);
        Assert.StartsWith(
            "---\ntitle: The quill\ndate: 2025-10-01\npart: quill\noperation: [lapping, reaming]\nhours: 2h\nsetup: 30m\ntools: [lathe]\nnext: Clean up\nmistakes:\n  - Forgot the oil.\n",
            text,
            StringComparison.Ordinal);
        Assert.EndsWith("---\n" + Plain, text, StringComparison.Ordinal);
        Assert.Empty(bench.Problems());
    }

    [Fact]
    public void WriteFrom_NoTimeSaid_IsRefusedUntilItIs()
    {
        using var bench = new AtTheBench();
        bench.Disk.With("evening.txt", "Bored the head.\n");
        var before = bench.Entries();

        var refused = bench.Ask("write", "--from", "evening.txt", "--yes");

        Assert.Equal(2, refused.Status);
        Assert.Equal("Left out: head, boring: no time was said for it. “Bored the head”\nNo job with its time can be read from the account. Say what it does not: `--part`, `--operation`, `--hours`. Nothing was written.\n", refused.Error);
        Assert.Equal(before, bench.Entries());
        Assert.Contains("part: head\noperation: boring\nhours: 45m\n", Entry(bench, bench.Ask("write", "--from", "evening.txt", "--yes", "--hours", "45m")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("empty", "The account is empty. Nothing was written.")]
    [InlineData("blank", "The account is empty. Nothing was written.")]
    [InlineData("binary", "evening.txt is not text in UTF-8.")]
    [InlineData("another encoding", "evening.txt is not text in UTF-8.")]
    [InlineData("a megabyte", "The account cannot be an entry’s text. The text has")]
    [InlineData("many megabytes", "evening.txt is too long for an account of an evening.")]
    [InlineData("too nested", "The account cannot be an entry’s text. The text is nested too deeply")]
    [InlineData("no sense", "No job with its time can be read from the account.")]
    [InlineData("another language", "No job with its time can be read from the account.")]
    public void WriteFrom_WhatIsNoAccount_SaysSoAndWritesNothing(string what, string error)
    {
        using var bench = new AtTheBench();
        File.WriteAllBytes(Path.Combine(bench.Disk.Folder, "evening.txt"), NoAccount(what));
        var before = bench.Entries();

        var refused = bench.Ask("write", "--from", "evening.txt", "--yes");

        Assert.True(refused.Status == 2 && refused.Error.Contains(error, StringComparison.Ordinal), $"{what}: {refused.Error}");
        Assert.Equal("", refused.Out);
        Assert.Equal(before, bench.Entries());
    }

    private static byte[] NoAccount(string what) => what switch
    {
        "empty" => [],
        "blank" => " \n\t\n"u8.ToArray(),
        "binary" => [0, 1, 2, 255, 254, 0, 13],
        "another encoding" => [.. "Bored the head, 1h, Schr"u8, 0xE4, .. "g"u8],
        "a megabyte" => [.. Enumerable.Repeat((byte)'a', 1 << 20)],
        "many megabytes" => [.. Enumerable.Repeat((byte)'a', 9 << 20)],
        "too nested" => [.. Enumerable.Repeat((byte)'[', 60_000)],
        "no sense" => "Colourless green ideas sleep furiously.\n"u8.ToArray(),
        _ => "Heute abend war ich nur spazieren, und morgen kommt Besuch.\n"u8.ToArray(),
    };

    [Theory]
    [InlineData("`--yes` goes with `--from`, which names the account to be written.", "--yes", "--hours", "1h")]
    [InlineData("Nobody can be asked here. Say `--yes` to write what is sure, or look at it first with `journal propose`. Nothing was written.", "--from", "evening.txt")]
    [InlineData("`2:75` is not a time. Write `1h30`, `45m`, `1.5`, `1:30` or `19:10-20:40`.", "--from", "evening.txt", "--yes", "--hours", "2:75")]
    [InlineData("Bench drill has no part `hed`. Did you mean `head`?", "--from", "evening.txt", "--yes", "--part", "hed")]
    [InlineData("There is no operation `borng`. Did you mean `boring`?", "--from", "evening.txt", "--yes", "--operation", "borng")]
    [InlineData("2026-01-01 is in the future; this is the evening of 2025-10-03.", "--from", "evening.txt", "--yes", "--date", "2026-01-01")]
    [InlineData("`--captions` and `--from` go one after the other: write the evening first, then `journal write --captions --entry <words>`.", "--from", "evening.txt", "--captions")]
    public void WriteFrom_WrongUse_WritesNothingAndSaysWhatWouldDo(string error, params string[] options)
    {
        using var bench = new AtTheBench();
        bench.Disk.With("evening.txt", Plain);
        var before = bench.Entries();

        var refused = bench.Ask(["write", .. options]);

        Assert.Equal((2, "", error + "\n"), (refused.Status, refused.Out, refused.Error));
        Assert.Equal(before, bench.Entries());
    }

    [Fact]
    public void WriteFrom_NoSuchFile_IsWrongUse()
    {
        using var bench = new AtTheBench();

        Assert.Contains("nowhere.txt cannot be read", bench.Ask("write", "--from", "nowhere.txt", "--yes").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void WriteFrom_OnATerminal_ShowsWhatItUnderstoodAndWritesOnEnter()
    {
        using var bench = new AtTheBench();
        bench.Disk.With("evening.txt", Plain);

        var written = bench.AskAndAnswer([""], "write", "--from", "evening.txt");

        Assert.Equal(0, written.Status);
        Assert.Contains("Bench drill, 2025-10-03\n 1 job       head; boring; 1h30; set-up 30m\n               “Bored the head", written.Error, StringComparison.Ordinal);
        Assert.Contains("Write this? (Enter: yes; `no`; or the numbers of what to leave out) [yes]: ", written.Error, StringComparison.Ordinal);
        Assert.Contains("hours: 1h30\nsetup: 30m\n", Entry(bench, written), StringComparison.Ordinal);
    }

    [Fact]
    public void WriteFrom_OnATerminal_NoWritesNothing()
    {
        using var bench = new AtTheBench();
        bench.Disk.With("evening.txt", Plain);
        var before = bench.Entries();

        Assert.EndsWith("Nothing was written.\n", bench.AskAndAnswer(["no"], "write", "--from", "evening.txt").Error, StringComparison.Ordinal);
        Assert.Equal(3, bench.AskAndAnswer([], "write", "--from", "evening.txt").Status);
        Assert.Equal(before, bench.Entries());
    }

    [Fact]
    public void WriteFrom_OnATerminal_NumbersLeaveOut()
    {
        using var bench = new AtTheBench();
        bench.Disk.With("evening.txt", Plain);

        var written = bench.AskAndAnswer(["7", "2, 3"], "write", "--from", "evening.txt");

        Assert.Contains("Say `yes`, `no`, or numbers from 1 to 3.", written.Error, StringComparison.Ordinal);
        Assert.Equal("---\ndate: 2025-10-03\npart: head\noperation: boring\nhours: 1h30\nsetup: 30m\n---\n" + Plain, Entry(bench, written));
    }

    [Fact]
    public void WriteFrom_OnATerminal_AsksForWhatIsMissing()
    {
        using var bench = new AtTheBench();
        bench.Disk.With("evening.txt", "Turned the quill. Then drilled the head, 20 minutes. Made a drill jig for the head. I bought a tin of cutting oil.\n");

        var written = bench.AskAndAnswer(["", "long", "40m", "cheap", "4.50", ""], "write", "--from", "evening.txt");

        Assert.Equal(0, written.Status);
        Assert.Contains("Hours, for turning, quill (Enter: leave it out): `long` is not a time.", written.Error, StringComparison.Ordinal);
        Assert.Contains("Cost of tin of cutting oil (Enter: leave it out): `cheap` is not an amount.", written.Error, StringComparison.Ordinal);
        Assert.Contains("You made a jig, “drill jig”. Add it as `drill-jig`? [yes]: ", written.Error, StringComparison.Ordinal);
        var text = Entry(bench, written);
        Assert.Contains("  - {part: quill, operation: turning, hours: 40m}\n", text, StringComparison.Ordinal);
        Assert.Contains("made: {id: drill-jig, title: drill jig, kind: jig}", text, StringComparison.Ordinal);
        Assert.Contains("bought:\n  - {what: tin of cutting oil, cost: 4.50}\n", text, StringComparison.Ordinal);
        Assert.Empty(bench.Problems());
    }

    [Fact]
    public void WriteFrom_TimeWithoutAJob_IsAskedWhatItWasFor()
    {
        using var bench = new AtTheBench();
        bench.Disk.With("evening.txt", "An hour and a half in all. Bored the head for an hour.\n");

        var told = bench.Ask("write", "--from", "evening.txt", "--yes");

        Assert.Contains("Left out: 30m of the 1h30: no job was told for it.", told.Error, StringComparison.Ordinal);
        Assert.Contains("hours: 1h\n", Entry(bench, told), StringComparison.Ordinal);
    }

    [Fact]
    public void WriteFrom_StandardInput_IsReadToItsEnd()
    {
        using var bench = new AtTheBench();

        var written = Answer.To(bench.Disk.Folder, terminal => terminal with { Now = Answer.Evening, In = new StringReader(Plain) }, "write", "--from", "-", "--yes");

        Assert.Equal(0, written.Status);
        Assert.EndsWith("---\n" + Plain, Entry(bench, written), StringComparison.Ordinal);
    }

    [Fact]
    public void WriteFrom_StintRunning_GivesTheTimeThatTheWordsDoNot()
    {
        using var bench = new AtTheBench();
        bench.At("2025-10-03 19:10").Ask("stint", "begin", "--part", "head", "--operation", "boring");
        bench.Disk.With("evening.txt", "It was held on the face plate. Finished at last.\n");

        var written = bench.At("2025-10-03 20:40").Ask("write", "--from", "evening.txt", "--yes");

        Assert.Equal(0, written.Status);
        Assert.Contains("part: head\noperation: boring\nhours: 1h30\n", Entry(bench, written), StringComparison.Ordinal);
        Assert.Contains("No stint is running.", bench.Ask("stint", "show").Out, StringComparison.Ordinal);
        Assert.Single(bench.Entries(), name => name.StartsWith("2025-10-03", StringComparison.Ordinal));
    }

    [Fact]
    public void WriteFrom_AfterStintEnd_BecomesTheTextOfTheStintsEntry()
    {
        using var bench = new AtTheBench();
        bench.At("2025-10-03 19:10").Ask("stint", "begin", "--part", "head", "--operation", "boring");
        bench.At("2025-10-03 20:40").Ask("stint", "end");
        bench.Disk.With("evening.txt", Plain);

        var written = bench.Ask("write", "--from", "evening.txt", "--yes");

        Assert.Equal(0, written.Status);
        Assert.Equal(
            "---\ndate: 2025-10-03\njobs:\n  - {part: head, operation: boring, hours: 1h30}\nnext: face the back of the boss\nreadings:\n  - {feature: bore, actual: 25.02 mm}\n---\n" + Plain,
            Entry(bench, written));
        Assert.Contains("the entry has its hours by the clock", written.Error, StringComparison.Ordinal);
        Assert.Empty(bench.Problems());
    }

    [Fact]
    public void WriteFrom_Remarks_StandBelowTheAccount()
    {
        using var bench = new AtTheBench();
        bench.Ask("jot", "It", "sings");
        bench.Disk.With("evening.txt", Plain);

        Assert.EndsWith(Plain + "\nIt sings\n", Entry(bench, bench.Ask("write", "--from", "evening.txt", "--yes")), StringComparison.Ordinal);
        Assert.DoesNotContain("sings", bench.Text(".bench/slate.json"), StringComparison.Ordinal);
    }

    [Fact]
    public void WriteFrom_MoreThanADay_LeavesTheJobOut()
    {
        using var bench = new AtTheBench();
        bench.Ask("write", "--hours", "23h30");
        bench.Disk.With("evening.txt", Plain);

        var refused = bench.Ask("write", "--from", "evening.txt", "--yes");

        Assert.Equal(2, refused.Status);
        Assert.Contains("with it the day would have more than 24 hours of work", refused.Error, StringComparison.Ordinal);
    }

    private static string Entry(AtTheBench bench, Answer written)
    {
        Assert.True(written.Out.Length > 0, written.Error);
        return bench.Text($"drill/{Path.GetFileName(written.Out.Trim())}");
    }

    private static string TextOf(string entry) => entry[(entry.IndexOf("\n---\n", StringComparison.Ordinal) + 5)..];
}
