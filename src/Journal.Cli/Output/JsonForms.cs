using System.Text.Json;
using System.Text.Json.Serialization;
using Journal.Core.Model;

namespace Journal.Cli.Output;

/// <summary>Minutes as a whole number.</summary>
internal sealed class MinutesAsNumber : JsonConverter<Minutes>
{
    /// <inheritdoc/>
    public override Minutes Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => new(reader.GetInt32());

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, Minutes value, JsonSerializerOptions options) => writer.WriteNumberValue(value.Count);
}

/// <summary>Ids of every kind as the maker writes them.</summary>
internal sealed class IdAsText : JsonConverterFactory
{
    /// <inheritdoc/>
    public override bool CanConvert(Type typeToConvert) =>
        typeToConvert.IsGenericType && typeToConvert.GetGenericTypeDefinition() == typeof(Id<>);

    /// <inheritdoc/>
    public override JsonConverter CreateConverter(Type typeToConvert, JsonSerializerOptions options) =>
        (JsonConverter)Activator.CreateInstance(typeof(Converter<>).MakeGenericType(typeToConvert.GetGenericArguments()))!;

    private sealed class Converter<T> : JsonConverter<Id<T>>
    {
        public override Id<T> Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => new(reader.GetString() ?? "");

        public override void Write(Utf8JsonWriter writer, Id<T> value, JsonSerializerOptions options) => writer.WriteStringValue(value.Value);
    }
}
