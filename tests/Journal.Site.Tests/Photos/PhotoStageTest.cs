using Journal.Site.Output;
using Journal.Site.Photos;

namespace Journal.Site.Tests.Photos;

public sealed class PhotoStageTest : IDisposable
{
    private readonly string root = Directory.CreateTempSubdirectory("journal-photos-").FullName;

    private string JournalFolder => Path.Combine(root, "journal");

    public void Dispose() => Directory.Delete(root, recursive: true);

    [Fact]
    public void Publish_SecondTime_MakesNothing()
    {
        Save("a.jpg", 700);

        Assert.Equal(1, Publish(PictureSettings.Usual, "a.jpg").Made);
        Assert.Equal(0, Publish(PictureSettings.Usual, "a.jpg").Made);
    }

    [Fact]
    public void Publish_PictureMovedAndRenamed_MakesNothing()
    {
        Save("a.jpg", 700);
        Publish(PictureSettings.Usual, "a.jpg");
        Directory.CreateDirectory(Path.Combine(JournalFolder, "elsewhere"));
        File.Move(Path.Combine(JournalFolder, "a.jpg"), Path.Combine(JournalFolder, "elsewhere", "b.jpg"));

        Assert.Equal(0, Publish(PictureSettings.Usual, "elsewhere/b.jpg").Made);
    }

    [Fact]
    public void Publish_OtherWidths_MakesAnew()
    {
        Save("a.jpg", 700);
        Publish(PictureSettings.Usual, "a.jpg");

        var result = Publish(PictureSettings.Usual with { Widths = [200, 400] }, "a.jpg");

        Assert.Equal(1, result.Made);
        Assert.Equal([200, 400], result.Photos["a.jpg"].Widths);
    }

    [Fact]
    public void Publish_PictureChangedUnderItsName_IsMadeAnew()
    {
        Save("a.jpg", 700);
        var before = Publish(PictureSettings.Usual, "a.jpg").Photos["a.jpg"];
        Save("a.jpg", 720);

        var after = Publish(PictureSettings.Usual, "a.jpg");

        Assert.Equal(1, after.Made);
        Assert.NotEqual(before.Name, after.Photos["a.jpg"].Name);
    }

    [Fact]
    public void Publish_FileMissingFromTheCache_IsMadeAnew()
    {
        Save("a.jpg", 700);
        Publish(PictureSettings.Usual, "a.jpg");
        File.Delete(Directory.EnumerateFiles(Path.Combine(root, "cache"), "480.webp", SearchOption.AllDirectories).Single());

        Assert.Equal(1, Publish(PictureSettings.Usual, "a.jpg").Made);
    }

    [Fact]
    public void Publish_SameContentTwice_IsMadeOnce()
    {
        Save("a.jpg", 700);
        File.Copy(Path.Combine(JournalFolder, "a.jpg"), Path.Combine(JournalFolder, "b.jpg"));

        var result = Publish(PictureSettings.Usual, "a.jpg", "b.jpg");

        Assert.Equal(1, result.Made);
        Assert.Equal(result.Photos["a.jpg"], result.Photos["b.jpg"]);
    }

    [Fact]
    public void Publish_BrokenPicture_IsAProblemAndTheRestIsPublished()
    {
        Save("a.jpg", 700);
        File.WriteAllBytes(Path.Combine(JournalFolder, "broken.jpg"), [0xFF, 0xD8, 0xFF, 0xE0, 0, 4]);

        var result = Publish(PictureSettings.Usual, "a.jpg", "broken.jpg");

        Assert.Equal(["a.jpg"], result.Photos.Keys);
        var problem = Assert.Single(result.Problems);
        Assert.Equal(("picture-broken", "broken.jpg"), (problem.Kind.Code, problem.Place.File));
        Assert.NotEmpty(problem.Remedy);
    }

    private void Save(string file, int width)
    {
        Directory.CreateDirectory(JournalFolder);
        using var scene = TestPictures.Scene(width, 300);
        File.WriteAllBytes(Path.Combine(JournalFolder, file), TestPictures.Jpeg(scene));
    }

    private (IReadOnlyDictionary<string, PublishedPhoto> Photos, IReadOnlyList<Journal.Core.Parsing.Problems.Problem> Problems, int Made) Publish(PictureSettings settings, params string[] files)
    {
        var progress = new Counted();
        using var site = SiteFolder.Begin(Path.Combine(root, "site"));
        var cache = new UserCache(Path.Combine(root, "cache"));
        var stage = new PhotoStage(JournalFolder, site, cache, SeenFiles.Of(cache, JournalFolder), settings);
        stage.BringAll(files, progress, CancellationToken.None);
        var photos = files.Where(file => stage.Of(file) is not null).ToDictionary(file => file, file => stage.Of(file)!);
        site.Finish();
        foreach (var photo in photos.Values)
        {
            Assert.All(photo.Widths, width => Assert.True(File.Exists(Path.Combine(root, "site", photo.Address(width, "webp")))));
        }

        return (photos, stage.Problems, progress.Made);
    }

    private sealed class Counted : IProgress<PictureProgress>
    {
        private int made;

        public int Made => made;

        public void Report(PictureProgress value)
        {
            Interlocked.Exchange(ref made, value.Made);
        }
    }
}
