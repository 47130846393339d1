using Journal.Core.Model;
using Journal.Site.Html;
using Journal.Site.Pages;

namespace Journal.Site.Feeds;

/// <summary>An entry in a feed.</summary>
/// <param name="Id">Never changes, whatever the address of the site.</param>
/// <param name="Title">The entry's title.</param>
/// <param name="Build">The build's title.</param>
/// <param name="Address">Absolute where the site has an address, else from the root of the site.</param>
/// <param name="Published">Midnight of the evening's date in UTC: times of day are never published.</param>
/// <param name="Summary">What the entry is about, in at most 160 characters.</param>
/// <param name="Content">The text as HTML.</param>
internal sealed record FeedEntry(Uri Id, string Title, string Build, Uri Address, DateTimeOffset Published, string Summary, SafeHtml Content)
{
    private const int MostEntries = 30;

    /// <summary>The 30 latest entries that are shown, newest first.</summary>
    public static IReadOnlyList<FeedEntry> Latest(SiteFigures figures) =>
    [
        .. figures.ShownEntries.OrderByDescending(entry => entry.Date).ThenByDescending(entry => entry.Ref).Take(MostEntries).Select(entry => Of(figures, entry)),
    ];

    /// <summary>A <c>urn:uuid:</c> made from the journal's id and a name, always the same for the same two.</summary>
    /// <param name="journal">The journal.</param>
    /// <param name="name">What it is for: <c>feed</c>, or an entry as <c>build/entry</c>.</param>
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
