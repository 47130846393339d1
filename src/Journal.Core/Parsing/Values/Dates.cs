using System.Globalization;
using Journal.Core.Model;

namespace Journal.Core.Parsing.Values;

/// <summary>Dates and stretches of days of ISO 8601, in the extended form alone.</summary>
public static class Dates
{
    private const string Form = "yyyy-MM-dd";

    /// <summary>A day of a year that somebody may have worked in, or will: calendars at the bench reckon some way beyond it.</summary>
    public static bool TryParse(string text, out DateOnly date) =>
        DateOnly.TryParseExact(text.Trim(), Form, CultureInfo.InvariantCulture, DateTimeStyles.None, out date) && IsOfBenches(date);

    /// <summary>Whether a day lies in the years 1800 to 2999.</summary>
    public static bool IsOfBenches(DateOnly date) => date.Year is >= 1800 and <= 2999;

    /// <summary>A single day, or first and last day with a slash.</summary>
    public static bool TryParseRange(string text, [System.Diagnostics.CodeAnalysis.NotNullWhen(true)] out DateRange? range)
    {
        range = null;
        var slash = text.IndexOf('/', StringComparison.Ordinal);
        if (!TryParse(slash < 0 ? text : text[..slash], out var first) || !TryParse(text[(slash + 1)..], out var last) || last < first)
        {
            return false;
        }

        range = new DateRange(first, last);
        return true;
    }

    /// <summary>The date that a file's name begins with, where it begins with one.</summary>
    public static DateOnly? AtStartOf(string name) =>
        name.Length >= Form.Length && TryParse(name[..Form.Length], out var date) ? date : null;

    /// <summary>Year, month and day.</summary>
    public static string Write(DateOnly date) => date.ToString(Form, CultureInfo.InvariantCulture);
}
