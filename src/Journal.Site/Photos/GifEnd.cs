namespace Journal.Site.Photos;

/// <summary>
/// Tells whether the first picture of a GIF is there to its end (GIF89a, 1990: 15, 18, 20, 22): block by block to the empty
/// one behind its pixels. Further pictures are not shown, and may be missing.
/// </summary>
internal static class GifEnd
{
    private const int HeaderAndScreen = 13;
    private const int Descriptor = 10;
    private const byte Extension = 0x21;
    private const byte Image = 0x2C;

    /// <summary>Whether the bytes begin as a GIF whose first picture has no end.</summary>
    public static bool IsMissing(ReadOnlySpan<byte> bytes)
    {
        if (!bytes.StartsWith("GIF8"u8))
        {
            return false;
        }

        for (var at = bytes.Length < HeaderAndScreen ? bytes.Length : HeaderAndScreen + ColourTable(bytes[10]); at < bytes.Length;)
        {
            switch (bytes[at])
            {
                case Extension:
                    at = BehindBlocks(bytes, at + 2);
                    break;
                case Image when at + Descriptor < bytes.Length:
                    return BehindBlocks(bytes, at + Descriptor + ColourTable(bytes[at + 9]) + 1) > bytes.Length;
                case Image:
                    return true;
                default:
                    // Nothing that the format knows: the decoder says so.
                    return false;
            }
        }

        return true;
    }

    // Three bytes for each of 2 to 256 colours, where the first bit says that there is a table.
    private static int ColourTable(byte flags) => (flags & 0x80) == 0 ? 0 : 3 << ((flags & 7) + 1);

    // Blocks of up to 255 bytes, each behind its length; the last is empty. Beyond all bytes where that one is missing.
    private static int BehindBlocks(ReadOnlySpan<byte> bytes, int at)
    {
        while (at < bytes.Length && bytes[at] != 0)
        {
            at += 1 + bytes[at];
        }

        return at < bytes.Length ? at + 1 : int.MaxValue;
    }
}
