using System.Text.Json;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;

namespace Journal.Site.Tests.Pages;

/// <summary>What may stand on a page at all: elements and attributes that neither run, load from elsewhere nor restyle.</summary>
internal static class PageRules
{
    private static readonly HashSet<string> Elements =
    [
        "html", "head", "meta", "title", "link", "body", "script",
        "header", "footer", "main", "nav", "section", "article", "aside", "div", "span", "p", "h1", "h2", "h3", "h4", "h5", "h6", "hr", "br",
        "a", "abbr", "b", "blockquote", "code", "dd", "del", "details", "dl", "dt", "em", "figcaption", "figure", "i", "img", "picture", "source", "ins", "kbd", "li",
        "mark", "ol", "pre", "q", "s", "samp", "small", "strong", "sub", "summary", "sup", "time", "u", "ul", "var",
        "table", "caption", "thead", "tbody", "tfoot", "tr", "td", "th",
        "form", "label", "input", "button", "output", "search", "noscript", "template",
        "svg", "g", "path", "line", "rect", "circle", "text", "tspan", "title", "desc", "defs", "pattern", "marker", "polyline", "polygon", "clippath", "use",
    ];

    private static readonly HashSet<string> Banned =
        ["style", "srcdoc", "action", "formaction", "background", "poster", "data", "ping", "xlink:href", "dynsrc", "lowsrc", "manifest", "code", "archive", "target", "is", "nonce"];

    private static readonly string[] Schemes = ["http", "https", "mailto"];

    /// <summary>What stands on a page and must not, each with where.</summary>
    public static IEnumerable<string> Broken(IHtmlDocument page)
    {
        foreach (var element in page.All)
        {
            var name = element.LocalName.ToLowerInvariant();
            if (!Elements.Contains(name))
            {
                yield return $"<{name}>";
            }

            if (name == "script" && !IsPlainData(element) && (element.TextContent.Length > 0 || !IsWithin(element.GetAttribute("src"))))
            {
                yield return $"script: {element.OuterHtml}";
            }

            if (name == "meta" && element.GetAttribute("http-equiv") is { } equivalent && !equivalent.Equals("content-security-policy", StringComparison.OrdinalIgnoreCase) && !LeadsOnWithin(equivalent, element.GetAttribute("content") ?? ""))
            {
                yield return $"meta: {element.OuterHtml}";
            }

            foreach (var broken in element.Attributes.SelectMany(attribute => Broken(element, attribute)))
            {
                yield return broken;
            }
        }
    }

    /// <summary>Whether an address stays within the site.</summary>
    public static bool IsWithin(string? address) =>
        address is { Length: > 0 } && !address.Contains(':', StringComparison.Ordinal) && address[0] is not ('/' or '\\') && !address.Any(char.IsControl);

    // A block of JSON is never run; it must be JSON, and hold nothing that could end it.
    private static bool IsPlainData(IElement script)
    {
        if (script.GetAttribute("type") != "application/ld+json" || script.HasAttribute("src") || script.TextContent.Contains('<', StringComparison.Ordinal))
        {
            return false;
        }

        using var json = JsonDocument.Parse(script.TextContent);
        return json.RootElement.ValueKind is JsonValueKind.Object or JsonValueKind.Array;
    }

    private static IEnumerable<string> Broken(IElement element, IAttr attribute)
    {
        if (attribute.Name.StartsWith("on", StringComparison.OrdinalIgnoreCase) || Banned.Contains(attribute.Name.ToLowerInvariant()))
        {
            yield return $"{attribute.Name} on {element.LocalName}: {attribute.Value}";
        }

        if (attribute.Name is "src" or "srcset" && !IsWithin(attribute.Value))
        {
            yield return $"{attribute.Name} leads out: {attribute.Value}";
        }

        if (attribute.Name == "href" && attribute.Value.IndexOf(':', StringComparison.Ordinal) is >= 0 and var colon
            && !(element.LocalName == "a" && Schemes.Contains(attribute.Value[..colon])) && !(element is IHtmlLinkElement { Relation: "canonical" }))
        {
            yield return $"href on {element.LocalName}: {attribute.Value}";
        }
    }

    // A page at a former address leads on at once, to a page of the site.
    private static bool LeadsOnWithin(string equivalent, string content) =>
        equivalent == "refresh" && content.StartsWith("0; url=", StringComparison.Ordinal) && IsWithin(content["0; url=".Length..]);
}
