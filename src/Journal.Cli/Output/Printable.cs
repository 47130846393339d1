using System.Globalization;
using System.Text;

namespace Journal.Cli.Output;

/// <summary>
/// Texts from the maker's files made safe to show: a note copied from elsewhere must not move the cursor, recolour the
/// screen or turn the reading direction round.
/// </summary>
internal static class Printable
{
    /// <summary>The text with every control character as a space, line ends among them.</summary>
    public static string Of(string text)
    {
        if (!text.Any(IsUnsafe))
        {
            return text;
        }

        var safe = new StringBuilder(text.Length);
        foreach (var letter in text)
        {
            safe.Append(IsUnsafe(letter) ? ' ' : letter);
        }

        return safe.ToString();
    }

    // Controls, line and paragraph separators, and the embeddings, overrides and isolates of the Unicode bidirectional algorithm (UAX #9).
    private static bool IsUnsafe(char letter) =>
        char.GetUnicodeCategory(letter) is UnicodeCategory.Control or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator
        || letter is (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069');
}
