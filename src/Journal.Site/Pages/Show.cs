using System.Globalization;
using Journal.Core.Model;

namespace Journal.Site.Pages;

/// <summary>How figures read on a page. One culture, so that the same journal gives the same bytes everywhere.</summary>
public static class Show
{
    private const char NarrowSpace = '\u202F';
    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    /// <summary>Time at the bench: <c>2 h 45</c>, <c>45 min</c>, with spaces that do not break.</summary>
    public static string Hours(Minutes time) => (time.Count / 60, time.Count % 60) switch
    {
        (0, 0) => $"0{NarrowSpace}h",
        (0, var minutes) => string.Create(Plain, $"{minutes}{NarrowSpace}min"),
        (var hours, 0) => string.Create(Plain, $"{hours}{NarrowSpace}h"),
        var (hours, minutes) => string.Create(Plain, $"{hours}{NarrowSpace}h{NarrowSpace}{minutes:00}"),
    };

    /// <summary>Time, or a dash for none.</summary>
    public static string HoursOrDash(Minutes time) => time == Minutes.Zero ? "–" : Hours(time);

    /// <summary>An ISO 8601 date.</summary>
    public static string Date(DateOnly date) => date.ToString("yyyy-MM-dd", Plain);

    /// <summary>A date in full: <c>Friday 3 October 2025</c>.</summary>
    public static string LongDate(DateOnly date) => date.ToString("dddd d MMMM yyyy", Plain);

    /// <summary>A date without its weekday: <c>3 October 2025</c>.</summary>
    public static string PlainDate(DateOnly date) => date.ToString("d MMMM yyyy", Plain);

    /// <summary>A month: <c>April 2026</c>.</summary>
    public static string Month(DateOnly date) => date.ToString("MMMM yyyy", Plain);

    /// <summary>A sum of money with its currency.</summary>
    public static string Money(decimal sum, string currency) => string.Create(Plain, $"{sum:0.00} {currency}");

    /// <summary>A sum of money alone.</summary>
    public static string Sum(decimal sum) => sum.ToString("0.00", Plain);

    /// <summary>A share, 0 to 1, in per cent.</summary>
    public static string PerCent(double share) => string.Create(Plain, $"{Math.Round(share * 100, MidpointRounding.AwayFromZero)} %");

    /// <summary>A number with two decimals.</summary>
    public static string Ratio(double ratio) => ratio.ToString("0.00", Plain);

    /// <summary>A whole number.</summary>
    public static string Number(int number) => number.ToString(Plain);

    /// <summary>A count with its noun: <c>1 entry</c>, <c>3 entries</c>.</summary>
    public static string Count(int count, string one, string many) => $"{Number(count)} {(count == 1 ? one : many)}";

    /// <summary>A text shortened at a word to at most so many characters, for descriptions.</summary>
    public static string Shorten(string text, int most)
    {
        if (text.Length <= most)
        {
            return text;
        }

        var space = text.LastIndexOf(' ', most - 1);
        var end = space > most / 2 ? space : most - 1;
        return text[..(char.IsHighSurrogate(text[end - 1]) ? end - 1 : end)].TrimEnd(',', ';', ':', ' ') + "…";
    }
}
