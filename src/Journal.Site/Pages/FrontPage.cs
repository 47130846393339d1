using Journal.Core.Model;
using Journal.Core.Wording;
using Journal.Site.Charts;

namespace Journal.Site.Pages;

/// <summary>A build on the front page.</summary>
/// <param name="Kind">How far it is, and since when.</param>
/// <param name="Link">Its page.</param>
/// <param name="Gist">What it is, in a sentence; null where no shown entry says so.</param>
/// <param name="About">Hours, entries, and parts finished, in words.</param>
/// <param name="Balloons">Its parts in the order of the list.</param>
/// <param name="Photo">A picture of its latest milestone, else of its latest entry; null where none can be shown.</param>
public sealed record BuildCardView(string Kind, LinkView Link, string? Gist, string About, IReadOnlyList<BalloonView> Balloons, PhotoView? Photo);

/// <summary>The front page: what is being made, what was written last, and where the hours went.</summary>
public sealed record FrontPage(
    PageFrame Frame, string Kind, IReadOnlyList<FactView> Facts, IReadOnlyList<BuildCardView> Builds, IReadOnlyList<PlanCardView> Plans, IReadOnlyList<EntryLineView> Latest, ChartView ByKind, ChartView ByOperation)
{
    /// <summary>The front page: builds under way first, then by their latest entry.</summary>
    internal static FrontPage Of(SiteFigures figures)
    {
        var views = new SharedViews(figures, Addresses.Front);
        var journal = figures.Journal;
        var builds = journal.Builds.OrderBy(build => build.Status == BuildStatus.UnderWay ? 0 : 1)
            .ThenByDescending(build => build.Entries.Count == 0 ? null : (DateOnly?)build.Entries[^1].Date).ToList();
        var block = new TitleBlockView
        {
            Title = journal.Title,
            Supplementary = "Bench book",
            DocumentType = "Journal",
            Identification = "index",
            Issued = views.LatestDate(journal.Entries),
        };
        var frame = views.Frame("front", journal.Title, $"{journal.Title}: {string.Join(", ", builds.Select(build => build.Title))}, with every hour, tool and mistake.", [], block);
        return new FrontPage(
            frame with { StructuredData = StructuredData.Site(journal, frame.Description) },
            journal.Maker.Length == 0 ? "Bench book" : $"Bench book · kept by {journal.Maker}",
            FactsOf(figures),
            [.. builds.Select((build, i) => Card(figures, views, build, i == 0))],
            [.. figures.ShownPlans.Select(plan => PlanCardView.Of(figures, plan))],
            views.Latest(journal.Entries),
            BuildPage.HoursByKind("by-kind", journal.Title, figures.Hours.Work),
            BuildPage.HoursByOperation(figures, "by-operation", journal.Title, figures.Hours.Work));
    }

    private static List<FactView> FactsOf(SiteFigures figures)
    {
        var journal = figures.Journal;
        var first = journal.Entries is [var earliest, ..] ? earliest.Date : (DateOnly?)null;
        var finished = journal.Builds.Count(build => build.Status == BuildStatus.Finished);
        var fixtures = figures.Tooling.Tools.Where(tool => tool.MinutesToMake > Minutes.Zero).ToList();
        return
        [
            new FactView("At the bench", Show.Hours(figures.Hours.Minutes), first is { } since ? $"since {Show.Month(since)}" : null),
            new FactView("Entries", Show.Number(figures.ShownEntries.Count)),
            new FactView("Builds", Show.Number(journal.Builds.Count), finished > 0 ? $"{Show.Number(finished)} finished" : null),
            new FactView("Lessons", Show.Number(figures.Lessons.All.Count), $"heeded {Count.Times(figures.Lessons.All.Sum(lesson => lesson.Heeded.Count))}"),
            new FactView("Tools made", Show.Number(fixtures.Count), Show.Hours(figures.Tooling.MinutesToMake)),
        ];
    }

    private static BuildCardView Card(SiteFigures figures, SharedViews views, Build build, bool isFirst)
    {
        var (hours, state) = (figures.HoursOf(build.Id), figures.StateOf(build.Id));
        var last = build.Entries.Count == 0 ? (DateOnly?)null : build.Entries[^1].Date;
        var kind = (build.Status, last) switch
        {
            (BuildStatus.Finished, { } end) => $"Finished {Show.Month(end)}",
            (BuildStatus.UnderWay, { }) => $"Under way since {Show.Month(build.Started ?? build.Entries[0].Date)}",
            var (status, _) => BuildPage.StatusWords(status),
        };
        var shown = build.Entries.Count(figures.Visibility.Shows);
        var about = new[]
        {
            Show.Hours(hours.Minutes),
            Show.Count(shown, "entry", "entries"),
            $"{Show.Number(state.Finished.Count)} of {Show.Count(build.Parts.Count, "part", "parts")}",
        };
        var photo = build.Entries.Reverse().Where(figures.Visibility.Shows).OrderByDescending(entry => entry.Milestone is not null).SelectMany(entry => views.Photos(entry, isFirst)).FirstOrDefault();
        return new BuildCardView(kind, SharedViews.Crumb(build), BuildPage.GistOf(figures, build), string.Join(" · ", about), views.Balloons(build), photo);
    }
}
