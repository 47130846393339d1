using System.Buffers.Binary;

namespace Journal.Site.Photos;

/// <summary>
/// Puts a colour profile into a WebP file, which the library leaves out when it saves: WebP Container Specification
/// (RFC 9649, 2.7), the extended format: a VP8X chunk, the ICCP chunk, then the picture's own chunks.
/// </summary>
internal static class WebpProfile
{
    private const int RiffHeader = 12;
    private const int ChunkHeader = 8;
    private const byte ProfileFlag = 0x20;
    private const byte AlphaFlag = 0x10;

    /// <summary>The file with the profile in it; as it is where there is none.</summary>
    public static byte[] Add(byte[] webp, byte[]? profile, bool hasAlpha)
    {
        if (profile is null)
        {
            return webp;
        }

        var first = webp.AsSpan(RiffHeader);
        var isExtended = first[..4].SequenceEqual("VP8X"u8);
        var flags = isExtended ? first[ChunkHeader] : hasAlpha && first[..4].SequenceEqual("VP8L"u8) ? AlphaFlag : (byte)0;
        var canvas = isExtended ? first.Slice(ChunkHeader + 4, 6).ToArray() : Canvas(first);
        var rest = isExtended ? first[(ChunkHeader + 10)..] : first;

        using var result = new MemoryStream();
        result.Write(webp.AsSpan(0, RiffHeader));
        WriteChunk(result, "VP8X"u8, [(byte)(flags | ProfileFlag), 0, 0, 0, .. canvas]);
        WriteChunk(result, "ICCP"u8, profile);
        result.Write(rest);
        var bytes = result.ToArray();
        BinaryPrimitives.WriteUInt32LittleEndian(bytes.AsSpan(4), (uint)(bytes.Length - 8));
        return bytes;
    }

    // Width and height less one, in 24 bits each.
    private static byte[] Canvas(ReadOnlySpan<byte> chunk)
    {
        var data = chunk[ChunkHeader..];
        var (width, height) = chunk[..4].SequenceEqual("VP8L"u8)
            ? ((BinaryPrimitives.ReadUInt32LittleEndian(data[1..]) & 0x3FFF) + 1, ((BinaryPrimitives.ReadUInt32LittleEndian(data[1..]) >> 14) & 0x3FFF) + 1)
            : (BinaryPrimitives.ReadUInt16LittleEndian(data[6..]) & 0x3FFFu, BinaryPrimitives.ReadUInt16LittleEndian(data[8..]) & 0x3FFFu);
        (width, height) = (width - 1, height - 1);
        return [(byte)width, (byte)(width >> 8), (byte)(width >> 16), (byte)height, (byte)(height >> 8), (byte)(height >> 16)];
    }

    private static void WriteChunk(MemoryStream to, ReadOnlySpan<byte> name, ReadOnlySpan<byte> data)
    {
        Span<byte> size = stackalloc byte[4];
        BinaryPrimitives.WriteUInt32LittleEndian(size, (uint)data.Length);
        to.Write(name);
        to.Write(size);
        to.Write(data);
        if (data.Length % 2 == 1)
        {
            to.WriteByte(0);
        }
    }
}
