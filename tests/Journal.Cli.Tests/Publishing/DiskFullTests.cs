using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;

namespace Journal.Cli.Tests.Publishing;

// The built program on a disk that is full for real.
public sealed class DiskFullTests : IClassFixture<BaseSite>, IDisposable
{
    private const string OldSiteStands = "Nothing was published; the existing site is unchanged.\n";
    private readonly LargerJournal journal = new(BaseSite.Entries);
    private readonly BaseSite published;
    private readonly SmallDisk disk;

#pragma warning disable CA2000 // Disposed with the test.
    public DiskFullTests(BaseSite published) => (this.published, disk) = (published, new SmallDisk(journal.PathOf("disk")));
#pragma warning restore CA2000

    private string Site => Path.Combine(disk.Folder, "site");

    [Theory]
    [InlineData(0)]
    [InlineData(200_000)]
    public async Task Publish_WhereTheDiskIsFull_SaysSoKeepsTheOldSiteAndTakesNoRoom(int left)
    {
        published.CopyTo(Site);
        var old = LargerJournal.HashesOf(Site);
        journal.Tell("once more");
        disk.Fill(left);
        var room = disk.Room;

        var answer = await Publish();

        Assert.Equal((3, ""), (answer.Status, answer.Out));
        Assert.StartsWith(disk.Complaint, answer.Error, StringComparison.Ordinal);
        Assert.Matches("Free some space, then try again|Raise the limit, then try again", answer.Error);
        Assert.EndsWith(OldSiteStands, answer.Error, StringComparison.Ordinal);
        AssertSame(old);
        Assert.Equal(["site"], disk.Names());
        Assert.Equal(room, disk.Room);

        disk.Clear();
        Assert.Equal(0, (await Publish()).Status);
        AssertSame(await journal.Clean());
        Assert.Equal(["site"], disk.Names());
    }

    [Fact]
    public async Task Publish_WhereNoFileMayGrow_SaysSoAndKeepsTheOldSite()
    {
        published.CopyTo(journal.Site);
        var old = LargerJournal.HashesOf(journal.Site);
        journal.Tell("once more");
        using var program = RunningProgram.StartBehind(SmallDisk.Quota, journal.Folder, journal.Cache, "publish", "--to", journal.Site);

        var answer = await program.End();

        Assert.Equal((3, ""), (answer.Status, answer.Out));
        Assert.Matches(@"^The file is too large for this disk \(a limit or a quota\): [^()]+\. Raise the limit, then try again\.\n", answer.Error);
        Assert.EndsWith(OldSiteStands, answer.Error, StringComparison.Ordinal);
        Assert.True(journal.Stands(old));
        Assert.Empty(journal.BesideTheSite());
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Publish_WhereThereIsNoRoomForAPicture_StopsAndDoesNotLeaveItOut(bool isMadeBefore)
    {
        published.CopyTo(Site);
        var old = LargerJournal.HashesOf(Site);
        WithNoisyPicture();
        if (isMadeBefore)
        {
            Assert.Equal(0, (await journal.Publish()).Status);
        }

        // Enough for the pages, too little for the picture.
        disk.Fill(left: 100_000);

        var answer = await Publish();

        Assert.Equal((3, ""), (answer.Status, answer.Out));
        Assert.Contains(disk.Complaint, answer.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("noise.png", answer.Error, StringComparison.Ordinal);
        Assert.EndsWith(OldSiteStands, answer.Error, StringComparison.Ordinal);
        AssertSame(old);
        Assert.Equal(["site"], disk.Names());

        disk.Clear();
        Assert.Equal(0, (await Publish()).Status);
        AssertSame(await journal.Clean());
    }

    [Fact]
    public async Task Publish_WhereTheCacheHasNoRoom_PublishesAllTheSame()
    {
        WithNoisyPicture();
        disk.Fill(left: 0);
        foreach (var words in new[] { "at first", "once more" })
        {
            journal.Tell(words);
            await AssertPublishes(Path.Combine(disk.Folder, "cache"));
        }
    }

    [Theory]
    [InlineData("/proc/journal-cache")]
    [InlineData("/dev/null/cache")]
    public async Task Publish_WhereTheCacheCannotBe_PublishesAllTheSame(string cache)
    {
        WithNoisyPicture();
        await AssertPublishes(cache);
    }

    public void Dispose()
    {
        disk.Dispose();
        journal.Dispose();
    }

    private async Task AssertPublishes(string cache)
    {
        using var program = RunningProgram.Start(journal.Folder, cache, "publish", "--to", journal.Site);
        var answer = await program.End();

        Assert.Equal((0, ""), (answer.Status, answer.Error));
        Assert.True(journal.Stands(await journal.Clean()));
    }

    private async Task<Answer> Publish()
    {
        using var program = RunningProgram.StartBehind(disk.Prefix, journal.Folder, journal.Cache, "publish", "--to", Site);
        return await program.End();
    }

    private void AssertSame(IReadOnlyDictionary<string, string> wanted) =>
        Assert.Equal(wanted.OrderBy(file => file.Key, StringComparer.Ordinal), LargerJournal.HashesOf(Site).OrderBy(file => file.Key, StringComparer.Ordinal));

    // Noise: a picture that no format makes small.
    private void WithNoisyPicture()
    {
        using var picture = new Image<L8>(700, 500);
        var seed = 1u;
        for (var i = 0; i < picture.Width * picture.Height; i++)
        {
            seed = (seed * 1664525) + 1013904223;
            picture[i % picture.Width, i / picture.Width] = new L8((byte)(seed >> 24));
        }

        Directory.CreateDirectory(journal.PathOf("book/drill/photos"));
        picture.SaveAsPng(journal.PathOf("book/drill/photos/noise.png"));
        journal.With("book/drill/2009-12-31-head.md", "---\npart: head\noperation: turning\nhours: 1h\nphotos: {file: photos/noise.png, caption: Noise}\n---\nSeen.\n");
    }
}
