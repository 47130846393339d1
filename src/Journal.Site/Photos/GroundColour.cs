using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;
using SixLabors.ImageSharp.Processing;

namespace Journal.Site.Photos;

/// <summary>The colour that most of a picture has: the mean of the fullest of 512 boxes of colour, on a small copy.</summary>
internal static class GroundColour
{
    private const int Side = 24;

    /// <summary>The colour as <c>#rrggbb</c>.</summary>
    public static string Of(Image image)
    {
        using var small = image.CloneAs<Rgba32>();
        small.Mutate(picture => picture.Resize(Side, Side));
        var boxes = new Dictionary<int, (int Count, int R, int G, int B)>();
        small.ProcessPixelRows(rows =>
        {
            for (var y = 0; y < rows.Height; y++)
            {
                foreach (var pixel in rows.GetRowSpan(y))
                {
                    var box = (pixel.R >> 5 << 6) | (pixel.G >> 5 << 3) | (pixel.B >> 5);
                    var (count, r, g, b) = boxes.GetValueOrDefault(box);
                    boxes[box] = (count + 1, r + pixel.R, g + pixel.G, b + pixel.B);
                }
            }
        });
        var fullest = boxes.OrderByDescending(box => box.Value.Count).ThenBy(box => box.Key).First().Value;
        return $"#{fullest.R / fullest.Count:x2}{fullest.G / fullest.Count:x2}{fullest.B / fullest.Count:x2}";
    }
}
