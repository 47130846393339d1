using System.Text.Json.Serialization;

namespace Journal.Site.Preview;

/// <summary>What an open page of the preview is told.</summary>
/// <param name="Version">Which publish stands.</param>
/// <param name="Problems">What kept a later one from it.</param>
internal sealed record PreviewNews(int Version, IReadOnlyList<string> Problems);

/// <summary>News as JSON.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(PreviewNews))]
internal sealed partial class PreviewJson : JsonSerializerContext;
