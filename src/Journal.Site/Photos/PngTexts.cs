using System.Buffers.Binary;

namespace Journal.Site.Photos;

/// <summary>
/// Leaves long texts out of a PNG before it is decoded: a compressed one may be a thousand times as long as it looks
/// (PNG, third edition, W3C 2025, 11.3.3, from memory), and the decoder unpacks every one of them.
/// </summary>
internal static class PngTexts
{
    /// <summary>What all texts of a picture may have together: room for what cameras and programs write of a picture.</summary>
    private const int MostKept = 16 * 1024;

    /// <summary>Length, type and checksum of a chunk (5.3).</summary>
    private const int AroundData = 12;

    /// <summary>How every PNG begins (5.2).</summary>
    public static ReadOnlySpan<byte> Signature => [0x89, (byte)'P', (byte)'N', (byte)'G', 0x0D, 0x0A, 0x1A, 0x0A];

    /// <summary>The same picture, with texts only as far as they are short; bytes that are no PNG as they are.</summary>
    public static byte[] Bounded(byte[] bytes)
    {
        if (!bytes.AsSpan().StartsWith(Signature))
        {
            return bytes;
        }

        var (kept, texts, from) = (new MemoryStream(), 0L, 0);
        for (var at = Signature.Length; at + AroundData <= bytes.Length;)
        {
            var length = BinaryPrimitives.ReadUInt32BigEndian(bytes.AsSpan(at)) + (long)AroundData;
            var end = (int)Math.Min(at + length, bytes.Length);
            if (IsText(bytes.AsSpan(at + 4, 4)) && (texts += length) > MostKept)
            {
                kept.Write(bytes, from, at - from);
                from = end;
            }

            at = end;
        }

        if (from == 0)
        {
            return bytes;
        }

        kept.Write(bytes, from, bytes.Length - from);
        return kept.ToArray();
    }

    private static bool IsText(ReadOnlySpan<byte> type) => type.SequenceEqual("tEXt"u8) || type.SequenceEqual("zTXt"u8) || type.SequenceEqual("iTXt"u8);
}
