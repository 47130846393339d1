using System.Globalization;

namespace Journal.Site.Charts;

/// <summary>
/// How much room lettering takes. The reader's own typeface is not known, so widths are those of a plain sans at
/// 13 px, a little on the wide side; the narrowest picture is the one on a screen of 320 px (WCAG 2.2, 1.4.10).
/// </summary>
internal static class Lettering
{
    /// <summary>The width of the narrowest picture, in pixels.</summary>
    public const double NarrowestPicture = 288;

    /// <summary>From one line of lettering to the next, in pixels.</summary>
    public const double LineHeight = 15;

    private const int MostLines = 2;

    /// <summary>The width of a text, in pixels.</summary>
    public static double Width(string text) => Elements(text).Sum(ElementWidth);

    /// <summary>A text broken between words into at most two lines; what does not fit ends in an ellipsis.</summary>
    /// <param name="text">The text.</param>
    /// <param name="room">The width of a line, in pixels.</param>
    public static IReadOnlyList<string> Lines(string text, double room)
    {
        var lines = new List<string>();
        var rest = Elements(text);
        while (rest.Count > 0 && lines.Count < MostLines - 1 && Fitting(rest, room) < rest.Count)
        {
            var end = LineEnd(rest, room);
            lines.Add(string.Concat(rest.Take(end)).TrimEnd());
            rest = [.. rest.Skip(end).SkipWhile(string.IsNullOrWhiteSpace)];
        }

        lines.Add(Shortened(rest, room));
        return lines;
    }

    private static string Shortened(List<string> elements, double room) => Fitting(elements, room) == elements.Count
        ? string.Concat(elements)
        : string.Concat(elements.Take(Fitting(elements, room - ElementWidth("…")))).TrimEnd() + "…";

    /// <summary>After the last word that fits; in the middle of a word only where the line has no other.</summary>
    private static int LineEnd(List<string> elements, double room)
    {
        var fitting = Math.Max(1, Fitting(elements, room));
        var space = elements.Take(fitting + 1).Select((element, i) => string.IsNullOrWhiteSpace(element) ? i : 0).Max();
        return space > 0 ? space : fitting;
    }

    private static int Fitting(List<string> elements, double room)
    {
        var width = 0.0;
        return elements.TakeWhile(element => (width += ElementWidth(element)) <= room).Count();
    }

    /// <summary>What a reader takes for single characters, so that none is cut in half.</summary>
    private static List<string> Elements(string text)
    {
        var elements = new List<string>();
        for (var each = StringInfo.GetTextElementEnumerator(text); each.MoveNext();)
        {
            elements.Add(each.GetTextElement());
        }

        return elements;
    }

    private static double ElementWidth(string element) => element[0] switch
    {
        'i' or 'j' or 'l' or 'I' or '.' or ',' or '\'' or ':' or '|' or '!' or ' ' or '\u202f' => 4,
        'm' or 'w' or 'M' or 'W' or '@' or '%' or '…' => 11,
        >= 'A' and <= 'Z' => 8.5,
        >= '\u1100' => 13,
        _ => 7,
    };
}
