namespace Journal.Cli.Tests;

public class ExitStatusTests
{
    private const string UnknownOperation = "---\npart: head\noperation: borring\nhours: 1h\n---\n";
    private const string MissingPicture = "---\npart: head\noperation: boring\nhours: 1h\nphotos: {file: photos/none.jpg, caption: The bore}\n---\n";
    private const string NoPartSaid = "---\noperation: boring\nhours: 1h\n---\n";

    public static TheoryData<string> Commands => ["check", "hours", "timeline", "lessons", "tooling", "costs", "next"];

    [Theory]
    [MemberData(nameof(Commands))]
    public void WellJournal_EachCommandAndFormat_Is0AndSaysNothingElse(string command)
    {
        using var journal = JournalOnDisk.Small();

        foreach (var format in new[] { "table", "csv", "json" })
        {
            var answer = journal.Ask(command, "--format", format);

            Assert.Equal(0, answer.Status);
            Assert.NotEqual("", answer.Out);
            Assert.Equal("", answer.Error);
        }
    }

    [Theory]
    [InlineData(UnknownOperation, 1)]
    [InlineData(MissingPicture, 1)]
    [InlineData(NoPartSaid, 0)]
    public void Check_ErrorOmissionWarning_Is1UnlessOnlyAWarning(string entry, int status)
    {
        using var journal = JournalOnDisk.Small().With("drill/2025-10-01-slip.md", entry);

        Assert.Equal(status, journal.Ask("check").Status);
    }

    [Fact]
    public void Hours_FlawedJournal_PrintsWhatCouldBeReadAndPointsToCheck()
    {
        using var journal = JournalOnDisk.Small().With("drill/2025-10-01-slip.md", UnknownOperation);

        var answer = journal.Ask("hours", "--format", "json");

        Assert.Equal(1, answer.Status);
        Assert.Equal("drill", answer.Json.GetProperty("builds")[0].GetProperty("build").GetString());
        Assert.Equal("1 error in the journal; what it touches is missing here. See `journal check`.\n", answer.Error);
    }

    [Theory]
    [InlineData("jobs: 4h20")]
    [InlineData("jobs: []")]
    [InlineData("jobs: {}")]
    [InlineData("jobs: [4h20, [2h]]")]
    [InlineData("jobs:")]
    public void EachCommand_JobsThatAreNone_AnswersAndPointsToCheck(string jobs)
    {
        using var journal = JournalOnDisk.Small().With("drill/2025-10-01-slip.md", $"---\n{jobs}\n---\n");

        foreach (var command in new[] { "check", "hours", "timeline", "lessons", "tooling", "costs", "readings", "settings", "next", "stint begin --part head", "stint end", "jot slip", "write --part head --operation boring --hours 1h" })
        {
            var answer = journal.Ask(command.Split(' '));

            Assert.True(answer.Status is 0 or 1, $"{command}: {answer.Status} {answer.Error}");
        }
    }

    [Fact]
    public void Hours_NamedFolder_PointsToCheckInThatFolder()
    {
        using var journal = JournalOnDisk.Small().With("drill/2025-10-01-slip.md", UnknownOperation);

        Assert.Contains($"`journal check --in {journal.Folder}`", Answer.To("/", "hours", "--in", journal.Folder).Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Hours_JournalFileUnreadable_Is1WithoutResults()
    {
        using var journal = JournalOnDisk.Bare().With("journal.yaml", "title: [a, b\n");

        var answer = journal.Ask("hours");

        Assert.Equal((1, ""), (answer.Status, answer.Out));
        Assert.Contains("nothing could be read", answer.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void FutureEntry_IsAProblemOfCheckAlone()
    {
        using var journal = JournalOnDisk.Small().With("drill/2025-10-04-tomorrow.md", NoPartSaid);

        Assert.Equal(1, journal.Ask("check").Status);
        Assert.Equal(0, journal.Ask("check", "--today", "2025-10-04").Status);
        Assert.Equal(0, journal.Ask("hours").Status);
        Assert.Equal(1, journal.Ask("hours", "--today", "2025-10-03").Status);
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public void OutputThatFails_Is3WithAReason(string command)
    {
        using var journal = JournalOnDisk.Small();
        using var full = new FullDisk();

        var answer = Answer.To(journal.Folder, terminal => terminal with { Out = full }, command);

        Assert.Equal(3, answer.Status);
        Assert.Equal("Could not finish: No space left on device\n", answer.Error);
    }

    private sealed class FullDisk : StringWriter
    {
        public override void Write(char value) => throw new IOException("No space left on device");

        public override void Write(string? value) => throw new IOException("No space left on device");

        public override void WriteLine() => throw new IOException("No space left on device");
    }
}
