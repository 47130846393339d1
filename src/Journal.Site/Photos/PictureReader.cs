using System.Collections.Concurrent;
using System.Security.Cryptography;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats;
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
/// its pixels are, only the first frame of several is decoded, no single allocation may pass a limit, and no decoding may
/// take for ever. Whatever is wrong with a picture is told as a <see cref="PictureRefusedException"/>.
/// </summary>
internal static class PictureReader
{
    /// <summary>More than any camera of a workshop; a progressive JPEG of this size takes 600 MB to decode.</summary>
    private const long MostPixels = 100_000_000;

    private const int LongestSide = 30_000;
    private const int LargestAllocationMegabytes = 512;
    private const string EndIsMissing = "its end is missing: copy it again from the camera.";

    /// <summary>Ten times what the largest picture takes on a slow machine.</summary>
    private static readonly TimeSpan LongestDecoding = TimeSpan.FromSeconds(30);

    // Those that took too long: a preview that runs all evening must not try them again at each save.
    private static readonly ConcurrentDictionary<string, bool> TooLong = new(StringComparer.Ordinal);

    private static readonly Configuration Bounded = CreateConfiguration();

    /// <summary>Width and height in pixels as the header gives them.</summary>
    /// <exception cref="PictureRefusedException">It is no picture that is read, or too large.</exception>
    public static Size Measure(byte[] bytes)
    {
        RefuseCutOff(bytes);
        bytes = PngTexts.Bounded(bytes);
        var (header, format) = Guard(() => (Image.Identify(Bounded, new MemoryStream(bytes, writable: false), out var found), found));
        if (header is null)
        {
            throw new PictureRefusedException(WhyNotKnown(bytes));
        }

        RefuseUnfit(bytes, header.Width, header.Height, format);
        return new Size(header.Width, header.Height);
    }

    /// <summary>What a picture's header says of it.</summary>
    /// <exception cref="PictureRefusedException">It is no picture that is read, or cut off.</exception>
    public static ImageMetadata About(byte[] bytes)
    {
        RefuseCutOff(bytes);
        bytes = PngTexts.Bounded(bytes);
        return Guard(() => Image.Identify(Bounded, new MemoryStream(bytes, writable: false)))?.Metadata ?? throw new PictureRefusedException(WhyNotKnown(bytes));
    }

    /// <summary>The pixels.</summary>
    /// <param name="bytes">The file.</param>
    /// <param name="cancellation">Ends the waiting for them at once.</param>
    /// <exception cref="PictureRefusedException">They cannot be read.</exception>
    /// <exception cref="OperationCanceledException">They are not wanted any more.</exception>
    public static Image Open(byte[] bytes, CancellationToken cancellation = default)
    {
        bytes = PngTexts.Bounded(bytes);
        var expected = Measure(bytes);
        if (PngEnd.IsNarrowInterlaced(bytes))
        {
            throw new PictureRefusedException("it is interlaced and less than five pixels wide. Save it without interlacing.");
        }

        if (Guard(() => PngEnd.LacksPixels(bytes), cancellation))
        {
            throw new PictureRefusedException(EndIsMissing);
        }

        var image = Decode(bytes, cancellation);
        if (image.Width != expected.Width || image.Height != expected.Height)
        {
            image.Dispose();
            throw new PictureRefusedException("its header gives the wrong size.");
        }

        return image;
    }

    /// <summary>
    /// Reads of a picture what its decoder put off until it is asked for. The decoders and the readers of what cameras write throw
    /// many kinds of exception at damaged or crafted files, of which no list is ever whole; each means the same to the maker.
    /// The bytes are in memory, so the disk has no part in it.
    /// </summary>
    /// <exception cref="PictureRefusedException">It cannot be read.</exception>
    /// <exception cref="OperationCanceledException">It is not wanted any more.</exception>
    public static T Guard<T>(Func<T> read, CancellationToken cancellation = default)
    {
        try
        {
            return BoundedWork.Run(read, LongestDecoding, cancellation);
        }
        catch (TimeoutException e)
        {
            throw new PictureRefusedException("it takes longer to read than any whole picture.", e);
        }
        catch (Exception e) when (e is not (OperationCanceledException or PictureRefusedException))
        {
            throw new PictureRefusedException("it is damaged or cut off.", e);
        }
    }

    // More pixels than any encoder can say in so many bytes are not there, and the decoder makes them up one by one for seconds.
    // A JPEG has a bit at least for each block of 8 by 8 (ITU-T T.81, F.1.2: no Huffman code is shorter), a lossy WebP one and a half
    // for each block of 16 by 16 (RFC 6386, 11.2: how it was predicted is coded with fixed probabilities).
    private static long MostPixelsIn(byte[] bytes, IImageFormat format) => format switch
    {
        JpegFormat => bytes.LongLength * 8 * 64,
        WebpFormat when WebpEnd.IsLossy(bytes) => bytes.LongLength * 8 * 256 * 2 / 3,
        _ => long.MaxValue,
    };

    private static Image Decode(byte[] bytes, CancellationToken cancellation)
    {
        if (!TooLong.IsEmpty && TooLong.ContainsKey(NameOf(bytes)))
        {
            throw new PictureRefusedException("it takes longer to read than any whole picture.");
        }

        try
        {
            return Guard(() => Image.Load(Bounded, bytes), cancellation);
        }
        catch (PictureRefusedException e) when (e.InnerException is TimeoutException)
        {
            TooLong.TryAdd(NameOf(bytes), true);
            throw;
        }
    }

    private static string NameOf(byte[] bytes) => Convert.ToHexString(SHA256.HashData(bytes));

    private static void RefuseUnfit(byte[] bytes, int width, int height, IImageFormat format)
    {
        if (width < 1 || height < 1)
        {
            throw new PictureRefusedException("its header gives it no size.");
        }

        if ((long)width * height > MostPixels || width > LongestSide || height > LongestSide)
        {
            throw new PictureRefusedException("it has more than 100 megapixels, or a side of more than 30,000.");
        }

        if (BmpEnd.IsMissing(bytes))
        {
            throw new PictureRefusedException(EndIsMissing);
        }

        if ((long)width * height > MostPixelsIn(bytes, format))
        {
            throw new PictureRefusedException("it is damaged or cut off.");
        }
    }

    private static void RefuseCutOff(byte[] bytes)
    {
        if (JpegEnd.IsMissing(bytes) || PngEnd.IsMissing(bytes) || GifEnd.IsMissing(bytes) || WebpEnd.IsMissing(bytes))
        {
            throw new PictureRefusedException(EndIsMissing);
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
