using System.Globalization;
using System.Text.Json;
using Journal.Site.Pages;

namespace Journal.Site.Feeds;

/// <summary>The JSON Feed, version 1.1.</summary>
internal static class JsonFeed
{
    private static readonly JsonWriterOptions Format = new() { Indented = true, NewLine = "\n", Encoder = FeedText.JsonEncoder };

    /// <summary>The feed as UTF-8.</summary>
    /// <param name="figures">The journal; its links to itself are left out where the site has no address.</param>
    /// <param name="entries">The entries, newest first.</param>
    public static byte[] Of(SiteFigures figures, IReadOnlyList<FeedEntry> entries)
    {
        var journal = figures.Journal;
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, Format))
        {
            json.WriteStartObject();
            json.WriteString("version", "https://jsonfeed.org/version/1.1");
            json.WriteString("title", journal.Title);
            if (journal.Address is { } home)
            {
                json.WriteString("home_page_url", home.AbsoluteUri);
                json.WriteString("feed_url", new Uri(home, Addresses.JsonFeed).AbsoluteUri);
            }

            json.WriteString("language", "en-GB");
            json.WriteStartArray("authors");
            json.WriteStartObject();
            json.WriteString("name", journal.Maker.Length == 0 ? journal.Title : journal.Maker);
            json.WriteEndObject();
            json.WriteEndArray();
            json.WriteStartArray("items");
            foreach (var entry in entries)
            {
                Write(json, entry);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        return bytes.ToArray();
    }

    private static void Write(Utf8JsonWriter json, FeedEntry entry)
    {
        json.WriteStartObject();
        json.WriteString("id", entry.Id.ToString());
        json.WriteString("url", entry.Address.ToString());
        json.WriteString("title", entry.Title);
        json.WriteString("summary", entry.Summary);
        json.WriteString("content_html", entry.Content.Markup);
        json.WriteString("date_published", entry.Published.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture));
        json.WriteStartArray("tags");
        json.WriteStringValue(entry.Build);
        json.WriteEndArray();
        json.WriteEndObject();
    }
}
