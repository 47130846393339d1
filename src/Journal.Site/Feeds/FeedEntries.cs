using Journal.Core.Model;
using Journal.Site.Html;
using Journal.Site.Pages;

namespace Journal.Site.Feeds;

/// <summary>An entry as feeds tell of it.</summary>
/// <param name="Id">Lasting, and the same wherever the site stands.</param>
/// <param name="Title">The entry's title.</param>
/// <param name="Build">The build's title.</param>
/// <param name="Address">Absolute where the site has an address, else from the root of the site.</param>
/// <param name="Published">Midnight of the evening's date in UTC: times of day are never published.</param>
/// <param name="Summary">A sentence.</param>
/// <param name="Content">The text as HTML.</param>
internal sealed record FeedEntry(Uri Id, string Title, string Build, Uri Address, DateTimeOffset Published, string Summary, SafeHtml Content)
{
    private const int MostEntries = 30;

    public static IReadOnlyList<FeedEntry> Latest(SiteFigures figures) =>
    [
        .. figures.ShownEntries.OrderByDescending(entry => entry.Date).ThenByDescending(entry => entry.Ref).Take(MostEntries).Select(entry => Of(figures, entry)),
    ];

    public static Uri IdOf(MakerJournal journal, string name) => new($"urn:uuid:{NameBasedUuid.Of(journal.Id, name)}");

    private static FeedEntry Of(SiteFigures figures, Entry entry)
    {
        var build = figures.Build(entry.Build);
        var page = EntryPage.Of(figures, build, entry);
        var address = Addresses.Of(entry.Ref);
        return new FeedEntry(
            IdOf(figures.Journal, entry.Ref.ToString()),
            Unprintable.Replace(entry.Title),
            Unprintable.Replace(build.Title),
            figures.Journal.Address is { } home ? new Uri(home, address) : new Uri(address, UriKind.Relative),
            new DateTimeOffset(entry.Date.ToDateTime(TimeOnly.MinValue), TimeSpan.Zero),
            Unprintable.Replace(page.Frame.Description),
            FeedText.Of(page.Prose, figures.Journal.Address?.AbsoluteUri ?? ""));
    }
}
