using System.Buffers;
using System.Text;

namespace Journal.Site.Html;

/// <summary>
/// Characters that neither HTML (HTML Living Standard, 13.2.3.5, from memory) nor XML 1.0 (section 2.2) lets stand in a
/// text: controls and noncharacters. On a page each becomes the mark for a character that could not be shown.
/// </summary>
internal static class Unprintable
{
    private const char Mark = '\uFFFD';

    private static readonly SearchValues<char> All = SearchValues.Create([.. Letters]);

    /// <summary>Whether a character must not stand in a text.</summary>
    public static bool Contains(char letter) => All.Contains(letter);

    /// <summary>All of them, to look for them at once with others.</summary>
    public static IEnumerable<char> Letters => Enumerable.Range(0, 0x10000).Select(code => (char)code).Where(IsUnprintable);

    /// <summary>A text that may stand on any page and in any feed.</summary>
    public static string Replace(string text)
    {
        if (text.AsSpan().IndexOfAny(All) >= 0)
        {
            text = string.Create(text.Length, text, (clean, from) =>
            {
                for (var i = 0; i < from.Length; i++)
                {
                    clean[i] = All.Contains(from[i]) ? Mark : from[i];
                }
            });
        }

        // Halves of a pair that stand alone become marks on the way through UTF-8.
        return text.AsSpan().IndexOfAnyInRange('\uD800', '\uDFFF') < 0 ? text : Encoding.UTF8.GetString(Encoding.UTF8.GetBytes(text));
    }

    private static bool IsUnprintable(char letter) =>
        (char.IsControl(letter) && letter is not ('\t' or '\n' or '\r')) || letter is '\uFFFE' or '\uFFFF' or (>= '\uFDD0' and <= '\uFDEF');
}
