using Journal.Cli.Tests;
using Journal.Site.Output;
using Journal.Site.Publishing;
using Journal.Site.Tests.Publishing;

namespace Journal.Site.Tests.Output;

public class SameBytesTests
{
    [Fact]
    public void Publish_Twice_ChangesNoByteAndNoTimeStamp()
    {
        using var journal = JournalOnDisk.Small().WithPicture("drill/photos/bore.png").WithEntry("drill/2025-09-29-bore.md", "photos: {file: photos/bore.png, caption: The bore}");
        var site = journal.Publish();
        var (hashes, times) = (site.Hashes, site.Times);
        Thread.Sleep(20);

        var again = journal.PublishTo("site");

        Assert.Equal(0, again.Changed);
        Assert.Equal(hashes, site.Hashes);
        Assert.Equal(times, site.Times);
    }

    [Fact]
    public void Publish_IntoAnotherFolder_GivesTheSameBytes()
    {
        using var journal = JournalOnDisk.Small().WithPicture("drill/photos/bore.png").WithEntry("drill/2025-09-29-bore.md", "photos: {file: photos/bore.png, caption: The bore}");
        using var elsewhere = JournalOnDisk.Bare();

        var first = journal.Publish();
        SitePublisher.Publish(new PublishOrder(journal.Folder, elsewhere.PathOf("deep/down/here"), Journals.Today));

        Assert.Equal(first.Hashes, new SiteOnDisk(elsewhere.PathOf("deep/down/here")).Hashes);
    }

    [Fact]
    public void Publish_AfterAChange_GivesWhatACleanPublishGives()
    {
        using var journal = JournalOnDisk.Small();
        journal.Publish();
        journal.Change(Changes.Quill, "1h01", "1h31").WithEntry("drill/2025-09-29-more.md", "lessons: {id: lap-last-of-all, text: More of that.}").Without("drill/2025-09-07-second.md");

        var changed = journal.Publish().Hashes;
        journal.PublishTo("clean");

        Assert.Equal(new SiteOnDisk(journal.PathOf("clean")).Hashes, changed);
    }

    [Fact]
    public void Publish_AfterAChange_WritesAnewOnlyWhatDiffers()
    {
        using var journal = JournalOnDisk.Small();
        var site = journal.Publish();
        var (hashes, times) = (site.Hashes, site.Times);
        Thread.Sleep(20);
        journal.Change("drill/2025-09-06-head.md", "It came out off the boss.", "It came out well off the boss.");

        journal.Publish();

        var written = site.Times.Where(file => times[file.Key] != file.Value).Select(file => file.Key);
        Assert.Equal(site.Hashes.Where(file => hashes[file.Key] != file.Value).Select(file => file.Key).Order(), written.Order());
        Assert.Contains("drill/entry/2025-09-06-head.html", written);
        Assert.DoesNotContain("style.css", written);
    }

    [Fact]
    public void Publish_OverAKeptCopyOfHardLinks_NeverWritesThroughThem()
    {
        using var journal = JournalOnDisk.Small();
        var site = journal.Publish();
        var copy = new SiteOnDisk(journal.PathOf(".kept"));
        foreach (var file in site.Files)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(copy.PathOf(file))!);
            FileSystemCalls.LinkOrCopy(site.PathOf(file), copy.PathOf(file));
        }

        var kept = copy.Hashes;
        journal.Change(Changes.Quill, "1h01", "1h31").Change("drill/build.yaml", "Bench drill", "Other drill");
        journal.Publish();

        Assert.NotEqual(kept, site.Hashes);
        Assert.Equal(kept, copy.Hashes);
    }

    [Fact]
    public void Publish_OverAnUnchangedFile_IsTheSameFileUnderASecondName()
    {
        using var journal = JournalOnDisk.Small();
        var site = journal.Publish();
        FileSystemCalls.LinkOrCopy(site.PathOf("style.css"), journal.PathOf(".style"));
        journal.Change(Changes.Quill, "1h01", "1h31");

        journal.Publish();
        File.AppendAllText(site.PathOf("style.css"), "/* mine */");

        Assert.EndsWith("/* mine */", File.ReadAllText(journal.PathOf(".style")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("index.html")]
    [InlineData("style.css")]
    [InlineData("feed.json")]
    public void Publish_OverAFileThatSomeoneChanged_PutsItRight(string file)
    {
        using var journal = JournalOnDisk.Small();
        var site = journal.Publish();
        var (whole, text) = (site.Hashes, site.Text(file));
        Thread.Sleep(20);
        File.WriteAllText(site.PathOf(file), string.Concat(text.Reverse()));

        journal.Publish();

        Assert.Equal(whole, site.Hashes);
    }

    [Fact]
    public void Publish_OverAnOlderFileOfTheSameLength_PutsItRight()
    {
        using var journal = JournalOnDisk.Small();
        var site = journal.Publish();
        var whole = site.Hashes;
        File.WriteAllText(site.PathOf("index.html"), string.Concat(site.Text("index.html").Reverse()));
        File.SetLastWriteTimeUtc(site.PathOf("index.html"), new DateTime(2020, 1, 1, 0, 0, 0, DateTimeKind.Utc));

        journal.Publish();

        Assert.Equal(whole, site.Hashes);
    }

    [Fact]
    public void Publish_OverAFileThatSomeoneTookAway_PutsItBack()
    {
        using var journal = JournalOnDisk.Small();
        var site = journal.Publish();
        var whole = site.Hashes;
        File.Delete(site.PathOf("index.html"));
        Directory.Delete(site.PathOf("drill/part"), recursive: true);

        journal.Publish();

        Assert.Equal(whole, site.Hashes);
    }

    [Fact]
    public void Publish_WithoutAnEntryPartOrBuild_TakesTheirPagesAway()
    {
        using var journal = JournalOnDisk.Small().WithEntry("drill/2025-09-29-gone.md", "lessons: {id: gone-too, text: It goes.}\nstory: It went.");
        var site = journal.Publish();
        Assert.True(site.Has("drill/entry/2025-09-29-gone.html") && site.Has("lesson/gone-too.html") && site.Has("vice/index.html") && site.Has("drill/story.html"));

        journal.Without("drill/2025-09-29-gone.md").Without("vice/build.yaml").Publish();

        Assert.False(site.Has("drill/entry/2025-09-29-gone.html"));
        Assert.False(site.Has("lesson/gone-too.html"));
        Assert.False(site.Has("drill/story.html"));
        Assert.False(Directory.Exists(site.PathOf("vice")));
    }
}
