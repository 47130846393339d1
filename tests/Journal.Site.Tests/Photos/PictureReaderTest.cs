using System.Buffers.Binary;
using System.Globalization;
using Journal.Site.Photos;
using Journal.Tests.Shared;
using SixLabors.ImageSharp;

namespace Journal.Site.Tests.Photos;

// After all others and alone: what is judged is the memory of the process.
[CollectionDefinition(nameof(PictureReaderTest), DisableParallelization = true)]
[Collection(nameof(PictureReaderTest))]
public class PictureReaderTest
{
    [Fact]
    public void Measure_EmptyFile_SaysSo() => AssertRefused([], "it is empty.");

    [Fact]
    public void Measure_Text_SaysThatItIsNoPicture() => AssertRefused("not a picture"u8.ToArray(), "it is not a JPEG, PNG, WebP, GIF, BMP or TIFF file, whatever its name says.");

    [Fact]
    public void Measure_HeicUnderAnotherName_SaysHowToConvert() =>
        AssertRefused([0, 0, 0, 24, .. "ftypheic"u8, 0, 0, 0, 0, .. "mif1heic"u8], "it is a HEIC file with another extension; export it from the phone as JPEG.");

    [Fact]
    public void Measure_HeaderOfMoreThanAHundredMegapixels_IsRefusedBeforeDecoding()
    {
        using var small = TestPictures.Scene(16, 16);
        using var saved = new MemoryStream();
        small.SaveAsBmp(saved);
        var bmp = saved.ToArray();

        // Width and height of a BITMAPINFOHEADER stand at 18 and 22 of the file, and nothing checks them.
        BinaryPrimitives.WriteInt32LittleEndian(bmp.AsSpan(18), 20_000);
        BinaryPrimitives.WriteInt32LittleEndian(bmp.AsSpan(22), 20_000);

        AssertRefused(bmp, "it has more than 100 megapixels, or a side of more than 30,000.");
    }

    [Fact]
    public void Open_JpegThatBreaksOffInItsPixels_IsRefused()
    {
        using var scene = TestPictures.Scene(320, 240);
        var jpeg = TestPictures.Jpeg(scene);
        var withThumbnail = (byte[])[0xFF, 0xD8, 0xFF, 0xE0, 0x00, 0x06, 0xFF, 0xD8, 0xFF, 0xD9, .. jpeg.AsSpan(2)];

        using (PictureReader.Open(withThumbnail))
        {
            Assert.Equal("its end is missing: copy it again from the camera.", Assert.Throws<PictureRefusedException>(() => PictureReader.Open(jpeg[..(jpeg.Length * 2 / 3)])).Message);
            Assert.Throws<PictureRefusedException>(() => PictureReader.Open(withThumbnail[..^2]));
        }
    }

    [Fact]
    public void Open_TruncatedPicture_NeverThrowsAnythingElse()
    {
        using var scene = TestPictures.Scene(320, 240);
        var jpeg = TestPictures.Jpeg(scene);
        for (var length = 0; length < jpeg.Length; length += 97)
        {
            OpenOrRefuse(jpeg[..length]);
        }
    }

    /// <summary>
    /// Damaged pictures of every format, 10,000 in all: each is read or refused, none brings the program down, and the
    /// memory stays bounded. The seed is fixed; JOURNAL_FUZZ_SEED gives another.
    /// </summary>
    [Fact]
    public void Open_TenThousandMutatedPictures_AreReadOrRefused()
    {
        var seed = int.Parse(Environment.GetEnvironmentVariable("JOURNAL_FUZZ_SEED") ?? "20251003", CultureInfo.InvariantCulture);
#pragma warning disable CA5394 // Repeatable on purpose.
        var random = new Random(seed);
        var seeds = Seeds();
        using var process = System.Diagnostics.Process.GetCurrentProcess();
        var before = process.PeakWorkingSet64;
        for (var i = 0; i < 10_000; i++)
        {
            var bytes = (byte[])seeds[i % seeds.Count].Clone();
            var edits = 1 + random.Next(12);
            for (var edit = 0; edit < edits; edit++)
            {
                // Headers, where sizes stand, are hit as often as all the rest together.
                var at = random.Next(2) == 0 ? random.Next(Math.Min(bytes.Length, 64)) : random.Next(bytes.Length);
                bytes[at] = random.Next(4) switch { 0 => 0xFF, 1 => 0, _ => (byte)random.Next(256) };
            }

            OpenOrRefuse(random.Next(8) == 0 ? bytes[..random.Next(bytes.Length)] : bytes);
        }
#pragma warning restore CA5394
        Tries.Add("pictures", 10_000);
        process.Refresh();
        Assert.True(process.PeakWorkingSet64 - before < 1L << 30, $"from {before >> 20} to a peak of {process.PeakWorkingSet64 >> 20} MiB");
    }

    private static List<byte[]> Seeds()
    {
        using var scene = TestPictures.Scene(48, 40);
        var seeds = new List<byte[]> { TestPictures.Jpeg(scene), TestPictures.Png(scene) };
        foreach (var save in new Action<MemoryStream>[] { to => scene.SaveAsWebp(to), to => scene.SaveAsGif(to), to => scene.SaveAsBmp(to), to => scene.SaveAsTiff(to) })
        {
            using var bytes = new MemoryStream();
            save(bytes);
            seeds.Add(bytes.ToArray());
        }

        return seeds;
    }

    private static void OpenOrRefuse(byte[] bytes)
    {
        try
        {
            using var image = PictureReader.Open(bytes);
        }
        catch (PictureRefusedException)
        {
            // As it should be.
        }
    }

    private static void AssertRefused(byte[] bytes, string because) =>
        Assert.Equal(because, Assert.Throws<PictureRefusedException>(() => PictureReader.Open(bytes)).Message);
}
