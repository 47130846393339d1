using System.Globalization;

namespace Journal.Core.Figures;

/// <summary>
/// A calendar week of ISO 8601: it begins on a Monday, and the first week of a year is the one that holds its first
/// Thursday. The first days of January can belong to the year before, the last of December to the year after.
/// </summary>
public readonly record struct IsoWeek : IComparable<IsoWeek>
{
    /// <summary>A week of a year.</summary>
    /// <param name="year">The week-numbering year, 1 to 9999.</param>
    /// <param name="number">The week, 1 to 52 or 53.</param>
    /// <exception cref="ArgumentOutOfRangeException">The year has no such week.</exception>
    public IsoWeek(int year, int number)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(number, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(number, ISOWeek.GetWeeksInYear(year));
        (Year, Number) = (year, number);
    }

    /// <summary>The week-numbering year; not always that of the day.</summary>
    public int Year { get; }

    /// <summary>The week of the year, 1 to 52 or 53.</summary>
    public int Number { get; }

    /// <summary>The week's first day.</summary>
    public DateOnly Monday => DateOnly.FromDateTime(ISOWeek.ToDateTime(Year, Number, DayOfWeek.Monday));

    /// <summary>The week that a day belongs to.</summary>
    public static IsoWeek Of(DateOnly day)
    {
        var noon = day.ToDateTime(new TimeOnly(12, 0));
        return new IsoWeek(ISOWeek.GetYear(noon), ISOWeek.GetWeekOfYear(noon));
    }

    /// <summary>Every week from one to another, both included; none where the last comes before the first.</summary>
    public static IEnumerable<IsoWeek> Through(IsoWeek first, IsoWeek last)
    {
        for (var monday = first.Monday; monday <= last.Monday; monday = monday.AddDays(7))
        {
            yield return Of(monday);
        }
    }

    /// <inheritdoc/>
    public int CompareTo(IsoWeek other) => Year != other.Year ? Year.CompareTo(other.Year) : Number.CompareTo(other.Number);

    /// <summary>The week as ISO 8601 writes it: <c>2025-W36</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Year:0000}-W{Number:00}");
}
