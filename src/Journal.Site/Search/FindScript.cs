using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Journal.Site.Search;

/// <summary>Writes classic scripts that call one function with one object.</summary>
internal static class FindScript
{
    private static readonly JsonWriterOptions Format = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>A script in UTF-8.</summary>
    /// <param name="call">The function.</param>
    /// <param name="write">Writes the object.</param>
    public static ReadOnlySpan<byte> Write(string call, Action<Utf8JsonWriter> write)
    {
        var bytes = new ArrayBufferWriter<byte>();
        Encoding.UTF8.GetBytes(call + "(", bytes);
        using (var json = new Utf8JsonWriter(bytes, Format))
        {
            write(json);
        }

        bytes.Write(");\n"u8);
        return bytes.WrittenSpan;
    }
}
