using System.Globalization;
using System.Text;

namespace Journal.Core.Parsing.Text;

/// <summary>
/// Makes what a maker wrote safe to show on one line: text copied from elsewhere must not move the cursor, recolour the
/// screen, or turn the reading direction round (Unicode Standard Annex 9, explicit formatting characters and marks).
/// </summary>
public static class Printable
{
    private const int LongestQuoted = 400;

    /// <summary>The text with each unsafe character, line ends among them, as a space.</summary>
    public static string Of(string text) => text.Any(IsUnsafe) ? string.Concat(text.Select(letter => IsUnsafe(letter) ? ' ' : letter)) : text;

    /// <summary>
    /// The text as a message quotes it: no longer than 400 characters, each unsafe character shown as U+FFFD, and half a
    /// surrogate pair too.
    /// </summary>
    public static string Quoted(string written)
    {
        var text = written.Length > LongestQuoted ? $"{written[..LongestQuoted]}…" : written;
        if (!text.Any(letter => char.IsSurrogate(letter) || IsUnsafe(letter)))
        {
            return text;
        }

        var clean = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            clean.Append(rune.IsBmp && IsUnsafe((char)rune.Value) ? Rune.ReplacementChar : rune);
        }

        return clean.ToString();
    }

    private static bool IsUnsafe(char letter) =>
        char.GetUnicodeCategory(letter) is UnicodeCategory.Control or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator
        || letter is '\u061C' or '\u200E' or '\u200F' or (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069');
}
