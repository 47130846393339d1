using System.Collections.Concurrent;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Journal.Core.Writing.Files;

namespace Journal.Site.Photos;

/// <summary>
/// The contents of pictures by path, size and time, so that a journal with ten thousand of them is not read again each
/// evening. A file changed less than two seconds before it was read is read again: it may have changed in the same tick.
/// </summary>
internal sealed class SeenFiles
{
    private static readonly TimeSpan Doubtful = TimeSpan.FromSeconds(2);
    private readonly string path;
    private readonly Dictionary<string, Seen> before;
    private readonly ConcurrentDictionary<string, Seen> now = new(StringComparer.Ordinal);

    private SeenFiles(string path, Dictionary<string, Seen> before) => (this.path, this.before) = (path, before);

    /// <summary>What is known of a journal's pictures.</summary>
    public static SeenFiles Of(UserCache cache, string journal)
    {
        var name = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(Path.GetFullPath(journal))))[..16];
        var path = Path.Combine(cache.Folder, "seen", name + ".json");
        try
        {
            return new SeenFiles(path, File.Exists(path) ? JsonSerializer.Deserialize(File.ReadAllBytes(path), PictureJson.Default.DictionaryStringSeen) ?? [] : []);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or JsonException)
        {
            return new SeenFiles(path, []);
        }
    }

    /// <summary>The SHA-256 of a file, read only where it may have changed, and its bytes where it was read.</summary>
    public (string Content, byte[]? Bytes) ContentOf(string file, string fullPath)
    {
        var info = new FileInfo(fullPath);
        if ((now.TryGetValue(file, out var seen) || before.TryGetValue(file, out seen)) && seen.Length == info.Length && seen.Modified == info.LastWriteTimeUtc.Ticks && !seen.IsDoubtful)
        {
            now[file] = seen;
            return (seen.Content, null);
        }

        var bytes = File.ReadAllBytes(fullPath);
        var content = Convert.ToHexStringLower(SHA256.HashData(bytes));
        now[file] = new Seen(info.Length, info.LastWriteTimeUtc.Ticks, content, DateTime.UtcNow - info.LastWriteTimeUtc < Doubtful);
        return (content, bytes);
    }

    /// <summary>Writes down what was seen; where that fails the next publish reads again.</summary>
    public void Keep()
    {
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            DiskFile.Write(path, JsonSerializer.SerializeToUtf8Bytes(new SortedDictionary<string, Seen>(now, StringComparer.Ordinal), PictureJson.Default.SortedDictionaryStringSeen));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // A cache that cannot be written costs time and nothing else.
        }
    }

    /// <summary>A picture as it was when it was read.</summary>
    /// <param name="Length">Its size in bytes.</param>
    /// <param name="Modified">When it was last changed, UTC, in units of 100 ns since the year 1.</param>
    /// <param name="Content">The SHA-256 of its contents, in hexadecimal.</param>
    /// <param name="IsDoubtful">Whether it was changed too shortly before to be trusted.</param>
    internal sealed record Seen(long Length, long Modified, string Content, bool IsDoubtful);
}
