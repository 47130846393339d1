using System.Globalization;

namespace Journal.Core.Figures;

/// <summary>A month of a year.</summary>
/// <param name="Year">The year, 1 to 9999.</param>
/// <param name="Number">The month, 1 to 12.</param>
public readonly record struct CalendarMonth(int Year, int Number)
{
    /// <summary>The month that a day belongs to.</summary>
    public static CalendarMonth Of(DateOnly day) => new(day.Year, day.Month);

    /// <summary>The month as ISO 8601 writes it: <c>2025-09</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Year:0000}-{Number:00}");
}
