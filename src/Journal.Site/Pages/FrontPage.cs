using Journal.Core.Model;
using Journal.Site.Charts;

namespace Journal.Site.Pages;

/// <summary>A build on the front page.</summary>
public sealed record BuildCardView(string Kind, LinkView Link, string? Gist, string About, IReadOnlyList<BalloonView> Balloons, PhotoView? Photo);

/// <summary>The front page: what is being made, what was written last, and where the hours went.</summary>
public sealed record FrontPage(
    PageFrame Frame, string Kind, IReadOnlyList<FactView> Facts, IReadOnlyList<BuildCardView> Builds, IReadOnlyList<PlanCardView> Plans, IReadOnlyList<EntryLineView> Latest, ChartView ByKind, ChartView ByOperation)
{
    internal static FrontPage Of(Book book)
    {
        var desk = new Desk(book, Addresses.Front);
        var journal = book.Journal;
        var builds = journal.Builds.OrderBy(build => build.Status == BuildStatus.UnderWay ? 0 : 1)
            .ThenByDescending(build => build.Entries.Count == 0 ? null : (DateOnly?)build.Entries[^1].Date).ToList();
        var block = new TitleBlockView
        {
            Title = journal.Title,
            Supplementary = "Bench book",
            DocumentType = "Journal",
            Identification = "index",
            Issued = desk.LatestDate(journal.Entries),
        };
        var frame = desk.Frame("front", journal.Title, $"{journal.Title}: {string.Join(", ", builds.Select(build => build.Title))}, with every hour, tool and mistake.", [], block);
        return new FrontPage(
            frame with { StructuredData = StructuredData.Site(journal, frame.Description) },
            journal.Maker.Length == 0 ? "Bench book" : $"Bench book · kept by {journal.Maker}",
            FactsOf(book),
            [.. builds.Select((build, i) => Card(book, desk, build, i == 0))],
            [.. book.ShownPlans.Select(plan => PlanCardView.Of(book, plan))],
            desk.Latest(journal.Entries),
            BuildPage.HoursByKind("by-kind", journal.Title, book.Hours.Work),
            BuildPage.HoursByOperation(book, "by-operation", journal.Title, book.Hours.Work));
    }

    private static List<FactView> FactsOf(Book book)
    {
        var journal = book.Journal;
        var first = journal.Entries is [var earliest, ..] ? earliest.Date : (DateOnly?)null;
        var finished = journal.Builds.Count(build => build.Status == BuildStatus.Finished);
        var fixtures = book.Tooling.Tools.Where(tool => tool.MinutesToMake > Minutes.Zero).ToList();
        return
        [
            new FactView("At the bench", Show.Hours(book.Hours.Minutes), first is { } since ? $"since {Show.Month(since)}" : null),
            new FactView("Entries", Show.Number(book.ShownEntries.Count)),
            new FactView("Builds", Show.Number(journal.Builds.Count), finished > 0 ? $"{Show.Number(finished)} finished" : null),
            new FactView("Lessons", Show.Number(book.Lessons.All.Count), $"heeded {Show.Times(book.Lessons.All.Sum(lesson => lesson.Heeded.Count))}"),
            new FactView("Tools made", Show.Number(fixtures.Count), Show.Hours(book.Tooling.MinutesToMake)),
        ];
    }

    private static BuildCardView Card(Book book, Desk desk, Build build, bool isFirst)
    {
        var (hours, state) = (book.HoursOf(build.Id), book.StateOf(build.Id));
        var last = build.Entries.Count == 0 ? (DateOnly?)null : build.Entries[^1].Date;
        var kind = (build.Status, last) switch
        {
            (BuildStatus.Finished, { } end) => $"Finished {Show.Month(end)}",
            (BuildStatus.UnderWay, { }) => $"Under way since {Show.Month(build.Started ?? build.Entries[0].Date)}",
            var (status, _) => BuildPage.StatusWords(status),
        };
        var shown = build.Entries.Count(book.Showing.Shows);
        var about = new[]
        {
            Show.Hours(hours.Minutes),
            Show.Count(shown, "entry", "entries"),
            $"{Show.Number(state.Finished.Count)} of {Show.Count(build.Parts.Count, "part", "parts")}",
        };
        var photo = build.Entries.Reverse().Where(book.Showing.Shows).OrderByDescending(entry => entry.Milestone is not null).SelectMany(entry => desk.Photos(entry, isFirst)).FirstOrDefault();
        return new BuildCardView(kind, Desk.Crumb(build), BuildPage.GistOf(book, build), string.Join(" · ", about), desk.Balloons(build), photo);
    }
}
