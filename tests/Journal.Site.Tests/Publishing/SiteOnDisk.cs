using System.Security.Cryptography;
using System.Text.RegularExpressions;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;

namespace Journal.Site.Tests.Publishing;

/// <summary>A site as it lies on disk.</summary>
internal sealed partial class SiteOnDisk(string folder)
{
    // Parsed pages are large: they may go when memory is short. Their ids are small and asked for often.
    private readonly Dictionary<string, WeakReference<IHtmlDocument>> parsed = [];
    private readonly Dictionary<string, IReadOnlySet<string>> ids = [];

    /// <summary>Where it lies.</summary>
    public string Folder { get; } = folder;

    /// <summary>The addresses of all its files, in ordinal order.</summary>
    public IReadOnlyList<string> Files =>
        [.. Directory.EnumerateFiles(Folder, "*", SearchOption.AllDirectories).Select(path => Path.GetRelativePath(Folder, path).Replace('\\', '/')).Order(StringComparer.Ordinal)];

    /// <summary>The addresses of all its pages.</summary>
    public IReadOnlyList<string> Pages => [.. Files.Where(file => file.EndsWith(".html", StringComparison.Ordinal))];

    /// <summary>Every file with the hash of its bytes.</summary>
    public IReadOnlyDictionary<string, string> Hashes => Files.ToDictionary(file => file, file => Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(PathOf(file)))));

    /// <summary>Every file with its time stamp.</summary>
    public IReadOnlyDictionary<string, DateTime> Times => Files.ToDictionary(file => file, file => File.GetLastWriteTimeUtc(PathOf(file)));

    public string PathOf(string address) => Path.Combine(Folder, address);

    public bool Has(string address) => File.Exists(PathOf(address));

    public string Text(string address) => File.ReadAllText(PathOf(address));

    /// <summary>A page as a browser reads it.</summary>
    public IHtmlDocument Page(string address)
    {
        lock (parsed)
        {
            if (parsed.TryGetValue(address, out var kept) && kept.TryGetTarget(out var page))
            {
                return page;
            }

            page = new HtmlParser().ParseDocument(Text(address));
            parsed[address] = new WeakReference<IHtmlDocument>(page);
            return page;
        }
    }

    /// <summary>The ids of a page, to which links may lead.</summary>
    public IReadOnlySet<string> Ids(string address)
    {
        lock (ids)
        {
            return ids.TryGetValue(address, out var known) ? known : ids[address] = Page(address).QuerySelectorAll("[id]").Select(element => element.GetAttribute("id")!).ToHashSet();
        }
    }

    /// <summary>The files that hold a text anywhere, in their name or their bytes; digests left out, in which a year may stand by chance.</summary>
    public IReadOnlyList<string> Holding(string word) => [.. Files.Where(file => file.Contains(word, StringComparison.OrdinalIgnoreCase)
        || Digest().Replace(System.Text.Encoding.UTF8.GetString(File.ReadAllBytes(PathOf(file))), "").Contains(word, StringComparison.OrdinalIgnoreCase))];

    [GeneratedRegex("\\b[0-9a-f]{64}\\b")]
    private static partial Regex Digest();
}
