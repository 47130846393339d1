using System.Buffers.Binary;

namespace Journal.Site.Photos;

/// <summary>
/// Tells whether a JPEG is there to its end (ITU-T T.81, annex B): behind the first scan stands the marker EOI. The decoder
/// makes black or grey of what is missing, as after a copy that was broken off.
/// </summary>
internal static class JpegEnd
{
    private const byte Marker = 0xFF;
    private const byte StartOfImage = 0xD8;
    private const byte EndOfImage = 0xD9;
    private const byte StartOfScan = 0xDA;

    /// <summary>Whether the bytes begin as a JPEG whose scans have no end.</summary>
    public static bool IsMissing(ReadOnlySpan<byte> bytes)
    {
        if (bytes is not [Marker, StartOfImage, ..])
        {
            return false;
        }

        // Segment by segment: a small picture within, as cameras put in, has an end of its own.
        var at = 2;
        while (at + 4 <= bytes.Length && bytes[at] == Marker && bytes[at + 1] != StartOfScan)
        {
            // Any number of fill bytes may stand before a marker (B.1.1.2).
            at += bytes[at + 1] == Marker ? 1 : 2 + BinaryPrimitives.ReadUInt16BigEndian(bytes[(at + 2)..]);
        }

        return at + 2 <= bytes.Length && bytes[at] == Marker && bytes[at + 1] == StartOfScan && bytes[(at + 2)..].IndexOf([Marker, EndOfImage]) < 0;
    }
}
