using Journal.Core.Model;

namespace Journal.Core.Estimating;

/// <summary>When it is done: hours still to come, spread over weeks drawn from the maker's own.</summary>
internal sealed record Finish
{
    private Finish(DateOnly start) => Start = start;

    /// <summary>The day from which the dates are reckoned.</summary>
    public DateOnly Start { get; }

    /// <summary>The days; null where nothing is known of the pace.</summary>
    public FinishRange? Range { get; private init; }

    /// <summary>The days of the whole curve; empty likewise.</summary>
    public IReadOnlyList<FinishQuantile> Quantiles { get; private init; } = [];

    /// <summary>The day of each draw in rising order; empty likewise.</summary>
    public IReadOnlyList<DateOnly> Days { get; private init; } = [];

    /// <summary>Hours a week, idle weeks counted; null likewise.</summary>
    public double? HoursAWeek { get; private init; }

    /// <summary>What the reader should know.</summary>
    public required IReadOnlyList<string> Remarks { get; init; }

    /// <summary>Reckons from the totals of the draws.</summary>
    public static Finish Of(EstimateSubject undertaking, MakerJournal journal, double[] totals, EstimateOptions options)
    {
        var asked = options.Start ?? undertaking.Start ?? options.Today;
        var start = asked < options.Today ? options.Today : asked;
        List<string> remarks = asked < start ? [$"The start of {asked:yyyy-MM-dd} is past; the dates count from {start:yyyy-MM-dd}."] : [];
        if (BenchWeeks.Of(journal, options.Today, options.HoursAWeek ?? undertaking.HoursAWeek) is not { } weeks)
        {
            return new Finish(start) { Remarks = [.. remarks, NoPace(journal, options.Today)] };
        }

        if (weeks.Taken < BenchWeeks.Enough)
        {
            remarks.Add(weeks.Taken == 0
                ? "The dates treat every week alike, until the journal has a few weeks of its own."
                : $"The dates are based on only {Basis.Count(weeks.Taken, "week")} at the bench: do not rely on them.");
        }

        var spent = undertaking.SpentInAll.InHours;
        DateOnly[] days = [.. new BenchCalendar(weeks, start, undertaking.Away).DaysOf(totals.Select(hours => hours - spent), options.Seed).Order()];
        return new Finish(start)
        {
            Range = new(By(days, 0.5), By(days, 0.8), By(days, 0.9)),
            Quantiles = [.. Estimator.Steps.Select(share => new FinishQuantile(share, By(days, share)))],
            Days = days,
            HoursAWeek = Rounded.Hours(weeks.HoursAWeek),
            Remarks = By(days, 0.9) is null ? [.. remarks, "At this pace it may take more than a century; some dates are left out."] : remarks,
        };
    }

    private static string NoPace(MakerJournal journal, DateOnly today) => journal.StoodOn(today).Entries.Count == 0
        ? "The pace is not known yet. Add `hours-a-week` to get dates."
        : "No work is noted in the last 13 weeks, so nothing is known of the pace: dates want `hours-a-week`.";

    private static DateOnly? By(DateOnly[] days, double share) =>
        Statistics.Quantiles.FirstReaching<DateOnly>(days, share) is var day && day == DateOnly.MaxValue ? null : day;
}
