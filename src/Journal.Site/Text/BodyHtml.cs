using System.Globalization;
using Ganss.Xss;
using Journal.Core.Model;
using Journal.Site.Templates;
using Markdig.Extensions.Tables;
using Markdig.Renderers;
using Markdig.Renderers.Html;
using Markdig.Renderers.Html.Inlines;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Journal.Site.Text;

/// <summary>Where the links and pictures of a text lead on one page.</summary>
internal interface ITextTargets
{
    /// <summary>The address of a link's target, relative to the page; null for plain text.</summary>
    string? AddressOf(LinkTarget target);

    /// <summary>The HTML of a picture that stands in the text; null where it is not shown.</summary>
    Html? PictureOf(string written);
}

/// <summary>
/// Makes HTML of an entry's text. Only allow-listed addresses survive; raw HTML goes through the sanitiser, and only
/// texts that hold some pay for it.
/// </summary>
internal sealed class BodyHtml(ITextTargets targets)
{
    private static readonly HtmlSanitizer Sanitiser = CreateSanitiser();

    /// <summary>The text as HTML. Headings begin at the second level, because the page's title is the first.</summary>
    public Html Render(Body body)
    {
        if (body.Document.Count == 0)
        {
            return Html.Empty;
        }

        var resolved = body.Links.GroupBy(link => link.Written, StringComparer.Ordinal).ToDictionary(same => same.Key, same => same.First().Target, StringComparer.Ordinal);
        return new Html(Render(body.Document, resolved, body.HoldsHtml));
    }

    private string Render(MarkdownDocument document, Dictionary<string, LinkTarget?> links, bool holdsHtml)
    {
        using var writer = new StringWriter(CultureInfo.InvariantCulture) { NewLine = "\n" };
        var renderer = new HtmlRenderer(writer);
        renderer.ObjectRenderers.Replace<HeadingRenderer>(new ShiftedHeadings(Shift(document)));
        renderer.ObjectRenderers.Replace<LinkInlineRenderer>(new Links(this, links));
        renderer.ObjectRenderers.Replace<AutolinkInlineRenderer>(new Autolinks(this, links));
        renderer.ObjectRenderers.Replace<CodeBlockRenderer>(new FocusableCode());
        renderer.ObjectRenderers.AddIfNotAlready<ScrollingTables>();
        renderer.Render(document);
        writer.Flush();
        return holdsHtml ? Sanitise(writer.ToString()) : writer.ToString();
    }

    private static string Sanitise(string html)
    {
        // One sanitiser serves all threads, one at a time: it is rarely needed and dear to make.
        lock (Sanitiser)
        {
            return Sanitiser.Sanitize(html);
        }
    }

    private static HtmlSanitizer CreateSanitiser()
    {
        var sanitiser = new HtmlSanitizer { KeepChildNodes = false };
        sanitiser.AllowedTags.Clear();
        sanitiser.AllowedTags.UnionWith(
        [
            "a", "abbr", "b", "blockquote", "br", "code", "dd", "del", "details", "div", "dl", "dt", "em", "figcaption", "figure", "h2", "h3", "h4", "h5", "h6",
            "hr", "i", "img", "picture", "source", "ins", "kbd", "li", "mark", "ol", "p", "pre", "q", "s", "samp", "small", "span", "strong", "sub", "summary", "sup", "table",
            "tbody", "td", "tfoot", "th", "thead", "time", "tr", "u", "ul", "var",
        ]);
        sanitiser.AllowedAttributes.Clear();
        sanitiser.AllowedAttributes.UnionWith(["href", "src", "srcset", "sizes", "type", "decoding", "alt", "title", "width", "height", "datetime", "colspan", "rowspan", "scope", "start", "class", "tabindex", "role", "aria-label", "loading"]);
        sanitiser.AllowedClasses.UnionWith(["scroll", "num", "photo", "plate"]);
        sanitiser.AllowedSchemes.Clear();
        sanitiser.AllowedSchemes.UnionWith(["http", "https", "mailto"]);
        sanitiser.AllowedCssProperties.Clear();
        sanitiser.AllowedAtRules.Clear();

        // A picture from elsewhere would be a request to another host.
        sanitiser.FilterUrl += (_, e) =>
        {
            if (e.Tag.NodeName == "IMG" && e.OriginalUrl.Contains(':', StringComparison.Ordinal))
            {
                e.SanitizedUrl = null;
            }
        };
        return sanitiser;
    }

    private static int Shift(MarkdownDocument document)
    {
        var top = document.Descendants<HeadingBlock>().Select(heading => heading.Level).DefaultIfEmpty(2).Min();
        return 2 - top;
    }

    private string? AddressOf(string url, Dictionary<string, LinkTarget?> links) => links.TryGetValue(url, out var target)
        ? target is { } known ? targets.AddressOf(known) : null
        : SafeAddress.IsSafe(url) ? url : null;

    private sealed class ShiftedHeadings(int shift) : HtmlObjectRenderer<HeadingBlock>
    {
        protected override void Write(HtmlRenderer renderer, HeadingBlock obj)
        {
            var level = Math.Clamp(obj.Level + shift, 2, 6);
            renderer.Write("<h").Write(level.ToString(CultureInfo.InvariantCulture)).Write('>');
            renderer.WriteLeafInline(obj);
            renderer.Write("</h").Write(level.ToString(CultureInfo.InvariantCulture)).WriteLine('>');
        }
    }

    private sealed class Links(BodyHtml body, Dictionary<string, LinkTarget?> links) : HtmlObjectRenderer<LinkInline>
    {
        protected override void Write(HtmlRenderer renderer, LinkInline obj)
        {
            if (obj.IsImage)
            {
                WriteImage(renderer, obj);
            }
            else if (body.AddressOf(obj.Url ?? "", links) is { } address)
            {
                renderer.Write("<a href=\"").WriteEscapeUrl(address).Write('"');
                if (!string.IsNullOrEmpty(obj.Title))
                {
                    renderer.Write(" title=\"").WriteEscape(obj.Title).Write('"');
                }

                renderer.Write('>');
                renderer.WriteChildren(obj);
                renderer.Write("</a>");
            }
            else
            {
                renderer.WriteChildren(obj);
            }
        }

        private void WriteImage(HtmlRenderer renderer, LinkInline obj)
        {
            if (body.Picture(obj.Url) is { } picture)
            {
                renderer.Write(picture.Markup);
            }
            else
            {
                renderer.WriteChildren(obj);
            }
        }
    }

    private Html? Picture(string? url) => url is null ? null : targets.PictureOf(Uri.UnescapeDataString(url));

    private sealed class Autolinks(BodyHtml body, Dictionary<string, LinkTarget?> links) : HtmlObjectRenderer<AutolinkInline>
    {
        protected override void Write(HtmlRenderer renderer, AutolinkInline obj)
        {
            var url = obj.IsEmail ? "mailto:" + obj.Url : obj.Url;
            if (body.AddressOf(url, links) is { } address)
            {
                renderer.Write("<a href=\"").WriteEscapeUrl(address).Write("\">").WriteEscape(obj.Url).Write("</a>");
            }
            else
            {
                renderer.WriteEscape(obj.Url);
            }
        }
    }

    // A block that scrolls must be reachable by the keyboard.
    private sealed class FocusableCode : HtmlObjectRenderer<CodeBlock>
    {
        protected override void Write(HtmlRenderer renderer, CodeBlock obj)
        {
            renderer.EnsureLine().Write("<pre tabindex=\"0\"><code>");
            renderer.WriteLeafRawLines(obj, writeEndOfLines: true, escape: true);
            renderer.WriteLine("</code></pre>");
        }
    }

    private sealed class ScrollingTables : HtmlObjectRenderer<Table>
    {
        private static readonly HtmlTableRenderer Inner = new();

        protected override void Write(HtmlRenderer renderer, Table obj)
        {
            renderer.EnsureLine().WriteLine("<div class=\"scroll\" tabindex=\"0\" role=\"region\" aria-label=\"Table\">");
            foreach (var definition in obj.ColumnDefinitions)
            {
                definition.Alignment ??= null;
            }

            Inner.Write(renderer, obj);
            renderer.EnsureLine().WriteLine("</div>");
        }
    }
}
