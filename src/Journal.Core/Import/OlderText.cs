using System.Text;
using Journal.Core.Writing.Files;

namespace Journal.Core.Import;

/// <summary>The text of an older file: UTF-8, with a byte-order mark or without, or UTF-16 with one.</summary>
public static class OlderText
{
    private static readonly Encoding Strict = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>A file's bytes; none of pipes and devices.</summary>
    public static byte[] BytesOf(string path) => BehindLinks.HasContents(path) ? File.ReadAllBytes(path) : [];

    /// <summary>The text; null where the bytes are none.</summary>
    public static string? Of(ReadOnlySpan<byte> bytes)
    {
        try
        {
            var text = bytes.StartsWith(Encoding.Unicode.Preamble) ? Encoding.Unicode.GetString(bytes[2..])
                : bytes.StartsWith(Encoding.BigEndianUnicode.Preamble) ? Encoding.BigEndianUnicode.GetString(bytes[2..])
                : Strict.GetString(WithoutMark(bytes));
            return text.Contains('\0', StringComparison.Ordinal) ? null : text;
        }
        catch (DecoderFallbackException)
        {
            return null;
        }
    }

    /// <summary>UTF-8 bytes without the byte-order mark, which stands for no letter.</summary>
    public static ReadOnlySpan<byte> WithoutMark(ReadOnlySpan<byte> bytes) => bytes.StartsWith(Encoding.UTF8.Preamble) ? bytes[3..] : bytes;
}
