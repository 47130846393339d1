namespace Journal.Cli.Tests;

public sealed class LessonsForTests
{
    // Written down before the ranking was written or run: the lesson that a maker who knows the demonstration journal would
    // want to be told first.
    [Theory]
    [InlineData("--for boring --material cast-iron --part head", "bench-drill-2025-10-04-head-boring-1")]
    [InlineData("--for gear-cutting", "cutter-on-centre")]
    [InlineData("--for hardening --part jaw-plate", "quench-edge-on")]
    [InlineData("--for reaming", "reamer-follows")]
    [InlineData("--for screw-cutting --part screw", "run-out-groove")]
    [InlineData("--for slotting --part table", "bench-drill-2025-10-30-table-slots-1")]
    [InlineData("--for parting-off", "short-parting")]
    [InlineData("--for drilling --tool rotary-table", "pilot-then-ring")]
    [InlineData("--for taper-turning", "clock-the-taper")]
    [InlineData("--for fixture-making", "write-the-count")]
    public void LessonsFor_Demo_PutsTheObviousOneFirst(string asked, string first)
    {
        var answer = Answer.To(Demo.Folder, ["lessons", .. asked.Split(' '), "--format", "json"]);

        Assert.Equal(first, answer.Json.GetProperty("lessons")[0].GetProperty("id").GetString());
    }

    [Fact]
    public void LessonsFor_SmallJournal_SaysWhyInEachForm()
    {
        using var journal = JournalOnDisk.Small();

        var json = journal.Ask("lessons", "--for", "boring", "--part", "head", "--format", "json").Json;
        var lesson = json.GetProperty("lessons")[0];
        Assert.Equal("indicate-both-ends", lesson.GetProperty("id").GetString());
        Assert.Equal(
            ["boring", "on head casting", "in grey iron", "1h15 lost", "heeded once"],
            lesson.GetProperty("reasons").EnumerateArray().Select(reason => reason.GetString()));
        Assert.Equal("grey-iron", json.GetProperty("for").GetProperty("materials")[0].GetString());

        var csv = journal.Ask("lessons", "--for", "boring", "--format", "csv");
        Assert.StartsWith("id,text,build,entry,operation,minutesLost,repeated,heeded,nearness,reason\r\n", csv.Out, StringComparison.Ordinal);

        var table = journal.Ask("lessons", "--for", "boring", "--part", "head");
        Assert.Equal(0, table.Status);
        Assert.Equal("Before boring on head in grey iron", table.Lines[0]);
        Assert.Contains("1  Indicate a rough casting at both ends, and average.", table.Lines);
    }

    [Fact]
    public void LessonsFor_NothingNear_SaysSoKindly()
    {
        using var journal = JournalOnDisk.Small();

        Assert.Contains("No lessons yet about welding", journal.Ask("lessons", "--for", "welding").Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--for", "borring", "Did you mean `boring`?")]
    [InlineData("--material", "cast-irn", "Did you mean `cast-iron`?")]
    [InlineData("--part", "quil", "Did you mean `quill`?")]
    [InlineData("--tool", "boring-hed", "Did you mean `boring-head`?")]
    public void LessonsFor_UnknownWord_NamesTheNearest(string option, string word, string hint)
    {
        using var journal = JournalOnDisk.Small();

        var answer = journal.Ask("lessons", option, word);

        Assert.Equal((2, ""), (answer.Status, answer.Out));
        Assert.Contains(hint, answer.Error, StringComparison.Ordinal);
    }
}
