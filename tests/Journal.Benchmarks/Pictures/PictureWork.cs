using System.Globalization;
using System.Text;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats.Jpeg;
using SixLabors.ImageSharp.Formats.Webp;
using SixLabors.ImageSharp.PixelFormats;
using SixLabors.ImageSharp.Processing;

namespace Journal.Benchmarks.Pictures;

/// <summary>A journal of large pictures, and what the bare library must do for them.</summary>
internal static class PictureWork
{
    private static readonly int[] Widths = [1600, 960, 480];

    /// <summary>Writes a journal of one entry with twelve pictures, six of 12 and six of 24 megapixels.</summary>
    public static void WriteJournal(string folder)
    {
        var photos = Path.Combine(folder, "drill", "photos");
        Directory.CreateDirectory(photos);
        File.WriteAllText(Path.Combine(folder, "journal.yaml"), "title: Pictures\n");
        File.WriteAllText(Path.Combine(folder, "drill", "build.yaml"), "title: Drill\n");
        var entry = new StringBuilder("---\ndate: 2025-10-03\npart: whole\noperation: filming\nhours: 1h\nphotos:\n");
        for (var i = 0; i < 12; i++)
        {
            var (width, height) = i % 2 == 0 ? (4000, 3000) : (6000, 4000);
            using var image = Scene(width, height, i);
            image.SaveAsJpeg(Path.Combine(photos, $"{i}.jpg"), new JpegEncoder { Quality = 92 });
            entry.Append(CultureInfo.InvariantCulture, $"  - {{file: photos/{i}.jpg, caption: Picture {i}}}\n");
        }

        File.WriteAllText(Path.Combine(folder, "drill", "2025-10-03.md"), entry.Append("---\nText.\n").ToString());
    }

    /// <summary>Decodes each picture, makes the three sizes one from the other, and encodes each as WebP and JPEG.</summary>
    public static void Floor(string folder) => Parallel.ForEach(
        Directory.EnumerateFiles(Path.Combine(folder, "drill", "photos")).Order(StringComparer.Ordinal),
        new ParallelOptions { MaxDegreeOfParallelism = 2 },
        path =>
        {
            using var image = Image.Load(File.ReadAllBytes(path));
            foreach (var width in Widths)
            {
                image.Mutate(picture => picture.Resize(width, 0, KnownResamplers.Lanczos3));
                using var bytes = new MemoryStream();
                image.SaveAsWebp(bytes, new WebpEncoder { Quality = 80, FileFormat = WebpFileFormatType.Lossy });
                image.SaveAsJpeg(bytes, new JpegEncoder { Quality = 82, ColorType = JpegColorType.YCbCrRatio420 });
            }
        });

    private static Image<Rgb24> Scene(int width, int height, int phase)
    {
        var image = new Image<Rgb24>(width, height);
        image.ProcessPixelRows(rows =>
        {
            for (var y = 0; y < rows.Height; y++)
            {
                var row = rows.GetRowSpan(y);
                for (var x = 0; x < row.Length; x++)
                {
                    var wave = 0.5 + (0.5 * Math.Sin((x * 0.011) + phase) * Math.Cos(y * 0.017));
                    var grain = ((x * 73) ^ (y * 151)) % 23;
                    row[x] = new Rgb24((byte)(60 + (150 * wave) + grain), (byte)(70 + (90 * wave) + grain), (byte)(90 + (110.0 * y / rows.Height) + grain));
                }
            }
        });
        return image;
    }
}
