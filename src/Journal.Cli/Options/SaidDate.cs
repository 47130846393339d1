using System.Globalization;
using Journal.Core.Parsing.Values;

namespace Journal.Cli.Options;

/// <summary>A date on the command line, in the form and of the years that the journal's own files take.</summary>
internal static class SaidDate
{
    /// <summary>Year, month and day, with hyphens.</summary>
    public static bool TryRead(string word, out DateOnly date) =>
        DateOnly.TryParseExact(word, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out date) && Dates.IsOfBenches(date);
}
