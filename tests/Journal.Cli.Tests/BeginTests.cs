namespace Journal.Cli.Tests;

public class BeginTests
{
    [Fact]
    public void Plan_BecomesABuild_WordForWord()
    {
        using var journal = JournalOnDisk.Small();
        var plan = Read(journal, "plans/bench-shaper.yaml");

        var answer = journal.Ask("begin", "bench-shaper");

        Assert.Equal((0, ""), (answer.Status, answer.Error));
        Assert.Equal(
            """
            # The winter's work.
            title: Bench shaper
            status: under-way
            started: 2025-10-03
            hours-a-week: 5   # Saturdays
            away: [2025-12-20/2026-01-03]
            parts:
              - {id: ram, title: Ram, material: cast-iron, operations: [milling, scraping], guess: 12h, like: drill/quill}
              - {id: screw, title: Screw, quantity: 2, operations: {turning: 1h, screw-cutting: 1h30}}
              - {id: slide, title: Slide, operations: [milling, lapping], guess: {low: 6h, likely: 9h, high: 16h}}   # if it is sound
            whole: {assembly: 8h, painting: 5h}

            """,
            Read(journal, "bench-shaper/build.yaml"));
        Assert.Equal(plan, Read(journal, "plans/bench-shaper.yaml"));
        Assert.Equal(0, journal.Ask("check").Status);
        Assert.Contains("The plan was not public", answer.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Estimate_AfterBegin_MeansTheBuildAndKeepsItsHours()
    {
        using var journal = JournalOnDisk.Small();
        var before = journal.Ask("estimate", "bench-shaper", "--start", "2025-10-03", "--format", "json").Json;

        journal.Ask("begin", "bench-shaper");

        var after = journal.Ask("estimate", "bench-shaper", "--format", "json").Json;
        Assert.Equal(0, after.GetProperty("minutesSoFar").GetInt32());
        foreach (var name in new[] { "hours", "finish", "parts", "whole" })
        {
            Assert.Equal(before.GetProperty(name).GetRawText(), after.GetProperty(name).GetRawText());
        }
    }

    [Fact]
    public void Begun_Twice_Is2AndChangesNothing()
    {
        using var journal = JournalOnDisk.Small();
        journal.Ask("begin", "bench-shaper");
        var build = Read(journal, "bench-shaper/build.yaml");

        var answer = journal.Ask("begin", "bench-shaper", "--today", "2025-12-24");

        Assert.Equal((2, "There is already a build `bench-shaper`, in bench-shaper. Nothing was changed.\n"), (answer.Status, answer.Error));
        Assert.Equal(build, Read(journal, "bench-shaper/build.yaml"));
    }

    [Fact]
    public void FolderOfThatName_IsNotTouched()
    {
        using var journal = JournalOnDisk.Small().With("bench-shaper/sketch.txt", "mine");

        var answer = journal.Ask("begin", "bench-shaper");

        Assert.Equal(2, answer.Status);
        Assert.Equal(["sketch.txt"], Directory.EnumerateFileSystemEntries(Path.Combine(journal.Folder, "bench-shaper")).Select(Path.GetFileName));
    }

    [Fact]
    public void InterruptedAttempt_LeavesNoBuild_AndDoesNotStandInTheWay()
    {
        using var journal = JournalOnDisk.Small().With(".begin-bench-shaper/build.yaml", "title: Bench sha");

        Assert.Equal(0, journal.Ask("check").Status);
        Assert.DoesNotContain("bench-shaper", journal.Ask("hours", "--format", "json").Out, StringComparison.Ordinal);
        Assert.Equal(0, journal.Ask("begin", "bench-shaper").Status);
        Assert.DoesNotContain(Directory.EnumerateDirectories(journal.Folder), folder => Path.GetFileName(folder)[0] == '.');
    }

    [Fact]
    public void DiskThatDoesNotTakeIt_Is3AndLeavesNothing()
    {
        // A file where the unfinished folder would be: the disk refuses, whoever runs the test.
        using var journal = JournalOnDisk.Small().With(".begin-bench-shaper", "");

        var answer = journal.Ask("begin", "bench-shaper");

        Assert.Equal((3, ""), (answer.Status, answer.Out));
        Assert.False(Path.Exists(Path.Combine(journal.Folder, "bench-shaper")));
    }

    [Fact]
    public void CarriageReturns_Stay()
    {
        using var journal = JournalOnDisk.Small().With("plans/slotter.yaml", "title: Slotter\r\nstart: 2025-12-01\r\nparts:\r\n- {id: ram, guess: 6h}\r\n");

        journal.Ask("begin", "slotter");

        Assert.Equal("title: Slotter\r\nstatus: under-way\r\nstarted: 2025-10-03\r\nparts:\r\n- {id: ram, guess: 6h}\r\n", Read(journal, "slotter/build.yaml"));
    }

    [Theory]
    [InlineData("bench-shapr", 2, "There is no plan `bench-shapr`. Did you mean `bench-shaper`?")]
    [InlineData("drill", 2, "Bench drill is already a build.")]
    public void UnknownOrBegun_SaysSo(string name, int status, string line)
    {
        using var journal = JournalOnDisk.Small();

        var answer = journal.Ask("begin", name);

        Assert.Equal((status, line + "\n"), (answer.Status, answer.Error));
    }

    [Theory]
    [InlineData("feed", "title: Feed\nparts: [ram]\n", 2, "The name “feed” is reserved")]
    [InlineData("slotter", "{title: Slotter, parts: [ram]}\n", 2, "are not on lines of their own")]
    [InlineData("slotter", "title: Slotter\nparts: [{id: ram, guess: 0}]\n", 1, "Nothing was written.")]
    public void PlanThatCannotBegin_WritesNothing(string name, string text, int status, string message)
    {
        using var journal = JournalOnDisk.Small().With($"plans/{name}.yaml", text);

        var answer = journal.Ask("begin", name);

        Assert.Equal(status, answer.Status);
        Assert.Contains(message, answer.Error, StringComparison.Ordinal);
        Assert.False(Path.Exists(Path.Combine(journal.Folder, name)));
    }

    private static string Read(JournalOnDisk journal, string file) => File.ReadAllText(Path.Combine(journal.Folder, file));
}
