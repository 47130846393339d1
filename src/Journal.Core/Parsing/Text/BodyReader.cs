using Journal.Core.Model;
using Journal.Core.Parsing.Problems;
using Markdig;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Journal.Core.Parsing.Text;

/// <summary>Reads the Markdown of an entry: CommonMark and pipe tables.</summary>
internal sealed class BodyReader(string file, ProblemLog log)
{
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().UsePipeTables().UsePreciseSourceLocation().Build();

    private static readonly string[] OwnSchemes = ["part", "tool", "lesson", "entry"];

    /// <summary>The text with its links, and the pictures that stand in it; empty, with a problem, where it is refused.</summary>
    public (Body Body, IReadOnlyList<(Photo Photo, Place Place)> Photos) Read(string text, int firstLine)
    {
        var places = new LineStarts(text, file, firstLine);
        if (!IsWithinBounds(text, places))
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
            log.Add(ProblemTable.TextTooNested, places.AtLine(BodyBounds.DeepestLineOf(places)));
            return (Body.Empty, []);
        }

        if (Nesting.TooDeepIn(document) is { } deep)
        {
            log.Add(ProblemTable.TextTooNested, places.At(Math.Clamp(deep.Span.Start, 0, text.Length)));
            return (Body.Empty, []);
        }

        var (links, photos, holdsHtml) = (new List<BodyLink>(), new List<(Photo, Place)>(), false);
        var tags = new OpenTags();
        foreach (var node in document.Descendants())
        {
            switch (node)
            {
                case LinkInline { IsImage: true } image when IsLocal(image.Url):
                    photos.Add((new Photo { File = Uri.UnescapeDataString(image.Url!), Alt = WordsOf(image) }, places.At(image.Span.Start)));
                    break;
                case LinkInline { IsImage: true } image:
                    log.Add(ProblemTable.PictureOutside, places.At(image.Span.Start), image.Url ?? "");
                    break;
                case LinkInline link:
                    Follow(link.Url ?? "", places.At(link.Span.Start), links);
                    break;
                case AutolinkInline link:
                    Follow(link.IsEmail ? "mailto:" + link.Url : link.Url, places.At(link.Span.Start), links);
                    break;
                case HtmlBlock or HtmlInline:
                    holdsHtml = true;
                    if (tags.AreTooManyAfter(node is HtmlBlock block ? block.Lines.ToString() : ((HtmlInline)node).Tag))
                    {
                        log.Add(ProblemTable.TextTooNested, places.At(node.Span.Start));
                        return (Body.Empty, []);
                    }

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
            log.Add(ProblemTable.LinkRefused, place, url);
        }
    }


    private static bool IsLocal(string? url) => !string.IsNullOrEmpty(url) && !url.Contains(':', StringComparison.Ordinal) && !url.StartsWith("//", StringComparison.Ordinal);

    private static string? WordsOf(LinkInline image)
    {
        var words = string.Concat(image.Descendants().OfType<LiteralInline>().Select(literal => literal.Content.ToString())).Trim();
        return words.Length == 0 ? null : words;
    }

    private bool IsWithinBounds(string text, LineStarts places)
    {
        if (text.Length > BodyBounds.LongestBody)
        {
            log.Add(ProblemTable.BodyTooLong, places.AtLine(0), text.Length, BodyBounds.LongestBody);
            return false;
        }

        switch (BodyBounds.Excess(places))
        {
            case null:
                return true;
            case (var line, true):
                log.Add(ProblemTable.TableTooLarge, places.AtLine(line), BodyBounds.WidestTable, BodyBounds.MostCells);
                return false;
            case (var line, false):
                log.Add(ProblemTable.TextTooNested, places.AtLine(line));
                return false;
        }
    }
}
