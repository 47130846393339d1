using System.Text.Encodings.Web;
using System.Text.Json;

namespace Journal.Cli.Output;

/// <summary>Figures as JSON (RFC 8259): names in camel case, absent values null, letters of all scripts as they are.</summary>
internal static class Json
{
    private static readonly JsonSerializerOptions Options = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        WriteIndented = true,
        NewLine = "\n",
        Converters = { new IdAsText(), new MinutesAsNumber() },
    };

    /// <summary>Writes a value and a line end.</summary>
    public static void Write(object value, TextWriter writer) => writer.Write(JsonSerializer.Serialize(value, Options) + "\n");
}
