using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Journal.Core.Parsing.Text;

/// <summary>
/// How deep a parsed text is nested. Signs that open a link or an emphasis and find no end nest as well, each in the one
/// before; the library reads more of them than it can write out (128).
/// </summary>
internal static class Nesting
{
    private const int Deepest = 100;

    /// <summary>What first lies too deep to be shown; null where nothing does.</summary>
    public static MarkdownObject? TooDeepIn(MarkdownDocument document) => TooDeepIn(document, 0);

    private static MarkdownObject? TooDeepIn(MarkdownObject node, int depth)
    {
        if (depth > Deepest)
        {
            return node;
        }

        switch (node)
        {
            case ContainerBlock block:
                foreach (var child in block)
                {
                    if (TooDeepIn(child, depth + 1) is { } deep)
                    {
                        return deep;
                    }
                }

                return null;
            case LeafBlock { Inline: { } inline }:
                return TooDeepIn(inline, depth + 1);
            case ContainerInline inlines:
                foreach (var child in inlines)
                {
                    if (TooDeepIn(child, depth + 1) is { } deep)
                    {
                        return deep;
                    }
                }

                return null;
            default:
                return null;
        }
    }
}
