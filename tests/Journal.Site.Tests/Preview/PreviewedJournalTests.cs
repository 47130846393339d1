using Journal.Cli.Tests;
using Journal.Site.Preview;
using Journal.Site.Publishing;
using Journal.Site.Tests.Publishing;

namespace Journal.Site.Tests.Preview;

/// <summary>What is looked at while writing is what a publish would write, to the byte; random edits are in <c>RandomEditsTests</c>.</summary>
public sealed class PreviewedJournalTests
{
    [Fact]
    public void Bytes_OfEveryAddressOfTheDemo_AreThoseOfAPublish()
    {
        using var journal = Journals.Demo();
        using var elsewhere = JournalOnDisk.Bare();
        var outcome = SitePublisher.Publish(new PublishOrder(journal.Folder, elsewhere.PathOf("site"), Journals.Today));
        var preview = new PreviewedJournal(journal.Folder, Journals.Today, template: null);

        Assert.Equal(outcome.Problems, preview.Read(null));
        AssertShows(elsewhere.PathOf("site"), preview.Site!, "no edit");
    }

    [Fact]
    public void Bytes_OfAPictureThatNoPageHasShown_AreNotThereAndTheFirstPageBringsIt()
    {
        using var journal = JournalOnDisk.Small().WithPicture("drill/photos/a.png").WithEntry("drill/2025-10-01-seen.md", "photos: {file: photos/a.png, caption: A}");
        var published = journal.Publish();
        var picture = published.Files.First(file => file.StartsWith("photos/", StringComparison.Ordinal));
        var preview = new PreviewedJournal(journal.Folder, Journals.Today, template: null);
        preview.Read(null);

        Assert.Null(preview.Site!.Bytes(picture));
        preview.Site.Bytes("drill/entry/2025-10-01-seen.html");
        Assert.Equal(File.ReadAllBytes(Path.Combine(journal.PathOf("site"), picture)), preview.Site.Bytes(picture));
    }

    [Fact]
    public void Read_PictureThatCannotBeRead_IsToldWhenAPageFirstShowsIt()
    {
        using var journal = JournalOnDisk.Small().With("drill/photos/broken.png", "No picture at all.").WithEntry("drill/2025-10-01-seen.md", "photos: {file: photos/broken.png, caption: A}");
        var preview = new PreviewedJournal(journal.Folder, Journals.Today, template: null);
        preview.Read(null);
        Assert.Empty(preview.Site!.PictureProblems);

        preview.Site.Bytes("drill/entry/2025-10-01-seen.html");
        preview.Site.Bytes("drill/photos.html");

        Assert.Equal("drill/photos/broken.png", Assert.Single(preview.Site.PictureProblems).Place.File);
    }

    [Fact]
    public void Read_JournalWithErrors_LeavesTheSiteAsItWas()
    {
        using var journal = JournalOnDisk.Small();
        var preview = new PreviewedJournal(journal.Folder, Journals.Today, template: null);
        preview.Read(null);
        var before = preview.Site;
        journal.With("drill/2025-10-01-slip.md", "---\npart: haed\nhours: 1h\n---\n");

        Assert.NotEmpty(preview.Read([]));

        Assert.Same(before, preview.Site);
    }

    /// <summary>Holds every file of a published site against what is shown at its address. Pages first: they bring the pictures.</summary>
    internal static void AssertShows(string published, ShownSite shown, string after)
    {
        var files = new SiteOnDisk(published).Files.Where(file => file != ".published-site.json").OrderBy(file => !file.EndsWith(".html", StringComparison.Ordinal)).ThenBy(file => file, StringComparer.Ordinal).ToList();
        foreach (var address in files)
        {
            var bytes = shown.Bytes(address);
            Assert.True(bytes is not null, $"Nothing is shown at {address} after: {after}");
            Assert.True(File.ReadAllBytes(Path.Combine(published, address)).AsSpan().SequenceEqual(bytes), $"{address} is shown otherwise than published after: {after}");
        }
    }
}
