using System.Text.Json;
using System.Text.Json.Serialization;

namespace Journal.Core.Writing.Bench;

/// <summary>A slate as JSON.</summary>
[JsonSourceGenerationOptions(JsonSerializerDefaults.Web, WriteIndented = true)]
[JsonSerializable(typeof(Slate))]
internal sealed partial class SlateJson : JsonSerializerContext;
