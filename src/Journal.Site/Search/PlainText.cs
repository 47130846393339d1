using System.Text;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Journal.Site.Search;

/// <summary>The words of a Markdown text without its marks, addresses and raw HTML.</summary>
internal static class PlainText
{
    /// <summary>
    /// The words on one line, with single blanks between. The words of a picture are left out: its caption has them, where it
    /// may be shown.
    /// </summary>
    public static string Of(MarkdownDocument document)
    {
        var text = new StringBuilder(Math.Max(16, document.Span.Length));
        foreach (var block in document.Descendants<LeafBlock>())
        {
            if (block is HtmlBlock or LinkReferenceDefinition)
            {
                continue;
            }

            if (text.Length > 0 && text[^1] != ' ')
            {
                text.Append(' ');
            }

            if (block.Inline is { } inline)
            {
                Append(text, inline);
            }
            else
            {
                text.Append(block.Lines.ToString());
            }
        }

        return OneLine(text.ToString());
    }

    /// <summary>A text with every stretch of blanks and line ends made one blank, and none at its ends.</summary>
    public static string OneLine(string text) => IsOneLine(text) ? text : string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private static bool IsOneLine(string text)
    {
        var isWord = false;
        foreach (var letter in text)
        {
            if (letter is ' ' ? !isWord : char.IsWhiteSpace(letter))
            {
                return false;
            }

            isWord = letter != ' ';
        }

        return isWord || text.Length == 0;
    }

    private static void Append(StringBuilder text, ContainerInline container)
    {
        foreach (var inline in container)
        {
            _ = inline switch
            {
                LiteralInline literal => text.Append(literal.Content.AsSpan()),
                CodeInline code => text.Append(code.Content),
                HtmlEntityInline entity => text.Append(entity.Transcoded.AsSpan()),
                AutolinkInline address => text.Append(address.Url),
                LineBreakInline => text.Append(' '),
                _ => text,
            };

            // What a picture that stands in the text shows is said by its caption, where the picture may be seen.
            if (inline is ContainerInline inner and not LinkInline { IsImage: true })
            {
                Append(text, inner);
            }
        }
    }
}
