using System.Text.Json.Serialization;

namespace Journal.Site.Output;

/// <summary>Lists of files with their hashes as JSON, one file a line. Compiled ahead, so that no start waits for reflection.</summary>
[JsonSourceGenerationOptions(WriteIndented = true, NewLine = "\n")]
[JsonSerializable(typeof(Dictionary<string, string>))]
[JsonSerializable(typeof(SortedDictionary<string, string>))]
internal sealed partial class FileListJson : JsonSerializerContext;
