using System.Globalization;
using Journal.Core.Model;

namespace Journal.Core.Writing.Bench;

/// <summary>The clock over the bench: the time zone of the journal, and evenings that last until four in the morning.</summary>
/// <param name="zone">The time zone of the bench.</param>
public sealed class BenchClock(TimeZoneInfo zone)
{
    private const int MorningHour = 4;

    /// <summary>The clock of a journal; the machine's own zone where the journal names none that is known here.</summary>
    public static BenchClock Of(MakerJournal journal) =>
        new(journal.TimeZone is { } name && TimeZoneInfo.TryFindSystemTimeZoneById(name, out var zone) ? zone : TimeZoneInfo.Local);

    /// <summary>What the clock shows at an instant.</summary>
    public DateTime Local(DateTimeOffset instant) => TimeZoneInfo.ConvertTime(instant, zone).DateTime;

    /// <summary>The evening that an instant belongs to: before four in the morning, still the last one.</summary>
    public DateOnly Evening(DateTimeOffset instant) => Evening(Local(instant));

    /// <summary>The same of what the clock shows.</summary>
    public static DateOnly Evening(DateTime local) => DateOnly.FromDateTime(local.Hour < MorningHour ? local.AddDays(-1) : local);

    /// <summary>The time of day, such as <c>21:14</c>.</summary>
    public string Time(DateTimeOffset instant) => Local(instant).ToString("HH:mm", CultureInfo.InvariantCulture);

    /// <summary>
    /// The first instant after another at which the clock shows a time of day. A time that the clock skips in spring is
    /// taken as the moment of the change.
    /// </summary>
    public DateTimeOffset Next(TimeOnly time, DateTimeOffset after)
    {
        for (var day = DateOnly.FromDateTime(Local(after)).AddDays(-1); ; day = day.AddDays(1))
        {
            if (Instants(day.ToDateTime(time)).Where(instant => instant > after).Cast<DateTimeOffset?>().Min() is { } found)
            {
                return found;
            }
        }
    }

    // Tried with the offsets of the day before and the day after: what a zone says of its own ambiguous and skipped hours is
    // wrong where winter time is the exception, as in Europe/Dublin.
    private List<DateTimeOffset> Instants(DateTime local)
    {
        TimeSpan[] offsets = [.. new[] { -1, 1 }.Select(days => zone.GetUtcOffset(new DateTimeOffset(local, TimeSpan.Zero).AddDays(days))).Distinct()];
        for (; ; local = local.AddMinutes(1))
        {
            if (offsets.Select(offset => new DateTimeOffset(local, offset)).Where(instant => Local(instant) == local).ToList() is { Count: > 0 } shown)
            {
                return shown;
            }
        }
    }
}
