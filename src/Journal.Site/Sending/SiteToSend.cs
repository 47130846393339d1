using System.Security.Cryptography;
using Journal.Core.Model;
using Journal.Site.Feeds;
using Journal.Site.Output;
using Journal.Site.Pages;
using Journal.Site.Photos;
using Journal.Site.Publishing;

namespace Journal.Site.Sending;

/// <summary>A published site as it lies on the disk, to be sent.</summary>
public static class SiteToSend
{
    /// <summary>The file by which a folder is known to be a published site.</summary>
    public const string Mark = Manifest.FileName;

    /// <summary>
    /// Why a site must be published anew before it is sent; null where it is as new as the journal. The record of the
    /// publish tells: it knows every file of the journal as it was then.
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
            return $"The site in {site} belongs to another journal. Give this one’s with `--site`, or publish it: `journal publish --to <folder>`.";
        }

        var record = new RecordFile(UserCache.OfUser().Folder, Destination.RealPath(site)).Read();
        if (record is null || !record.IsOfLastPublish(site) || FileStamps.OfJournal(journal) is not { } files)
        {
            return $"It is not known whether the site in {site} is up to date: it was last published on another machine, or by another version. Publish first: `journal publish --to {site}`.";
        }

        return record.DifferencesTo(files.Stamps).Order(StringComparer.Ordinal).FirstOrDefault() is { } changed
            ? $"The site is older than the journal: {changed} was changed since. Publish first: `journal publish --to {site}`."
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
            : throw new SendingException($"The list of files in {site} was changed by something other than a publish. Publish again: `journal publish --to {site}`.");
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
        throw new SendingException($"{address} is not as it was published: either the site was published again during the send, or something else changed it. Publish, then send again.");
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
