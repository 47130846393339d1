using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Journal.Site.Search;

/// <summary>Takes a script, which is good until it returns.</summary>
/// <param name="address">Where it goes, from the root of the site.</param>
/// <param name="script">The script in UTF-8.</param>
internal delegate void TakeScript(string address, ReadOnlySpan<byte> script);

/// <summary>Writes classic scripts that call one function with one object, one after the other into the same memory.</summary>
internal sealed class FindScript
{
    private static readonly JsonWriterOptions Format = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private readonly ArrayBufferWriter<byte> bytes = new();

    /// <summary>A script; good until the next is written.</summary>
    /// <param name="call">The function.</param>
    /// <param name="write">Writes the object.</param>
    public ReadOnlySpan<byte> Write(string call, Action<Utf8JsonWriter> write)
    {
        bytes.ResetWrittenCount();
        Encoding.UTF8.GetBytes(call + "(", bytes);
        using (var json = new Utf8JsonWriter(bytes, Format))
        {
            write(json);
        }

        bytes.Write(");\n"u8);
        return bytes.WrittenSpan;
    }
}
