using System.Collections.Concurrent;
using System.Globalization;
using System.Text;
using Markdig.Extensions.Tables;
using Markdig.Renderers;
using Markdig.Renderers.Html;
using Markdig.Renderers.Html.Inlines;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Journal.Site.Text;

/// <summary>
/// The library's renderer, with our own for headings, links, pictures, code and tables. One renders many texts, one after
/// the other: to make one takes as long as to render a short text.
/// </summary>
internal sealed class BodyRenderer
{
    private static readonly ConcurrentStack<BodyRenderer> Idle = [];

    private readonly StringBuilder text = new();
    private readonly ShiftedHeadings headings = new();
    private readonly ScrollingTables tables = new();
    private readonly HtmlRenderer renderer;

    private BodyRenderer()
    {
        renderer = new HtmlRenderer(new StringWriter(text, CultureInfo.InvariantCulture));
        renderer.ObjectRenderers.Replace<HeadingRenderer>(headings);
        renderer.ObjectRenderers.Replace<LinkInlineRenderer>(new Links(this));
        renderer.ObjectRenderers.Replace<AutolinkInlineRenderer>(new Autolinks(this));
        renderer.ObjectRenderers.Replace<CodeBlockRenderer>(new FocusableCode());
        renderer.ObjectRenderers.Add(tables);
    }

    private BodyHtml Body { get; set; } = null!;

    /// <summary>Blocks of a text as HTML.</summary>
    /// <param name="body">Knows where links and pictures lead.</param>
    /// <param name="document">The whole text.</param>
    /// <param name="blocks">Those to render: the text, or some of its paragraphs.</param>
    public static string Render(BodyHtml body, MarkdownDocument document, IEnumerable<MarkdownObject> blocks)
    {
        if (!Idle.TryPop(out var one))
        {
            one = new BodyRenderer();
        }

        one.Begin(body, document);
        foreach (var block in blocks)
        {
            one.renderer.Render(block);
        }

        var html = one.text.ToString();
        one.renderer.EnsureLine(); // So that the next text begins on a line of its own, and no line is put before it.
        one.Body = null!;
        Idle.Push(one);
        return html;
    }

    private void Begin(BodyHtml body, MarkdownDocument document)
    {
        text.Clear();
        (Body, tables.Count) = (body, 0);
        headings.Shift = 2 - document.Descendants<HeadingBlock>().Select(heading => heading.Level).DefaultIfEmpty(2).Min();
    }

    private sealed class ShiftedHeadings : HtmlObjectRenderer<HeadingBlock>
    {
        /// <summary>What is added to the level of each heading, so that the highest of a text is level 2.</summary>
        public int Shift { get; set; }

        protected override void Write(HtmlRenderer renderer, HeadingBlock obj)
        {
            var level = Math.Clamp(obj.Level + Shift, 2, 6);
            renderer.Write("<h").Write(level.ToString(CultureInfo.InvariantCulture)).Write('>');
            renderer.WriteLeafInline(obj);
            renderer.Write("</h").Write(level.ToString(CultureInfo.InvariantCulture)).WriteLine('>');
        }
    }

    private sealed class Links(BodyRenderer of) : HtmlObjectRenderer<LinkInline>
    {
        protected override void Write(HtmlRenderer renderer, LinkInline obj)
        {
            if (obj.IsImage)
            {
                WriteImage(renderer, obj);
            }
            else if (renderer.EnableHtmlForInline && of.Body.AddressOf(obj.Url ?? "") is { } address)
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
            if (of.Body.Picture(obj.Url) is { } picture)
            {
                renderer.Write(picture.Html.Markup);
                return;
            }

            // Its alternative text is written instead, plain, as in `alt`.
            var before = renderer.EnableHtmlForInline;
            renderer.EnableHtmlForInline = false;
            renderer.WriteChildren(obj);
            renderer.EnableHtmlForInline = before;
        }
    }

    private sealed class Autolinks(BodyRenderer of) : HtmlObjectRenderer<AutolinkInline>
    {
        protected override void Write(HtmlRenderer renderer, AutolinkInline obj)
        {
            var url = obj.IsEmail ? "mailto:" + obj.Url : obj.Url;
            if (renderer.EnableHtmlForInline && of.Body.AddressOf(url) is { } address)
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
        /// <summary>How many tables of the text were written so far: the number in the name that screen readers say.</summary>
        public int Count { get; set; }

        protected override void Write(HtmlRenderer renderer, Table obj)
        {
            Count++;
            renderer.EnsureLine().Write("<div class=\"scroll\" tabindex=\"0\" role=\"region\" aria-label=\"Table ").Write(Count.ToString(CultureInfo.InvariantCulture)).WriteLine(" in the text\"><table>");
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
