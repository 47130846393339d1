using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Site.Charts;

namespace Journal.Site.Pages;

/// <summary>A build on the timeline.</summary>
/// <param name="Id">Its id on the page; ids of makers have no underscore, so it meets none of them.</param>
/// <param name="Link">The build's page.</param>
/// <param name="Parts">When each part was worked on.</param>
/// <param name="Gathered">The total hours over time; null without days of work.</param>
/// <param name="Pace">Hours a week, idle weeks counted, in a sentence; empty without any.</param>
/// <param name="Idle">Stretches of two weeks or more without work.</param>
/// <param name="Trials">Its runs.</param>
public sealed record BuildDaysView(string Id, LinkView Link, ChartView Parts, ChartView? Gathered, string Pace, IReadOnlyList<IdleView> Idle, IReadOnlyList<TrialView> Trials);

/// <summary>A stretch of days in which nothing was done.</summary>
/// <param name="From">The first idle day.</param>
/// <param name="To">The last.</param>
/// <param name="Days">How many, in words.</param>
public sealed record IdleView(DateView From, DateView To, string Days);

/// <summary>The timeline: when each part was made, when nothing was, and how the hours gathered.</summary>
public sealed record TimelinePage(PageFrame Frame, string Kind, IReadOnlyList<BuildDaysView> Builds, GuessesView? Guesses)
{
    /// <summary>The timeline of all builds with a shown entry, that of the latest first.</summary>
    internal static TimelinePage Of(SiteFigures figures)
    {
        var views = new SharedViews(figures, Addresses.Timeline);
        var worked = figures.Journal.Builds.Where(build => build.Entries.Count > 0).OrderByDescending(build => build.Entries[^1].Date).ToList();
        var (first, last) = (worked.Select(build => build.Entries[0].Date).DefaultIfEmpty().Min(), worked.Select(build => build.Entries[^1].Date).DefaultIfEmpty().Max());
        var span = worked.Count == 0 ? "nothing yet" : $"{Show.Month(first)} to {Show.Month(last)}";
        var block = new TitleBlockView { Title = "Timeline", Supplementary = figures.Journal.Title, DocumentType = "Timeline", Identification = "timeline", Issued = views.LatestDate(figures.Journal.Entries) };
        return new TimelinePage(
            views.Frame("timeline", "Timeline", $"When each part was made, {span}.", [SharedViews.FrontCrumb], block),
            $"Timeline · {span}",
            [.. worked.Select(build => BuildOf(figures, views, build))],
            GuessesView.Of(figures));
    }

    private static BuildDaysView BuildOf(SiteFigures figures, SharedViews views, Build build)
    {
        var timeline = figures.Timeline.Builds.First(one => one.Build == build.Id);
        var parts = timeline.Parts.OrderBy(part => part.First).ThenBy(part => part.Last)
            .Select(part => figures.LinkWithItem(new PartRef(build.Id, part.Part)) is var link ? new PartDays(link.Text, DaysOf(figures.Routes[new PartRef(build.Id, part.Part)]), part.SetUps, link.Address) : null!);
        return new BuildDaysView(
            $"build_{build.Id}",
            SharedViews.Crumb(build),
            PartsTimelineChart.Draw($"build_{build.Id}_parts", "Parts over the weeks", $"The parts of {build.Title}, each from its first day to its last.", [.. parts], timeline.Idle, BuildPage.Marks(figures, timeline), views.Root),
            BuildPage.GatheredOf(figures, views, build.Title, timeline) is { } gathered ? Renamed(figures, views, build, timeline, gathered) : null,
            timeline.Pace is { } pace ? $"{Show.Hours(new Minutes((int)Math.Round(pace.HoursAWeek * 60)))} a week, idle weeks counted; work in {Show.Number(pace.WeeksWorked)} of {Show.Count(pace.Weeks.Count, "week", "weeks")}." : "",
            [.. timeline.Idle.Select(idle => new IdleView(DateView.Of(idle.First), DateView.Of(idle.Last), Show.Count(idle.Days, "day", "days")))],
            [.. timeline.Trials.Where(trial => figures.Visibility.Shows(trial.Entry)).Select(trial => EntryPage.TrialOf(figures, trial))]);
    }

    // Several builds share the page, so each chart needs ids of its own.
    private static ChartView Renamed(SiteFigures figures, SharedViews views, Build build, BuildTimeline timeline, ChartView gathered) => GatheredChart.Draw(
        $"build_{build.Id}_gathered",
        gathered.Title,
        $"Total hours of {build.Title} over time.",
        [.. timeline.Gathered.Select(day => new GatheredHours(day.Date, day.Total))],
        BuildPage.Marks(figures, timeline),
        views.Root);

    private static List<TimeOf<DateOnly>> DaysOf(Route route) =>
        [.. route.Steps.GroupBy(step => step.Date).OrderBy(day => day.Key).Select(day => new TimeOf<DateOnly>(day.Key, day.Sum(step => step.Minutes)))];
}
