using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>Time at the bench by operation and by kind; each list adds up to the whole, to the minute.</summary>
/// <param name="Minutes">All of it.</param>
/// <param name="Operations">By operation, the most time first, then in the vocabulary's order.</param>
/// <param name="Kinds">By kind of time, in the order of <see cref="TimeKind"/>; kinds without time are left out.</param>
public sealed record Work(Minutes Minutes, IReadOnlyList<TimeOf<Id<Operation>>> Operations, IReadOnlyList<TimeOf<TimeKind>> Kinds)
{
    /// <summary>No work yet.</summary>
    public static Work None { get; } = new(Minutes.Zero, [], []);

    /// <summary>The time in one kind; zero where there is none.</summary>
    public Minutes In(TimeKind kind) => Kinds.FirstOrDefault(time => time.What == kind)?.Minutes ?? Minutes.Zero;

    /// <summary>Sums the shares of jobs.</summary>
    /// <param name="cells">The shares by operation.</param>
    /// <param name="kinds">The shares of the same jobs by kind of time; they come to the same total.</param>
    /// <param name="ranks">The place of each operation in the vocabulary, for those with the same time.</param>
    internal static Work Of(
        IEnumerable<OperationCell> cells,
        IEnumerable<KindCell> kinds,
        IReadOnlyDictionary<Id<Operation>, int> ranks)
    {
        var operations = Sums.By(cells, cell => cell.Operation, cell => cell.Minutes)
            .OrderByDescending(time => time.Minutes)
            .ThenBy(time => ranks.RankOf(time.What))
            .ToList();
        return new Work(
            operations.Sum(time => time.Minutes),
            operations,
            [.. Sums.By(kinds, cell => cell.Kind, cell => cell.Minutes).OrderBy(time => time.What)]);
    }
}

/// <summary>Time at the bench over the calendar; only what was worked, in order. Each list adds up to the whole.</summary>
/// <param name="Weeks">By week of ISO 8601.</param>
/// <param name="Months">By month.</param>
/// <param name="Days">By the entry's date; time past midnight belongs to it too.</param>
public sealed record WorkCalendar(
    IReadOnlyList<TimeOf<IsoWeek>> Weeks,
    IReadOnlyList<TimeOf<CalendarMonth>> Months,
    IReadOnlyList<TimeOf<DateOnly>> Days)
{
    /// <summary>The time of whole entries.</summary>
    internal static WorkCalendar Of(IEnumerable<Entry> entries) => Of(Sums.By(entries, entry => entry.Date, entry => entry.Time));

    /// <summary>The time of shares of jobs, for where only some parts count.</summary>
    internal static WorkCalendar Of(IEnumerable<OperationCell> cells) => Of(Sums.By(cells, cell => cell.Date, cell => cell.Minutes));

    private static WorkCalendar Of(IEnumerable<TimeOf<DateOnly>> sums)
    {
        List<TimeOf<DateOnly>> days = [.. sums.OrderBy(day => day.What)];
        return new WorkCalendar(
            [.. Sums.By(days, day => IsoWeek.Of(day.What), day => day.Minutes)],
            [.. Sums.By(days, day => CalendarMonth.Of(day.What), day => day.Minutes)],
            days);
    }
}
