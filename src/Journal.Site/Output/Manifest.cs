using System.Text.Json;

namespace Journal.Site.Output;

/// <summary>What a publish wrote: each file with the SHA-256 of its contents. By it the next one knows what is its own.</summary>
/// <param name="Files">Paths from the root of the site, with <c>/</c>, and hashes in hexadecimal.</param>
/// <param name="WrittenUtc">When it was written, last of all files: what is younger was changed by someone else.</param>
internal sealed record Manifest(IReadOnlyDictionary<string, string> Files, DateTime WrittenUtc)
{
    /// <summary>The file in a site that holds it, and by which a folder is known to be a published site.</summary>
    public const string FileName = ".published-site.json";

    /// <summary>No files.</summary>
    public static Manifest None { get; } = new(new Dictionary<string, string>(), DateTime.MinValue);

    /// <summary>The manifest of a folder; null where the folder holds no site.</summary>
    /// <exception cref="PublishingException">There is one, but it cannot be understood.</exception>
    public static Manifest? Of(string folder)
    {
        var path = Path.Combine(folder, FileName);
        if (!File.Exists(path))
        {
            return null;
        }

        try
        {
            // Pipes have no length; opening one could wait for ever.
            var bytes = new FileInfo(path).Length == 0 ? [] : File.ReadAllBytes(path);
            var files = JsonSerializer.Deserialize(bytes, FileListJson.Default.DictionaryStringString) ?? throw new JsonException();
            return new Manifest(files, File.GetLastWriteTimeUtc(path));
        }
        catch (JsonException e)
        {
            throw new PublishingException($"{path} is damaged, so it is not clear which files belong to the site. Empty the folder yourself, or publish to a new one.", e);
        }
    }

    /// <summary>The files of a site as its manifest holds them.</summary>
    public static byte[] ToBytes(IEnumerable<KeyValuePair<string, string>> files) =>
        JsonSerializer.SerializeToUtf8Bytes(new SortedDictionary<string, string>(files.ToDictionary(), StringComparer.Ordinal), FileListJson.Default.SortedDictionaryStringString);
}
