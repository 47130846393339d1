using System.Buffers.Binary;
using System.IO.Compression;
using Journal.Site.Photos;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats;
using SixLabors.ImageSharp.Formats.Bmp;
using SixLabors.ImageSharp.Formats.Gif;
using SixLabors.ImageSharp.Formats.Jpeg;
using SixLabors.ImageSharp.Formats.Png;
using SixLabors.ImageSharp.Formats.Tiff;
using SixLabors.ImageSharp.Formats.Tiff.Constants;
using SixLabors.ImageSharp.Formats.Webp;
using SixLabors.ImageSharp.Metadata.Profiles.Exif;
using SixLabors.ImageSharp.PixelFormats;

namespace Journal.Site.Tests.Photos;

/// <summary>Pictures that a broken copy, a bad disk or malice has damaged: each is refused as one that cannot be read, or is whole.</summary>
public class DamagedPicturesTest
{
    private static readonly Dictionary<string, IImageEncoder> Encoders = new()
    {
        ["jpeg"] = new JpegEncoder(),
        ["png"] = new PngEncoder(),
        ["png, interlaced"] = new PngEncoder { InterlaceMethod = PngInterlaceMode.Adam7 },
        ["png, palette"] = new PngEncoder { ColorType = PngColorType.Palette, BitDepth = PngBitDepth.Bit4 },
        ["png, interlaced, grey of 16 bits"] = new PngEncoder { ColorType = PngColorType.Grayscale, BitDepth = PngBitDepth.Bit16, InterlaceMethod = PngInterlaceMode.Adam7 },
        ["webp"] = new WebpEncoder { FileFormat = WebpFileFormatType.Lossy },
        ["webp, lossless"] = new WebpEncoder { FileFormat = WebpFileFormatType.Lossless },
        ["gif"] = new GifEncoder(),
        ["bmp"] = new BmpEncoder { BitsPerPixel = BmpBitsPerPixel.Pixel24 },
        ["bmp, palette"] = new BmpEncoder { BitsPerPixel = BmpBitsPerPixel.Pixel8 },
        ["tiff"] = new TiffEncoder { Compression = TiffCompression.None },
        ["tiff, deflate"] = new TiffEncoder { Compression = TiffCompression.Deflate },
        ["tiff, lzw"] = new TiffEncoder { Compression = TiffCompression.Lzw },
        ["tiff, packbits"] = new TiffEncoder { Compression = TiffCompression.PackBits },
    };

    public static TheoryData<string> Formats => [.. Encoders.Keys];

    // Half of a picture was published without a word, or waited for without end.
    [Theory]
    [MemberData(nameof(Formats))]
    public void CutOffAnywhere_IsRefusedOrWhole(string format)
    {
        var whole = Saved(format);
        var pixels = Pixels(PictureReader.Open(whole));
        for (var length = 1; length < whole.Length; length += 1 + (whole.Length / 150))
        {
            try
            {
                var read = Pixels(PictureReader.Open(whole[..length]));
                Assert.True(pixels.SequenceEqual(read), $"Of {whole.Length} bytes {length} gave another picture.");
            }
            catch (PictureRefusedException)
            {
                // As it should be.
            }
        }

        Assert.Throws<PictureRefusedException>(() => PictureReader.Open(whole[..(whole.Length * 2 / 3)]));
    }

    // Every chunk is there with its right checksum, and the pixels in them are too few (an interlaced one was waited for without end) or packed in no way.
    [Theory]
    [InlineData("png")]
    [InlineData("png, interlaced")]
    [InlineData("png, palette")]
    public void PngWhosePixelsEndEarlyOrCannotBeUnpacked_IsRefused(string format)
    {
        var whole = Saved(format);
        var (header, packed) = PngParts(whole);
        var unpacked = Unpack(packed);
        var palette = Chunk(whole, "PLTE") is { } colours ? (byte[])[.. PngChunk("PLTE", colours)] : [];
        byte[] With(byte[] data) => [.. PngTexts.Signature, .. PngChunk("IHDR", header), .. palette, .. PngChunk("IDAT", data), .. PngChunk("IEND", [])];

        using (PictureReader.Open(With(Pack(unpacked))))
        {
            Assert.Equal("its end is missing: copy it again from the camera.", Refusal(With(Pack(unpacked[..^1]))));
            Assert.Equal("its end is missing: copy it again from the camera.", Refusal(With(Pack(unpacked[..(unpacked.Length / 2)]))));
            Assert.Equal("its end is missing: copy it again from the camera.", Refusal(With(Pack([]))));
            Assert.NotNull(Refusal(With(packed[..(packed.Length / 2)])));
            packed.AsSpan(packed.Length / 2).Fill(0xA5);
            Assert.NotNull(Refusal(With(packed)));
        }
    }

    // Sizes of which some passes of an interlaced picture have no row. Where one has no column, the library goes astray.
    [Fact]
    public void InterlacedPngsOfAllSmallSizes_AreReadOrRefusedAtOnce()
    {
        for (var (width, height) = (1, 1); height < 10; (width, height) = width < 12 ? (width + 1, height) : (1, height + 1))
        {
            using var picture = TestPictures.Scene(width, height);
            var saved = Saved(picture, new PngEncoder { InterlaceMethod = PngInterlaceMode.Adam7 });
            if (width < 5)
            {
                Assert.StartsWith("it is interlaced and less than five pixels wide", Refusal(saved), StringComparison.Ordinal);
                continue;
            }

#pragma warning disable CA2000 // What is given to Pixels is disposed there.
            Assert.Equal(Pixels(picture.Clone()), Pixels(PictureReader.Open(saved)));
#pragma warning restore CA2000
        }
    }

    [Fact]
    public void PngOneBitOfWhichChanged_IsRefusedOrWhole()
    {
        var whole = Saved("png");
        var (pixels, refused) = (Pixels(PictureReader.Open(whole)), 0);
        for (var at = 8; at < whole.Length; at += 1 + (whole.Length / 200))
        {
            whole[at] ^= 0x10;
            if (Refusal(whole) is null)
            {
                Assert.Equal(pixels, Pixels(PictureReader.Open(whole)));
            }
            else
            {
                refused++;
            }

            whole[at] ^= 0x10;
        }

        Assert.InRange(refused, 150, 250);
    }

    // Run-length coded, which the library reads and does not write (8 bits a pixel: three rows, an end of row after each).
    [Fact]
    public void BmpOfRunsWithoutItsEnd_IsRefused()
    {
        var plain = Saved("bmp, palette");
        var first = (int)BinaryPrimitives.ReadUInt32LittleEndian(plain.AsSpan(10));
        byte[] runs = [5, 1, 0, 3, 7, 8, 9, 0, 0, 0, 8, 2, 0, 0, 8, 3, 0, 0, 0, 1];
        byte[] coded = [.. plain.AsSpan(0, first), .. runs];
        BinaryPrimitives.WriteInt32LittleEndian(coded.AsSpan(18), 8);
        BinaryPrimitives.WriteInt32LittleEndian(coded.AsSpan(22), 3);
        BinaryPrimitives.WriteInt32LittleEndian(coded.AsSpan(30), 1);

        Assert.Null(Refusal(coded));
        for (var length = first; length < coded.Length; length++)
        {
            Assert.Equal("its end is missing: copy it again from the camera.", Refusal(coded[..length]));
        }
    }

    // Published too: the decoder reads noughts or nothing, the reader of what the camera wrote reads it only when it is asked.
    [Fact]
    public void JpegWithDamagedExif_AnyFourBytesOfIt_IsRefusedOrMade()
    {
        using var picture = TestPictures.Scene(24, 16);
        picture.Metadata.ExifProfile = new ExifProfile();
        picture.Metadata.ExifProfile.SetValue(ExifTag.Make, "A maker of cameras");
        picture.Metadata.ExifProfile.SetValue(ExifTag.Orientation, (ushort)6);
        picture.Metadata.ExifProfile.SetValue(ExifTag.DateTimeOriginal, "2025:10:03 21:14:05");
        picture.Metadata.ExifProfile.SetValue(ExifTag.GPSLatitude, [new Rational(50, 1), new Rational(3, 1), new Rational(7, 1)]);
        var jpeg = TestPictures.Jpeg(picture);
        var exif = jpeg.AsSpan().IndexOf("Exif\0\0"u8);
        var end = exif + BinaryPrimitives.ReadUInt16BigEndian(jpeg.AsSpan(exif - 2));
        var refused = 0;
        for (var at = exif; at + 4 < end; at++)
        {
            foreach (var value in (uint[])[uint.MaxValue, 0x7FFFFFFF, 0x00FFFFFF, 0])
            {
                var damaged = (byte[])jpeg.Clone();
                BinaryPrimitives.WriteUInt32BigEndian(damaged.AsSpan(at), value);
                try
                {
                    PictureMaker.Make(damaged, PictureSettings.Usual, (_, _) => { });
                }
                catch (PictureRefusedException)
                {
                    refused++;
                }

                File.WriteAllBytes(Damaged, damaged);
                Assert.True(PictureTimes.Of(Damaged, new(TimeZoneInfo.Utc)).Taken > DateTime.MinValue);
            }
        }

        File.Delete(Damaged);
        Assert.NotEqual(0, refused);
    }

    [Fact]
    public void TiffThatCannotBeUnpacked_IsRefused()
    {
        using var picture = TestPictures.Scene(48, 40);
        var tiff = Saved(picture, new TiffEncoder { Compression = TiffCompression.Deflate });
        tiff.AsSpan(40, 60).Fill(0xA5);

        Assert.Equal("it is damaged or cut off.", Refusal(tiff));
    }

    // Their decoders would make up a hundred million pixels, for seconds.
    [Fact]
    public void HeaderThatAnnouncesMorePixelsThanSoManyBytesCanSay_IsRefused()
    {
        var webp = Saved("webp");
        BinaryPrimitives.WriteUInt16LittleEndian(webp.AsSpan(26), 16_000);
        BinaryPrimitives.WriteUInt16LittleEndian(webp.AsSpan(28), 6_000);
        var jpeg = Saved("jpeg");
        var frame = jpeg.AsSpan().IndexOf([(byte)0xFF, (byte)0xC0]);
        BinaryPrimitives.WriteUInt16BigEndian(jpeg.AsSpan(frame + 5), 16_000);
        BinaryPrimitives.WriteUInt16BigEndian(jpeg.AsSpan(frame + 7), 6_000);

        Assert.Equal("it is damaged or cut off.", Refusal(webp));
        Assert.Equal("it is damaged or cut off.", Refusal(jpeg));
    }

    // The least that these encoders need for a large picture: of one colour.
    [Theory]
    [InlineData("webp")]
    [InlineData("jpeg")]
    public void LargePictureOfOneColour_IsRead(string format)
    {
        using var plain = new Image<Rgb24>(4000, 3000, new Rgb24(128, 128, 128));
        using var read = PictureReader.Open(Saved(plain, format == "webp" ? new WebpEncoder { FileFormat = WebpFileFormatType.Lossy, Quality = 0 } : new JpegEncoder { Quality = 1 }));

        Assert.Equal(4000, read.Width);
    }

    private static string Damaged { get; } = Path.Combine(Path.GetTempPath(), $"journal-damaged-{Guid.NewGuid():N}.jpg");

    private static string? Refusal(byte[] picture)
    {
        try
        {
            using var image = PictureReader.Open(picture);
            return null;
        }
        catch (PictureRefusedException e)
        {
            return e.Message;
        }
    }

    private static byte[] Saved(string format)
    {
        using var picture = TestPictures.Scene(48, 40);
        return Saved(picture, Encoders[format]);
    }

    private static byte[] Saved(Image picture, IImageEncoder encoder)
    {
        using var bytes = new MemoryStream();
        picture.Save(bytes, encoder);
        return bytes.ToArray();
    }

    private static byte[] Pixels(Image image)
    {
        using (image)
        {
            using var plain = image.CloneAs<Rgba32>();
            var pixels = new byte[plain.Width * plain.Height * 4];
            plain.CopyPixelDataTo(pixels);
            return pixels;
        }
    }

    private static (byte[] Header, byte[] Packed) PngParts(byte[] png) => (Chunk(png, "IHDR")!, Chunk(png, "IDAT")!);

    private static byte[]? Chunk(byte[] png, string type)
    {
        for (var at = 8; at + 12 <= png.Length; at += 12 + (int)BinaryPrimitives.ReadUInt32BigEndian(png.AsSpan(at)))
        {
            if (System.Text.Encoding.ASCII.GetString(png, at + 4, 4) == type)
            {
                return png[(at + 8)..(at + 8 + (int)BinaryPrimitives.ReadUInt32BigEndian(png.AsSpan(at)))];
            }
        }

        return null;
    }

    private static byte[] PngChunk(string type, byte[] data)
    {
        byte[] typeAndData = [.. System.Text.Encoding.ASCII.GetBytes(type), .. data];
        var crc = typeAndData.Aggregate(uint.MaxValue, (before, one) => Enumerable.Range(0, 8).Aggregate(before ^ one, (now, _) => (now & 1) == 1 ? (now >> 1) ^ 0xEDB88320 : now >> 1)) ^ uint.MaxValue;
        var (length, checksum) = (new byte[4], new byte[4]);
        BinaryPrimitives.WriteUInt32BigEndian(length, (uint)data.Length);
        BinaryPrimitives.WriteUInt32BigEndian(checksum, crc);
        return [.. length, .. typeAndData, .. checksum];
    }

    private static byte[] Unpack(byte[] packed)
    {
        using var unpacked = new MemoryStream();
        using var zlib = new ZLibStream(new MemoryStream(packed), CompressionMode.Decompress);
        zlib.CopyTo(unpacked);
        return unpacked.ToArray();
    }

    private static byte[] Pack(byte[] unpacked)
    {
        using var packed = new MemoryStream();
        using (var zlib = new ZLibStream(packed, CompressionLevel.Fastest, leaveOpen: true))
        {
            zlib.Write(unpacked);
        }

        return packed.ToArray();
    }
}
