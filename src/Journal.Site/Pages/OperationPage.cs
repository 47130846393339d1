using Journal.Core.Model;
using Journal.Core.Reading;
using Journal.Site.Charts;

namespace Journal.Site.Pages;

/// <summary>What this journal knows about one operation.</summary>
public sealed record OperationPage(
    PageFrame Frame,
    string Kind,
    string Title,
    IReadOnlyList<FactView> Facts,
    IReadOnlyList<CautionView> Cautions,
    IReadOnlyList<RemarkView> Lessons,
    IReadOnlyList<SettingRowView> Settings,
    ChartView? Speeds,
    IReadOnlyList<ToolLineView> Tools,
    ChartView ByPart,
    IReadOnlyList<EntryLineView> Entries)
{
    internal static OperationPage Of(Book book, Id<Operation> id)
    {
        var desk = new Desk(book, Addresses.Of(id));
        var operation = book.Operation(id);
        var jobs = book.Journal.Entries.SelectMany(entry => entry.Jobs.Where(job => job.Operations.Contains(id)), (entry, job) => (Entry: entry, Job: job)).ToList();
        var shown = jobs.Where(job => book.Showing.Shows(job.Entry)).ToList();
        var lessons = book.Lessons.All.Where(lesson => book.Showing.Shows(lesson.Id) && lesson.On.Operations.Contains(id)).OrderByDescending(lesson => lesson.MinutesLost).ThenBy(lesson => lesson.Id).ToList();
        var block = new TitleBlockView { Title = operation.Title, Supplementary = "What is known here", DocumentType = "Operation", Identification = id.Value, Issued = desk.LatestDate(shown.Select(job => job.Entry)) };
        return new OperationPage(
            desk.Frame("operation", operation.Title, $"What this workshop knows about {Show.Lower(operation.Title)}: hours, lessons, settings, tools, cautions.", [Desk.FrontCrumb], block),
            $"Operation · {Show.Lower(BuildPage.KindWords(operation.Kind))}",
            operation.Title,
            FactsOf(book, id, jobs),
            Desk.Cautions(CautionReader.Shared.Where(caution => caution.Operations.Contains(id))),
            [.. lessons.Select(lesson => desk.Lesson(lesson, Show.Date(lesson.Date)))],
            SettingRows.Of(book, id),
            SettingRows.Speeds(book, id),
            [.. ToolsOf(book, desk, shown)],
            HoursByPart(book, id, operation.Title),
            [.. shown.Select(job => job.Entry).Distinct().OrderByDescending(entry => entry.Date).ThenByDescending(entry => entry.Ref).Select(desk.Line)]);
    }

    private static List<FactView> FactsOf(Book book, Id<Operation> id, List<(Entry Entry, Job Job)> jobs)
    {
        var minutes = book.Hours.Work.Operations.FirstOrDefault(time => time.What == id)?.Minutes ?? Minutes.Zero;
        var alone = jobs.Where(job => job.Job.Operations.Count == 1).Select(job => job.Job.Time.Count).Order().ToList();
        var facts = new List<FactView> { new("Hours", Show.Hours(minutes)), new("Jobs", Show.Number(jobs.Count)) };
        if (alone.Count > 0)
        {
            var note = alone.Count >= 4 ? $"half between {Show.Hours(Quantile(alone, 0.25))} and {Show.Hours(Quantile(alone, 0.75))}" : null;
            facts.Add(new FactView("A job takes", Show.Hours(Quantile(alone, 0.5)), note));
        }

        var setUp = jobs.Where(job => job.Job.Operations.Count == 1).Sum(job => job.Job.SetUp);
        if (setUp > Minutes.Zero)
        {
            facts.Add(new FactView("Of it setting up", Show.PerCent((double)setUp.Count / alone.Sum())));
        }

        var lost = book.Lessons.Mistakes.Where(cost => cost.On.Operations.Contains(id)).Sum(cost => cost.Minutes);
        if (lost > Minutes.Zero)
        {
            facts.Add(new FactView("Lost", Show.Hours(lost)));
        }

        return facts;
    }

    // Hyndman and Fan (1996), definition 7: linear between the order statistics, 0 and 1 at the ends.
    private static Minutes Quantile(List<int> sorted, double p)
    {
        var at = (sorted.Count - 1) * p;
        var (below, above) = (sorted[(int)Math.Floor(at)], sorted[(int)Math.Ceiling(at)]);
        return new Minutes((int)Math.Round(below + (at - Math.Floor(at)) * (above - below), MidpointRounding.AwayFromZero));
    }

    private static IEnumerable<ToolLineView> ToolsOf(Book book, Desk desk, List<(Entry Entry, Job Job)> shown) => shown
        .SelectMany(job => job.Job.Tools)
        .CountBy(tool => tool)
        .Where(tool => book.Showing.Shows(tool.Key))
        .OrderByDescending(tool => tool.Value)
        .ThenBy(tool => tool.Key)
        .Select(tool => desk.ToolLine(tool.Key, $"in {Show.Count(tool.Value, "job", "jobs")}"));

    private static ChartView HoursByPart(Book book, Id<Operation> id, string title)
    {
        var cells = book.Hours.Builds.SelectMany(build => build.Cells.Where(cell => cell.Operation == id), (build, cell) => (build.Build, cell)).ToList();
        var bars = cells.GroupBy(one => one.cell.Part is { } part && book.Showing.Shows(new PartRef(one.Build, part)) ? new PartRef(one.Build, part) : (PartRef?)null)
            .Select(group => (Part: group.Key, Time: group.Sum(one => one.cell.Minutes)))
            .OrderByDescending(group => group.Time)
            .ThenBy(group => group.Part?.ToString(), StringComparer.Ordinal)
            .Select(group => group.Part is { } part ? new Bar(book.Part(part).Title, group.Time, Addresses.Of(part)) : new Bar("Builds as a whole", group.Time));
        return BarChart.Draw("by-part", "By part", $"Hours of {Show.Lower(title)} by part.", [.. bars]);
    }
}
