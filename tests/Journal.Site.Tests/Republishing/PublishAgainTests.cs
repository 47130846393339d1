using System.Globalization;
using System.Text;
using Journal.Site.Publishing;

namespace Journal.Site.Tests.Republishing;

/// <summary>When the record of the publish before is enough, and when it is not.</summary>
public sealed class PublishAgainTests : IDisposable
{
    private const string Entry = "drill/2025-01-01-shown.md";
    private static readonly DateOnly Today = new(2026, 11, 25);

    private readonly PublishedJournal journal = new PublishedJournal()
        .With("drill/build.yaml", "title: Drill\nparts: [{id: head}]\n")
        .With(Entry, "---\ntitle: One\npart: head\noperation: filing\nhours: 1\nlessons: [{id: square-first, text: Square the first face before the second}]\n---\nThe first face was filed square.\n\nTea.\n")
        .With("drill/2025-01-02-later.md", "---\ntitle: Two\npart: head\noperation: filing\nhours: 1\npublish: after 2026-11-26\n---\nSee [the first](entry:2025-01-01).\n");

    public PublishAgainTests() => SettleTimes();

    [Fact]
    public void NothingChanged_IsNotReadAndTouchesNothing()
    {
        Publish();
        var before = Stamps();

        var again = Publish();

        Assert.False(again.WasRead);
        Assert.Equal(0, again.Published!.Changed);
        Assert.Equal((1, 1), (again.Published.Builds, again.Published.Entries)); // The other is not shown yet.
        Assert.Equal(before, Stamps());
    }

    [Fact]
    public void OtherWords_ChangeThePagesThatShowThemAndTheFindIndexAlone()
    {
        Publish();
        var before = Stamps();
        Write(Entry, File.ReadAllText(PathOf(Entry)).Replace("filed square", "scraped square & true", StringComparison.Ordinal));

        Assert.True(Publish().WasRead);

        var changed = Stamps().Where(file => before.GetValueOrDefault(file.Key) != file.Value).Select(file => file.Key.Replace('\\', '/')).Order(StringComparer.Ordinal).ToList();
        Assert.Equal([".published-site.json", "drill/entry/2025-01-01-shown.html", "feed.json", "feed.xml", "find/index.js", "lesson/square-first.html"], changed.Where(file => !file.StartsWith("find/text-", StringComparison.Ordinal)));
        Assert.Equal(7, changed.Count);
        Assert.Contains("scraped square &amp; true", journal.Text("drill/entry/2025-01-01-shown.html"), StringComparison.Ordinal);
        Assert.Contains("scraped square &amp; true", journal.Text("lesson/square-first.html"), StringComparison.Ordinal);
        Assert.False(Publish().WasRead);
    }

    // As a copy put back has it, or an archive that gives all files one time.
    [Fact]
    public void EntryHiddenByAsManyLettersWithItsOldTime_IsShownNoMore()
    {
        const string Secret = "drill/2025-01-03-marked.md";
        Write(Secret, "---\ntitle: Zebra\npart: head\noperation: filing\nhours: 1\nnext: abcdefgh\n---\nWords.\n");
        var time = File.GetLastWriteTimeUtc(PathOf(Secret));
        Publish();
        Write(Secret, File.ReadAllText(PathOf(Secret)).Replace("next: abcdefgh", "publish: never", StringComparison.Ordinal));
        File.SetLastWriteTimeUtc(PathOf(Secret), time);

        Assert.True(Publish().WasRead);
        Assert.False(File.Exists(Path.Combine(journal.Site, "drill/entry/2025-01-03-marked.html")));
        Assert.DoesNotContain("Zebra", journal.Text("index.html"), StringComparison.Ordinal);
    }

    [Fact]
    public void FileAdded_Gone_Renamed_AreReadAnew()
    {
        Publish();
        Write("drill/photos/notes.txt", "Not of the journal, but who knows.");
        Assert.True(Publish().WasRead);
        Assert.False(Publish().WasRead);
        File.Delete(PathOf("drill/photos/notes.txt"));
        Assert.True(Publish().WasRead);
        File.Move(PathOf(Entry), PathOf("drill/2025-01-01-renamed.md"));
        Assert.True(Publish().WasRead);
        Assert.Contains("One", journal.Text("drill/entry/2025-01-01-renamed.html"), StringComparison.Ordinal);
    }

    [Fact]
    public void AnotherDay_IsReadAnewWhereMoreIsSeenThen()
    {
        Publish();
        Assert.False(Publish(Today.AddDays(1)).WasRead);

        var seen = Publish(Today.AddDays(2));

        Assert.True(seen.WasRead);
        Assert.Contains("Two", journal.Text("drill/entry/2025-01-02-later.html"), StringComparison.Ordinal);
        Assert.True(Publish(Today).WasRead);
        Assert.False(File.Exists(Path.Combine(journal.Site, "drill", "entry", "2025-01-02-later.html")));
    }

    [Fact]
    public void SiteTouchedBySomeone_IsMended()
    {
        Publish();
        File.AppendAllText(Path.Combine(journal.Site, "index.html"), "<p>Not ours.</p>");

        Assert.True(Publish().WasRead);
        Assert.DoesNotContain("Not ours", journal.Text("index.html"), StringComparison.Ordinal);
        File.Delete(Path.Combine(journal.Site, "timeline.html"));
        Assert.True(Publish().WasRead);
        Assert.True(File.Exists(Path.Combine(journal.Site, "timeline.html")));
    }

    [Fact]
    public void FilesSecondsOld_AreNotTrusted()
    {
        Publish();
        File.SetLastWriteTimeUtc(PathOf("drill/build.yaml"), DateTime.UtcNow.AddSeconds(1));

        Assert.True(Publish().WasRead);
        Assert.True(Publish().WasRead);
    }

    [Theory]
    [InlineData("")]
    [InlineData("rubbish")]
    [InlineData(null)]
    public void RecordDamagedOrCutShort_IsNotUsed(string? text)
    {
        Publish();
        foreach (var file in Records())
        {
            File.WriteAllBytes(file, text is null ? File.ReadAllBytes(file)[..^9] : Encoding.UTF8.GetBytes(text));
        }

        Assert.True(Publish().WasRead);
        Assert.False(Publish().WasRead);
    }

    // Whatever a byte of it becomes: the digest at the end tells.
    [Fact]
    public void RecordWithAnyByteChanged_IsNotUsed()
    {
        Publish();
        var record = Records().Single();
        var whole = File.ReadAllBytes(record);
        for (var at = 0; at < whole.Length; at += whole.Length / 40)
        {
            byte[] other = [.. whole];
            other[at] ^= 0x41;
            File.WriteAllBytes(record, other);
            Assert.True(Publish().WasRead);
        }
    }

    [Fact]
    public void MakersOwnTemplate_IsLookedAtWhole()
    {
        journal.WithTemplate("pages/not-found.html", "Lost.");
        Publish();
        Assert.False(Publish().WasRead);
        journal.WithTemplate("pages/not-found.html", "Lost, and found.");

        Assert.True(Publish().WasRead);
        Assert.Equal("Lost, and found.", journal.Text("404.html"));
    }

    [Fact]
    public void Errors_AreToldAndTheSiteStays()
    {
        Publish();
        var before = Stamps();
        Write(Entry, "---\npart: nothing\n---\n");

        var outcome = Publish();

        Assert.Null(outcome.Published);
        Assert.NotEmpty(outcome.Problems);
        Assert.Equal(before, Stamps());
    }

    public void Dispose() => journal.Dispose();

    private SiteOutcome Publish(DateOnly? today = null) => SitePublisher.Publish(new PublishOrder(
        journal.Folder, journal.Site, today ?? Today, Directory.Exists(journal.Template) ? journal.Template : null) { Cache = CacheFolder });

    private string CacheFolder => Path.Combine(Path.GetDirectoryName(journal.Site)!, "cache");

    private List<string> Records() => [.. Directory.EnumerateFiles(Path.Combine(CacheFolder, "published")).Where(file => Path.GetExtension(file) is ".record")];

    private string PathOf(string file) => Path.Combine(journal.Folder, file);

    private void Write(string file, string text)
    {
        journal.With(file, text);
        SettleTimes();
    }

    private int settled;

    // Half a day old, and a little younger each time: files that are seconds old are not trusted.
    private void SettleTimes()
    {
        settled++;
        foreach (var path in Directory.EnumerateFiles(journal.Folder, "*", SearchOption.AllDirectories).Where(path => File.GetLastWriteTimeUtc(path) > DateTime.UtcNow.AddHours(-1)))
        {
            File.SetLastWriteTimeUtc(path, DateTime.UtcNow.AddHours(-12).AddMinutes(settled));
        }
    }

    private Dictionary<string, string> Stamps() => Directory.EnumerateFiles(journal.Site, "*", SearchOption.AllDirectories).ToDictionary(
        path => Path.GetRelativePath(journal.Site, path), path => File.GetLastWriteTimeUtc(path).Ticks.ToString(CultureInfo.InvariantCulture));
}
