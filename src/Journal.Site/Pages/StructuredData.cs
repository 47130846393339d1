using System.Buffers;
using System.Security.Cryptography;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;
using Journal.Core.Model;
using Journal.Site.Html;

namespace Journal.Site.Pages;

/// <summary>A data block of a page.</summary>
/// <param name="Text">Its contents.</param>
/// <param name="Hash">Their SHA-256 in base 64, for the content security policy (Level 3, 2.3.1), which then holds this block and no other.</param>
public sealed record DataBlock(SafeHtml Text, SafeHtml Hash);

/// <summary>
/// What a page says of itself to machines, in the words of schema.org, as JSON-LD 1.1 (W3C 2020). It stands in a data
/// block, which no browser executes; the encoder writes <c>&lt;</c>, <c>&gt;</c> and <c>&amp;</c> as escapes, so no
/// text can end the block.
/// </summary>
internal static class StructuredData
{
    private static readonly JsonWriterOptions Format = new() { Encoder = JavaScriptEncoder.Create(UnicodeRanges.All) };

    /// <summary>The journal as a whole.</summary>
    public static DataBlock Site(MakerJournal journal, string description) => Block("WebSite", json =>
    {
        json.WriteString("name", journal.Title);
        json.WriteString("description", description);
        json.WriteString("inLanguage", "en-GB");
        Author(json, journal);
        if (journal.Address is { } home)
        {
            json.WriteString("url", home.AbsoluteUri);
        }
    });

    /// <summary>An entry with its pictures and their captions.</summary>
    /// <param name="views">The entry's page.</param>
    /// <param name="build">The build it belongs to.</param>
    /// <param name="entry">The entry.</param>
    /// <param name="description">A sentence on it.</param>
    public static DataBlock Article(SharedViews views, Build build, Entry entry, string description) => Block("Article", json =>
    {
        var journal = views.Figures.Journal;
        json.WriteString("headline", entry.Title);
        json.WriteString("description", description);
        json.WriteString("datePublished", Show.Date(entry.Date));
        json.WriteString("inLanguage", "en-GB");
        Author(json, journal);
        json.WriteStartObject("isPartOf");
        json.WriteString("@type", "CreativeWork");
        json.WriteString("name", build.Title);
        json.WriteString("url", views.Reachable(Addresses.Of(build.Id)));
        json.WriteEndObject();
        if (journal.Address is not null)
        {
            json.WriteString("url", views.Reachable(views.Address));
        }

        var photos = views.Photos(entry).ToList();
        if (photos.Count > 0)
        {
            json.WriteStartArray("image");
            photos.ForEach(photo => Picture(json, views, photo));
            json.WriteEndArray();
        }
    });

    private static void Picture(Utf8JsonWriter json, SharedViews views, PhotoView photo)
    {
        json.WriteStartObject();
        json.WriteString("@type", "ImageObject");
        json.WriteString("contentUrl", views.Reachable(photo.Largest));
        json.WriteNumber("width", photo.Width);
        json.WriteNumber("height", photo.Height);
        json.WriteString("caption", photo.Caption ?? photo.Alt);
        json.WriteEndObject();
    }

    private static void Author(Utf8JsonWriter json, MakerJournal journal)
    {
        if (journal.Maker.Length > 0)
        {
            json.WriteStartObject("author");
            json.WriteString("@type", "Person");
            json.WriteString("name", journal.Maker);
            json.WriteEndObject();
        }
    }

    private static DataBlock Block(string type, Action<Utf8JsonWriter> write)
    {
        var bytes = new ArrayBufferWriter<byte>(1024);
        using (var json = new Utf8JsonWriter(bytes, Format))
        {
            json.WriteStartObject();
            json.WriteString("@context", "https://schema.org");
            json.WriteString("@type", type);
            write(json);
            json.WriteEndObject();
        }

        return new DataBlock(new SafeHtml(Encoding.UTF8.GetString(bytes.WrittenSpan)), new SafeHtml(Convert.ToBase64String(SHA256.HashData(bytes.WrittenSpan))));
    }
}
