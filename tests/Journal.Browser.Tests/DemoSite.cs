using System.Text.RegularExpressions;
using Journal.Site.Publishing;
using Microsoft.Playwright;

namespace Journal.Browser.Tests;

/// <summary>
/// The demonstration journal, published once for all tests, served on 127.0.0.1 and opened in the system's Chromium.
/// </summary>
public sealed partial class DemoSite : IAsyncLifetime, IDisposable
{
    private static readonly DateOnly Today = new(2026, 11, 25);

    private readonly string place = Directory.CreateTempSubdirectory("journal-browser-").FullName;
    private readonly SystemBrowser browser = new();
    private LoopbackServer? server;

    /// <summary>The repository's root.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>The published site.</summary>
    public string Folder => Path.Combine(place, "site");

    /// <summary>The site over HTTP, ending with a slash.</summary>
    public Uri Http => server!.Address;

    /// <summary>The site from the file system, ending with a slash.</summary>
    public Uri File => new($"file://{Folder}/");

    /// <summary>Every page, from the root of the site, but for those that lead on from a former address at once.</summary>
    public IReadOnlyList<string> Pages { get; private set; } = [];

    /// <summary>For each kind of page the one with most in it and the one with least.</summary>
    public IReadOnlyList<string> Samples { get; private set; } = [];

    /// <summary>The pages of one kind, the longest first.</summary>
    public IReadOnlyList<string> OfKind(string kind) => byKind[kind];

    /// <summary>A fresh page of the browser.</summary>
    public Task<IPage> Open(int width = 1440, ColorScheme scheme = ColorScheme.Light, bool javaScript = true) => browser.Open(width, scheme, javaScript);

    /// <summary>A fresh page of a phone.</summary>
    public Task<IPage> Phone(int width = 360, ColorScheme scheme = ColorScheme.Light, bool javaScript = true) => browser.Phone(width, scheme, javaScript);

    public async Task InitializeAsync()
    {
        Publish();
        Pages = [.. Directory.EnumerateFiles(Folder, "*.html", SearchOption.AllDirectories).Where(path => !System.IO.File.ReadAllText(path).Contains("http-equiv=\"refresh\"", StringComparison.Ordinal)).Select(path => Path.GetRelativePath(Folder, path)).Order(StringComparer.Ordinal)];
        byKind = Pages.GroupBy(KindOf).ToDictionary(
            kind => kind.Key,
            kind => (IReadOnlyList<string>)[.. kind.OrderByDescending(page => new FileInfo(Path.Combine(Folder, page)).Length)]);
        Samples = [.. byKind.Values.SelectMany(pages => new[] { pages[0], pages[^1] }.Distinct()).Order(StringComparer.Ordinal)];
        server = new LoopbackServer(Folder, "/bench/");
        await browser.InitializeAsync();
    }

    public async Task DisposeAsync()
    {
        await browser.DisposeAsync();
        Dispose();
    }

    public void Dispose()
    {
        server?.Dispose();
        if (Directory.Exists(place))
        {
            Directory.Delete(place, recursive: true);
        }
    }

    private IReadOnlyDictionary<string, IReadOnlyList<string>> byKind = new Dictionary<string, IReadOnlyList<string>>();

    private void Publish()
    {
        var journal = Path.Combine(Root, "journal");
        _ = SitePublisher.Publish(new PublishOrder(journal, Folder, Today) { Cache = Path.Combine(place, "cache") }).Published ?? throw new InvalidOperationException("The demonstration journal has errors.");
    }

    private string KindOf(string page) => BodyClass().Match(System.IO.File.ReadAllText(Path.Combine(Folder, page))) is { Success: true } found
        ? found.Groups[1].Value
        : throw new InvalidOperationException($"{page} does not say what kind of page it is.");

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!System.IO.File.Exists(Path.Combine(folder.FullName, "Journal.sln")))
        {
            folder = folder.Parent ?? throw new InvalidOperationException("The tests do not run inside the repository.");
        }

        return folder.FullName;
    }

    [GeneratedRegex("<body class=\"of-([a-z-]+)")]
    private static partial Regex BodyClass();
}

/// <summary>All tests share one published site and one browser.</summary>
[CollectionDefinition(Name)]
public sealed class SharedDemo : ICollectionFixture<DemoSite>
{
    public const string Name = "Demo";
}
