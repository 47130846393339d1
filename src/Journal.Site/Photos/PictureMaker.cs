using System.Security.Cryptography;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats.Jpeg;
using SixLabors.ImageSharp.Formats.Webp;
using SixLabors.ImageSharp.Metadata.Profiles.Icc;
using SixLabors.ImageSharp.PixelFormats;
using SixLabors.ImageSharp.Processing;

namespace Journal.Site.Photos;

/// <summary>
/// Makes the sizes of a picture: upright, in WebP with JPEG beside it, never larger than the source. Of what camera and
/// programs wrote into the file only the colour profile is kept.
/// </summary>
internal static class PictureMaker
{
    /// <summary>The ending of the files that browsers of today load.</summary>
    public const string Modern = "webp";

    /// <summary>The ending of the files that every browser can show.</summary>
    public const string Fallback = "jpg";

    /// <summary>Makes a picture and hands over each file as it is ready.</summary>
    /// <param name="bytes">The picture as the maker's file has it.</param>
    /// <param name="settings">Widths and qualities.</param>
    /// <param name="write">Gets each file with its contents, the largest size first.</param>
    /// <param name="cancellation">Stops between two steps.</param>
    /// <returns>The picture, its files from the smallest size up.</returns>
    /// <exception cref="PictureRefusedException">It cannot be read.</exception>
    /// <exception cref="OperationCanceledException">It is not wanted any more.</exception>
    public static MadePicture Make(byte[] bytes, PictureSettings settings, Action<MadeFile, byte[]> write, CancellationToken cancellation = default)
    {
        using var image = PictureReader.Open(bytes, cancellation);
        var profile = PictureReader.Guard(() => Upright(image), cancellation);
        Strip(image);

        // From the largest down, each from the one before: a tenth of the work, and no difference to be seen.
        var widths = settings.Widths.Where(width => width < image.Width).Append(Math.Min(image.Width, settings.Widths[^1])).Distinct().OrderDescending().ToList();
        var files = new List<MadeFile>();
        var (width, height) = (0, 0);
        foreach (var next in widths)
        {
            cancellation.ThrowIfCancellationRequested();
            if (next < image.Width)
            {
                image.Mutate(picture => picture.Resize(next, 0, KnownResamplers.Lanczos3));
            }

            if (width == 0)
            {
                (width, height) = (image.Width, image.Height);
            }

            Add(next, Modern, WebpProfile.Add(Encode(image, new WebpEncoder { Quality = settings.WebpQuality, FileFormat = WebpFileFormatType.Lossy }), profile, HasAlpha(image)));
            cancellation.ThrowIfCancellationRequested();
            image.Metadata.IccProfile = profile is null ? null : new IccProfile(profile);
            Add(next, Fallback, EncodeJpeg(image, settings.JpegQuality));
            image.Metadata.IccProfile = null;
        }

        files.Reverse();
        return new MadePicture(width, height, GroundColour.Of(image), files);

        void Add(int size, string extension, byte[] content)
        {
            var file = new MadeFile(size, extension, Convert.ToHexStringLower(SHA256.HashData(content)), content.Length);
            files.Add(file);
            write(file, content);
        }
    }

    // Which way is up stands among what the camera wrote, which is read only now.
    private static byte[]? Upright(Image image)
    {
        image.Mutate(picture => picture.AutoOrient());
        return ColourProfile(image);
    }

    // Place, device, serial number, owner, thumbnails and whatever else a camera or program wrote.
    private static void Strip(Image image)
    {
        image.Metadata.ExifProfile = null;
        image.Metadata.XmpProfile = null;
        image.Metadata.IptcProfile = null;
        image.Metadata.IccProfile = null;
        foreach (var frame in image.Frames)
        {
            frame.Metadata.ExifProfile = null;
            frame.Metadata.XmpProfile = null;
            frame.Metadata.IptcProfile = null;
            frame.Metadata.IccProfile = null;
        }
    }

    // Only a profile of RGB still fits the pixels that the decoder hands out (ICC.1:2010, 7.2.6: colour space at offset 16).
    private static byte[]? ColourProfile(Image image)
    {
        try
        {
            return image.Metadata.IccProfile?.ToByteArray() is { Length: > 128 } profile && profile.AsSpan(16, 4).SequenceEqual("RGB "u8) ? profile : null;
        }
        catch (Exception e) when (e is InvalidIccProfileException or ArgumentException or InvalidOperationException or IndexOutOfRangeException)
        {
            return null;
        }
    }

    // The library leaves the pixel type's own account of it empty.
    private static bool HasAlpha(Image image) => image is not (Image<Rgb24> or Image<Rgb48> or Image<Bgr24> or Image<L8> or Image<L16>);

    private static byte[] EncodeJpeg(Image image, int quality)
    {
        var encoder = new JpegEncoder { Quality = quality, ColorType = JpegColorType.YCbCrRatio420 };
        if (!HasAlpha(image))
        {
            return Encode(image, encoder);
        }

        using var onPaper = image.Clone(picture => picture.BackgroundColor(Color.White));
        return Encode(onPaper, encoder);
    }

    private static byte[] Encode(Image image, SixLabors.ImageSharp.Formats.IImageEncoder encoder)
    {
        using var bytes = new MemoryStream();
        image.Save(bytes, encoder);
        return bytes.ToArray();
    }
}
