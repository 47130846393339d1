using System.Security.Cryptography;
using System.Text;

namespace Journal.Site.Output;

/// <summary>
/// When sites were last published, kept in the cache: the site itself tells nothing of the clock, and a publish that
/// changes nothing leaves no trace in it.
/// </summary>
internal static class PublishTimes
{
    private static readonly TimeSpan LongestPublish = TimeSpan.FromHours(2);

    /// <summary>Notes when the publish of a site began; where that fails, its list of files will have to tell.</summary>
    public static void Note(string cache, string site, DateTime begunUtc)
    {
        var path = PathOf(cache, site);
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, site);
            File.SetLastWriteTimeUtc(path, begunUtc);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return;
        }
    }

    /// <summary>When the last publish of a site began (UTC); where that is not known, the time of its list of files.</summary>
    public static DateTime Of(string cache, string site, Manifest manifest)
    {
        var noted = PathOf(cache, site);
        var begun = File.Exists(noted) ? File.GetLastWriteTimeUtc(noted) : DateTime.MinValue;

        // A list that is younger by more than any publish takes was made with another cache: it tells for itself.
        return manifest.WrittenUtc - begun < LongestPublish ? begun : manifest.WrittenUtc;
    }

    private static string PathOf(string cache, string site) =>
        Path.Combine(cache, "published", Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(site)))[..24]);
}
