using System.Security.Cryptography;
using Journal.Core.Model;
using Journal.Core.Parsing.Files;
using Journal.Site.Feeds;
using Journal.Site.Output;
using Journal.Site.Pages;
using Journal.Site.Photos;

namespace Journal.Site.Sending;

/// <summary>A published site as it lies on the disk, to be sent.</summary>
public static class SiteToSend
{
    /// <summary>The file by which a folder is known to be a published site.</summary>
    public const string Mark = Manifest.FileName;

    /// <summary>
    /// Why a site must be published anew before it is sent; null where it is as new as the journal. It is older where a
    /// file of the journal, or a folder within it, was changed after the publish began, and where it shows an entry that
    /// the journal no longer has. A copied file that brings its old time with it, over another of the same name, is the
    /// one change that this cannot see.
    /// </summary>
    /// <param name="journal">The journal's folder.</param>
    /// <param name="read">The journal as read.</param>
    /// <param name="site">The site's folder.</param>
    public static string? WhyNot(string journal, MakerJournal read, string site)
    {
        Manifest? manifest;
        try
        {
            manifest = Manifest.Of(site);
        }
        catch (PublishingException e)
        {
            return e.Message;
        }

        if (manifest is not { Files.Count: > 0 })
        {
            return $"There is no published site in {site}. Publish first: `journal publish --to {site}`.";
        }

        if (!IsOf(read, site))
        {
            return $"The site in {site} is another journal’s. Name this one’s with `--site`, or publish it: `journal publish --to <folder>`.";
        }

        var published = PublishTimes.Of(UserCache.OfUser().Folder, Destination.RealPath(site), manifest);
        if (JournalSources.Newest(journal) is { } newest && newest.Changed > published)
        {
            return $"The site is older than the journal: {newest.Path} was changed since. Publish first: `journal publish --to {site}`.";
        }

        var entries = read.Entries.Select(entry => $"{entry.Build}/entry/{entry.Id}.html").ToHashSet(StringComparer.Ordinal);
        return manifest.Files.Keys.FirstOrDefault(address => address.Split('/') is [_, "entry", _] && !entries.Contains(address)) is { } gone
            ? $"The site is older than the journal: it still shows {gone}. Publish first: `journal publish --to {site}`."
            : null;
    }

    // Its feed has the id that follows from the journal's.
    private static bool IsOf(MakerJournal journal, string site)
    {
        var feed = Path.Combine(site, Addresses.AtomFeed);
        return !File.Exists(feed) || new FileInfo(feed).Length == 0 || File.ReadAllText(feed).Contains($"<id>{FeedEntry.IdOf(journal, "feed")}</id>", StringComparison.Ordinal);
    }

    /// <summary>The site's files and their hashes.</summary>
    internal static IReadOnlyDictionary<string, string> FilesOf(string site)
    {
        var files = (Manifest.Of(site) ?? Manifest.None).Files;
        return files.Count == 0 ? throw new SendingException($"There is no published site in {site}. Publish first: `journal publish --to {site}`.")
            : files.Keys.All(SiteAddress.IsSafe) ? files
            : throw new SendingException($"The list of files in {site} was changed by something else than a publish. Publish again: `journal publish --to {site}`.");
    }

    /// <summary>A file's contents.</summary>
    /// <exception cref="SendingException">They are not those that were published.</exception>
    internal static byte[] Read(string site, string address, string hash)
    {
        var path = SiteAddress.PathIn(site, address);
        var contents = File.Exists(path) ? File.ReadAllBytes(path) : [];
        if (Convert.ToHexStringLower(SHA256.HashData(contents)) == hash)
        {
            return contents;
        }

        MakeDoubtful(path);
        throw new SendingException($"{address} is not as it was published: the site was published anew while it was sent, or something else has changed it. Publish, then send again.");
    }

    // A disk that damages a file does not touch its time. By a new time the next publish sees that it must be made anew.
    private static void MakeDoubtful(string path)
    {
        try
        {
            File.SetLastWriteTimeUtc(path, DateTime.UtcNow);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return; // It is gone, which the publish sees as well, or it is not ours to touch.
        }
    }
}
