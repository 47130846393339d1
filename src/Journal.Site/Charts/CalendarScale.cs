using System.Globalization;

namespace Journal.Site.Charts;

/// <summary>Days laid out across a picture, with months written on the axis and years where they change.</summary>
internal sealed class CalendarScale
{
    private const int MostMonths = 12;
    private const int MostYears = 8;
    private const int MostDays = 7;

    /// <summary>Beyond this there is no room for a month's name, in per cent.</summary>
    private const double LastRoom = 93;

    /// <summary>With no more than this, the last has room to its left.</summary>
    private const int FewTicks = 4;

    private static readonly int[] MonthSteps = [1, 2, 3, 6, 12, 24, 60, 120, 240, 600, 1200, 2400, 24000];
    private static readonly int[] DaySteps = [1, 2, 7, 14];

    private readonly DateOnly _first;
    private readonly DateOnly _last;

    /// <summary>Lays out the days from one to another; a single day gets its neighbours for company.</summary>
    public CalendarScale(DateOnly first, DateOnly last) =>
        (_first, _last) = last > first ? (first, last) : (Later(first, -1), Later(first, 1));

    /// <summary>The height that the axis takes, in pixels: months, and years below them.</summary>
    public static double AxisHeight => 2 * Lettering.LineHeight;

    private int Months => ((_last.Year - _first.Year) * 12) + _last.Month - _first.Month;

    /// <summary>Where the morning of a day stands, in per cent.</summary>
    public double At(DateOnly day) => 100.0 * (day.DayNumber - _first.DayNumber) / (_last.DayNumber - _first.DayNumber);

    /// <summary>
    /// A day some days later, or earlier below 0; at the ends of the calendar, the last or first day there is. A slip
    /// of the maker's such as the year 9999 makes an odd picture and no failure.
    /// </summary>
    public static DateOnly Later(DateOnly day, int days) =>
        DateOnly.FromDayNumber(Math.Clamp(day.DayNumber + days, DateOnly.MinValue.DayNumber, DateOnly.MaxValue.DayNumber));

    /// <summary>Draws a line for each month that is named, and names it.</summary>
    /// <param name="picture">The picture.</param>
    /// <param name="top">Where the lines begin.</param>
    /// <param name="bottom">Where they end.</param>
    /// <param name="baseline">Where the months are written; years go a line below.</param>
    public void Draw(Picture picture, double top, double bottom, double baseline)
    {
        var ticks = Ticks();
        foreach (var tick in ticks)
        {
            var x = At(tick.Day);
            picture.Upright("grid", x, top, bottom);
            if (x <= LastRoom)
            {
                Write(picture, tick, tick.IsMinor ? "faint minor" : "faint", x, baseline, 3);
            }
            else if (ticks.Count <= FewTicks)
            {
                Write(picture, tick, "faint end", x, baseline, -3);
            }
        }
    }

    private static void Write(Picture picture, Tick tick, string classes, double x, double baseline, double beside)
    {
        picture.Text(classes, x, baseline, tick.Text, beside);
        if (tick.Year is { } year)
        {
            picture.Text(classes, x, baseline + Lettering.LineHeight, year, beside);
        }
    }

    private IReadOnlyList<Tick> Ticks()
    {
        var step = MonthSteps.First(step => Months / step <= (step < 12 ? MostMonths : MostYears));
        var (days, format) = (Months, step) switch
        {
            ( < 2, _) => (EveryFewDays(), "d MMM"),
            (_, < 12) => (MonthStarts(step), "MMM"),
            _ => (MonthStarts(step), "yyyy"),
        };

        // On a phone every second name is left out, never one with a year under it.
        var change = Enumerable.Range(1, Math.Max(days.Count - 1, 0)).FirstOrDefault(i => days[i].Year != days[i - 1].Year);
        var firstNamed = format == "yyyy" ? 0 : change % 2;
        var isCrowded = days.Count > MostMonths / 2;
        return [.. days.Select((day, i) => new Tick(
            day,
            day.ToString(format, CultureInfo.InvariantCulture),
            format != "yyyy" && (i == firstNamed || (i > 0 && day.Year != days[i - 1].Year)) ? day.ToString("yyyy", CultureInfo.InvariantCulture) : null,
            isCrowded && i % 2 != firstNamed))];
    }

    private IReadOnlyList<DateOnly> MonthStarts(int step) =>
        [.. Enumerable.Range(0, Months + 1)
            .Select(i => new DateOnly(_first.Year, _first.Month, 1).AddMonths(i))
            .Where(month => month >= _first && ((month.Year * 12) + month.Month - 1) % step == 0)];

    private IReadOnlyList<DateOnly> EveryFewDays()
    {
        var span = _last.DayNumber - _first.DayNumber;
        var step = DaySteps.First(step => span / step <= MostDays);
        return [.. Enumerable.Range(0, (span / step) + 1).Select(i => Later(_first, i * step))];
    }

    /// <summary>A day written on the axis.</summary>
    private sealed record Tick(DateOnly Day, string Text, string? Year, bool IsMinor);
}
