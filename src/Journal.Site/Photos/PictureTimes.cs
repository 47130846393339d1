using System.Globalization;
using Journal.Core.Writing.Bench;
using Journal.Core.Writing.Pictures;
using SixLabors.ImageSharp.Metadata;
using SixLabors.ImageSharp.Metadata.Profiles.Exif;

namespace Journal.Site.Photos;

/// <summary>When a picture was taken: from the picture itself, else from its file.</summary>
public static class PictureTimes
{
    private const int FirstDigitalYear = 1990;

    /// <summary>
    /// The time in the picture (<c>DateTimeOriginal</c>, with <c>OffsetTimeOriginal</c> where it is given; tags 36867
    /// and 36881 of Exif 2.31, from memory), else the time of the file. Only the header is read.
    /// </summary>
    public static TakenPicture Of(string path, BenchClock clock)
    {
        var about = About(path);
        return (InPicture(about?.ExifProfile, clock) is { } taken
            ? new TakenPicture(path, taken, IsFileTime: false)
            : new TakenPicture(path, clock.Local(File.GetLastWriteTimeUtc(path)), IsFileTime: true)) with { Caption = PictureCaption.Of(about) };
    }

    private static ImageMetadata? About(string path)
    {
        try
        {
            using var stream = File.OpenRead(path);
            return PictureReader.About(stream);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or PictureRefusedException)
        {
            // Then it does not say.
            return null;
        }
    }

    private static DateTime? InPicture(ExifProfile? exif, BenchClock clock)
    {
        if (exif is null || Time(exif) is not { } local)
        {
            return null;
        }

        return Offset(exif) is { } offset ? clock.Local(new DateTimeOffset(local, offset)) : local;
    }

    private static DateTime? Time(ExifProfile exif) =>
        DateTime.TryParseExact(exif.GetValue(ExifTag.DateTimeOriginal)?.Value?.Trim('\0', ' '), "yyyy:MM:dd HH:mm:ss", CultureInfo.InvariantCulture, DateTimeStyles.None, out var time)
        && time.Year >= FirstDigitalYear ? time : null;

    private static TimeSpan? Offset(ExifProfile exif)
    {
        var text = exif.GetValue(ExifTag.OffsetTimeOriginal)?.Value?.Trim('\0', ' ') ?? "";
        return TimeSpan.TryParseExact(text.TrimStart('+', '-'), "hh\\:mm", CultureInfo.InvariantCulture, out var offset) && text.Length == 6 && offset.TotalHours <= 14
            ? text[0] == '-' ? -offset : offset
            : null;
    }
}
