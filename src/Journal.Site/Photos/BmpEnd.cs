using System.Buffers.Binary;

namespace Journal.Site.Photos;

/// <summary>
/// Tells whether a BMP is there to its end (Microsoft, Windows GDI, “Bitmap storage” and “Bitmap compression”, from memory): a row
/// of whole words for each row of the picture, or, where it is run-length coded, the mark that ends it.
/// </summary>
internal static class BmpEnd
{
    private const int FileHeader = 14;
    private const int CoreHeader = 12;
    private const int LastField = FileHeader + 20;

    /// <summary>Whether the bytes begin as a BMP whose pixels are not all there.</summary>
    public static bool IsMissing(ReadOnlySpan<byte> bytes)
    {
        if (!bytes.StartsWith("BM"u8))
        {
            return false;
        }

        if (bytes.Length < LastField)
        {
            return true;
        }

        var first = BinaryPrimitives.ReadUInt32LittleEndian(bytes[10..]);
        var (width, height, bits, compression) = BinaryPrimitives.ReadUInt32LittleEndian(bytes[FileHeader..]) == CoreHeader
            ? (BinaryPrimitives.ReadUInt16LittleEndian(bytes[18..]), BinaryPrimitives.ReadUInt16LittleEndian(bytes[20..]), BinaryPrimitives.ReadUInt16LittleEndian(bytes[24..]), 0u)
            : (BinaryPrimitives.ReadInt32LittleEndian(bytes[18..]), BinaryPrimitives.ReadInt32LittleEndian(bytes[22..]), BinaryPrimitives.ReadUInt16LittleEndian(bytes[28..]), BinaryPrimitives.ReadUInt32LittleEndian(bytes[30..]));
        return first > bytes.Length || (compression is 1 or 2
            ? !RunsEnd(bytes[(int)first..], nibbles: compression == 2)
            : first + (((long)width * bits) + 31) / 32 * 4 * Math.Abs((long)height) > bytes.Length);
    }

    // Pairs of a count and a colour; behind a count of 0: end of row, end of picture, a step of two bytes, or so many colours as they are.
    private static bool RunsEnd(ReadOnlySpan<byte> runs, bool nibbles)
    {
        for (var at = 0; at + 1 < runs.Length;)
        {
            var (count, second) = (runs[at], runs[at + 1]);
            if (count == 0 && second == 1)
            {
                return true;
            }

            at += (count, second) switch
            {
                (0, 2) => 4,
                (0, > 2) => 2 + (((nibbles ? (second + 1) / 2 : second) + 1) / 2 * 2),
                _ => 2,
            };
        }

        return false;
    }
}
