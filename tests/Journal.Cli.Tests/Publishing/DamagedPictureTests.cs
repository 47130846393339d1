using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Metadata.Profiles.Exif;
using SixLabors.ImageSharp.PixelFormats;

namespace Journal.Cli.Tests.Publishing;

public class DamagedPictureTests
{
    [Fact]
    public void Publish_ADamagedPicture_IsNamed_AndAllElseIsPublished()
    {
        using var journal = JournalOnDisk.Small();
        const string Entry = "---\npart: head\noperation: boring\nhours: 1h\nphotos:\n  - {file: photos/whole.png, caption: Whole}\n  - {file: photos/cut.png, caption: Cut off}\n  - {file: photos/exif.jpg, caption: Damaged}\n---\nText.\n";
        journal.With("drill/2025-10-03-pictures.md", Entry);
        var photos = Directory.CreateDirectory(Path.Combine(journal.Folder, "drill", "photos")).FullName;
        using var picture = new Image<Rgb24>(40, 30, new Rgb24(90, 60, 30));
        picture.SaveAsPng(Path.Combine(photos, "whole.png"));
        File.WriteAllBytes(Path.Combine(photos, "cut.png"), File.ReadAllBytes(Path.Combine(photos, "whole.png"))[..^20]);
        picture.Metadata.ExifProfile = new ExifProfile();
        picture.Metadata.ExifProfile.SetValue(ExifTag.Orientation, (ushort)6);
        picture.SaveAsJpeg(Path.Combine(photos, "exif.jpg"));
        DamageExif(Path.Combine(photos, "exif.jpg"));
        var to = Directory.CreateTempSubdirectory("damaged-").FullName;
        try
        {
            var answer = journal.Ask("publish", "--to", Path.Combine(to, "site"));

            Assert.Equal(1, answer.Status);
            var complaint = string.Join(' ', answer.Error.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
            Assert.Contains("drill/photos/cut.png 1:1", complaint, StringComparison.Ordinal);
            Assert.Contains("its end is missing", complaint, StringComparison.Ordinal);
            Assert.Contains("drill/photos/exif.jpg 1:1", complaint, StringComparison.Ordinal);
            Assert.Contains("it is damaged or cut off.", complaint, StringComparison.Ordinal);
            Assert.DoesNotContain("fault is in this program", complaint, StringComparison.Ordinal);
            var page = File.ReadAllText(Path.Combine(to, "site", "drill", "entry", "2025-10-03-pictures.html"));
            Assert.Contains("alt=\"Whole\"", page, StringComparison.Ordinal);
            Assert.DoesNotContain("alt=\"Cut off\"", page, StringComparison.Ordinal);
            Assert.True(File.Exists(Path.Combine(to, "site", "drill", "entry", "2025-09-06-head.html")));
        }
        finally
        {
            Directory.Delete(to, recursive: true);
        }
    }

    // Exif 2.31: a TIFF of its own, with 12 bytes to an entry; the count of the first says more than there is.
    private static void DamageExif(string path)
    {
        var jpeg = File.ReadAllBytes(path);
        var table = jpeg.AsSpan().IndexOf("Exif\0\0"u8) + 6 + 8 + 2;
        jpeg.AsSpan(table + 4, 4).Fill(0xFF);
        File.WriteAllBytes(path, jpeg);
    }
}
