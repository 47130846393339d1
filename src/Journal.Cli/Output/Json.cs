using System.Collections;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Reflection;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Journal.Core.Model;

namespace Journal.Cli.Output;

/// <summary>
/// Figures as JSON (RFC 8259): names in camel case, absent values null, letters of all scripts as they are; minutes are
/// whole numbers, days are ISO 8601, ids as the maker writes them.
/// </summary>
/// <remarks>
/// The library's serialiser makes code for each shape while it runs, which a program compiled ahead of time cannot, or
/// wants all shapes listed; ours are written where they are used. So it only writes the values here.
/// </remarks>
internal static class Json
{
    private static readonly JsonWriterOptions Form = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Writes a value and a line end.</summary>
    public static void Write(object value, TextWriter writer)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, Form))
        {
            Write(json, value);
        }

        writer.Write(Encoding.UTF8.GetString(bytes.GetBuffer(), 0, (int)bytes.Length) + "\n");
    }

    private static void Write(Utf8JsonWriter json, object? value)
    {
        switch (value)
        {
            case null:
                json.WriteNullValue();
                break;
            case string text:
                json.WriteStringValue(text);
                break;
            case bool isSo:
                json.WriteBooleanValue(isSo);
                break;
            case int number:
                json.WriteNumberValue(number);
                break;
            case decimal number:
                json.WriteNumberValue(number);
                break;
            case double number:
                json.WriteNumberValue(number);
                break;
            case Minutes minutes:
                json.WriteNumberValue(minutes.Count);
                break;
            case DateOnly day:
                json.WriteStringValue(day.ToString("O", CultureInfo.InvariantCulture));
                break;
            case IEnumerable list:
                WriteList(json, list);
                break;
            case var id when id.GetType() is { IsGenericType: true } type && type.GetGenericTypeDefinition() == typeof(Id<>):
                json.WriteStringValue(id.ToString());
                break;
            case var other when other is Enum || other.GetType().Namespace == nameof(System):
                throw new ArgumentException($"There is no JSON for {value.GetType().Name} {value}: give its word or its number.", nameof(value));
            default:
                WriteObject(json, value);
                break;
        }
    }

    private static void WriteList(Utf8JsonWriter json, IEnumerable list)
    {
        json.WriteStartArray();
        foreach (var item in list)
        {
            Write(json, item);
        }

        json.WriteEndArray();
    }

    [UnconditionalSuppressMessage("Trimming", "IL2075", Justification = "Journal.Cli.csproj keeps all members of the assemblies that shapes come from.")]
    private static void WriteObject(Utf8JsonWriter json, object value)
    {
        json.WriteStartObject();
        foreach (var property in value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance))
        {
            json.WritePropertyName(JsonNamingPolicy.CamelCase.ConvertName(property.Name));
            Write(json, property.GetValue(value));
        }

        json.WriteEndObject();
    }
}
