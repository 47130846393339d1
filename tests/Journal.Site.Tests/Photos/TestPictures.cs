using System.Buffers.Binary;
using System.Text;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats.Jpeg;
using SixLabors.ImageSharp.Metadata.Profiles.Exif;
using SixLabors.ImageSharp.Metadata.Profiles.Icc;
using SixLabors.ImageSharp.Metadata.Profiles.Iptc;
using SixLabors.ImageSharp.PixelFormats;

namespace Journal.Site.Tests.Photos;

/// <summary>Pictures made for tests.</summary>
internal static class TestPictures
{
    /// <summary>A picture of soft shapes with edges, the same for the same size.</summary>
    public static Image<Rgb24> Scene(int width, int height)
    {
        var image = new Image<Rgb24>(width, height);
        image.ProcessPixelRows(rows =>
        {
            for (var y = 0; y < rows.Height; y++)
            {
                var row = rows.GetRowSpan(y);
                for (var x = 0; x < row.Length; x++)
                {
                    var (u, v) = ((double)x / width, (double)y / height);
                    var wave = 0.5 + (0.5 * Math.Sin((u * 24) + (v * 9)) * Math.Cos(v * 17));
                    var isDisc = Math.Pow(u - 0.6, 2) + Math.Pow(v - 0.4, 2) < 0.04;
                    row[x] = isDisc ? new Rgb24(210, 170, 60) : new Rgb24((byte)(60 + (120 * wave)), (byte)(70 + (90 * u)), (byte)(90 + (100 * v)));
                }
            }
        });
        return image;
    }

    /// <summary>Four corners of four colours: red, green, blue and white, from the upper left as in reading.</summary>
    public static Image<Rgb24> Corners(int width, int height)
    {
        var image = new Image<Rgb24>(width, height);
        image.ProcessPixelRows(rows =>
        {
            for (var y = 0; y < rows.Height; y++)
            {
                var row = rows.GetRowSpan(y);
                for (var x = 0; x < row.Length; x++)
                {
                    row[x] = (x < width / 2, y < height / 2) switch
                    {
                        (true, true) => new Rgb24(255, 0, 0),
                        (false, true) => new Rgb24(0, 255, 0),
                        (true, false) => new Rgb24(0, 0, 255),
                        _ => new Rgb24(255, 255, 255),
                    };
                }
            }
        });
        return image;
    }

    public static byte[] Jpeg(Image image, int quality = 92)
    {
        using var bytes = new MemoryStream();
        image.SaveAsJpeg(bytes, new JpegEncoder { Quality = quality });
        return bytes.ToArray();
    }

    public static byte[] Png(Image image)
    {
        using var bytes = new MemoryStream();
        image.SaveAsPng(bytes);
        return bytes.ToArray();
    }

    /// <summary>A JPEG that tells everything about its maker that a phone can tell.</summary>
    public static byte[] Talkative()
    {
        using var image = Scene(900, 600);
        var exif = new ExifProfile();
        exif.SetValue(ExifTag.Make, "MARKER-MAKE");
        exif.SetValue(ExifTag.Model, "MARKER-MODEL");
        exif.SetValue(ExifTag.Software, "MARKER-SOFTWARE");
        exif.SetValue(ExifTag.Artist, "MARKER-ARTIST");
        exif.SetValue(ExifTag.Copyright, "MARKER-COPYRIGHT");
        exif.SetValue(ExifTag.OwnerName, "MARKER-OWNER");
        exif.SetValue(ExifTag.SerialNumber, "MARKER-SERIAL");
        exif.SetValue(ExifTag.LensSerialNumber, "MARKER-LENS");
        exif.SetValue(ExifTag.DateTimeOriginal, "2025:10:03 21:14:55");
        exif.SetValue(ExifTag.UserComment, "MARKER-COMMENT");
        exif.SetValue(ExifTag.GPSLatitudeRef, "N");
        exif.SetValue(ExifTag.GPSLatitude, [new Rational(50, 1), new Rational(3, 1), new Rational(7, 1)]);
        exif.SetValue(ExifTag.GPSLongitudeRef, "W");
        exif.SetValue(ExifTag.GPSLongitude, [new Rational(20, 1), new Rational(1, 1), new Rational(2, 1)]);
        image.Metadata.ExifProfile = exif;
        image.Metadata.IptcProfile = new IptcProfile();
        image.Metadata.IptcProfile.SetValue(IptcTag.City, "MARKER-CITY");
        image.Metadata.XmpProfile = new SixLabors.ImageSharp.Metadata.Profiles.Xmp.XmpProfile(
            Encoding.UTF8.GetBytes("<x:xmpmeta xmlns:x='adobe:ns:meta/'><rdf:RDF xmlns:rdf='http://www.w3.org/1999/02/22-rdf-syntax-ns#'><rdf:Description rdf:about='MARKER-XMP'/></rdf:RDF></x:xmpmeta>"));
        var jpeg = Jpeg(image);

        // A comment segment behind the start of the image, and a thumbnail's worth of bytes behind its end.
        var comment = Encoding.ASCII.GetBytes("MARKER-SEGMENT");
        byte[] segment = [0xFF, 0xFE, 0, (byte)(comment.Length + 2), .. comment];
        return [.. jpeg[..2], .. segment, .. jpeg[2..], .. Encoding.ASCII.GetBytes("MARKER-TRAILER")];
    }

    /// <summary>
    /// A small profile of RGB: header and one tag, by ICC.1:2010, 7.2 and 7.3. The colours it describes do not matter here.
    /// </summary>
    public static byte[] Profile()
    {
        const int tagStart = 128 + 4 + 12;
        var text = "copyright"u8;
        var tagLength = 8 + text.Length + 1;
        var profile = new byte[tagStart + tagLength + ((4 - (tagLength % 4)) % 4)];
        BinaryPrimitives.WriteUInt32BigEndian(profile, (uint)profile.Length);
        BinaryPrimitives.WriteUInt32BigEndian(profile.AsSpan(8), 0x02400000);
        "mntr"u8.CopyTo(profile.AsSpan(12));
        "RGB "u8.CopyTo(profile.AsSpan(16));
        "XYZ "u8.CopyTo(profile.AsSpan(20));
        BinaryPrimitives.WriteUInt16BigEndian(profile.AsSpan(24), 2025);
        BinaryPrimitives.WriteUInt16BigEndian(profile.AsSpan(26), 1);
        BinaryPrimitives.WriteUInt16BigEndian(profile.AsSpan(28), 1);
        "acsp"u8.CopyTo(profile.AsSpan(36));
        BinaryPrimitives.WriteUInt32BigEndian(profile.AsSpan(68), 0x0000F6D6);
        BinaryPrimitives.WriteUInt32BigEndian(profile.AsSpan(72), 0x00010000);
        BinaryPrimitives.WriteUInt32BigEndian(profile.AsSpan(76), 0x0000D32D);
        BinaryPrimitives.WriteUInt32BigEndian(profile.AsSpan(128), 1);
        "cprt"u8.CopyTo(profile.AsSpan(132));
        BinaryPrimitives.WriteUInt32BigEndian(profile.AsSpan(136), tagStart);
        BinaryPrimitives.WriteUInt32BigEndian(profile.AsSpan(140), (uint)tagLength);
        "text"u8.CopyTo(profile.AsSpan(tagStart));
        text.CopyTo(profile.AsSpan(tagStart + 8));
        return profile;
    }

    public static byte[] WithProfile(byte[] profile)
    {
        using var image = Scene(640, 480);
        image.Metadata.IccProfile = new IccProfile(profile);
        return Jpeg(image);
    }
}
