using Journal.Cli.Tests;
using Journal.Site.Publishing;
using Journal.Site.Tests.Publishing;

namespace Journal.Site.Tests.Republishing;

/// <summary>
/// What a publish remembers, cut short, damaged, out of date, of another site, or missing because the publish was killed
/// between putting the site in place and writing it: the next one may take longer, and gives the right site.
/// </summary>
public sealed class DamagedRecordTests : IDisposable
{
    private static readonly DateTime LongAgo = new(2025, 10, 1, 0, 0, 0, DateTimeKind.Utc);
    private readonly JournalOnDisk journal = JournalOnDisk.Small();
    private readonly JournalOnDisk elsewhere = JournalOnDisk.Bare();
    private int edits;

    private string Cache => elsewhere.PathOf("cache");

    private string Site => elsewhere.PathOf("site");

    [Fact]
    public void Publish_WithTheRecordAsItWas_ReadsOnlyWhereSomethingChanged()
    {
        Edit();
        Publish();
        Assert.False(Publish().WasRead);
        Edit();

        Assert.True(Publish().WasRead);
        AssertRight();
        Assert.False(Publish().WasRead);
    }

    [Fact]
    public void Publish_AfterTheRecordWasDamaged_GivesTheRightSite()
    {
        Edit();
        Publish();
        var whole = File.ReadAllBytes(RecordIn(Cache));
        byte[][] damaged =
        [
            [], [0], whole[..(whole.Length / 2)], whole[..^1], [.. whole, 0], [.. whole.Reverse()], new byte[whole.Length],
            .. new[] { 0, whole.Length / 3, whole.Length - 1 }.Select(at => Flipped(whole, at)),
        ];
        foreach (var bytes in damaged)
        {
            File.WriteAllBytes(RecordIn(Cache), bytes);

            Assert.True(Publish().WasRead);
            AssertRight();
        }
    }

    [Fact]
    public void Publish_KilledBeforeTheRecordWasWritten_GivesTheRightSite()
    {
        Edit();
        Publish();
        Edit();
        Publish();
        File.Delete(RecordIn(Cache));
        AssertRight();

        Assert.True(Publish().WasRead);
        AssertRight();
    }

    [Fact]
    public void Publish_WithTheRecordOfAnEarlierSite_GivesTheRightSite()
    {
        Edit();
        Publish();
        var earlier = File.ReadAllBytes(RecordIn(Cache));
        Edit("It sings no more since the gib was set: chatterless.");
        Publish();
        File.WriteAllBytes(RecordIn(Cache), earlier);

        Publish();
        AssertRight();
        Edit();
        Publish();
        AssertRight();
    }

    [Fact]
    public void Publish_WithTheRecordOfAnotherSite_GivesTheRightSite()
    {
        using var other = JournalOnDisk.Small().WithEntry("drill/2025-09-29-late.md");
        Edit();
        Publish();
        SitePublisher.Publish(new PublishOrder(other.Folder, elsewhere.PathOf("other"), Journals.Today) { Cache = elsewhere.PathOf("other-cache") });
        File.Copy(RecordIn(elsewhere.PathOf("other-cache")), RecordIn(Cache), overwrite: true);

        Assert.True(Publish().WasRead);
        AssertRight();
    }

    // The folder is taken away with its record, and another of its name is there.
    [Fact]
    public void Publish_WhereTheSiteIsAnOlderCopy_GivesTheRightSite()
    {
        Edit();
        Publish();
        Directory.Move(Site, elsewhere.PathOf("kept"));
        Edit();
        Publish();
        Directory.Delete(Site, recursive: true);
        Directory.Move(elsewhere.PathOf("kept"), Site);

        Assert.True(Publish().WasRead);
        AssertRight();
    }

    [Fact]
    public void Publish_WhileTheLastOneLiesHalfDoneBesideTheSite_GivesTheRightSite()
    {
        Edit();
        Publish();
        Edit();
        elsewhere.With(".site.being-written/.published-site.json", "{}").With(".site.being-written/index.html", "Half a pa").With(".site.publishing", "4711 2025-10-01T20:00:00.0000000Z 0");

        Assert.True(Publish().WasRead);
        AssertRight();
    }

    public void Dispose()
    {
        journal.Dispose();
        elsewhere.Dispose();
    }

    private static byte[] Flipped(byte[] bytes, int at) => [.. bytes[..at], (byte)(bytes[at] ^ 1), .. bytes[(at + 1)..]];

    private static string RecordIn(string cache) => Directory.EnumerateFiles(cache, "*.record", SearchOption.AllDirectories).Single();

    // Other words, in a file long written; so are all others.
    private void Edit(string? words = null)
    {
        edits++;
        File.WriteAllText(journal.PathOf("drill/2025-09-07-second.md"), $"---\npart: whole\noperation: planning\nhours: 34m\nheeded: indicate-both-ends\n---\n{words ?? $"The {edits}. telling."}\n");
        foreach (var path in Directory.EnumerateFiles(journal.Folder, "*", SearchOption.AllDirectories))
        {
            File.SetLastWriteTimeUtc(path, LongAgo);
        }

        File.SetLastWriteTimeUtc(journal.PathOf("drill/2025-09-07-second.md"), LongAgo.AddMinutes(edits));
    }

    private SiteOutcome Publish(string? to = null, string? cache = null) =>
        SitePublisher.Publish(new PublishOrder(journal.Folder, to ?? Site, Journals.Today) { Cache = cache ?? Cache });

    private void AssertRight()
    {
        var clean = elsewhere.PathOf($"clean-{Guid.NewGuid():N}");
        Publish(clean, clean + "-cache");
        Assert.Equal(new SiteOnDisk(clean).Hashes, new SiteOnDisk(Site).Hashes);
        Assert.Empty(Directory.EnumerateFileSystemEntries(elsewhere.Folder, ".site.*"));
    }
}
