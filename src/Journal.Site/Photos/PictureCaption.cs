using SixLabors.ImageSharp.Metadata;
using SixLabors.ImageSharp.Metadata.Profiles.Exif;
using SixLabors.ImageSharp.Metadata.Profiles.Iptc;

namespace Journal.Site.Photos;

/// <summary>
/// The words that a picture brings along: <c>Caption/Abstract</c> of IPTC-IIM (2:120), else <c>ImageDescription</c> of Exif (tag 270);
/// both from memory.
/// </summary>
internal static class PictureCaption
{
    private const int Longest = 300;

    /// <summary>The words on one line; null where there are none.</summary>
    public static string? Of(ImageMetadata? about) =>
        OneLine(about?.IptcProfile?.GetValues(IptcTag.Caption).FirstOrDefault()?.Value) ?? OneLine(about?.ExifProfile?.GetValue(ExifTag.ImageDescription)?.Value);

    private static string? OneLine(string? text)
    {
        var line = string.Join(' ', new string([.. (text ?? "").Select(letter => char.IsControl(letter) ? ' ' : letter)]).Split(' ', StringSplitOptions.RemoveEmptyEntries));
        return line.Length is 0 or > Longest || line.Contains('\uFFFD', StringComparison.Ordinal) ? null : line;
    }
}
