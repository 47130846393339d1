using System.Text.Json;
using Journal.Site.Output;

namespace Journal.Site.Sending;

/// <summary>
/// What lies at a destination by our hand: each file with the SHA-256 of its contents. By it the next send knows what
/// has changed, and what it may take away.
/// </summary>
/// <param name="Files">Addresses and hashes in hexadecimal.</param>
internal sealed record SentManifest(IReadOnlyDictionary<string, string> Files)
{
    /// <summary>The file at the destination that holds it.</summary>
    public const string Address = ".sent-site.json";

    /// <summary>The manifest as it was written.</summary>
    /// <exception cref="SendingException">It is not one of ours.</exception>
    public static SentManifest Read(byte[] bytes)
    {
        try
        {
            var files = JsonSerializer.Deserialize(bytes, FileListJson.Default.DictionaryStringString) ?? [];
            return files.Keys.All(SiteAddress.IsSafe) ? new SentManifest(files)
                : throw new SendingException($"The {Address} at the destination names files outside the site; someone has changed it. Take that file away there, then send again with `--take-over`.");
        }
        catch (JsonException e)
        {
            throw new SendingException($"The {Address} at the destination cannot be read. Take that file away there, then send again with `--take-over`.", e);
        }
    }

    /// <summary>The manifest as it is written.</summary>
    public byte[] ToBytes() => JsonSerializer.SerializeToUtf8Bytes(new SortedDictionary<string, string>(Files.ToDictionary(), StringComparer.Ordinal), FileListJson.Default.SortedDictionaryStringString);
}
