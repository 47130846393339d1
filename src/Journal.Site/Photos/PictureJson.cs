using System.Text.Json.Serialization;

namespace Journal.Site.Photos;

/// <summary>What the cache notes of pictures, as JSON.</summary>
[JsonSerializable(typeof(MadePicture))]
[JsonSerializable(typeof(Dictionary<string, SeenFiles.Seen>))]
[JsonSerializable(typeof(SortedDictionary<string, SeenFiles.Seen>))]
internal sealed partial class PictureJson : JsonSerializerContext;
