using AngleSharp.Dom;
using Ganss.Xss;

namespace Journal.Site.Text;

/// <summary>
/// Takes out of raw HTML all that could run, load, restyle or mislead: what is left are words, tables, pictures of the
/// journal and links that are known to lead somewhere.
/// </summary>
internal sealed class Sanitiser
{
    private readonly HtmlSanitizer inner = Create();
    private IReadOnlySet<string> within = new HashSet<string>();

    /// <summary>A sanitiser for any number of texts and threads.</summary>
    public Sanitiser()
    {
        // A picture from elsewhere would be a request to another host; an address within the site that we did not make
        // leads nowhere.
        inner.FilterUrl += (_, found) =>
        {
            if (!within.Contains(found.OriginalUrl) && (found.Tag.NodeName == "IMG" || !Core.Model.SafeAddress.IsSafe(found.OriginalUrl)))
            {
                found.SanitizedUrl = null;
            }
        };
        inner.PostProcessNode += (_, found) =>
        {
            switch (found.Node)
            {
                case IElement { NodeName: "IMG" } picture when !picture.HasAttribute("src"):
                    picture.Remove();
                    break;
                case IElement { NodeName: "PRE" } code:
                    // A block that scrolls must be reachable by the keyboard.
                    code.SetAttribute("tabindex", "0");
                    break;
            }
        };
    }

    /// <summary>Cleans the HTML of a text.</summary>
    /// <param name="html">The text, our own HTML and raw HTML mixed.</param>
    /// <param name="addresses">The addresses within the site that it may use.</param>
    public string Clean(string html, IReadOnlySet<string> addresses)
    {
        // One sanitiser serves all threads, one at a time: it is rarely needed, and making one takes long.
        lock (inner)
        {
            within = addresses;
            return inner.Sanitize(html);
        }
    }

    private static HtmlSanitizer Create()
    {
        var sanitiser = new HtmlSanitizer { KeepChildNodes = false };
        sanitiser.AllowedTags.Clear();
        sanitiser.AllowedTags.UnionWith(
        [
            "a", "abbr", "b", "blockquote", "br", "code", "dd", "del", "details", "div", "dl", "dt", "em", "figcaption", "figure", "h2", "h3", "h4", "h5", "h6",
            "hr", "i", "img", "ins", "kbd", "li", "mark", "ol", "p", "picture", "pre", "q", "s", "samp", "small", "span", "strong", "sub", "summary", "sup", "table",
            "tbody", "td", "tfoot", "th", "thead", "time", "tr", "u", "ul", "var",
        ]);
        sanitiser.AllowedAttributes.Clear();
        sanitiser.AllowedAttributes.UnionWith(["href", "src", "alt", "title", "width", "height", "datetime", "colspan", "rowspan", "scope", "start", "class", "tabindex", "role", "aria-label", "loading"]);
        sanitiser.AllowedClasses.UnionWith(["scroll", "num"]);
        sanitiser.AllowedSchemes.Clear();
        sanitiser.AllowedSchemes.UnionWith(["http", "https", "mailto"]);
        sanitiser.AllowedCssProperties.Clear();
        sanitiser.AllowedAtRules.Clear();
        return sanitiser;
    }
}
