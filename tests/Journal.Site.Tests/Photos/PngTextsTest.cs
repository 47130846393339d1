using Journal.Site.Photos;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats.Png;
using SixLabors.ImageSharp.PixelFormats;

namespace Journal.Site.Tests.Photos;

public class PngTextsTest
{
    [Fact]
    public void Bounded_ShortTexts_AreKept()
    {
        var png = With(new PngTextData("Comment", "A first fit.", "", ""));

        Assert.Same(png, PngTexts.Bounded(png));
    }

    // Each packs tens of millions of letters into tens of thousands of bytes.
    [Fact]
    public void Open_LongCompressedTexts_AreLeftOutAndThePictureIsTheSame()
    {
        var nothing = new string(' ', 30_000_000);
        var png = With(new PngTextData("Comment", "A first fit.", "", ""), new PngTextData("Long", nothing, "", ""), new PngTextData("Longer", nothing + "ü", "", ""));

        using var opened = PictureReader.Open(png);
        using var image = opened.CloneAs<Rgb24>();

        Assert.InRange(png.Length, 40_000, 500_000);
        Assert.Equal(["Comment"], image.Metadata.GetPngMetadata().TextData.Select(text => text.Keyword));
        using var scene = TestPictures.Scene(16, 12);
        Assert.Equal(scene[7, 5], image[7, 5]);
        Assert.Equal(scene[15, 11], image[15, 11]);
    }

    [Fact]
    public void About_LongCompressedTexts_AreLeftOut()
    {
        var png = With(new PngTextData("Comment", "A first fit.", "", ""), new PngTextData("Long", new string(' ', 30_000_000), "", ""));

        Assert.Equal(["Comment"], PictureReader.About(png).GetPngMetadata().TextData.Select(text => text.Keyword));
    }

    [Fact]
    public void Bounded_ManyShortTexts_AreBoundedTogether()
    {
        var png = With([.. Enumerable.Range(0, 100).Select(i => new PngTextData($"Text{i}", new string('x', 300), "", ""))]);

        Assert.InRange(png.Length - PngTexts.Bounded(png).Length, 10_000, 25_000);
    }

    [Fact]
    public void Bounded_CutShortAnywhere_NeverThrows()
    {
        var png = With(new PngTextData("Comment", new string('x', 20_000), "", ""));

        Assert.All(Enumerable.Range(0, png.Length), length => Assert.True(PngTexts.Bounded(png[..length]).Length <= length));
    }

    [Fact]
    public void Bounded_OtherBytes_AreAsTheyWere()
    {
        using var scene = TestPictures.Scene(16, 12);
        var jpeg = TestPictures.Jpeg(scene);

        Assert.Same(jpeg, PngTexts.Bounded(jpeg));
        Assert.Empty(PngTexts.Bounded([]));
    }

    private static byte[] With(params PngTextData[] texts)
    {
        using var scene = TestPictures.Scene(16, 12);
        foreach (var text in texts)
        {
            scene.Metadata.GetPngMetadata().TextData.Add(text);
        }

        using var bytes = new MemoryStream();
        scene.SaveAsPng(bytes, new PngEncoder { TextCompressionThreshold = 1_000 });
        return bytes.ToArray();
    }
}
