using System.Buffers.Binary;
using System.IO.Compression;

namespace Journal.Site.Photos;

/// <summary>
/// Tells whether a PNG is there to its end (PNG, third edition, W3C 2025): chunk by chunk to IEND, each of a length that the file
/// has room for, those that the picture needs with the checksum they were written with (5.3, 5.5), and pixels for every row.
/// The decoder makes black of what is missing, or waits for it for ever.
/// </summary>
internal static class PngEnd
{
    private const int LengthAndType = 8;
    private const int Checksum = 4;

    /// <summary>Where the data of IHDR begin, which stands first (5.6): the signature's eight bytes and its own length and type.</summary>
    private const int Header = 16;

    // Polynomial of 5.5, a byte at a time.
    private static readonly uint[] Table = [.. Enumerable.Range(0, 256).Select(value => Enumerable.Range(0, 8).Aggregate((uint)value, (crc, _) => (crc & 1) == 1 ? 0xEDB88320 ^ (crc >> 1) : crc >> 1))];

    // The seven passes of an interlaced picture (8.1): first column and row, and the steps between columns and rows.
    private static readonly (int X, int Y, int Across, int Down)[] Passes = [(0, 0, 8, 8), (4, 0, 8, 8), (0, 4, 4, 8), (2, 0, 4, 4), (0, 2, 2, 4), (1, 0, 2, 2), (0, 1, 1, 2)];

    /// <summary>Whether the bytes begin as a PNG and its chunks do not lead to IEND.</summary>
    public static bool IsMissing(byte[] bytes)
    {
        if (!bytes.AsSpan().StartsWith(PngTexts.Signature))
        {
            return false;
        }

        for (var at = PngTexts.Signature.Length; LengthOf(bytes, at) is { } length; at += LengthAndType + length + Checksum)
        {
            var type = bytes.AsSpan(at + Checksum, 4);
            if (type.SequenceEqual("IHDR"u8) != (at == PngTexts.Signature.Length) || (IsCritical(type) && !Fits(bytes.AsSpan(at + Checksum, 4 + length), bytes.AsSpan(at + LengthAndType + length))))
            {
                return true;
            }

            if (type.SequenceEqual("IEND"u8))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Whether the pixels of a PNG end before its last row does. Unpacks them, and no more than its header announces.</summary>
    /// <exception cref="InvalidDataException">They are packed in no way that can be unpacked.</exception>
    public static bool LacksPixels(byte[] bytes)
    {
        if (!bytes.AsSpan().StartsWith(PngTexts.Signature) || bytes.Length < Header + 13)
        {
            return false;
        }

        var missing = BytesOfPixels(bytes.AsSpan(Header));
        using var unpacked = new ZLibStream(Packed(bytes), CompressionMode.Decompress);
        var buffer = new byte[64 * 1024];
        while (missing > 0 && unpacked.Read(buffer) is > 0 and var count)
        {
            missing -= count;
        }

        return missing > 0;
    }

    /// <summary>Whether some pass of an interlaced PNG has no column. The decoder loses its place then, and may look for it for ever.</summary>
    public static bool IsNarrowInterlaced(ReadOnlySpan<byte> bytes) =>
        bytes.StartsWith(PngTexts.Signature) && bytes.Length >= Header + 13 && bytes[Header + 12] != 0 && BinaryPrimitives.ReadUInt32BigEndian(bytes[Header..]) < 5;

    // Null where the file has no room for it; a length has 31 bits (7.1).
    private static int? LengthOf(byte[] bytes, int at) =>
        at + LengthAndType + Checksum <= bytes.Length && BinaryPrimitives.ReadUInt32BigEndian(bytes.AsSpan(at)) is var length && at + LengthAndType + (long)length + Checksum <= bytes.Length
            ? (int)length
            : null;

    // Its first letter is a capital (5.4). Of the others a decoder may do without any.
    private static bool IsCritical(ReadOnlySpan<byte> type) => (type[0] & 0x20) == 0;

    private static bool Fits(ReadOnlySpan<byte> typeAndData, ReadOnlySpan<byte> checksum)
    {
        var crc = uint.MaxValue;
        foreach (var one in typeAndData)
        {
            crc = Table[(byte)(crc ^ one)] ^ (crc >> 8);
        }

        return ~crc == BinaryPrimitives.ReadUInt32BigEndian(checksum);
    }

    // Width, height, bit depth, colour type, and last the interlace method (11.2); each row of each pass begins with its filter (9.2).
    private static long BytesOfPixels(ReadOnlySpan<byte> header)
    {
        long width = BinaryPrimitives.ReadUInt32BigEndian(header);
        long height = BinaryPrimitives.ReadUInt32BigEndian(header[4..]);
        var bits = header[8] * header[9] switch { 2 => 3, 4 => 2, 6 => 4, _ => 1 };
        long Rows(long across, long down) => across == 0 ? 0 : down * (1 + (((across * bits) + 7) / 8));
        return header[12] == 0
            ? Rows(width, height)
            : Passes.Sum(pass => Rows(CountFrom(pass.X, width, pass.Across), CountFrom(pass.Y, height, pass.Down)));
    }

    private static long CountFrom(int first, long all, int step) => Math.Max(0, (all - first + step - 1) / step);

    private static MemoryStream Packed(byte[] bytes)
    {
        var packed = new MemoryStream(bytes.Length);
        for (var at = PngTexts.Signature.Length; LengthOf(bytes, at) is { } length; at += LengthAndType + length + Checksum)
        {
            if (bytes.AsSpan(at + Checksum, 4).SequenceEqual("IDAT"u8))
            {
                packed.Write(bytes, at + LengthAndType, length);
            }
        }

        packed.Position = 0;
        return packed;
    }
}
