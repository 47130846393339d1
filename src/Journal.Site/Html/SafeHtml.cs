using System.Buffers;
using System.Text;

namespace Journal.Site.Html;

/// <summary>
/// Text that is HTML already and is written as it is. Everything else that a template writes is escaped, so whatever
/// becomes one of these must have been made by us or gone through the sanitiser.
/// </summary>
public readonly record struct SafeHtml(string Markup)
{
    private static readonly SearchValues<char> WithMeaning = SearchValues.Create([.. "&<>\"'", .. Unprintable.Letters]);

    /// <summary>Nothing.</summary>
    public static SafeHtml Empty => new("");

    /// <summary>Whether there is nothing to write.</summary>
    public bool IsEmpty => string.IsNullOrEmpty(Markup);

    /// <summary>HTML for a plain text.</summary>
    public static SafeHtml Of(string text) => new(Escape(text));

    /// <summary>A text with the five characters escaped that HTML gives a meaning, and none that it forbids.</summary>
    public static string Escape(string text)
    {
        if (text.AsSpan().IndexOfAny(WithMeaning) < 0)
        {
            return text;
        }

        var escaped = new StringBuilder(text.Length + 16);
        foreach (var letter in text)
        {
            _ = letter switch
            {
                '&' => escaped.Append("&amp;"),
                '<' => escaped.Append("&lt;"),
                '>' => escaped.Append("&gt;"),
                '"' => escaped.Append("&quot;"),
                '\'' => escaped.Append("&#39;"),
                _ => escaped.Append(Unprintable.Contains(letter) ? '\uFFFD' : letter),
            };
        }

        return escaped.ToString();
    }

    /// <inheritdoc/>
    public override string ToString() => Markup ?? "";
}
