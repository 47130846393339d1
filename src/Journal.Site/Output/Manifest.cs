using System.Text.Json;

namespace Journal.Site.Output;

/// <summary>What a publish wrote: each file with the SHA-256 of its contents. By it the next one knows what is its own.</summary>
internal sealed class Manifest
{
    /// <summary>The file in a site that holds it, and by which a folder is known to be a published site.</summary>
    public const string FileName = ".published-site.json";

    private static readonly JsonSerializerOptions Format = new() { WriteIndented = true, NewLine = "\n" };

    public Manifest(IReadOnlyDictionary<string, string> files) => Files = files;

    /// <summary>Paths from the root of the site, with <c>/</c>, and hashes in hexadecimal.</summary>
    public IReadOnlyDictionary<string, string> Files { get; }

    /// <summary>No files.</summary>
    public static Manifest None { get; } = new(new Dictionary<string, string>());

    /// <summary>The manifest of a folder; none where the folder holds no site, or one that was tampered with.</summary>
    public static Manifest? Of(string folder)
    {
        var path = Path.Combine(folder, FileName);
        if (!File.Exists(path))
        {
            return null;
        }

        try
        {
            return new Manifest(JsonSerializer.Deserialize<Dictionary<string, string>>(File.ReadAllBytes(path)) ?? []);
        }
        catch (JsonException)
        {
            return None;
        }
    }

    public byte[] ToBytes() => JsonSerializer.SerializeToUtf8Bytes(new SortedDictionary<string, string>(Files.ToDictionary(), StringComparer.Ordinal), Format);
}
