using Journal.Core.Model;
using Journal.Core.Reading.Problems;
using Markdig;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Journal.Core.Reading.Text;

/// <summary>
/// Reads the Markdown of an entry: CommonMark and pipe tables. What the library would take minutes or gigabytes for
/// is refused before it sees it.
/// </summary>
internal sealed class BodyReader(string file, ProblemLog log)
{
    /// <summary>A very long evening.</summary>
    private const int LongestBody = 64 * 1024;

    private const int WidestTable = 64;
    private const int MostOpenBrackets = 1500;
    private const int DeepestNesting = 24;

    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().UsePipeTables().UsePreciseSourceLocation().Build();

    private static readonly string[] OwnSchemes = ["part", "tool", "lesson", "entry"];

    /// <summary>The text with its links, and the pictures that stand in it; empty, with a problem, where it is refused.</summary>
    public (Body Body, IReadOnlyList<(Photo Photo, Place Place)> Photos) Read(string text, int firstLine)
    {
        if (!IsWithinBounds(text, firstLine))
        {
            return (Body.Empty, []);
        }

        MarkdownDocument document;
        try
        {
            document = Markdown.Parse(text, Pipeline);
        }
        catch (ArgumentException)
        {
            // The library's own limit on nesting, told without a position.
            log.Add(ProblemTable.TextTooNested, new Place(file, firstLine, 1));
            return (Body.Empty, []);
        }

        var (links, photos, holdsHtml) = (new List<BodyLink>(), new List<(Photo, Place)>(), false);
        foreach (var node in document.Descendants())
        {
            switch (node)
            {
                case LinkInline { IsImage: true } image when IsLocal(image.Url):
                    photos.Add((new Photo { File = Uri.UnescapeDataString(image.Url!), Alt = WordsOf(image) }, PlaceOf(image, firstLine)));
                    break;
                case LinkInline { IsImage: true } elsewhere:
                    log.Add(ProblemTable.PictureOutside, PlaceOf(elsewhere, firstLine), Shortened(elsewhere.Url ?? ""));
                    break;
                case LinkInline link:
                    Follow(link.Url ?? "", PlaceOf(link, firstLine), links);
                    break;
                case AutolinkInline link:
                    Follow(link.IsEmail ? "mailto:" + link.Url : link.Url, PlaceOf(link, firstLine), links);
                    break;
                case HtmlBlock or HtmlInline:
                    holdsHtml = true;
                    break;
            }
        }

        return (new Body(text, firstLine, document, links, holdsHtml), photos);
    }

    private void Follow(string url, Place place, List<BodyLink> links)
    {
        var colon = url.IndexOf(':', StringComparison.Ordinal);
        if (colon > 0 && OwnSchemes.Contains(url[..colon]))
        {
            links.Add(new BodyLink(url, Target: null, place));
        }
        else if (!SafeAddress.IsSafe(url))
        {
            log.Add(ProblemTable.LinkRefused, place, Shortened(url));
        }
    }

    private static string Shortened(string url) => url.Length > 80 ? url[..80] + "…" : url;

    private static bool IsLocal(string? url) => !string.IsNullOrEmpty(url) && !url.Contains(':', StringComparison.Ordinal) && !url.StartsWith("//", StringComparison.Ordinal);

    private static string? WordsOf(LinkInline image)
    {
        var words = string.Concat(image.Descendants().OfType<LiteralInline>().Select(literal => literal.Content.ToString())).Trim();
        return words.Length == 0 ? null : words;
    }

    private Place PlaceOf(MarkdownObject node, int firstLine) => new(file, firstLine + node.Line, node.Column + 1);

    private bool IsWithinBounds(string text, int firstLine)
    {
        if (text.Length > LongestBody)
        {
            log.Add(ProblemTable.BodyTooLong, new Place(file, firstLine, 1), text.Length, LongestBody);
            return false;
        }

        var (line, open) = (firstLine, 0);
        foreach (var row in text.AsSpan().EnumerateLines())
        {
            if (row.Count('|') > WidestTable + 1)
            {
                log.Add(ProblemTable.TableTooWide, new Place(file, line, 1), WidestTable);
                return false;
            }

            open += row.Count('[') + row.Count('<');
            if (open > MostOpenBrackets || Nesting(row) > DeepestNesting)
            {
                log.Add(ProblemTable.TextTooNested, new Place(file, line, 1));
                return false;
            }

            line++;
        }

        return true;
    }

    // How many quotes and list items a line opens before its first word.
    private static int Nesting(ReadOnlySpan<char> row)
    {
        var (depth, indent) = (0, 0);
        for (var i = 0; i < row.Length; i++)
        {
            var isMark = row[i] == '>' || (row[i] is '-' or '+' or '*' && i + 1 < row.Length && row[i + 1] is ' ' or '\t');
            if (isMark)
            {
                depth++;
            }
            else if (row[i] is ' ' or '\t')
            {
                indent++;
            }
            else if (!char.IsAsciiDigit(row[i]) && row[i] is not ('.' or ')'))
            {
                break;
            }
            else if (row[i] is '.' or ')')
            {
                depth++;
            }
        }

        return Math.Max(depth, indent / 4);
    }
}
