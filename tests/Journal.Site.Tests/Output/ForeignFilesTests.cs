using System.Runtime.Versioning;
using Journal.Cli.Tests;
using Journal.Site.Output;
using Journal.Site.Tests.Publishing;

namespace Journal.Site.Tests.Output;

public class ForeignFilesTests
{
    [Fact]
    public void Publish_OverASiteWithFilesOfSomeoneElse_LeavesThem()
    {
        using var journal = JournalOnDisk.Small();
        var site = journal.Publish();
        File.WriteAllText(site.PathOf("CNAME"), "bench.example");
        Directory.CreateDirectory(site.PathOf("drill/mine/empty"));
        File.WriteAllText(site.PathOf("drill/mine/note.txt"), "Mine.");
        Directory.CreateDirectory(site.PathOf(".git/refs/tags"));

        journal.Change(Changes.Quill, "1h01", "1h31").Publish();
        journal.Publish();

        Assert.Equal("bench.example", site.Text("CNAME"));
        Assert.Equal("Mine.", site.Text("drill/mine/note.txt"));
        Assert.True(Directory.Exists(site.PathOf("drill/mine/empty")));
        Assert.True(Directory.Exists(site.PathOf(".git/refs/tags")));
    }

    [Theory]
    [InlineData(".site.publishing")]
    [InlineData(".site.being-written")]
    [InlineData(".site.retired")]
    public void Publish_WhereAFileHasTheNameOfOneOfItsOwn_RefusesAndKeepsIt(string name)
    {
        using var journal = JournalOnDisk.Small().With(name, "Mine, 2 pages.");

        Assert.Contains(name, Refused(journal), StringComparison.Ordinal);
        Assert.Equal("Mine, 2 pages.", File.ReadAllText(journal.PathOf(name)));
        Assert.False(Directory.Exists(journal.PathOf("site")));
    }

    [Theory]
    [InlineData(".site.publishing")]
    [InlineData(".site.being-written")]
    [InlineData(".site.retired")]
    public void Publish_WhereAFolderHasTheNameOfOneOfItsOwn_RefusesAndKeepsIt(string name)
    {
        using var journal = JournalOnDisk.Small().With($"{name}/note.txt", "Mine.");

        Assert.Contains(name, Refused(journal), StringComparison.Ordinal);
        Assert.Equal("Mine.", File.ReadAllText(journal.PathOf($"{name}/note.txt")));
    }

    [Theory]
    [InlineData(".site.publishing", "victim.txt")]
    [InlineData(".site.being-written", "victim")]
    [InlineData(".site.retired", "victim")]
    [InlineData(".site.publishing", "nowhere")]
    [InlineData(".site.being-written", "nowhere")]
    public void Publish_WhereALinkHasTheNameOfOneOfItsOwn_DoesNotFollowIt(string name, string to)
    {
        using var journal = JournalOnDisk.Small();
        using var elsewhere = JournalOnDisk.Bare().With("victim.txt", "Mine.").With("victim/note.txt", "Mine.");
        File.CreateSymbolicLink(journal.PathOf(name), elsewhere.PathOf(to));
        var before = new SiteOnDisk(elsewhere.Folder).Hashes;

        Assert.Contains(name, Refused(journal), StringComparison.Ordinal);
        Assert.Equal(before, new SiteOnDisk(elsewhere.Folder).Hashes);
    }

    [Fact]
    [UnsupportedOSPlatform("windows")]
    public void Publish_OverFoldersThatNotEveryoneMayLookInto_LeavesThemSo()
    {
        using var journal = JournalOnDisk.Small();
        var site = journal.Publish();
        const UnixFileMode Mine = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;
        Directory.CreateDirectory(site.PathOf("private"), Mine);
        File.WriteAllText(site.PathOf("private/note.txt"), "Mine.");
        File.SetUnixFileMode(site.Folder, Mine | UnixFileMode.GroupRead | UnixFileMode.GroupExecute);

        journal.Change(Changes.Quill, "1h01", "1h31").Publish();

        Assert.Equal(Mine, File.GetUnixFileMode(site.PathOf("private")));
        Assert.Equal(Mine | UnixFileMode.GroupRead | UnixFileMode.GroupExecute, File.GetUnixFileMode(site.Folder));
    }

    [Fact]
    public void Publish_WithoutABuildWhoseFolderHoldsForeignFiles_LeavesThoseAlone()
    {
        using var journal = JournalOnDisk.Small();
        var site = journal.Publish();
        File.WriteAllText(site.PathOf("vice/note.txt"), "Mine.");

        journal.Without("vice/build.yaml").Publish();

        Assert.Equal(["vice/note.txt"], site.Files.Where(file => file.StartsWith("vice/", StringComparison.Ordinal)));
    }

    [Fact]
    public void Publish_OverASiteWithLinksToOtherPlaces_LeavesThemAsLinks()
    {
        using var journal = JournalOnDisk.Small();
        using var elsewhere = JournalOnDisk.Bare().With("holiday/beach.txt", "Sand.");
        var site = journal.Publish();
        Directory.CreateSymbolicLink(site.PathOf("holiday"), elsewhere.PathOf("holiday"));
        Directory.CreateSymbolicLink(site.PathOf("round"), ".");
        File.CreateSymbolicLink(site.PathOf("beach.txt"), elsewhere.PathOf("holiday/beach.txt"));
        File.CreateSymbolicLink(site.PathOf("broken"), "nowhere");

        journal.PublishTo("site");

        Assert.Equal(elsewhere.PathOf("holiday"), new DirectoryInfo(site.PathOf("holiday")).LinkTarget);
        Assert.Equal(".", new DirectoryInfo(site.PathOf("round")).LinkTarget);
        Assert.Equal(elsewhere.PathOf("holiday/beach.txt"), new FileInfo(site.PathOf("beach.txt")).LinkTarget);
        Assert.Equal("nowhere", new FileInfo(site.PathOf("broken")).LinkTarget);
        Assert.Equal("Sand.", File.ReadAllText(elsewhere.PathOf("holiday/beach.txt")));
    }

    [Theory]
    [InlineData("drill/entry/2025-09-29-late.html", false)]
    [InlineData("drill/entry/2025-09-29-late.html", true)]
    public void Publish_WhereAForeignFileStandsInTheWay_RefusesAndKeepsIt(string address, bool isFolder)
    {
        using var journal = JournalOnDisk.Small();
        var site = journal.Publish();
        var path = isFolder ? address + "/mine.txt" : address;
        Directory.CreateDirectory(Path.GetDirectoryName(site.PathOf(path))!);
        File.WriteAllText(site.PathOf(path), "Mine.");
        var before = site.Hashes;
        journal.WithEntry("drill/2025-09-29-late.md");

        var refusal = Assert.Throws<PublishingException>(() => journal.PublishTo("site"));

        Assert.Contains("Move it out of the site", refusal.Message, StringComparison.Ordinal);
        Assert.Equal(before, site.Hashes);
    }

    [Fact]
    public void Publish_WhereAForeignFileStandsInPlaceOfAFolder_RefusesAndKeepsIt()
    {
        using var journal = JournalOnDisk.Small();
        var site = journal.Publish();
        File.WriteAllText(site.PathOf("lathe"), "Mine.");
        journal.With("lathe/build.yaml", "title: Lathe stand\n");

        Assert.Throws<PublishingException>(() => journal.PublishTo("site"));

        Assert.Equal("Mine.", site.Text("lathe"));
    }

    [Theory]
    [InlineData("find.html")]
    [InlineData("drill/entry")]
    [InlineData("feed.xml")]
    public void Publish_WhereALinkToAFolderStandsInPlaceOfSomethingOfTheSite_RefusesWithARemedyAndKeepsIt(string address)
    {
        using var journal = JournalOnDisk.Small();
        using var elsewhere = JournalOnDisk.Bare().With("note.txt", "Mine.");
        var site = journal.Publish();
        Remove(site.PathOf(address));
        Directory.CreateSymbolicLink(site.PathOf(address), elsewhere.Folder);

        Assert.Contains($"{site.PathOf(address)} is where the site needs {address}", Refused(journal), StringComparison.Ordinal);
        Assert.Equal(elsewhere.Folder, new DirectoryInfo(site.PathOf(address)).LinkTarget);
        Assert.Equal(["note.txt"], Directory.EnumerateFileSystemEntries(elsewhere.Folder).Select(Path.GetFileName));
    }

    [Theory]
    [InlineData("find.html/note.txt")]
    [InlineData("find.html/")]
    public void Publish_WhereAFolderStandsInPlaceOfAFileOfTheSite_RefusesWithARemedyAndKeepsIt(string inside)
    {
        using var journal = JournalOnDisk.Small();
        var site = journal.Publish();
        Remove(site.PathOf("find.html"));
        Directory.CreateDirectory(site.PathOf("find.html"));
        if (!inside.EndsWith('/'))
        {
            File.WriteAllText(site.PathOf(inside), "Mine.");
        }

        Assert.Contains("find.html, but no publish wrote it. Move it out of the site", Refused(journal), StringComparison.Ordinal);
        Assert.True(Path.Exists(site.PathOf(inside)));
    }

    [Fact]
    public void Publish_WhereAFileOfTheSiteBecameALinkToOne_WritesTheFileAnewAndFollowsNothing()
    {
        using var journal = JournalOnDisk.Small();
        using var elsewhere = JournalOnDisk.Bare().With("note.txt", "Mine.");
        var site = journal.Publish();
        var page = site.Text("find.html");
        File.Delete(site.PathOf("find.html"));
        File.CreateSymbolicLink(site.PathOf("find.html"), elsewhere.PathOf("note.txt"));

        journal.PublishTo("site");

        Assert.Null(new FileInfo(site.PathOf("find.html")).LinkTarget);
        Assert.Equal(page, site.Text("find.html"));
        Assert.Equal("Mine.", File.ReadAllText(elsewhere.PathOf("note.txt")));
    }

    [Theory]
    [InlineData("[")]
    [InlineData("null")]
    [InlineData("[1, 2]")]
    public void Publish_OverADamagedManifest_RefusesBecauseItCannotKnowWhatIsItsOwn(string damage)
    {
        using var journal = JournalOnDisk.Small();
        var site = journal.Publish();
        File.WriteAllText(site.PathOf(Manifest.FileName), damage);
        var before = site.Hashes;

        Assert.Contains("damaged", Assert.Throws<PublishingException>(() => journal.PublishTo("site")).Message, StringComparison.Ordinal);
        Assert.Equal(before, site.Hashes);
    }

    private static void Remove(string path)
    {
        if (Directory.Exists(path))
        {
            Directory.Delete(path, recursive: true);
        }
        else
        {
            File.Delete(path);
        }
    }

    private static string Refused(JournalOnDisk journal) => Assert.Throws<PublishingException>(() => journal.PublishTo("site")).Message;
}
