using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>When the work was done (docs/figures.md, Timeline).</summary>
/// <param name="Builds">The builds by id.</param>
/// <param name="Gathered">The hours of all builds gathered over the calendar.</param>
/// <param name="Pace">The pace over all builds; null in a journal without entries.</param>
public sealed record Timeline(IReadOnlyList<BuildTimeline> Builds, IReadOnlyList<GatheredDay> Gathered, Pace? Pace)
{
    /// <summary>The timeline of a journal.</summary>
    public static Timeline Of(MakerJournal journal)
    {
        var calendar = WorkCalendar.Of(journal.Builds.SelectMany(build => build.Entries));
        return new Timeline([.. journal.Builds.Select(BuildTimeline.Of)], GatheredDay.Of(calendar), Figures.Pace.Of(calendar));
    }

    /// <summary>The timeline that viewers see: days, milestones and trials of shown evenings, minutes of hidden ones too.</summary>
    public static Timeline Of(ShownJournal shown)
    {
        var counted = Of(shown.Counted);
        return counted with { Builds = [.. Of(shown.Told).Builds.Zip(counted.Builds, (told, all) => told.WithMinutesOf(all))] };
    }
}

/// <summary>The hours gathered up to a day on which work was done.</summary>
/// <param name="Date">The day.</param>
/// <param name="Minutes">The day's own time.</param>
/// <param name="Total">All time up to and including the day.</param>
public sealed record GatheredDay(DateOnly Date, Minutes Minutes, Minutes Total)
{
    /// <summary>A running total over the days of a calendar, which are in order.</summary>
    internal static IReadOnlyList<GatheredDay> Of(WorkCalendar calendar)
    {
        var total = Minutes.Zero;
        return [.. calendar.Days.Select(day => new GatheredDay(day.What, day.Minutes, total += day.Minutes))];
    }
}

/// <summary>How much is done in a week, idle weeks counted, from the first week worked to the last.</summary>
/// <param name="Weeks">Every ISO week from first to last, those without work at zero.</param>
/// <param name="Minutes">The time of all weeks.</param>
public sealed record Pace(IReadOnlyList<TimeOf<IsoWeek>> Weeks, Minutes Minutes)
{
    /// <summary>Hours a week, idle weeks counted.</summary>
    public double HoursAWeek => Minutes.InHours / Weeks.Count;

    /// <summary>How many of the weeks had work.</summary>
    public int WeeksWorked => Weeks.Count(week => week.Minutes > Minutes.Zero);

    /// <summary>The pace over a calendar; null where nothing was worked.</summary>
    internal static Pace? Of(WorkCalendar calendar)
    {
        if (calendar.Weeks.Count == 0)
        {
            return null;
        }

        var worked = calendar.Weeks.ToDictionary(week => week.What, week => week.Minutes);
        var weeks = IsoWeek.Through(calendar.Weeks[0].What, calendar.Weeks[^1].What);
        return new Pace([.. weeks.Select(week => new TimeOf<IsoWeek>(week, worked.GetValueOrDefault(week)))], worked.Values.Sum());
    }
}
