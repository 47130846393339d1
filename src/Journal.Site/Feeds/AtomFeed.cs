using System.ServiceModel.Syndication;
using System.Xml;
using Journal.Site.Html;
using Journal.Site.Pages;

namespace Journal.Site.Feeds;

/// <summary>The Atom feed (RFC 4287).</summary>
internal static class AtomFeed
{
    private static readonly DateTimeOffset Never = new(1970, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>The feed as UTF-8. Without entries it was last changed in 1970, so that the same journal always gives the same bytes.</summary>
    /// <param name="figures">The journal; its links to itself are left out where the site has no address.</param>
    /// <param name="entries">The entries, newest first.</param>
    public static byte[] Of(SiteFigures figures, IReadOnlyList<FeedEntry> entries)
    {
        var journal = figures.Journal;
        var feed = new SyndicationFeed(entries.Select(Item))
        {
            Id = FeedEntry.IdOf(journal, "feed").ToString(),
            Title = new TextSyndicationContent(Unprintable.Replace(journal.Title)),
            LastUpdatedTime = entries.Count == 0 ? Never : entries[0].Published,
            Language = "en-GB",
        };
        feed.Authors.Add(new SyndicationPerson { Name = Unprintable.Replace(journal.Maker.Length == 0 ? journal.Title : journal.Maker) });
        if (journal.Address is { } home)
        {
            feed.Links.Add(new SyndicationLink(new Uri(home, Addresses.AtomFeed), "self", null, "application/atom+xml", 0));
            feed.Links.Add(new SyndicationLink(home, "alternate", null, "text/html", 0));
        }

        using var bytes = new MemoryStream();
        using (var writer = XmlWriter.Create(bytes, FeedText.Xml))
        {
            feed.SaveAsAtom10(writer);
        }

        return bytes.ToArray();
    }

    private static SyndicationItem Item(FeedEntry entry)
    {
        var item = new SyndicationItem
        {
            Id = entry.Id.ToString(),
            Title = new TextSyndicationContent(entry.Title),
            Summary = new TextSyndicationContent(entry.Summary),
            Content = new TextSyndicationContent(entry.Content.Markup, TextSyndicationContentKind.Html),
            LastUpdatedTime = entry.Published,
            PublishDate = entry.Published,
        };
        item.Links.Add(new SyndicationLink(entry.Address, "alternate", null, "text/html", 0));
        item.Categories.Add(new SyndicationCategory(entry.Build));
        return item;
    }
}
