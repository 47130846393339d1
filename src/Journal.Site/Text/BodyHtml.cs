using System.Globalization;
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

    /// <summary>A picture that stands in the text; null where there is none of that name, so that its words stand instead.</summary>
    TextPicture? PictureOf(string written);
}

/// <summary>A picture in a text.</summary>
/// <param name="Address">Where it lies, relative to the page; null where it is not to be shown, nor its words.</param>
/// <param name="Html">What stands in the text.</param>
internal sealed record TextPicture(string? Address, Html Html);

/// <summary>
/// Makes HTML of an entry's text. Only allow-listed addresses survive; raw HTML goes through the sanitiser, and only
/// texts that hold some pay for it.
/// </summary>
internal sealed class BodyHtml(ITextTargets targets)
{
    private static readonly Sanitiser Sanitiser = new();

    // Addresses within the site that this text leads to. Raw HTML may use no others: only these are known to exist.
    private readonly HashSet<string> within = new(StringComparer.Ordinal);

    /// <summary>The text as HTML. Headings begin at the second level, because the page's title is the first.</summary>
    public Html Render(Body body)
    {
        if (body.Document.Count == 0)
        {
            return Html.Empty;
        }

        return new Html(Render(body, [body.Document]));
    }

    /// <summary>Some paragraphs of the text as HTML.</summary>
    public Html Render(Body body, IReadOnlyList<ParagraphBlock> paragraphs) => new(Render(body, (IReadOnlyList<MarkdownObject>)paragraphs));

    private string Render(Body body, IReadOnlyList<MarkdownObject> blocks)
    {
        var links = body.Links.GroupBy(link => link.Written, StringComparer.Ordinal).ToDictionary(same => same.Key, same => same.First().Target, StringComparer.Ordinal);
        using var writer = new StringWriter(CultureInfo.InvariantCulture) { NewLine = "\n" };
        var renderer = new HtmlRenderer(writer);
        renderer.ObjectRenderers.Replace<HeadingRenderer>(new ShiftedHeadings(Shift(body.Document)));
        renderer.ObjectRenderers.Replace<LinkInlineRenderer>(new Links(this, links));
        renderer.ObjectRenderers.Replace<AutolinkInlineRenderer>(new Autolinks(this, links));
        renderer.ObjectRenderers.Replace<CodeBlockRenderer>(new FocusableCode());
        renderer.ObjectRenderers.Add(new ScrollingTables());
        foreach (var block in blocks)
        {
            renderer.Render(block);
        }

        writer.Flush();
        var html = Unprintable.Replace(writer.ToString());
        return body.HoldsHtml ? Sanitiser.Clean(html, within) : html;
    }

    private static int Shift(MarkdownDocument document)
    {
        var top = document.Descendants<HeadingBlock>().Select(heading => heading.Level).DefaultIfEmpty(2).Min();
        return 2 - top;
    }

    private string? AddressOf(string url, Dictionary<string, LinkTarget?> links)
    {
        if (!links.TryGetValue(url, out var target))
        {
            return SafeAddress.IsSafe(url) ? url : null;
        }

        var address = target is { } known ? targets.AddressOf(known) : null;
        if (address is not null)
        {
            within.Add(address);
        }

        return address;
    }

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
            else if (renderer.EnableHtmlForInline && body.AddressOf(obj.Url ?? "", links) is { } address)
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
                renderer.Write(picture.Html.Markup);
                return;
            }

            // Its words stand instead, plain as they would have been in `alt`.
            var before = renderer.EnableHtmlForInline;
            renderer.EnableHtmlForInline = false;
            renderer.WriteChildren(obj);
            renderer.EnableHtmlForInline = before;
        }
    }

    private TextPicture? Picture(string? url)
    {
        var picture = url is null ? null : targets.PictureOf(Uri.UnescapeDataString(url));
        if (picture?.Address is { } address)
        {
            within.Add(address);
        }

        return picture;
    }

    private sealed class Autolinks(BodyHtml body, Dictionary<string, LinkTarget?> links) : HtmlObjectRenderer<AutolinkInline>
    {
        protected override void Write(HtmlRenderer renderer, AutolinkInline obj)
        {
            var url = obj.IsEmail ? "mailto:" + obj.Url : obj.Url;
            if (renderer.EnableHtmlForInline && body.AddressOf(url, links) is { } address)
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

    // Columns to the right are columns of figures; inline styles are not allowed on our pages.
    private sealed class ScrollingTables : HtmlObjectRenderer<Table>
    {
        private int count;

        protected override void Write(HtmlRenderer renderer, Table obj)
        {
            count++;
            renderer.EnsureLine().Write("<div class=\"scroll\" tabindex=\"0\" role=\"region\" aria-label=\"Table ").Write(count.ToString(CultureInfo.InvariantCulture)).WriteLine(" in the text\"><table>");
            foreach (var group in obj.OfType<TableRow>().GroupBy(row => row.IsHeader))
            {
                var name = group.Key ? "thead" : "tbody";
                renderer.Write('<').Write(name).WriteLine('>');
                foreach (var row in group)
                {
                    WriteRow(renderer, row, obj.ColumnDefinitions);
                }

                renderer.Write("</").Write(name).WriteLine('>');
            }

            renderer.WriteLine("</table></div>");
        }

        private static void WriteRow(HtmlRenderer renderer, TableRow row, List<TableColumnDefinition> columns)
        {
            renderer.Write("<tr>");
            foreach (var (at, cell) in row.OfType<TableCell>().Index())
            {
                var name = row.IsHeader ? "th" : "td";
                renderer.Write('<').Write(name).Write(row.IsHeader ? " scope=\"col\"" : "");
                renderer.Write(at < columns.Count && columns[at].Alignment == TableColumnAlign.Right ? " class=\"num\">" : ">");
                var before = renderer.ImplicitParagraph;
                renderer.ImplicitParagraph = true;
                renderer.WriteChildren(cell);
                renderer.ImplicitParagraph = before;
                renderer.Write("</").Write(name).Write('>');
            }

            renderer.WriteLine("</tr>");
        }
    }
}
