using System.Globalization;
using System.Text;

namespace Journal.Core.Parsing.Problems;

/// <summary>
/// Makes what a maker wrote fit to be quoted in a message: one line, of bounded length, without signs that a
/// terminal obeys or that turn the reading direction (Unicode Standard Annex 9, table of explicit controls).
/// </summary>
internal static class Printable
{
    private const int Longest = 400;

    public static string Of(string written)
    {
        var text = written.Length > Longest ? $"{written[..Longest]}…" : written;
        if (!text.Any(IsUnfit))
        {
            return text;
        }

        var clean = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            clean.Append(rune.IsBmp && IsControl((char)rune.Value) ? Rune.ReplacementChar : rune);
        }

        return clean.ToString();
    }

    private static bool IsUnfit(char letter) => char.IsSurrogate(letter) || IsControl(letter);

    private static bool IsControl(char letter) => char.GetUnicodeCategory(letter) is UnicodeCategory.Control or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator
        || letter is '\u061C' or '\u200E' or '\u200F' or (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069');
}
