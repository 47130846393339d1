using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Wording;
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
    /// <summary>The page of an operation, which a shown entry must name. Hours count hidden evenings.</summary>
    internal static OperationPage Of(SiteFigures figures, Id<Operation> id)
    {
        var views = new SharedViews(figures, Addresses.Of(id));
        var operation = figures.Operation(id);
        var jobs = figures.Index.Jobs[id].ToList();
        var shown = jobs.Where(job => figures.Visibility.Shows(job.Entry)).ToList();
        var lessons = figures.ToRead.Ranked(JobToCome.With(id));
        var block = new TitleBlockView { Title = operation.Title, Supplementary = "What is known here", DocumentType = "Operation", Identification = id.Value, Issued = views.LatestDate(shown.Select(job => job.Entry)) };
        return new OperationPage(
            views.Frame("operation", operation.Title, $"What this journal knows about {Casing.Lower(operation.Title)}: hours, lessons, settings, tools, cautions.", [SharedViews.FrontCrumb], block),
            $"Operation · {Casing.Lower(BuildPage.KindWords(operation.Kind))}",
            operation.Title,
            FactsOf(figures, id, jobs),
            views.Cautions(Core.Figures.Cautions.For(id)),
            [.. lessons.Take(LessonsToRead.Few).Select(views.ToRead)],
            [.. lessons.Skip(LessonsToRead.Few).Select(views.ToRead)],
            SettingRows.Of(figures, id),
            SettingRows.Speeds(figures, id),
            [.. ToolsOf(figures, views, shown)],
            HoursByPart(figures, id, operation.Title),
            [.. shown.Select(job => job.Entry).Distinct().OrderByDescending(entry => entry.Date).ThenByDescending(entry => entry.Ref).Select(views.Line)]);
    }

    // Of fewer jobs a quartile says no more than the jobs themselves.
    private const int FewestForQuartiles = 4;

    private static List<FactView> FactsOf(SiteFigures figures, Id<Operation> id, List<EntryJob> jobs)
    {
        var minutes = figures.Hours.Work.Operations.FirstOrDefault(time => time.What == id)?.Minutes ?? Minutes.Zero;
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
            facts.Add(new FactView("Setting up", Show.PerCent((double)setUp.Count / alone.Sum(job => job.Time).Count)));
        }

        var lost = figures.Lessons.Mistakes.Where(cost => cost.On.Operations.Contains(id)).Sum(cost => cost.Minutes);
        if (lost > Minutes.Zero)
        {
            facts.Add(new FactView("Lost", Show.Hours(lost)));
        }

        return facts;
    }

    private static IEnumerable<ToolLineView> ToolsOf(SiteFigures figures, SharedViews views, List<EntryJob> shown) => shown
        .SelectMany(job => job.Job.Tools)
        .CountBy(tool => tool)
        .Where(tool => figures.Visibility.Shows(tool.Key))
        .OrderByDescending(tool => tool.Value)
        .ThenBy(tool => tool.Key)
        .Select(tool => views.ToolLine(tool.Key, $"in {Show.Count(tool.Value, "job", "jobs")}"));

    private static ChartView HoursByPart(SiteFigures figures, Id<Operation> id, string title)
    {
        var cells = figures.Hours.Builds.SelectMany(build => build.Cells.Where(cell => cell.Operation == id), (build, cell) => (build.Build, cell)).ToList();
        var bars = cells.GroupBy(one => one.cell.Part is { } part ? new PartRef(one.Build, part) : (PartRef?)null)
            .Select(group => (Part: group.Key, Time: group.Sum(one => one.cell.Minutes)))
            .OrderByDescending(group => group.Time)
            .ThenBy(group => group.Part?.ToString(), StringComparer.Ordinal)
            .Select(group => group.Part is { } part ? new Bar(figures.Part(part).Title, group.Time, Addresses.Of(part)) : new Bar("Builds as a whole", group.Time));
        return BarChart.Draw("by-part", "By part", $"Hours of {Casing.Lower(title)} by part.", [.. bars]);
    }
}
