using Journal.Site.Output;
using Journal.Site.Photos;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats.Png;
using SixLabors.ImageSharp.Formats.Tiff;
using SixLabors.ImageSharp.Formats.Tiff.Constants;
using SixLabors.ImageSharp.Metadata.Profiles.Exif;

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

    // Emptied, cut, and with one byte changed; with the site that was published before, and without.
    [Theory]
    [InlineData("empty", true)]
    [InlineData("empty", false)]
    [InlineData("cut", true)]
    [InlineData("cut", false)]
    [InlineData("changed", false)]
    public void Publish_FileDamagedInTheCache_IsMadeAnew(string damage, bool hasSite)
    {
        Save("a.jpg", 700);
        var whole = Publish(PictureSettings.Usual, "a.jpg").Photos["a.jpg"];
        var first = Published(whole);
        var file = Directory.EnumerateFiles(Path.Combine(root, "cache"), "480.webp", SearchOption.AllDirectories).Single();
        var bytes = File.ReadAllBytes(file);
        bytes[bytes.Length / 2] ^= 1;
        File.WriteAllBytes(file, damage switch { "empty" => [], "cut" => bytes[..^9], _ => bytes });
        if (!hasSite)
        {
            Directory.Delete(Path.Combine(root, "site"), recursive: true);
        }

        Publish(PictureSettings.Usual, "a.jpg");

        Assert.Equal(first, Published(whole));
    }

    // As an earlier version left it, and as a bad disk may: the site's own file is damaged as well.
    [Fact]
    public void Publish_FileDamagedInCacheAndSite_IsMadeAnew()
    {
        Save("a.jpg", 700);
        var photo = Publish(PictureSettings.Usual, "a.jpg").Photos["a.jpg"];
        var first = Published(photo);
        File.WriteAllBytes(Directory.EnumerateFiles(Path.Combine(root, "cache"), "480.webp", SearchOption.AllDirectories).Single(), []);
        var there = Path.Combine(root, "site", photo.Address(480, "webp"));
        var time = File.GetLastWriteTimeUtc(there);
        File.WriteAllBytes(there, []);
        File.SetLastWriteTimeUtc(there, time);

        Publish(PictureSettings.Usual, "a.jpg");

        Assert.Equal(first, Published(photo));
    }

    // Two programs made it at the same time, and the other reads its files already.
    [Fact]
    public void Keep_WhatAnotherHasKeptMeanwhile_LeavesItsFiles()
    {
        var cache = new UserCache(Path.Combine(root, "cache"));
        var file = new MadeFile(480, "webp", Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData([1, 2, 3])), 3);
        var made = new MadePicture(480, 300, "#ffffff", [file]);
        Assert.True(cache.Keep("abcdef", PictureSettings.Usual, made, [(file, [1, 2, 3])]));
        var place = Path.GetDirectoryName(cache.PathOf("abcdef", PictureSettings.Usual, file))!;
        File.WriteAllText(Path.Combine(place, "mark"), "");

        Assert.True(cache.Keep("abcdef", PictureSettings.Usual, made, [(file, [1, 2, 3])]));
        Assert.True(File.Exists(Path.Combine(place, "mark")));

        // What is damaged gives way.
        File.WriteAllBytes(cache.PathOf("abcdef", PictureSettings.Usual, file), []);
        Assert.True(cache.Keep("abcdef", PictureSettings.Usual, made, [(file, [1, 2, 3])]));
        Assert.False(File.Exists(Path.Combine(place, "mark")));
        Assert.True(cache.IsWhole("abcdef", PictureSettings.Usual, file));
    }

    [Fact]
    public void Publish_AfterOneThatWasKilled_LeavesNoDraftInTheCache()
    {
        Save("a.jpg", 700);
        var left = Directory.CreateDirectory(Path.Combine(root, "cache", "at-work", "left", "half a picture"));
        File.WriteAllText(Path.Combine(left.FullName, "480.webp"), "half");
        File.WriteAllText(Path.Combine(left.Parent!.FullName, ".held"), "");

        Publish(PictureSettings.Usual, "a.jpg");

        Assert.Empty(Directory.EnumerateFileSystemEntries(Path.Combine(root, "cache", "at-work")));
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

    // Each of another kind of exception, from another reader; what they all are is a damaged picture.
    [Fact]
    public void Publish_PicturesDamagedInManyWays_AreProblemsAndTheRestIsPublished()
    {
        Save("a.jpg", 700);
        Dictionary<string, byte[]> damaged = new()
        {
            ["cut.png"] = Png(PngInterlaceMode.None)[..^40],
            ["cut-interlaced.png"] = Png(PngInterlaceMode.Adam7)[..^40],
            ["bytes.tif"] = Tiff(),
            ["exif.jpg"] = Exif(),
            ["nothing.webp"] = [],
            ["words.gif"] = "GIF89a and nothing else"u8.ToArray(),
        };
        foreach (var (file, bytes) in damaged)
        {
            File.WriteAllBytes(Path.Combine(JournalFolder, file), bytes);
        }

        var result = Publish(PictureSettings.Usual, ["a.jpg", .. damaged.Keys]);

        Assert.Equal(["a.jpg"], result.Photos.Keys);
        Assert.Equal(damaged.Keys.Order(StringComparer.Ordinal), result.Problems.Select(problem => problem.Place.File));
        Assert.All(result.Problems, problem => Assert.Equal("picture-broken", problem.Kind.Code));
    }

    private static byte[] Png(PngInterlaceMode mode)
    {
        using var scene = TestPictures.Scene(90, 60);
        using var bytes = new MemoryStream();
        scene.SaveAsPng(bytes, new PngEncoder { InterlaceMethod = mode });
        return bytes.ToArray();
    }

    private static byte[] Tiff()
    {
        using var scene = TestPictures.Scene(90, 60);
        using var bytes = new MemoryStream();
        scene.SaveAsTiff(bytes, new TiffEncoder { Compression = TiffCompression.Deflate });
        bytes.GetBuffer().AsSpan(40, 60).Fill(0xA5);
        return bytes.ToArray();
    }

    // The count of an entry of the camera's table says more than there is.
    private static byte[] Exif()
    {
        using var scene = TestPictures.Scene(90, 60);
        scene.Metadata.ExifProfile = new ExifProfile();
        scene.Metadata.ExifProfile.SetValue(ExifTag.Make, "A maker of cameras");
        var jpeg = TestPictures.Jpeg(scene);
        var table = jpeg.AsSpan().IndexOf("Exif\0\0"u8) + 6 + 8 + 2;
        jpeg.AsSpan(table + 4, 4).Fill(0xFF);
        return jpeg;
    }

    private Dictionary<string, string> Published(PublishedPhoto photo) => Directory.EnumerateFiles(Path.Combine(root, "site", "photos"))
        .Where(path => Path.GetFileName(path).StartsWith(photo.Name, StringComparison.Ordinal))
        .ToDictionary(path => Path.GetFileName(path), path => Convert.ToHexString(File.ReadAllBytes(path)));

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
