using System.Globalization;
using Journal.Core.Model;
using Journal.Site.Html;

namespace Journal.Site.Charts;

/// <summary>How figures and words are written in a chart and in its table.</summary>
internal static class ChartText
{
    /// <summary>What stands where there is no figure.</summary>
    public const string None = "–";

    /// <summary>Holds a figure and its unit together (U+202F).</summary>
    private const char NarrowSpace = '\u202f';

    /// <summary>A time as a reader meets it: <c>31 h 05</c>, <c>10 h</c>, <c>45 min</c>.</summary>
    public static string Hours(Minutes time) => (time.Count / 60, time.Count % 60) switch
    {
        (0, > 0 and var minutes) => Invariant($"{minutes}{NarrowSpace}min"),
        (var hours, 0) => Invariant($"{hours}{NarrowSpace}h"),
        var (hours, minutes) => Invariant($"{hours}{NarrowSpace}h{NarrowSpace}{minutes:00}"),
    };

    /// <summary>A time that may be missing.</summary>
    public static string Hours(Minutes? time) => time is { } known ? Hours(known) : None;

    /// <summary>A number with its unit.</summary>
    public static string Measure(double number, string unit) => Invariant($"{Number(number)}{NarrowSpace}{unit}");

    /// <summary>A share of the whole, 0 to 1, in whole per cent.</summary>
    public static string PerCent(double share) => Invariant($"{Math.Round(100 * share, MidpointRounding.AwayFromZero):0}{NarrowSpace}%");

    /// <summary>A whole number.</summary>
    public static string Count(int count) => count.ToString(CultureInfo.InvariantCulture);

    /// <summary>A number with at most two decimals and never a negative zero.</summary>
    public static string Number(double number)
    {
        var rounded = Math.Round(number, 2, MidpointRounding.AwayFromZero);
        return (rounded == 0 ? 0 : rounded).ToString("0.##", CultureInfo.InvariantCulture);
    }

    /// <summary>A ratio with two decimals; nothing where there is nothing to compare with.</summary>
    public static string Ratio(Minutes taken, Minutes? guess) =>
        guess is { Count: > 0 } known ? ((double)taken.Count / known.Count).ToString("0.00", CultureInfo.InvariantCulture) : None;

    /// <summary>A day as ISO 8601 writes it.</summary>
    public static string Date(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>
    /// A text made fit for SVG. XML 1.0 (section 2.2) has no room for control characters, however escaped, and one
    /// that turns the writing direction would turn our figures with it; a maker misses neither.
    /// </summary>
    public static string Escape(string text) => SafeHtml.Escape(string.Concat(text.Select(Fit)));

    private static string Fit(char character) => CharUnicodeInfo.GetUnicodeCategory(character) switch
    {
        UnicodeCategory.Control or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator => " ",
        _ when character is (>= '\u202a' and <= '\u202e') or (>= '\u2066' and <= '\u2069') or '\ufffe' or '\uffff' => "",
        _ => character.ToString(),
    };

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);
}
