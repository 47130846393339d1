using System.Collections.Concurrent;
using System.Runtime.ExceptionServices;
using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Parsing.Problems;
using Journal.Site.Feeds;
using Journal.Site.Output;
using Journal.Site.Pages;
using Journal.Site.Photos;
using Journal.Site.Republishing;
using Journal.Site.Search;
using Journal.Site.Templates;

namespace Journal.Site;

/// <summary>What shall be published, and where to.</summary>
/// <param name="Folder">The journal's folder.</param>
/// <param name="Journal">The journal as read, without errors.</param>
/// <param name="To">The site's folder.</param>
/// <param name="Today">The day that <c>publish: after</c> is held against.</param>
/// <param name="Template">A maker's own copy of the templates; null for ours.</param>
public sealed record PublishOrder(string Folder, MakerJournal Journal, string To, DateOnly Today, string? Template = null)
{
    /// <summary>Where made pictures are kept; null for the user's cache folder.</summary>
    public string? Cache { get; init; }

    /// <summary>Is told how far the pictures are.</summary>
    public IProgress<PictureProgress>? Progress { get; init; }

    /// <summary>When the journal's files were first looked at (UTC); null for now.</summary>
    internal DateTime? Begun { get; init; }

    /// <summary>Notes what the next publish asks.</summary>
    internal PublishLedger? Ledger { get; init; }
}

/// <summary>What was published.</summary>
/// <param name="Builds">How many builds the journal has.</param>
/// <param name="Entries">How many entries it shows.</param>
/// <param name="Pages">How many pages the site has.</param>
/// <param name="Pictures">How many pictures.</param>
/// <param name="Files">How many files in all.</param>
/// <param name="Changed">How many of them had to be written; the others were as they should be.</param>
/// <param name="FrontPage">The file to open.</param>
/// <param name="Problems">Pictures that could not be read.</param>
public sealed record Published(int Builds, int Entries, int Pages, int Pictures, int Files, int Changed, string FrontPage, IReadOnlyList<Problem> Problems)
{
    internal static string FrontPageIn(string site) => Path.Combine(Path.GetFullPath(site), Addresses.Front);
}

/// <summary>Publishes a journal as a site of static files.</summary>
public static class Publisher
{
    /// <summary>Makes the whole site beside the old one and swaps it in; on any failure the old site stands as it was.</summary>
    /// <exception cref="PublishingException">The folder is not ours to write, or another publish is at work.</exception>
    /// <exception cref="TemplateException">A template is missing or at fault.</exception>
    /// <exception cref="IOException">The disk is full, or a file cannot be written.</exception>
    public static Published Publish(PublishOrder order, CancellationToken cancellation = default)
    {
        var templates = order.Template is { } folder ? TemplateFiles.From(folder) : TemplateFiles.Own();
        var (begun, to) = (order.Begun ?? DateTime.UtcNow, Destination.Check(order.To, order.Folder));
        using var site = SiteFolder.Begin(to);
        var (photos, problems) = PublishPhotos(order, site, cancellation);
        var figures = new SiteFigures(order.Journal, order.Today, photos);
        var pages = PageList.Of(figures).ToList();
        WritePages(pages, new TemplateEngine(templates), site, cancellation);
        WriteFeeds(figures, pages, site);
        var index = FindIndex.Of(FindableThings.Of(figures), site.Write);
        site.Write(FindIndex.Address, index.Script());
        foreach (var (path, bytes) in templates.Plain)
        {
            site.Write(path, bytes);
        }

        cancellation.ThrowIfCancellationRequested();
        var record = new RecordFile(CacheOf(order).Folder, to);
        record.Forget();
        site.Finish();
        PublishTimes.Note(CacheOf(order).Folder, to, begun);
        var journal = order.Journal;
        var published = new Published(
            journal.Builds.Count, figures.ShownEntries.Count, pages.Count, photos.Values.Distinct().Count(), site.Count, site.Changed, Published.FrontPageIn(order.To), problems);
        order.Ledger?.Keep(record, order, published, to);
        return published;
    }

    private static UserCache CacheOf(PublishOrder order) => order.Cache is { } folder ? new UserCache(folder) : UserCache.OfUser();

    private static (IReadOnlyDictionary<string, PublishedPhoto> Photos, IReadOnlyList<Problem> Problems) PublishPhotos(
        PublishOrder order, SiteFolder site, CancellationToken cancellation)
    {
        var visibility = new Visibility(order.Journal, order.Today);
        var shown = order.Journal.Entries.Where(visibility.Shows).SelectMany(entry => entry.Photos).Where(visibility.Shows).Select(photo => photo.File);
        using var stage = new PhotoStage(order.Folder, site, CacheOf(order), PictureSettings.Usual, order.Progress);
        return stage.Publish(shown, cancellation);
    }

    private static void WritePages(List<PageOrder> pages, TemplateEngine engine, SiteFolder site, CancellationToken cancellation)
    {
        var failures = new ConcurrentQueue<ExceptionDispatchInfo>();
        Parallel.ForEach(pages, new ParallelOptions { CancellationToken = cancellation }, (page, loop) =>
        {
            try
            {
                engine.Fill(page.Template, page.Model(), text => site.Write(page.Address, text));
            }
            catch (Exception e) when (e is TemplateException or PublishingException or IOException or UnauthorizedAccessException)
            {
                // Told as what it is, not as a bundle of what went wrong on several threads.
                failures.Enqueue(ExceptionDispatchInfo.Capture(e));
                loop.Stop();
            }
        });
        if (failures.TryDequeue(out var failure))
        {
            failure.Throw();
        }
    }

    private static void WriteFeeds(SiteFigures figures, List<PageOrder> pages, SiteFolder site)
    {
        var entries = FeedEntry.Latest(figures);
        site.Write(Addresses.AtomFeed, AtomFeed.Of(figures, entries));
        site.Write(Addresses.JsonFeed, JsonFeed.Of(figures, entries));
        foreach (var build in figures.Journal.Builds.Where(build => StoryPage.HasStory(figures, build)))
        {
            site.Write(Addresses.StoryText(build.Id), StoryPage.Text(figures, build));
        }

        foreach (var (address, text) in figures.Journal.Builds.SelectMany(VideoView.ChapterLists))
        {
            site.Write(address, text);
        }

        site.Write("robots.txt", SiteMap.Robots(figures.Journal.Address));
        if (figures.Journal.Address is { } home)
        {
            site.Write("sitemap.xml", SiteMap.Of(home, pages.Where(page => page.Template != MovedPage.Template).Select(page => page.Address).Where(address => address != Addresses.NotFound)));
        }
    }
}
