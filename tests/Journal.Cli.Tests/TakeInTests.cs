using System.Diagnostics;
using System.Globalization;
using System.Runtime.Versioning;
using System.Text;
using Journal.Core.Model;

namespace Journal.Cli.Tests;

public sealed class TakeInTests : IDisposable
{
    private readonly JournalOnDisk journal = JournalOnDisk.Small();

    private string Note(string date) => File.ReadAllText(Directory.GetFiles(Path.Combine(Drill, "taken-in"), $"{date}*").Single());

    private string Drill => Path.Combine(journal.Folder, "drill");

    [Fact]
    public void Table_ByLetters_BecomesEntriesWithoutAFlaw()
    {
        journal.With("old.csv", "Datum;Was;Teil;Stunden;;Notiz\n03.10.2024;boring;Head casting;2,5;;\"Bored it;\nall of it.\"\n03.10.2024;;quill;0:45;;\n04.10.2024;;;1h10;;\n");

        var answer = journal.Ask("take-in", "old.csv", "--build", "drill", "--columns", "date=A,operation=B,part=C,hours=D,note=F", "--dates", "dd.mm.yyyy");

        Assert.Equal((0, ""), (answer.Status, answer.Error));
        Assert.Contains("Took in 3 rows, 4h25, as 2 entries of `drill`.", answer.Out, StringComparison.Ordinal);
        var entry = File.ReadAllText(Path.Combine(Drill, "taken-in", "2024-10-03-hours.md"));
        Assert.Contains("  - {part: head, operation: boring, hours: 2h30} # taken in ", entry, StringComparison.Ordinal);
        Assert.EndsWith("---\nBored it;\nall of it.\n", entry, StringComparison.Ordinal);
        Assert.Equal("No problems: 2 builds, 6 entries, 2 tools.\n", journal.Ask("check").Out);
        Assert.Contains("drill,quill,,45", journal.Ask("hours", "--format", "csv").Out.Replace("other", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void DryRun_ShowsTheTableAndWritesNothing()
    {
        journal.With("old.csv", "date,part,hours,note\n2024-10-03,head,2,Bored it\n");
        var before = Files();

        var answer = journal.Ask("take-in", "old.csv", "--build", "drill", "--dry-run");

        Assert.Matches(@"\n +2 +2024-10-03 +head +boring +2h +Bored it\n", answer.Out);
        Assert.Contains("Would take in 1 row, 2h, as 1 entry of `drill`.", answer.Out, StringComparison.Ordinal);
        Assert.Equal(before, Files());
    }

    [Fact]
    public void RowAsLongAsAnEveningOfThatDay_IsTakenIn_AndSaidToBeThereTwicePerhaps()
    {
        journal.With("drill/2024-10-03-head.md", "---\npart: head\noperation: boring\nhours: 2h\n---\n")
            .With("old.csv", "date,part,hours\n2024-10-03,head,2\n2024-10-03,quill,2\n2024-10-03,head,1\n2024-10-04,head,2\n");

        var answer = journal.Ask("take-in", "old.csv", "--build", "drill");

        Assert.Contains("The journal already has work of the same length on the same day, so these may now be in it twice: 2.", answer.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.DoesNotContain("twice", journal.Ask("take-in", "old.csv", "--build", "drill").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void TwiceIn_DoesNotCountTwice_AndALongerLogAddsOnlyWhatIsNew()
    {
        journal.With("old.csv", "date,hours\n2024-10-03,2\n2024-10-03,2\n");
        Assert.Contains("Took in 2 rows, 4h", journal.Ask("take-in", "old.csv", "--build", "drill").Out, StringComparison.Ordinal);

        Assert.Contains("Nothing to take in. 2 were already in the journal.", journal.Ask("take-in", "old.csv", "--build", "drill").Out, StringComparison.Ordinal);
        journal.With("newer.csv", "date,hours\n2024-10-04,1\n2024-10-03,2\n2024-10-03,2\n2024-10-03,2\n");
        var answer = journal.Ask("take-in", "newer.csv", "--build", "drill");

        Assert.Contains("Took in 2 rows, 3h, as 2 entries of `drill`. 2 were already in the journal.", answer.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(Drill, "taken-in-2", "2024-10-03-hours-2.md")));
    }

    [Fact]
    public void RowsThatCannotBeRead_AreListedWithLineAndReason_AndTheOthersTakenIn()
    {
        journal.With("old.csv", """
            date,part,operation,hours,note
            2024-10-03,haed,,1,
            2024-10-03,head,borring,1,
            2024-02-30,head,,1,
            ,head,,1,
            2024-10-03,head,,,
            2024-10-03,head,,long,
            2024-10-03,head,,25,
            2024-10-03,head,,"1,250",
            2024-10-03,head,,1,kept
            2024-10-03,head,,23.5,
            """);

        var answer = journal.Ask("take-in", "old.csv", "--build", "drill");

        Assert.Equal(1, answer.Status);
        Assert.Equal(
            [
                "old.csv, line 2: the build has no part “haed”; Did you mean `head`? Add it to build.yaml, then take the file in again.",
                "old.csv, line 3: there is no operation “borring”; Did you mean `boring`? New words go under `operations` in journal.yaml.",
                "old.csv, line 4: “2024-02-30” is not a date like `yyyy-mm-dd`.",
                "old.csv, line 5: there is no date.",
                "old.csv, line 7: “long” is not a time of a minute or more.",
                "old.csv, line 8: 25h is more than a day.",
                "old.csv, line 9: “1,250” could mean decimals or thousands; write at most two decimals.",
                "old.csv, line 11: with this, 2024-10-03 would have 24h30 of work, more than 24 hours.",
            ],
            answer.Error.TrimEnd('\n').Split('\n'));
        Assert.Contains("Took in 2 rows, 1h, as 1 entry of `drill`. 8 could not be read.", answer.Out, StringComparison.Ordinal);
        Assert.Equal(0, journal.Ask("check").Status);
    }

    [Theory]
    [InlineData("date,hours\n03/10/2024,1\n", "Line 2: which number of “03/10/2024” is the day? Give the date format, such as `--dates dd/mm/yyyy` or `--dates mm/dd/yyyy`")]
    [InlineData("date,hours\n25.12.24,1\n", "which number of “25.12.24” is the day?")]
    [InlineData("day,time\n2024-10-03,1\n", "There is no column `date`. The first line has: day, time.")]
    [InlineData("", "old.csv is empty.")]
    [InlineData("date,hours\n2024-10-03,\"1\n", "Line 2: a field starts with a double quote")]
    public void Table_ThatMustNotBeGuessedAt_IsRefused(string text, string why)
    {
        journal.With("old.csv", text);
        var before = Files();

        var answer = journal.Ask("take-in", "old.csv", "--build", "drill");

        Assert.Equal((2, ""), (answer.Status, answer.Out));
        Assert.Contains(why, answer.Error, StringComparison.Ordinal);
        Assert.Equal(before, Files());
    }

    // A dozen odd files that say the same: 3 October 2024, the head, two and a half hours, a note with a comma.
    [Theory]
    [InlineData("date,part,hours,note\n2024-10-03,head,2.5,\"a, b\"\n")]
    [InlineData("date,part,hours,note\r\n2024-10-03,head,2.5,\"a, b\"\r\n")]
    [InlineData("date,part,hours,note\r2024-10-03,head,2.5,\"a, b\"\r")]
    [InlineData("\uFEFFdate,part,hours,note\n2024-10-03,head,2.5,\"a, b\"")]
    [InlineData("date;part;hours;note\n2024-10-03;head;2,5;a, b\n")]
    [InlineData("date\tpart\thours\tnote\n2024-10-03\thead\t2h30\ta, b\n")]
    [InlineData("date|part|hours|note\n2024-10-03|head|2:30|a, b\n")]
    [InlineData("NOTE,Hours,Part,Date\n\"a, b\",2h 30m,Head casting,2024-10-03\n")]
    [InlineData("\"date\",\"part\",\"hours\",\"note\"\n\"2024-10-03\",\"head\",\"2,5\",\"a, b\"\n")]
    [InlineData("date,part,hours,note,,\n\n2024-10-03,head,2.5,\"a, b\",,\n,,,,,\n\n")]
    [InlineData("date,part,hours,note\n2024-10-03,HEAD,19:10-21:40,\"a, b\"\n")]
    [InlineData("number,date,x,part,hours,note\n1,2024-10-03,\"quoted \"\"x\"\"\r\nover lines\",head,PT2H30M,\"a, b\"\n")]
    public void OddTable_SaysTheSame(string text)
    {
        journal.With("old.csv", text);

        var answer = journal.Ask("take-in", "old.csv", "--build", "drill");

        Assert.Equal((0, ""), (answer.Status, answer.Error));
        var entry = File.ReadAllText(Path.Combine(Drill, "taken-in", "2024-10-03-hours.md"));
        Assert.Contains("{part: head, hours: 2h30}", entry, StringComparison.Ordinal);
        Assert.EndsWith("---\na, b\n", entry, StringComparison.Ordinal);
    }

    [Fact]
    public void Utf16WithItsMark_IsRead_AndOtherBytesAreNot()
    {
        File.WriteAllText(Path.Combine(journal.Folder, "wide.csv"), "date,hours\n2024-10-03,1\n", Encoding.Unicode);
        File.WriteAllBytes(Path.Combine(journal.Folder, "odd.csv"), [.. "date,hours,note\n2024-10-03,1,M"u8, 0xFC, .. "he\n"u8]);

        Assert.Equal(0, journal.Ask("take-in", "wide.csv", "--build", "drill").Status);
        Assert.Contains("not UTF-8 text", journal.Ask("take-in", "odd.csv", "--build", "drill").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Notes_KeepTheirTextByteForByteAndLeaveBlankWhatIsMissing()
    {
        var texts = new Dictionary<string, byte[]>
        {
            ["2024-03-05 Boring the head.md"] = [.. "# Boring the head\r\n\r\nIt *sang*.\r\n"u8],
            ["20240306_notes.txt"] = [.. "plain, with no end"u8],
            ["sub/later.txt"] = [.. "2024-03-07: Lapping\n\n---\nmore\n"u8],
            ["undated.txt"] = [.. "No day anywhere: \"quoted\"\n"u8],
        };
        foreach (var (name, bytes) in texts)
        {
            journal.With(Path.Combine("old", name), "");
            File.WriteAllBytes(Path.Combine(journal.Folder, "old", name), bytes);
        }

        File.SetLastWriteTime(Path.Combine(journal.Folder, "old", "undated.txt"), new DateTime(2024, 3, 9, 12, 0, 0, DateTimeKind.Local));

        var answer = journal.Ask("take-in", "old", "--build", "drill", "--dates", "file");

        Assert.Equal((0, ""), (answer.Status, answer.Error));
        foreach (var (file, bytes) in new[]
        {
            ("2024-03-05-boring-the-head.md", texts["2024-03-05 Boring the head.md"]),
            ("2024-03-06-plain-with-no-end.md", texts["20240306_notes.txt"]),
            ("2024-03-07-lapping.md", texts["sub/later.txt"]),
            ("2024-03-09-no-day-anywhere-quoted.md", texts["undated.txt"]),
        })
        {
            var written = File.ReadAllBytes(Path.Combine(Drill, "taken-in", file));
            Assert.Equal(bytes, written[^bytes.Length..]);
            Assert.EndsWith("\n---\n", Encoding.UTF8.GetString(written[..^bytes.Length]), StringComparison.Ordinal);
        }

        Assert.Contains("Dated by the files' own times, as the notes give no date: undated.txt.", answer.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        var problems = journal.Ask("check", "--format", "json").Json.GetProperty("problems").EnumerateArray().Select(problem => problem.GetProperty("code").GetString()).ToList();
        Assert.Equal(4, problems.Count(code => code == "hours-missing"));
        Assert.All(problems, code => Assert.Contains(code, new[] { "hours-missing", "part-not-said" }));
        Assert.Contains("Nothing to take in. 4 were already in the journal.", journal.Ask("take-in", "old", "--build", "drill", "--dates", "file").Out, StringComparison.Ordinal);
    }

    // Nothing is dated today because nobody understood it; missing hours hold no publishing up.
    [Fact]
    public void Notes_DatedAsMakersDateThem_AreReadOrAskedAbout_AndCanBePublished()
    {
        journal.With("old/a.txt", "5 Nov 2023\nSquared the block.\n").With("old/b 21.11.2023.txt", "Bored it.\n").With("old/c.md", "# The cap\n\nDate: 22. November 2023\n\nFaced it.\n")
            .With("old/d 12.11.23.txt", "Lapped it.\n").With("old/e.txt", "No day anywhere.\n");

        var answer = journal.Ask("take-in", "old", "--build", "drill");

        Assert.Equal(1, answer.Status);
        Assert.Equal(
            [
                "d 12.11.23.txt, line 1: which number of “12.11.23” is the day? Give the date format, such as `--dates dd.mm.yy` or `--dates mm.dd.yy` or `--dates yy.mm.dd`.",
                "e.txt, line 1: there is no date in its name or its first lines; write one there, or take the file's own date with `--dates file`.",
            ],
            answer.Error.TrimEnd('\n').Split('\n'));
        Assert.Equal(["2023-11-05-squared-the-block.md", "2023-11-21-bored-it.md", "2023-11-22-the-cap.md"], Directory.EnumerateFiles(Path.Combine(Drill, "taken-in")).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.Equal(0, journal.Ask("take-in", "old", "--build", "drill", "--dates", "dd.mm.yy,file").Status);
        Assert.True(File.Exists(Path.Combine(Drill, "taken-in-2", "2023-11-12-lapped-it.md")));
        Assert.Equal(0, journal.Ask("check").Status);
        Assert.Equal(0, journal.Ask("publish", "--to", "site").Status);
    }

    [Fact]
    public void Notes_OnATerminal_AreAskedAboutOnce()
    {
        journal.With("old/a 12.11.23.txt", "Lapped it.\n").With("old/b 03.04.23.txt", "Bored it.\n");

        var answer = Answer.To(journal.Folder, terminal => terminal with { CanAsk = true, In = new StringReader("1\n") }, "take-in", "old", "--build", "drill");

        Assert.Equal(0, answer.Status);
        Assert.Equal("  1 dd.mm.yy  2 mm.dd.yy  3 yy.mm.dd\nWhich number of “12.11.23” is the day?: ", answer.Error);
        Assert.Equal(["2023-04-03-bored-it.md", "2023-11-12-lapped-it.md"], Directory.EnumerateFiles(Path.Combine(Drill, "taken-in")).Select(Path.GetFileName).Order(StringComparer.Ordinal));
    }

    // Free text becomes the note; what was done is left for the plain words to read.
    [Fact]
    public void Table_MixedDatesAndATextColumn_IsTakenInInOneRun()
    {
        journal.With("old.csv", "date,hours,operation,remarks\n12.11.23,2,boring,Bored it to size\n\"Nov 5, 2023\",1.5,faced the back and cleaned up,It sang\n2023-11-06,,turning,Forgot the clock\n21/11/2023,1,,\n");

        var answer = journal.Ask("take-in", "old.csv", "--build", "drill", "--dates", "dd.mm.yy");

        Assert.Equal((0, ""), (answer.Status, answer.Error));
        Assert.Contains("Took in 4 rows, 4h30, as 4 entries of `drill`.", answer.Out, StringComparison.Ordinal);
        Assert.EndsWith("---\nfaced the back and cleaned up\n\nIt sang\n", File.ReadAllText(Path.Combine(Drill, "taken-in", "2023-11-05-hours.md")), StringComparison.Ordinal);
        Assert.Contains("  - {part: whole, operation: facing, hours: 1h30} #", File.ReadAllText(Path.Combine(Drill, "taken-in", "2023-11-05-hours.md")), StringComparison.Ordinal);
        Assert.Contains("  - {part: whole, operation: turning} #", File.ReadAllText(Path.Combine(Drill, "taken-in", "2023-11-06-hours.md")), StringComparison.Ordinal);
        Assert.Equal(0, journal.Ask("check").Status);
    }

    [Fact]
    public void Notes_InPlainWords_GetTheKeysThatAreSure_AndItSaysHowMany()
    {
        const string Bored = "Bored the head for an hour and a half, half an hour of that setting up. The bore came out at 25.02 mm.\n";
        const string Two = "Turned a gib screw for 40 minutes. Then drilled the head for 20 minutes. Made a drill jig.\n";
        journal.With("old/2024-03-05 one.txt", Bored).With("old/2024-03-06 two.txt", Two).With("old/2024-03-07 three.txt", "Reamed the head.\n").With("old/2024-03-08 four.txt", "Nothing much.\n");

        var answer = Answer.To(journal.Folder, terminal => terminal with { Width = 120 }, "take-in", "old", "--build", "drill");

        Assert.Equal((0, ""), (answer.Status, answer.Error));
        Assert.Matches(@"2024-03-05 one\.txt +2024-03-05 +head +boring +1h30 +5\n", answer.Out);
        Assert.Matches(@"2024-03-06 two\.txt +2024-03-06 +gib-screw, head +turning, drilling +1h +6\n", answer.Out);
        Assert.Matches(@"2024-03-07 three\.txt +2024-03-07 +head +reaming +2 +hours\n", answer.Out);
        Assert.Matches(@"2024-03-08 four\.txt +2024-03-08 +0 +part, operation, hours\n", answer.Out);
        Assert.Contains("Took in 4 notes, 2h30, as 4 entries of `drill`.", answer.Out, StringComparison.Ordinal);
        Assert.Contains("Read from their words: 13 keys of 3 notes; of 1 more nothing is sure. Look them through; `--blank` leaves them out.", answer.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Contains("\npart: head\noperation: boring\nhours: 1h30\nsetup: 30m\nreadings:\n  - {feature: bore, actual: 25.02 mm}\n# taken in ", Note("2024-03-05"), StringComparison.Ordinal);
        Assert.EndsWith($"\n---\n{Bored}", Note("2024-03-05"), StringComparison.Ordinal);
        Assert.Contains("\njobs:\n  - {part: gib-screw, operation: turning, hours: 40m}\n  - {part: head, operation: drilling, hours: 20m}\n# taken in ", Note("2024-03-06"), StringComparison.Ordinal);
        Assert.Contains("\npart: head\noperation: reaming\nhours:\n# taken in ", Note("2024-03-07"), StringComparison.Ordinal);
        Assert.Contains("\npart:\noperation:\nhours:\n# taken in ", Note("2024-03-08"), StringComparison.Ordinal);
        Assert.Equal(["hours-missing", "hours-missing", "part-not-said"], journal.Ask("check", "--format", "json").Json.GetProperty("problems").EnumerateArray().Select(problem => problem.GetProperty("code").GetString()).Order(StringComparer.Ordinal));
        Assert.Contains("Nothing to take in. 4 were already in the journal.", journal.Ask("take-in", "old", "--build", "drill").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Notes_Blank_LeavesTheWordsUnread()
    {
        journal.With("old/2024-03-05 one.txt", "Bored the head for an hour and a half.\n");

        Assert.DoesNotContain("Read from their words", journal.Ask("take-in", "old", "--build", "drill", "--blank").Out, StringComparison.Ordinal);
        Assert.Contains("\npart:\noperation:\nhours:\n# taken in ", Note("2024-03-05"), StringComparison.Ordinal);
    }

    // Each is true of its own; together they would be errors or warnings.
    [Fact]
    public void Notes_ThatSayTheSameTwice_AreTakenAtTheirWordOnce()
    {
        journal.With("old/2025-10-01 one.txt", "Finished the head, an hour of boring.\n").With("old/2025-10-02 two.txt", "Finished the head, an hour of boring.\n").With("old/2025-10-02 three.txt", "Bored the head for 23 hours and 30 minutes.\n");

        journal.Ask("take-in", "old", "--build", "drill");

        Assert.DoesNotContain(journal.Ask("check", "--format", "json").Json.GetProperty("problems").EnumerateArray(), problem => problem.GetProperty("code").GetString() is "finished-twice" or "day-too-long");
    }

    [Fact]
    public void Table_TextColumn_SaysWhatWasDoneWhereNoOtherColumnDoes()
    {
        journal.With("old.csv", "date,hours,remarks\n2024-03-05,1.5,Bored the head; the bore came out at 25.02 mm\n2024-03-05,1,\n2024-03-06,,Turned the quill for 40 minutes. Lesson: oil it first.\n2024-03-07,2,Nothing much\n");

        var answer = journal.Ask("take-in", "old.csv", "--build", "drill");

        Assert.Equal((0, ""), (answer.Status, answer.Error));
        Assert.Contains("Read from their words: 7 keys of 2 rows; of 2 more nothing is sure.", answer.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Matches(@"jobs:\n  - \{part: head, operation: boring, hours: 1h30\} # taken in [0-9a-f]+\n  - \{part: whole, hours: 1h\} # taken in [0-9a-f]+\nreadings:\n  - \{feature: bore, actual: 25.02 mm\}\n---\n", Note("2024-03-05"));
        Assert.Matches(@"  - \{part: quill, operation: turning, hours: 40m\} # taken in [0-9a-f]+\nlessons:\n  - oil it first\n---\n", Note("2024-03-06"));
        Assert.Equal(0, journal.Ask("check").Status);
        Assert.Contains("Nothing to take in. 4 were already in the journal.", journal.Ask("take-in", "old.csv", "--build", "drill").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Notes_ThatCannotBeRead_AreListedWithTheReason()
    {
        journal.With("old/empty.txt", " \n").With("old/05-03-2024.txt", "Which day?\n");
        File.WriteAllBytes(Path.Combine(journal.Folder, "old", "odd.md"), [0x4D, 0xFC]);

        var answer = journal.Ask("take-in", "old", "--build", "drill");

        Assert.Equal(1, answer.Status);
        Assert.Contains("05-03-2024.txt, line 1: which number of “05-03-2024” is the day?", answer.Error, StringComparison.Ordinal);
        Assert.Contains("empty.txt, line 1: it is empty.", answer.Error, StringComparison.Ordinal);
        Assert.Contains("odd.md, line 1: it is not UTF-8 text", answer.Error, StringComparison.Ordinal);
        Assert.Equal(0, journal.Ask("take-in", "old", "--build", "drill", "--dates", "dd-mm-yyyy").Out.Length == 0 ? 1 : 0);
        Assert.True(File.Exists(Path.Combine(Drill, "taken-in", "2024-03-05-which-day.md")));
    }

    [Fact]
    public void RowWithMoreColumnsThanTheFirstLine_IsAFault_BecauseWordsWouldBeLost()
    {
        journal.With("old.csv", "date,hours,note\n2024-10-03,1h,Bored, then reamed\n2024-10-04,1h,Lapped,,\n");

        var answer = journal.Ask("take-in", "old.csv", "--build", "drill");

        Assert.Equal(1, answer.Status);
        Assert.Contains("old.csv, line 2: it has 4 columns where the first line has 3; put fields that contain `,` in double quotes.", answer.Error, StringComparison.Ordinal);
        Assert.Equal(["2024-10-04-hours.md"], Directory.EnumerateFiles(Path.Combine(Drill, "taken-in")).Select(Path.GetFileName));
    }

    [Fact]
    public void NotesOfTheSameWordsOnTwoDays_AreBothTakenInOnce()
    {
        journal.With("old/2024-03-05.md", "Painted.");
        Assert.Equal(0, journal.Ask("take-in", "old", "--build", "drill").Status);
        journal.With("old/2024-03-09.md", "Painted.");

        Assert.Contains("Took in 1 note, as 1 entry of `drill`. 1 was already in the journal.", journal.Ask("take-in", "old", "--build", "drill").Out, StringComparison.Ordinal);
        Assert.Contains("Nothing to take in. 2 were already in the journal.", journal.Ask("take-in", "old", "--build", "drill").Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("---\ndate: 2024-03-05\npublish: never\n---\nSecret.\n", true)]
    [InlineData("---\r\npublish: 2030-01-01\r\n---\r\nSecret.\r\n", true)]
    [InlineData("---\n\"publish\": never\n---\nSecret.\n", true)]
    [InlineData("---\n  publish: never\n---\nSecret.\n", true)]
    [InlineData("---\n{publish: never}\n---\nSecret.\n", true)]
    [InlineData("---\n? publish\n: never\n---\nSecret.\n", true)]
    [InlineData("---\rpublish: never\r---\rSecret.\r", true)]
    [InlineData("---\npublish: never\n", true)]
    [InlineData("---\ntitle: Rule above\n---\npublish: is only a word here\n", false)]
    [InlineData("Words\n---\npublish: never\n---\n", false)]
    public void NoteThatSaysWhetherToPublishIt_IsAFault_BecauseItWouldBePublished(string text, bool isFault)
    {
        journal.With("old/2024-03-05.md", text);

        var answer = journal.Ask("take-in", "old", "--build", "drill");

        Assert.Equal(isFault ? 1 : 0, answer.Status);
        Assert.Equal(isFault, answer.Error.Contains("it has `publish` in its own front matter", StringComparison.Ordinal));
        Assert.Equal(!isFault, Directory.Exists(Path.Combine(Drill, "taken-in")));
    }

    [Fact]
    [UnsupportedOSPlatform("windows")]
    public void PipesDevicesAndLinksRoundInACircle_AreNotWaitedFor()
    {
        journal.With("old/2024-03-05.md", "Painted.");
        Directory.CreateSymbolicLink(Path.Combine(Drill, "a"), ".");
        Directory.CreateSymbolicLink(Path.Combine(Drill, "b"), ".");
        foreach (var pipe in new[] { Path.Combine(journal.Folder, "old", "2024-03-06.md"), Path.Combine(Drill, "2024-03-06.md"), Path.Combine(journal.Folder, "old.csv") })
        {
            using var made = Process.Start("mkfifo", [pipe]);
            made.WaitForExit();
        }

        var answer = journal.Ask("take-in", "old", "--build", "drill");

        Assert.Contains("Took in 1 note", answer.Out, StringComparison.Ordinal);
        Assert.Equal("2024-03-06.md, line 1: it is empty.", answer.Error.Trim());
        Assert.Contains("old.csv is empty", journal.Ask("take-in", "old.csv", "--build", "drill").Error, StringComparison.Ordinal);
        Assert.Contains("zero is empty", journal.Ask("take-in", "/dev/zero", "--build", "drill").Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task TwoAtOnce_BothKeepAllTheirNotes()
    {
        for (var i = 0; i < 200; i++)
        {
            journal.With($"one/2024-03-05-a{i}.md", $"One {i}.").With($"two/2024-03-06-b{i}.md", $"Two {i}.");
        }

        var answers = await Task.WhenAll(new[] { "one", "two" }.Select(folder => Task.Run(() => journal.Ask("take-in", folder, "--build", "drill"))));

        Assert.All(answers, answer => Assert.Contains("Took in 200 notes", answer.Out, StringComparison.Ordinal));
        Assert.Equal(400, Directory.EnumerateFiles(Drill, "2024-03-0*.md", SearchOption.AllDirectories).Count());
    }

    [Fact]
    public void FileThatIsThere_IsNeverWrittenOver_WhateverItsLetters()
    {
        journal.With("drill/more/2024-10-03-HOURS.md", "mine").With("old.csv", "date,hours\n2024-10-03,1\n");

        journal.Ask("take-in", "old.csv", "--build", "drill");

        Assert.Equal("mine", File.ReadAllText(Path.Combine(Drill, "more/2024-10-03-HOURS.md")));
        Assert.True(File.Exists(Path.Combine(Drill, "taken-in", "2024-10-03-hours-2.md")));
    }

    [Fact]
    public void StoppedHalfWay_LeavesNothingBehind()
    {
        journal.With("drill/.being-taken-in/2024-01-01-hours.md", "half").With("old.csv", "date,hours\n2024-10-03,1\n");

        Assert.Equal(0, journal.Ask("take-in", "old.csv", "--build", "drill").Status);

        Assert.False(Directory.Exists(Path.Combine(Drill, ".being-taken-in")));
        Assert.False(File.Exists(Path.Combine(Drill, "taken-in", "2024-01-01-hours.md")));
    }

    [Fact]
    public void RowOfADayToCome_IsAFault_ForPublishingWouldStopAtIt()
    {
        journal.With("old.csv", "date,hours\n2024-10-03,2\n9999-12-31,1\n");

        var answer = journal.Ask("take-in", "old.csv", "--build", "drill");

        Assert.Equal(1, answer.Status);
        Assert.Contains("Took in 1 row, 2h, as 1 entry", answer.Out, StringComparison.Ordinal);
        Assert.Matches("^old.csv, line 3: 9999-12-31 is in the future; today is [0-9-]+\\.\n$", answer.Error);
        Assert.StartsWith("No problems", journal.Ask("check").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void InchesInAQuotedNote_StayAsTheyWereWritten()
    {
        journal.With("old.csv", "date,hours,note\n2024-10-03,2,\"5/8\" bar parted\"\n");

        journal.Ask("take-in", "old.csv", "--build", "drill");

        Assert.EndsWith("\n\"5/8\" bar parted\"\n", File.ReadAllText(Path.Combine(Drill, "taken-in", "2024-10-03-hours.md")), StringComparison.Ordinal);
    }

    [Fact]
    public void FilesThatAreNoNotes_AreNamed()
    {
        journal.With("notes/2024-10-03.txt", "Bored it.\n").With("notes/old/parts.org", "x\n").With("notes/list", "x\n").With("notes/.index", "x\n");
        File.CreateSymbolicLink(Path.Combine(journal.Folder, "notes", "linked.txt"), "2024-10-03.txt");

        var answer = journal.Ask("take-in", "notes", "--build", "drill");

        Assert.Equal((0, ""), (answer.Status, answer.Error));
        Assert.Contains("Took in 1 note, as 1 entry of `drill`.", answer.Out, StringComparison.Ordinal);
        Assert.Contains("and links are not followed): linked.txt, list, old/parts.org.", answer.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void UnknownBuildOrFile_IsSaid()
    {
        journal.With("old.csv", "date,hours\n2024-10-03,1\n");

        Assert.Contains("Which build does it belong to?", journal.Ask("take-in", "old.csv").Error, StringComparison.Ordinal);
        Assert.Contains("Did you mean `drill`?", journal.Ask("take-in", "old.csv", "--build", "dril").Error, StringComparison.Ordinal);
        Assert.Contains("There is no file or folder", journal.Ask("take-in", "none.csv", "--build", "drill").Error, StringComparison.Ordinal);
    }

    // How long it takes stands in `tests/Journal.Benchmarks take-in`.
    [Fact]
    public void HundredThousandRows_BecomeOneEntryADayWithAllTheirHours()
    {
        var text = new StringBuilder("date,part,operation,hours,note\r\n");
        for (var i = 0; i < 100_000; i++)
        {
            text.Append(CultureInfo.InvariantCulture, $"{new DateOnly(2010, 1, 1).AddDays(i / 100):yyyy-MM-dd},head,boring,0:1{i % 4},\"row {i}, as kept\"\r\n");
        }

        journal.With("old.csv", text.ToString());
        var answer = journal.Ask("take-in", "old.csv", "--build", "drill");

        Assert.Contains("Took in 100000 rows, 19166h40, as 1000 entries of `drill`.", answer.Out, StringComparison.Ordinal);
        var files = Directory.GetFiles(Path.Combine(Drill, "taken-in"));
        Assert.Equal(1000, files.Length);
        Assert.Equal(100_000, files.Sum(file => File.ReadLines(file).Count(line => line.Contains("# taken in ", StringComparison.Ordinal))));
        Assert.Equal(100_000, files.Sum(file => File.ReadLines(file).Count(line => line.EndsWith(", as kept", StringComparison.Ordinal))));
    }

    public void Dispose() => journal.Dispose();

    // What the program keeps for itself is no part of the journal.
    private string[] Files() => [.. Directory.EnumerateFileSystemEntries(journal.Folder, "*", SearchOption.AllDirectories).Where(path => !path.Contains("/.bench", StringComparison.Ordinal)).Order(StringComparer.Ordinal)];
}
