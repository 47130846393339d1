using System.Text;
using Journal.Site.Photos;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Metadata.Profiles.Exif;
using SixLabors.ImageSharp.PixelFormats;
using SixLabors.ImageSharp.Processing;

namespace Journal.Site.Tests.Photos;

public class PictureMakerTest
{
    /// <summary>The eight orientations of Exif 2.32 (CIPA DC-008-2019), 4.6.4, tag 274.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(7)]
    [InlineData(8)]
    public void Make_EveryExifOrientation_ComesOutUpright(ushort orientation)
    {
        // The pixels as a camera would store them: the upright picture turned back by the inverse of its orientation.
        using var stored = TestPictures.Corners(600, 400);
        stored.Mutate(picture => Turn(picture, orientation));
        stored.Metadata.ExifProfile = new ExifProfile();
        stored.Metadata.ExifProfile.SetValue(ExifTag.Orientation, orientation);

        var files = Make(TestPictures.Jpeg(stored), out var made);

        Assert.Equal((600, 400), (made.Width, made.Height));
        foreach (var bytes in files.Values)
        {
            using var image = Image.Load<Rgb24>(bytes);
            var (x, y) = (image.Width / 8, image.Height / 8);
            AssertNear(new Rgb24(255, 0, 0), image[x, y]);
            AssertNear(new Rgb24(0, 255, 0), image[image.Width - x, y]);
            AssertNear(new Rgb24(0, 0, 255), image[x, image.Height - y]);
            AssertNear(new Rgb24(255, 255, 255), image[image.Width - x, image.Height - y]);
        }
    }

    [Fact]
    public void Make_PictureThatTellsOfItsMaker_TellsNothing()
    {
        var talkative = TestPictures.Talkative();
        Assert.Contains("MARKER-SERIAL", Encoding.Latin1.GetString(talkative), StringComparison.Ordinal);
        Assert.Contains("MARKER-XMP", Encoding.Latin1.GetString(talkative), StringComparison.Ordinal);

        foreach (var bytes in Make(talkative, out _).Values)
        {
            var text = Encoding.Latin1.GetString(bytes);
            Assert.DoesNotContain("MARKER", text, StringComparison.Ordinal);
            Assert.DoesNotContain("2025:10:03", text, StringComparison.Ordinal);
            Assert.DoesNotContain("Exif", text, StringComparison.Ordinal);
            using var image = Image.Load(bytes);
            Assert.Null(image.Metadata.ExifProfile);
            Assert.Null(image.Metadata.XmpProfile);
            Assert.Null(image.Metadata.IptcProfile);
        }
    }

    [Fact]
    public void Make_ColourProfile_SurvivesInBothFormats()
    {
        var profile = TestPictures.Profile();

        var files = Make(TestPictures.WithProfile(profile), out _);

        Assert.All(files, file => Assert.True(file.Value.AsSpan().IndexOf(profile) > 0, file.Key));
        foreach (var webp in files.Where(file => file.Key.EndsWith(".webp", StringComparison.Ordinal)))
        {
            // RFC 9649: the size in the header is that of the file less eight, and the file still reads.
            Assert.Equal(webp.Value.Length - 8, (int)BitConverter.ToUInt32(webp.Value, 4));
            using var image = Image.Load<Rgb24>(webp.Value);
            Assert.Equal(image.Width, int.Parse(webp.Key.Split('.')[0], System.Globalization.CultureInfo.InvariantCulture));
        }
    }

    [Theory]
    [InlineData(300, new[] { 300 })]
    [InlineData(480, new[] { 480 })]
    [InlineData(1000, new[] { 480, 960, 1000 })]
    [InlineData(1600, new[] { 480, 960, 1600 })]
    [InlineData(2400, new[] { 480, 960, 1600 })]
    public void Make_Source_GivesNoSizeLargerThanItself(int width, int[] expected)
    {
        using var scene = TestPictures.Scene(width, width / 2);

        var files = Make(TestPictures.Jpeg(scene), out var made);

        Assert.Equal(expected, made.Widths);
        Assert.Equal(expected.Length * 2, files.Count);
        Assert.Equal(expected[^1], made.Width);
    }

    [Theory]
    [InlineData("jpeg")]
    [InlineData("png")]
    [InlineData("webp")]
    [InlineData("gif")]
    [InlineData("bmp")]
    [InlineData("tiff")]
    public void Make_EachFormat_IsRead(string format)
    {
        using var corners = TestPictures.Corners(300, 200);
        using var saved = new MemoryStream();
        corners.Save(saved, Configuration.Default.ImageFormatsManager.FindFormatByFileExtension(format));

        var files = Make(saved.ToArray(), out var made);

        Assert.Equal((300, 200), (made.Width, made.Height));
        using var jpeg = Image.Load<Rgb24>(files["300.jpg"]);
        AssertNear(new Rgb24(0, 255, 0), jpeg[270, 20]);
    }

    [Fact]
    public void Make_TransparentPicture_StandsOnWhiteInJpegAndStaysClearInWebp()
    {
        using var clear = new Image<Rgba32>(64, 64, new Rgba32(0, 0, 0, 0));

        var files = Make(TestPictures.Png(clear), out _);

        using var jpeg = Image.Load<Rgb24>(files["64.jpg"]);
        AssertNear(new Rgb24(255, 255, 255), jpeg[32, 32]);
        using var webp = Image.Load<Rgba32>(files["64.webp"]);
        Assert.Equal(0, webp[32, 32].A);
    }

    [Fact]
    public void Make_Ground_IsTheColourThatMostOfItHas()
    {
        using var image = new Image<Rgb24>(200, 200, new Rgb24(40, 90, 160));
        image.Mutate(picture => picture.Crop(200, 200));

        Make(TestPictures.Png(image), out var made);

        Assert.Equal("#285aa0", made.Ground);
    }

    [Theory]
    [InlineData(480)]
    [InlineData(960)]
    [InlineData(1600)]
    public void Make_EachSize_IsLikeAReferenceResize(int width)
    {
        using var scene = TestPictures.Scene(2400, 1600);
        var files = Make(TestPictures.Jpeg(scene, 95), out _);
        using var reference = scene.Clone(picture => picture.Resize(width, 0, KnownResamplers.Lanczos3));

        foreach (var format in new[] { "webp", "jpg" })
        {
            using var made = Image.Load<Rgb24>(files[$"{width}.{format}"]);
            Assert.True(StructuralLikeness.Of(reference, made) >= 0.95, $"{width}.{format}");
        }
    }

    private static Dictionary<string, byte[]> Make(byte[] bytes, out MadePicture made)
    {
        var files = new Dictionary<string, byte[]>();
        made = PictureMaker.Make(bytes, PictureSettings.Usual, (file, content) => files.Add(file.Name, content));
        return files;
    }

    private static IImageProcessingContext Turn(IImageProcessingContext picture, ushort orientation) => orientation switch
    {
        2 => picture.Flip(FlipMode.Horizontal),
        3 => picture.Rotate(RotateMode.Rotate180),
        4 => picture.Flip(FlipMode.Vertical),
        5 => picture.Rotate(RotateMode.Rotate90).Flip(FlipMode.Horizontal),
        6 => picture.Rotate(RotateMode.Rotate270),
        7 => picture.Rotate(RotateMode.Rotate270).Flip(FlipMode.Horizontal),
        8 => picture.Rotate(RotateMode.Rotate90),
        _ => picture,
    };

    private static void AssertNear(Rgb24 expected, Rgb24 actual)
    {
        Assert.InRange(Math.Abs(expected.R - actual.R), 0, 40);
        Assert.InRange(Math.Abs(expected.G - actual.G), 0, 40);
        Assert.InRange(Math.Abs(expected.B - actual.B), 0, 40);
    }
}
