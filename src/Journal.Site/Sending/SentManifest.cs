using System.Text.Json;
using System.Text.Json.Serialization;

namespace Journal.Site.Sending;

/// <summary>
/// What sends have put at a destination: each file with the SHA-256 of its contents. By it the next send knows what has
/// changed, and what it may delete; and whose site it is, so that no journal deletes the site of another.
/// </summary>
/// <param name="Journal">The journal whose site it is.</param>
/// <param name="Title">That journal's title when it was sent.</param>
/// <param name="Files">Addresses and hashes in hexadecimal.</param>
internal sealed record SentManifest(Guid Journal, string Title, IReadOnlyDictionary<string, string> Files)
{
    /// <summary>The file at the destination that holds it.</summary>
    public const string Address = ".sent-site.json";

    /// <summary>The manifest as it was written.</summary>
    /// <exception cref="SendingException">It is not one of ours.</exception>
    public static SentManifest Read(byte[] bytes)
    {
        try
        {
            var manifest = JsonSerializer.Deserialize(bytes, SentManifestJson.Default.SentManifest) ?? throw new JsonException();
            return manifest.Files.Keys.All(SiteAddress.IsSafe) ? manifest
                : throw new SendingException($"The {Address} at the destination lists files outside the site; someone has changed it. Delete that file there, then send again with `--take-over`.");
        }
        catch (JsonException e)
        {
            throw new SendingException($"The {Address} at the destination cannot be read. Delete that file there, then send again with `--take-over`.", e);
        }
    }

    /// <summary>The manifest as it is written.</summary>
    public byte[] ToBytes() =>
        JsonSerializer.SerializeToUtf8Bytes(this with { Files = new SortedDictionary<string, string>(Files.ToDictionary(), StringComparer.Ordinal) }, SentManifestJson.Default.SentManifest);
}

/// <summary>How the manifest is written as JSON, made by the compiler, so that nothing needs reflection.</summary>
[JsonSourceGenerationOptions(
    WriteIndented = true,
    NewLine = "\n",
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    RespectRequiredConstructorParameters = true,
    RespectNullableAnnotations = true)]
[JsonSerializable(typeof(SentManifest))]
internal sealed partial class SentManifestJson : JsonSerializerContext;
