using System.Buffers.Binary;

namespace Journal.Site.Photos;

/// <summary>
/// Tells whether a WebP is there to its end (RFC 9649, 2.4): its header gives the length of what follows. The decoder reads
/// noughts for what is missing.
/// </summary>
internal static class WebpEnd
{
    private const int BeforeLength = 8;
    private const int FirstChunk = 12;

    /// <summary>Whether the bytes begin as a WebP that is longer than they are.</summary>
    public static bool IsMissing(ReadOnlySpan<byte> bytes) =>
        bytes.Length >= FirstChunk && bytes.StartsWith("RIFF"u8) && bytes[8..FirstChunk].SequenceEqual("WEBP"u8) && BinaryPrimitives.ReadUInt32LittleEndian(bytes[4..]) > bytes.Length - BeforeLength;

    /// <summary>Whether a whole WebP has its pixels in a chunk of the lossy kind (2.5); such a chunk may stand behind others (2.7).</summary>
    public static bool IsLossy(ReadOnlySpan<byte> bytes)
    {
        for (var at = (long)FirstChunk; at + 8 <= bytes.Length;)
        {
            var chunk = bytes[(int)at..];
            if (chunk.StartsWith("VP8 "u8))
            {
                return true;
            }

            var length = BinaryPrimitives.ReadUInt32LittleEndian(chunk[4..]);
            at += 8 + length + (length % 2);
        }

        return false;
    }
}
