using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using Journal.Core.Model;
using Journal.Site.Output;
using Journal.Site.Sending;

namespace Journal.Site.Tests.Sending;

/// <summary>A published site in a folder of its own, as a publish leaves it, and a folder to send to.</summary>
internal sealed partial class SiteOnDisk : IDisposable
{
    private readonly SortedDictionary<string, byte[]> files = new(StringComparer.Ordinal);

    public SiteOnDisk() => Root = Directory.CreateTempSubdirectory("send-").FullName;

    public string Root { get; }

    public string Folder => Path.Combine(Root, "site");

    public string Target => Path.Combine(Root, "www");

    public SendOrder Order => new(Path.Combine(Root, "journal"), Folder, new FolderDestination(new("disk"), Target)) 
    {
        Id = new("0b9c1f6e-6a36-4c0f-9a60-54d1f0a7c2de"),
        Title = "The bench",
        Today = new(2025, 10, 3),
    };

    /// <summary>A site of a front page, a feed, a style sheet and pages that each show a picture.</summary>
    public static SiteOnDisk WithPages(int pages, string edition = "one")
    {
        var site = new SiteOnDisk();
        site.Fill(pages, edition);
        return site;
    }

    /// <summary>Publishes anew: every page shows a picture of this edition.</summary>
    public void Fill(int pages, string edition)
    {
        files.Clear();
        Put("style.css", "body {}");
        Put("feed.xml", $"<feed>{edition}</feed>");
        Put("index.html", string.Concat(Enumerable.Range(0, pages).Select(i => $"<a href=\"drill/entry/e{i}.html\">{edition}</a>")));
        for (var i = 0; i < pages; i++)
        {
            var picture = PictureOf(i, edition);
            Put(picture, $"picture {i} {edition}");
            Put($"drill/entry/e{i}.html", $"<img src=\"../../{picture}\">{edition}");
        }

        Publish();
    }

    public SiteOnDisk Put(string address, string text)
    {
        files[address] = Encoding.UTF8.GetBytes(text);
        return this;
    }

    public SiteOnDisk Drop(string address)
    {
        files.Remove(address);
        return this;
    }

    public SiteOnDisk Publish()
    {
        if (Directory.Exists(Folder))
        {
            Directory.Delete(Folder, recursive: true);
        }

        foreach (var (address, bytes) in files)
        {
            var path = Path.Combine(Folder, address);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllBytes(path, bytes);
        }

        var manifest = files.ToDictionary(file => file.Key, file => Convert.ToHexStringLower(SHA256.HashData(file.Value)));
        File.WriteAllBytes(Path.Combine(Folder, Manifest.FileName), Manifest.ToBytes(manifest));
        return this;
    }

    public Task<SendReport> Send(Func<ITransport, ITransport>? change = null, SendOrder? order = null)
    {
        var transport = Transports.For(order ?? Order);
        return Sender.SendAsync(order ?? Order, change?.Invoke(transport) ?? transport, new RetryPolicy(4, TimeSpan.FromMilliseconds(1)), CancellationToken.None);
    }

    /// <summary>Whether a folder holds the site and nothing else.</summary>
    public void IsAt(string folder) => Is(Contents(folder));

    /// <summary>Whether what lies at a destination is the site and nothing else, and nothing of a send is left beside the site.</summary>
    public void IsFinished(IReadOnlyDictionary<string, string> there)
    {
        Is(there);
        HasNothingLeft();
    }

    private void Is(IReadOnlyDictionary<string, string> there) => Assert.Equal(
        files.ToDictionary(file => file.Key, file => Encoding.UTF8.GetString(file.Value)),
        there.Where(file => file.Key != SentManifest.Address).ToDictionary());

    /// <summary>Whether a folder holds the site and nothing else, no empty folder, and nothing of a send is left beside the site.</summary>
    public void IsFinishedAt(string folder)
    {
        IsAt(folder);
        HasNothingLeft();
        Assert.DoesNotContain(Directory.EnumerateDirectories(folder, "*", SearchOption.AllDirectories), inner => !Directory.EnumerateFileSystemEntries(inner).Any());
    }

    /// <summary>Whether nothing of a send is left beside the site.</summary>
    public void HasNothingLeft() => Assert.DoesNotContain(Directory.EnumerateFileSystemEntries(Root), path => path.Contains(".sending-", StringComparison.Ordinal));

    public static Dictionary<string, string> Contents(string folder) => !Directory.Exists(folder) ? []
        : Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).ToDictionary(path => Path.GetRelativePath(folder, path).Replace('\\', '/'), File.ReadAllText);

    /// <summary>The pictures that pages in a folder show and that are not there: what a reader would miss.</summary>
    public static List<string> MissingPictures(IReadOnlyDictionary<string, string> there) =>
    [
        .. there.Where(file => file.Key.EndsWith(".html", StringComparison.Ordinal))
            .SelectMany(page => Picture().Matches(page.Value).Select(match => (page.Key, Picture: match.Groups[1].Value)))
            .Where(shown => !there.ContainsKey(shown.Picture))
            .Select(shown => $"{shown.Key}: {shown.Picture}"),
    ];

    public void Dispose() => Directory.Delete(Root, recursive: true);

    private static string PictureOf(int i, string edition) => $"photos/{Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes($"{i} {edition}")))[..24]}-480.webp";

    [GeneratedRegex("src=\"(?:\\.\\./)*([^\"]+)\"")]
    private static partial Regex Picture();
}
