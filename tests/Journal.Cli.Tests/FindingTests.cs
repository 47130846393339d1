namespace Journal.Cli.Tests;

public class FindingTests
{
    [Fact]
    public void WithoutIn_FolderWithinAJournal_TakesTheNearestUpwards()
    {
        using var journal = JournalOnDisk.Small().With("drill/photos/journal/journal.yaml", "title: Another\n");

        Assert.Contains("Bench drill", Answer.To(Path.Combine(journal.Folder, "drill", "photos"), "hours").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void WithoutIn_FolderAboveAJournal_TakesTheOneCalledJournal()
    {
        using var folder = JournalOnDisk.Bare().With("journal/journal.yaml", "title: The Lean-to\n");

        Assert.Equal(0, folder.Ask("check").Status);
    }

    [Fact]
    public void In_RelativeFolder_CountsFromWhereTheMakerStands()
    {
        using var folder = JournalOnDisk.Bare().With("bench/journal.yaml", "title: The Lean-to\n");

        Assert.Equal(0, folder.Ask("check", "--in", "bench").Status);
    }
}
