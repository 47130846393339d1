using System.Text.RegularExpressions;

namespace Journal.Cli.Tests.Writing;

public partial class StartTests
{
    [Theory]
    [InlineData("2025-10-03")]
    [InlineData("2028-03-01")]
    public void Start_NewFolder_PublishesWithoutAProblem(string today)
    {
        using var disk = JournalOnDisk.Bare();

        Assert.Equal(0, disk.Ask("start", "bench", "--title", "A shed: mine", "--today", today).Status);

        var check = disk.Ask("check", "--in", "bench", "--today", today);
        Assert.Equal((0, "No problems: 1 build, 2 entries, 4 tools.\n"), (check.Status, check.Out));
        var published = disk.Ask("publish", "--in", "bench", "--to", "site", "--today", today);
        Assert.Equal((0, ""), (published.Status, published.Error));
        Assert.Contains("A shed: mine", File.ReadAllText(Path.Combine(disk.Folder, "site", "index.html")), StringComparison.Ordinal);
        Assert.Matches(Identity(), File.ReadAllText(Path.Combine(disk.Folder, "bench", "journal.yaml")));
    }

    // Sites and tonight's slate can be made again, or are of one evening only.
    [Fact]
    public void Start_InGit_LeavesOutTheSiteAndTheSlate()
    {
        using var disk = JournalOnDisk.Bare();
        disk.Ask("start", ".");
        disk.Ask("jot", "It sings", "--today", "2025-10-03");
        disk.Ask("publish", "--to", "site");
        foreach (var words in new[] { "init -q .", "add -A" })
        {
            using var git = System.Diagnostics.Process.Start(new System.Diagnostics.ProcessStartInfo("git", words) { WorkingDirectory = disk.Folder, RedirectStandardError = true })!;
            git.WaitForExit();
        }

        using var list = System.Diagnostics.Process.Start(new System.Diagnostics.ProcessStartInfo("git", "ls-files") { WorkingDirectory = disk.Folder, RedirectStandardOutput = true })!;
        var kept = list.StandardOutput.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries);

        Assert.Contains("journal.yaml", kept);
        Assert.Contains(".schemas/entry.schema.json", kept);
        Assert.DoesNotContain(kept, file => file.StartsWith("site/", StringComparison.Ordinal) || file.StartsWith(".bench/", StringComparison.Ordinal));
    }

    [Fact]
    public void Start_FolderNotEmpty_WritesNothing()
    {
        using var disk = JournalOnDisk.Bare().With("bench/.hidden", "mine");

        Assert.Equal(2, disk.Ask("start", "bench").Status);
        Assert.Single(Directory.GetFileSystemEntries(Path.Combine(disk.Folder, "bench")));
    }

    [Fact]
    public void Start_ThenAnEvening_AllCommandsGoOnFromTheExample()
    {
        using var disk = JournalOnDisk.Bare();
        disk.Ask("start", ".");

        Assert.Equal("Begun at 21:00: Small tap wrench, Body, squaring up.\n", disk.Ask("stint", "begin", "--in", ".").Error.Replace("22:00", "21:00", StringComparison.Ordinal));
        Assert.Equal(0, disk.Ask("add", "part", "spring").Status);
        Assert.Equal(0, disk.Ask("add", "tool", "die-holder", "--kind", "tool-holding").Status);
        Assert.Equal(0, disk.Ask("write", "--part", "arm", "--operation", "turning", "--hours", "1h").Status);
        Assert.Equal((0, "No problems: 1 build, 3 entries, 5 tools.\n"), (disk.Ask("check").Status, disk.Ask("check").Out));
    }

    [GeneratedRegex("(?m)^id: [0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12} ")]
    private static partial Regex Identity();
}
