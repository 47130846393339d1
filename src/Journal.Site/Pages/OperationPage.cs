using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Site.Charts;

namespace Journal.Site.Pages;

/// <summary>What this journal knows about one operation.</summary>
public sealed record OperationPage(
    PageFrame Frame,
    string Kind,
    string Title,
    IReadOnlyList<FactView> Facts,
    IReadOnlyList<CautionView> Cautions,
    IReadOnlyList<RemarkView> BeforeYouStart,
    IReadOnlyList<RemarkView> MoreLessons,
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
        var jobs = book.Index.Jobs[id].ToList();
        var shown = jobs.Where(job => book.Showing.Shows(job.Entry)).ToList();
        var lessons = book.ToRead.Ranked(JobToCome.With(id));
        var block = new TitleBlockView { Title = operation.Title, Supplementary = "What is known here", DocumentType = "Operation", Identification = id.Value, Issued = desk.LatestDate(shown.Select(job => job.Entry)) };
        return new OperationPage(
            desk.Frame("operation", operation.Title, $"What this workshop knows about {Show.Lower(operation.Title)}: hours, lessons, settings, tools, cautions.", [Desk.FrontCrumb], block),
            $"Operation · {Show.Lower(BuildPage.KindWords(operation.Kind))}",
            operation.Title,
            FactsOf(book, id, jobs),
            desk.Cautions(Core.Figures.Cautions.For(id)),
            [.. lessons.Take(LessonsToRead.Few).Select(desk.ToRead)],
            [.. lessons.Skip(LessonsToRead.Few).Select(desk.ToRead)],
            SettingRows.Of(book, id),
            SettingRows.Speeds(book, id),
            [.. ToolsOf(book, desk, shown)],
            HoursByPart(book, id, operation.Title),
            [.. shown.Select(job => job.Entry).Distinct().OrderByDescending(entry => entry.Date).ThenByDescending(entry => entry.Ref).Select(desk.Line)]);
    }

    // Of fewer jobs a quartile says no more than the jobs themselves.
    private const int FewestForQuartiles = 4;

    private static List<FactView> FactsOf(Book book, Id<Operation> id, List<EntryJob> jobs)
    {
        var minutes = book.Hours.Work.Operations.FirstOrDefault(time => time.What == id)?.Minutes ?? Minutes.Zero;
        var alone = jobs.Where(job => job.Job.Operations.Count == 1).Select(job => job.Job).ToList();
        var facts = new List<FactView> { new("Hours", Show.Hours(minutes)), new("Jobs", Show.Number(jobs.Count)) };
        if (JobTimes.Of(alone.Select(job => job.Time)) is { } times)
        {
            var note = times.Jobs >= FewestForQuartiles ? $"median; half of {Show.Number(times.Jobs)} between {Show.Hours(times.Lower)} and {Show.Hours(times.Upper)}" : "median";
            facts.Add(new FactView("A job takes", Show.Hours(times.Median), note));
        }

        var setUp = alone.Sum(job => job.SetUp);
        if (setUp > Minutes.Zero)
        {
            facts.Add(new FactView("Of it setting up", Show.PerCent((double)setUp.Count / alone.Sum(job => job.Time).Count)));
        }

        var lost = book.Lessons.Mistakes.Where(cost => cost.On.Operations.Contains(id)).Sum(cost => cost.Minutes);
        if (lost > Minutes.Zero)
        {
            facts.Add(new FactView("Lost", Show.Hours(lost)));
        }

        return facts;
    }

    private static IEnumerable<ToolLineView> ToolsOf(Book book, Desk desk, List<EntryJob> shown) => shown
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
