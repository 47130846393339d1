using System.Globalization;
using Journal.Core.Model;
using Journal.Core.Parsing.Files;
using Journal.Core.Parsing.Problems;
using Journal.Core.Parsing.Yaml;

namespace Journal.Core.Writing.Bench;

/// <summary>The clock over the bench: the time zone of the journal, and evenings that last until four in the morning.</summary>
/// <param name="zone">The time zone of the bench.</param>
public sealed class BenchClock(TimeZoneInfo zone)
{
    private const int MorningHour = 4;

    /// <summary>The clock of a journal; the machine's own zone where the journal names none that is known here.</summary>
    public static BenchClock Of(MakerJournal journal) => new(ZoneNamed(journal.TimeZone) ?? TimeZoneInfo.Local);

    /// <summary>
    /// The day on the calendar over a journal's bench, of which no more is read than its own file: entries are dated by it,
    /// so what is still to come must be told by it too. Null where the journal names no time zone that is known here.
    /// </summary>
    /// <param name="folder">The journal's folder.</param>
    /// <param name="now">The instant.</param>
    public static DateOnly? DayAt(string folder, DateTimeOffset now)
    {
        const string Head = "journal.yaml";
        var log = new ProblemLog();
        var name = TextFile.Read(Path.Combine(folder, Head), Head, log) is { } text
            ? YamlReader.Read(text, Head, 1, log)?.Pairs.Where(pair => pair.Key.Text == "time-zone").Select(pair => pair.Value).OfType<TextNode>().FirstOrDefault()?.Text
            : null;
        return ZoneNamed(name) is { } zone ? DateOnly.FromDateTime(new BenchClock(zone).Local(now)) : null;
    }

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

    private static TimeZoneInfo? ZoneNamed(string? name) => name is not null && TimeZoneInfo.TryFindSystemTimeZoneById(name, out var zone) ? zone : null;

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
