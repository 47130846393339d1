using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats.Bmp;
using SixLabors.ImageSharp.Formats.Gif;
using SixLabors.ImageSharp.Formats.Jpeg;
using SixLabors.ImageSharp.Formats.Png;
using SixLabors.ImageSharp.Formats.Tiff;
using SixLabors.ImageSharp.Formats.Webp;
using SixLabors.ImageSharp.Memory;
using SixLabors.ImageSharp.Metadata;

namespace Journal.Site.Photos;

/// <summary>
/// Opens a picture with bounds: the header is read first, what is too large or lies about its size is refused before
/// its pixels are, only the first frame of several is decoded, and no single allocation may pass a limit.
/// </summary>
internal static class PictureReader
{
    /// <summary>More than any camera of a workshop; a progressive JPEG of this size takes 600 MB to decode.</summary>
    private const long MostPixels = 100_000_000;

    private const int LongestSide = 30_000;
    private const int LargestAllocationMegabytes = 512;

    private static readonly Configuration Bounded = CreateConfiguration();

    /// <summary>Width and height in pixels as the header gives them.</summary>
    /// <exception cref="PictureRefusedException">It is no picture that is read, or too large.</exception>
    public static Size Measure(byte[] bytes)
    {
        bytes = PngTexts.Bounded(bytes);
        var header = Guard(() => Image.Identify(Bounded, new MemoryStream(bytes, writable: false))) ?? throw new PictureRefusedException(WhyNotKnown(bytes));
        if (header.Width < 1 || header.Height < 1)
        {
            throw new PictureRefusedException("its header gives no size.");
        }

        if ((long)header.Width * header.Height > MostPixels || header.Width > LongestSide || header.Height > LongestSide)
        {
            throw new PictureRefusedException("it has more than 100 megapixels, or a side of more than 30,000.");
        }

        return new Size(header.Width, header.Height);
    }

    /// <summary>What a picture's header says of it; of a PNG all is read, for its texts may stand anywhere.</summary>
    /// <exception cref="PictureRefusedException">It is no picture that is read.</exception>
    public static ImageMetadata About(Stream picture)
    {
        var start = new byte[PngTexts.Signature.Length];
        picture.ReadAtLeast(start, start.Length, throwOnEndOfStream: false);
        picture.Position = 0;
        if (start.AsSpan().SequenceEqual(PngTexts.Signature))
        {
            if (picture.Length > LargestAllocationMegabytes * 1024L * 1024)
            {
                throw new PictureRefusedException("it is too large.");
            }

            var bytes = new byte[picture.Length];
            picture.ReadExactly(bytes);
            picture = new MemoryStream(PngTexts.Bounded(bytes), writable: false);
        }

        return Guard(() => Image.Identify(Bounded, picture))?.Metadata ?? throw new PictureRefusedException(WhyNotKnown(start));
    }

    /// <summary>The pixels.</summary>
    /// <exception cref="PictureRefusedException">They cannot be read.</exception>
    public static Image Open(byte[] bytes)
    {
        if (JpegEnd.IsMissing(bytes))
        {
            throw new PictureRefusedException("its end is missing: copy it again from the camera.");
        }

        bytes = PngTexts.Bounded(bytes);
        var expected = Measure(bytes);
        var image = Guard(() => Image.Load(Bounded, bytes));
        if (image.Width != expected.Width || image.Height != expected.Height)
        {
            image.Dispose();
            throw new PictureRefusedException("its header gives the wrong size.");
        }

        return image;
    }

    // The decoders throw many kinds of exception at damaged or crafted files; each means the same to the maker.
    private static T Guard<T>(Func<T> read)
    {
        try
        {
            return read();
        }
        catch (Exception e) when (e is ImageFormatException or InvalidImageContentException or InvalidMemoryOperationException or ArgumentException or NotSupportedException
            or InvalidOperationException or IndexOutOfRangeException or OverflowException or NullReferenceException or IOException or OutOfMemoryException
            or NotImplementedException or ArithmeticException or InvalidCastException or KeyNotFoundException)
        {
            throw new PictureRefusedException("it is damaged or cut off.", e);
        }
    }

    private static string WhyNotKnown(ReadOnlySpan<byte> bytes)
    {
        if (bytes.IsEmpty)
        {
            return "it is empty.";
        }

        // ISO/IEC 14496-12: the brand stands behind the box type at offset 8.
        if (bytes.Length > 12 && bytes[4..8].SequenceEqual("ftyp"u8) && (bytes[8..12].SequenceEqual("heic"u8) || bytes[8..12].SequenceEqual("mif1"u8) || bytes[8..12].SequenceEqual("heix"u8)))
        {
            return "it is a HEIC file with another extension; export it from the phone as JPEG.";
        }

        return "it is not a JPEG, PNG, WebP, GIF, BMP or TIFF file, whatever its name says.";
    }

    private static Configuration CreateConfiguration()
    {
        var configuration = new Configuration(
            new JpegConfigurationModule(), new PngConfigurationModule(), new GifConfigurationModule(), new BmpConfigurationModule(), new TiffConfigurationModule(), new WebpConfigurationModule())
        {
            MemoryAllocator = MemoryAllocator.Create(new MemoryAllocatorOptions { AllocationLimitMegabytes = LargestAllocationMegabytes, MaximumPoolSizeMegabytes = 128 }),
            MaxDegreeOfParallelism = 1,
        };
        configuration.ImageFormatsManager.SetDecoder(GifFormat.Instance, new GifDecoder { DecodingMode = FrameDecodingMode.First });
        configuration.ImageFormatsManager.SetDecoder(TiffFormat.Instance, new TiffDecoder { DecodingMode = FrameDecodingMode.First });
        return configuration;
    }
}
