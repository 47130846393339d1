using System.Globalization;
using Journal.Core.Model;

namespace Journal.Cli.Wording;

/// <summary>Dates, times and money in cells.</summary>
internal static class Written
{
    /// <summary>A date as ISO 8601 writes it; nothing for none.</summary>
    public static string Date(DateOnly? date) => date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "";

    /// <summary>A time; nothing for none.</summary>
    public static string Time(Minutes minutes) => minutes == Minutes.Zero ? "" : minutes.ToString();

    /// <summary>Money to the cent; nothing where it is not known.</summary>
    public static string Money(decimal? cost) => cost?.ToString("0.00", CultureInfo.InvariantCulture) ?? "";
}
