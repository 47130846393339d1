using System.Diagnostics;
using Journal.Core.Parsing.Files;
using Journal.Core.Parsing.Problems;

namespace Journal.Core.Tests.Parsing;

/// <summary>Links, pipes, devices and what may not be read.</summary>
public sealed class LinksOnDiskTests
{
    [Fact]
    public void Links_ToFilesAndFolders_AreNotFollowedAndSaidSo()
    {
        using var outside = JournalOnDisk.WithDrill().WriteEntry("2025-10-01");
        using var journal = JournalOnDisk.WithDrill().WriteEntry("2025-10-03");
        Directory.CreateSymbolicLink(journal.PathOf("other"), outside.PathOf("drill"));
        Directory.CreateSymbolicLink(journal.PathOf("drill/round"), journal.Root);
        File.CreateSymbolicLink(journal.PathOf("drill/2025-10-01.md"), outside.PathOf("drill/2025-10-01.md"));
        File.CreateSymbolicLink(journal.PathOf("drill/2025-10-02.md"), "/dev/zero");
        File.CreateSymbolicLink(journal.PathOf("tools.yaml"), "/no/such/file");
        File.CreateSymbolicLink(journal.PathOf("notes.txt"), "/etc/hostname");

        var reading = journal.Read();

        Assert.Equal(
            ["drill/2025-10-01.md", "drill/2025-10-02.md", "drill/round", "other", "tools.yaml"],
            reading.Problems.Select(problem => problem.Kind == ProblemTable.LinkNotFollowed ? problem.Place.File : problem.Message));
        Assert.Equal("2025-10-03", Assert.Single(Assert.Single(reading.Journal!.Builds).Entries).Id.Value);
    }

    [Fact]
    public void Journal_ThatIsALink_IsNone()
    {
        using var journal = JournalOnDisk.WithDrill();
        File.Move(journal.PathOf("journal.yaml"), journal.PathOf("real.yaml"));
        File.CreateSymbolicLink(journal.PathOf("journal.yaml"), journal.PathOf("real.yaml"));

        var reading = journal.Read();

        Assert.Null(reading.Journal);
        Assert.Equal(["link-not-followed", "no-journal"], reading.Problems.Select(problem => problem.Kind.Code));
    }

    [Fact]
    public void Root_ThatIsALink_IsRead()
    {
        using var journal = JournalOnDisk.WithDrill().WritePicture("drill/a.gif").WriteEntry("2025-10-03", "photos: {file: a.gif, caption: A}");
        var link = journal.Root + "-link";
        Directory.CreateSymbolicLink(link, journal.Root);
        try
        {
            var reading = Core.Checking.JournalReader.Read(link, JournalOnDisk.Today);

            Assert.Empty(reading.Problems);
            Assert.Single(reading.Journal!.Builds[0].Entries[0].Photos);
        }
        finally
        {
            Directory.Delete(link);
        }
    }

    [Fact]
    public void Folder_ThatDoesNotExist_IsNoJournal()
    {
        var reading = Core.Checking.JournalReader.Read("/no/such/folder", JournalOnDisk.Today);

        Assert.Equal(["journal.yaml:1:1 no-journal"], JournalOnDisk.Lines(reading.Problems));
    }

    [Fact]
    public void Picture_ByALinkThatLeavesTheJournal_IsRefused()
    {
        using var outside = new JournalOnDisk().WritePicture("a.gif");
        using var journal = JournalOnDisk.WithDrill().WritePicture("drill/real/in.gif");
        File.CreateSymbolicLink(journal.PathOf("drill/file.gif"), outside.PathOf("a.gif"));
        Directory.CreateSymbolicLink(journal.PathOf("drill/photos"), outside.Root);
        Directory.CreateSymbolicLink(journal.PathOf("drill/within"), "real");
        Directory.CreateSymbolicLink(journal.PathOf("drill/twice"), "photos");
        File.CreateSymbolicLink(journal.PathOf("drill/loop.gif"), "loop.gif");
        File.CreateSymbolicLink(journal.PathOf("drill/gone.gif"), "none.gif");
        journal.WriteEntry("2025-10-03", "photos:\n  - {file: file.gif, alt: A}\n  - {file: photos/a.gif, alt: A}\n  - {file: twice/a.gif, alt: A}\n  - {file: within/in.gif, alt: A}\n  - {file: loop.gif, alt: A}\n  - {file: gone.gif, alt: A}");

        var reading = journal.Read();

        Assert.Equal(
            ["6 picture-outside", "7 picture-outside", "8 picture-outside", "10 picture-outside", "11 picture-broken"],
            reading.Problems.Where(problem => problem.Kind != ProblemTable.LinkNotFollowed).Select(problem => $"{problem.Place.Line} {problem.Kind.Code}"));
        Assert.Equal("drill/within/in.gif", Assert.Single(reading.Journal!.Builds[0].Entries[0].Photos).File);
    }

    [Fact]
    public async Task Pipes_InPlaceOfFilesAndPictures_DoNotHang()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        using var journal = JournalOnDisk.WithDrill().WriteEntry("2025-10-03", "photos: {file: a.gif, alt: A}");
        foreach (var name in new[] { "drill/2025-10-04.md", "drill/a.gif", "tools.yaml", "plans.yaml" })
        {
            using var made = Process.Start("mkfifo", journal.PathOf(name));
            await made.WaitForExitAsync();
        }

        var problems = await Task.Run(journal.Problems).WaitAsync(TimeSpan.FromSeconds(20));

        Assert.Equal(["drill/2025-10-03.md:5:16 picture-broken", "drill/2025-10-04.md:1:1 not-readable", "tools.yaml:1:1 not-readable"], problems);
    }

    [Fact]
    public void File_ThatCannotBeRead_IsReported()
    {
        var log = new ProblemLog();

        Assert.Null(TextFile.Read(Path.Combine(Path.GetTempPath(), "no-such-folder", "a.md"), "drill/a.md", log));

        var problem = Assert.Single(log.Problems);
        Assert.Equal("drill/a.md:1:1 not-readable", $"{problem.Place} {problem.Kind.Code}");
        Assert.Contains("permissions", problem.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void File_WithoutPermission_IsReported()
    {
        if (OperatingSystem.IsWindows() || Environment.IsPrivilegedProcess)
        {
            return;
        }

        using var journal = JournalOnDisk.WithDrill().WriteEntry("2025-10-03");
        File.SetUnixFileMode(journal.PathOf("drill/2025-10-03.md"), UnixFileMode.None);

        Assert.Equal(["drill/2025-10-03.md:1:1 not-readable"], journal.Problems());
    }
}
