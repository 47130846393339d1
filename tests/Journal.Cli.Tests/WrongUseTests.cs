namespace Journal.Cli.Tests;

public class WrongUseTests
{
    [Theory]
    [InlineData("huors", "There is no command `huors`. Did you mean `hours`? See `journal --help`.")]
    [InlineData("frobnicate", "There is no command `frobnicate`. See `journal --help`.")]
    [InlineData("hours --fromat json", "There is no option `--fromat`. Did you mean `--format`? See `journal hours --help`.")]
    [InlineData("hours --fromat=json", "There is no option `--fromat`. Did you mean `--format`? See `journal hours --help`.")]
    [InlineData("hours --format jsn", "There is no format `jsn`. Did you mean `json`? See `journal hours --help`.")]
    [InlineData("hours --format xml", "There is no format `xml`. Known formats: table, csv, json. See `journal hours --help`.")]
    [InlineData("hours --format", "`--format` needs <table|csv|json>. See `journal hours --help`.")]
    [InlineData("hours --in", "`--in` needs <folder>. See `journal hours --help`.")]
    [InlineData("hours --in a --in b", "`--in` was given more than once. See `journal hours --help`.")]
    [InlineData("hours extra", "`extra` is not expected after `journal hours`. See `journal hours --help`.")]
    [InlineData("check --today 3/10/2025", "`3/10/2025` is not a date. Write year, month and day: `--today 2025-10-03`. See `journal check --help`.")]
    [InlineData("check --today 9999-12-31", "`9999-12-31` is not a date. Write year, month and day: `--today 2025-10-03`. See `journal check --help`.")]
    [InlineData("estimate bench-shaper --start 9999-12-01", "`9999-12-01` is not a date. Write year, month and day: `--start 2026-11-07`. See `journal estimate --help`.")]
    [InlineData("lessons --for miling", "There is no operation `miling`. Did you mean `milling`? See `journal lessons --help`.")] // not `filing`, which is as near
    [InlineData("--format json", "`--format` goes after a command, such as `journal words --format`. See `journal --help`.")]
    [InlineData("--version hours", "`--version` takes nothing else. See `journal hours --help`.")]
    public void Mistyped_EachKind_Is2WithOneLineThatNamesTheNearest(string words, string line)
    {
        using var journal = JournalOnDisk.Small();

        var answer = journal.Ask(words.Split(' '));

        Assert.Equal(line + "\n", answer.Error);
        Assert.Equal((2, ""), (answer.Status, answer.Out));
    }

    [Fact]
    public void NoJournal_HereOrAbove_Is2AndSaysWhatToDo()
    {
        using var folder = JournalOnDisk.Bare();

        var answer = folder.Ask("hours");

        Assert.Equal((2, ""), (answer.Status, answer.Out));
        Assert.Equal($"There is no journal here: no journal.yaml in {folder.Folder} or above it, nor in ./journal. Change to its folder, or give it with `--in <folder>`.\n", answer.Error);
    }

    [Fact]
    public void In_FolderThatIsNotThere_Is2()
    {
        using var folder = JournalOnDisk.Bare();

        var answer = folder.Ask("check", "--in", "nowhere");

        Assert.Equal((2, ""), (answer.Status, answer.Out));
        Assert.StartsWith("There is no folder ", answer.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void In_FolderAboveTheJournal_NamesTheRightOne()
    {
        using var folder = JournalOnDisk.Bare().With("bench/journal/journal.yaml", "title: The Lean-to\n");

        var answer = folder.Ask("check", "--in", "bench");

        Assert.Equal(2, answer.Status);
        Assert.Contains($"Did you mean `--in {Path.Combine("bench", "journal")}`?", answer.Error, StringComparison.Ordinal);
    }
}
