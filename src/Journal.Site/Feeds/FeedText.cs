using System.Text;
using System.Text.Encodings.Web;
using System.Xml;
using Journal.Site.Html;

namespace Journal.Site.Feeds;

/// <summary>The text of an entry as feeds hold it.</summary>
internal static class FeedText
{
    /// <summary>How JSON is written in the feed.</summary>
    public static readonly JavaScriptEncoder JsonEncoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping;

    /// <summary>How XML is written in the feed.</summary>
    public static readonly XmlWriterSettings Xml = new() { Encoding = new UTF8Encoding(false), Indent = true, NewLineChars = "\n" };

    /// <summary>The text of an entry's page. In a feed it stands at another place, so addresses are made from the root of the site.</summary>
    /// <param name="prose">As on the entry's page.</param>
    /// <param name="home">Where the site stands; empty for no absolute addresses.</param>
    public static SafeHtml Of(SafeHtml prose, string home) => new(prose.Markup
        .Replace("=\"../../", "=\"" + SafeHtml.Escape(home), StringComparison.Ordinal)
        .Replace(" tabindex=\"0\"", "", StringComparison.Ordinal));
}
