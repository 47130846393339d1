using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>When a build was worked on.</summary>
/// <param name="Build">The build.</param>
/// <param name="Parts">The parts that were worked on, in the order of the parts list.</param>
/// <param name="Idle">Stretches between two days of work in which nothing was done for 14 days or more; first and last are idle days.</param>
/// <param name="Milestones">Days worth remembering, in order.</param>
/// <param name="Trials">Runs, in order.</param>
/// <param name="Gathered">The hours gathered, day by day worked.</param>
/// <param name="Pace">The build's pace; null without entries.</param>
public sealed record BuildTimeline(
    Id<Build> Build,
    IReadOnlyList<PartTimeline> Parts,
    IReadOnlyList<DateRange> Idle,
    IReadOnlyList<DatedMilestone> Milestones,
    IReadOnlyList<DatedTrial> Trials,
    IReadOnlyList<GatheredDay> Gathered,
    Pace? Pace)
{
    /// <summary>The fewest idle days that count as an idle stretch: two weeks.</summary>
    public const int ShortestIdle = 14;

    /// <summary>The days of work, in order.</summary>
    public IReadOnlyList<DateOnly> Days { get; init; } = [.. Gathered.Select(day => day.Date)];

    /// <summary>The first day of work; null without entries.</summary>
    public DateOnly? First => Days.Count == 0 ? null : Days[0];

    /// <summary>The latest day of work; null without entries.</summary>
    public DateOnly? Last => Days.Count == 0 ? null : Days[^1];

    /// <summary>How many days had work.</summary>
    public int DaysWorked => Days.Count;

    /// <summary>The same with the minutes of another timeline of the build: hours gathered, pace, and time by part.</summary>
    internal BuildTimeline WithMinutesOf(BuildTimeline counted)
    {
        var minutes = counted.Parts.ToDictionary(part => part.Part, part => part.Minutes);
        return this with { Gathered = counted.Gathered, Pace = counted.Pace, Parts = [.. Parts.Select(part => part with { Minutes = minutes[part.Part] })], Days = Days };
    }

    /// <summary>The timeline of a build by the dates of its entries.</summary>
    internal static BuildTimeline Of(Build build)
    {
        var calendar = WorkCalendar.Of(build.Entries);
        return new BuildTimeline(
            build.Id,
            [.. Route.Of(build).Select(PartTimeline.Of)],
            IdleBetween([.. calendar.Days.Select(day => day.What)]),
            [
                .. from entry in build.Entries
                   where entry.Milestone is not null
                   select new DatedMilestone(entry.Date, entry.Milestone!, entry.Ref),
            ],
            [.. build.Entries.SelectMany(entry => entry.Trials, (entry, trial) => new DatedTrial(entry.Date, trial, entry.Ref))],
            GatheredDay.Of(calendar),
            Figures.Pace.Of(calendar));
    }

    private static IReadOnlyList<DateRange> IdleBetween(IReadOnlyList<DateOnly> days) =>
        [.. days.Zip(days.Skip(1))
            .Where(pair => pair.Second.DayNumber - pair.First.DayNumber - 1 >= ShortestIdle)
            .Select(pair => new DateRange(pair.First.AddDays(1), pair.Second.AddDays(-1)))];
}

/// <summary>When a part was worked on.</summary>
/// <param name="Part">The part.</param>
/// <param name="First">The first day of work on it.</param>
/// <param name="Last">The latest day of work on it.</param>
/// <param name="DaysWorked">How many days had work on it, at least 1.</param>
/// <param name="SetUps">How many set-ups say how it was held or from what datum.</param>
/// <param name="Minutes">Its share of the time.</param>
public sealed record PartTimeline(Id<Part> Part, DateOnly First, DateOnly Last, int DaysWorked, int SetUps, Minutes Minutes)
{
    /// <summary>The days of a part by the steps of its route, of which there is at least one.</summary>
    internal static PartTimeline Of(Route route)
    {
        var days = route.Steps.Select(step => step.Date).Distinct().ToList();
        return new PartTimeline(route.Part.Part, days.Min(), days.Max(), days.Count, route.SetUpCount, route.Minutes);
    }
}

/// <summary>A day worth remembering.</summary>
/// <param name="Date">The day.</param>
/// <param name="Text">What happened, in the maker's words.</param>
/// <param name="Entry">The entry that tells of it.</param>
public sealed record DatedMilestone(DateOnly Date, string Text, EntryRef Entry);

/// <summary>A run on air, steam, power or by hand.</summary>
/// <param name="Date">The day.</param>
/// <param name="Trial">The run and how it went.</param>
/// <param name="Entry">The entry that tells of it.</param>
public sealed record DatedTrial(DateOnly Date, Trial Trial, EntryRef Entry);
