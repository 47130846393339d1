using System.Globalization;
using Journal.Core.Writing.Bench;
using Journal.Core.Writing.Pictures;
using SixLabors.ImageSharp.Metadata.Profiles.Exif;

namespace Journal.Site.Photos;

/// <summary>When a picture was taken: from the picture itself, else from its file.</summary>
public static class PictureTimes
{
    private const int FirstDigitalYear = 1990;

    /// <summary>More than a camera writes: such a file is not opened.</summary>
    private const long LargestFile = 200 * 1024 * 1024;

    /// <summary>
    /// The time in the picture (<c>DateTimeOriginal</c>, with <c>OffsetTimeOriginal</c> where it is given; tags 36867
    /// and 36881 of Exif 2.31, from memory), else the time of the file. What is wrong with a picture is told with it.
    /// </summary>
    public static TakenPicture Of(string path, BenchClock clock)
    {
        var ofFile = new TakenPicture(path, clock.Local(File.GetLastWriteTimeUtc(path)), IsFileTime: true);
        try
        {
            var (taken, caption) = InPicture(path, clock);
            return (taken is { } time ? new TakenPicture(path, time, IsFileTime: false) : ofFile) with { Caption = caption };
        }
        catch (PictureRefusedException e)
        {
            return ofFile with { Fault = e.Message };
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // Then it does not say; whoever copies it will be told why.
            return ofFile;
        }
    }

    private static (DateTime? Taken, string? Caption) InPicture(string path, BenchClock clock)
    {
        if (new FileInfo(path).Length > LargestFile)
        {
            throw new PictureRefusedException("the file is larger than 200 MiB.");
        }

        var about = PictureReader.About(File.ReadAllBytes(path));
        return PictureReader.Guard(() => (InExif(about.ExifProfile, clock), PictureCaption.Of(about)));
    }

    private static DateTime? InExif(ExifProfile? exif, BenchClock clock) =>
        exif is null || Time(exif) is not { } local ? null
            : Offset(exif) is { } offset ? clock.Local(new DateTimeOffset(local, offset))
            : local;

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
