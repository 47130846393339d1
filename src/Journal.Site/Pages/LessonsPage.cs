using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Wording;
using Journal.Site.Charts;

namespace Journal.Site.Pages;

/// <summary>What the lessons book is sorted by; each has a page of its own.</summary>
internal enum LessonOrder
{
    /// <summary>What was being done; the first page of the book.</summary>
    Operation,

    /// <summary>Why it went wrong.</summary>
    Cause,

    /// <summary>The part that it was learned on.</summary>
    Part,

    /// <summary>The tools that were used.</summary>
    Tool,

    /// <summary>The time that it cost.</summary>
    Cost,

    /// <summary>When it was learned.</summary>
    Date,
}

/// <summary>A lesson as one line of a list.</summary>
/// <param name="Lesson">The lesson, with a link to its page.</param>
/// <param name="About">Operation, parts, date, and what it has cost, in words.</param>
public sealed record LessonLineView(LinkView Lesson, string About)
{
    /// <summary>The line of a lesson, the same in every list.</summary>
    internal static LessonLineView Of(SiteFigures figures, LessonFigure lesson)
    {
        var on = lesson.On.Parts.Select(part => Casing.Lower(figures.Part(part).Title)).ToList();
        var about = new List<string> { figures.OperationWords(lesson.On.Operations.Take(1)) + (on.Count == 0 ? "" : $", {string.Join(", ", on)}"), Show.Date(lesson.Date) };
        about.AddRange(LessonRecord.Of(lesson, figures.Journal.Currency, Show.Hours));
        return new LessonLineView(figures.Link(lesson.Id), string.Join(" · ", about));
    }
}

/// <summary>Some lessons: the first in view, the rest a click away.</summary>
/// <param name="Kind">The style: <c>wrong</c> or <c>worked</c>.</param>
/// <param name="Heading">The same in words.</param>
/// <param name="Lines">The first ten.</param>
/// <param name="More">The others.</param>
public sealed record LessonListView(string Kind, string Heading, IReadOnlyList<LessonLineView> Lines, IReadOnlyList<LessonLineView> More);

/// <summary>Lessons that belong together: what went wrong beside what worked.</summary>
/// <param name="Id">The group's id on its page.</param>
/// <param name="Heading">What they have in common.</param>
/// <param name="Lists">One list or two, none of them empty.</param>
public sealed record LessonGroupView(string Id, LinkView Heading, IReadOnlyList<LessonListView> Lists);

/// <summary>A build's hours of putting right.</summary>
/// <param name="Build">The build.</param>
/// <param name="Time">Hours and minutes.</param>
/// <param name="Share">Their share of all its hours, in per cent.</param>
public sealed record PuttingRightView(LinkView Build, string Time, string Share);

/// <summary>A page of the lessons figures.</summary>
public sealed record LessonsPage(
    PageFrame Frame,
    string Kind,
    string Gist,
    IReadOnlyList<WayView> Orders,
    IReadOnlyList<FactView> Facts,
    IReadOnlyList<LessonGroupView> Groups,
    ChartView? CausesByTime,
    ChartView? CausesByCount,
    IReadOnlyList<PuttingRightView> PuttingRight,
    string? UntilForgotten)
{
    /// <summary>How many lessons of a list are in view at once.</summary>
    private const int MostInView = 10;

    /// <summary>A page of the lessons book; only the first has the totals.</summary>
    internal static LessonsPage Of(SiteFigures figures, LessonOrder order)
    {
        var views = new SharedViews(figures, Addresses.Of(order));
        var isFirst = order == LessonOrder.Operation;
        var worked = figures.ShownLessons.Count(lesson => !WentWrong(lesson));
        var title = isFirst ? "Lessons" : $"Lessons by {order.ToWord()}";
        var block = new TitleBlockView { Title = "Lessons book", Supplementary = $"By {order.ToWord()}", DocumentType = "Lessons", Identification = isFirst ? "lessons" : $"lessons/by-{order.ToWord()}", Issued = views.LatestDate(figures.Journal.Entries) };
        return new LessonsPage(
            views.Frame("lessons", title, $"{Show.Count(figures.ShownLessons.Count, "lesson", "lessons")} from the bench by {order.ToWord()}, with what each has cost.", isFirst ? [SharedViews.FrontCrumb] : [SharedViews.FrontCrumb, new LinkView("Lessons", Addresses.Lessons)], block),
            $"Lessons book · {Show.Number(figures.ShownLessons.Count - worked)} from what went wrong, {Show.Number(worked)} from what worked",
            GistOf(order),
            [.. Enum.GetValues<LessonOrder>().Select(one => new WayView(Titles.FromId(one.ToWord()), Addresses.Of(one), one == order))],
            FactsOf(figures),
            [.. LessonGroups.Of(figures, order).Where(group => group.Lessons.Count > 0).Select(group => GroupOf(figures, order, group))],
            isFirst || order == LessonOrder.Cause ? CausesOf(figures, "causes-by-time") : null,
            isFirst || order == LessonOrder.Cause ? CausesByCountOf(figures, "causes-by-count") : null,
            isFirst ? PuttingRightOf(figures) : [],
            isFirst ? UntilForgottenOf(DaysToRepeat(figures)) : null);
    }

    /// <summary>The id of a group on its page. Ids of makers have no underscore, so it is never that of a lesson or tool.</summary>
    internal static string GroupId(string id) => $"of_{id}";

    /// <summary>Causes by hours lost, the most first; <paramref name="id"/> is the chart's id on its page.</summary>
    internal static ChartView CausesOf(SiteFigures figures, string id) => ParetoChart.Draw(
        id,
        "Where the lost hours came from",
        "Causes of mistakes by hours lost, with the cumulative share and a line at 80 %.",
        [.. figures.Lessons.CausesByMinutes.Select(cause => BarOf(figures, cause))]);

    private static ChartView CausesByCountOf(SiteFigures figures, string id) => ParetoChart.DrawByCount(
        id,
        "How often each cause came up",
        "Causes of mistakes by count, with the cumulative share and a line at 80 %.",
        [.. figures.Lessons.CausesByCount.Select(cause => BarOf(figures, cause))]);

    private static CauseBar BarOf(SiteFigures figures, CauseShare cause) => new(figures.CauseTitle(cause.Cause), cause.Mistakes, cause.MinutesLost);

    private static bool WentWrong(LessonFigure lesson) => lesson.Lesson.FromMistake || lesson.Lesson.Verdict == Verdict.NeverAgain;

    private static LessonGroupView GroupOf(SiteFigures figures, LessonOrder order, LessonGroup group)
    {
        var sorted = order == LessonOrder.Date
            ? group.Lessons.OrderByDescending(lesson => lesson.Date).ThenBy(lesson => lesson.Id)
            : group.Lessons.OrderByDescending(lesson => lesson.MinutesLost).ThenByDescending(lesson => lesson.Money).ThenByDescending(lesson => lesson.Date).ThenBy(lesson => lesson.Id);
        var byKind = sorted.ToLookup(WentWrong);
        return new LessonGroupView(
            GroupId(group.Id),
            group.Heading,
            [.. new[] { ListOf(figures, "wrong", "What went wrong", byKind[true]), ListOf(figures, "worked", "What worked", byKind[false]) }.Where(list => list.Lines.Count > 0)]);
    }

    private static LessonListView ListOf(SiteFigures figures, string kind, string heading, IEnumerable<LessonFigure> lessons)
    {
        List<LessonLineView> lines = [.. lessons.Select(lesson => LessonLineView.Of(figures, lesson))];
        return new LessonListView(kind, heading, [.. lines.Take(MostInView)], [.. lines.Skip(MostInView)]);
    }

    private static string GistOf(LessonOrder order) => order switch
    {
        LessonOrder.Operation => "By operation, the most costly first. A lesson’s cost is that of its own mistake and of every mistake that repeats it.",
        LessonOrder.Cause => "By cause, the most costly first.",
        LessonOrder.Part => "By part, in the order of the parts lists.",
        LessonOrder.Tool => "By tool: what to remember when you use it.",
        LessonOrder.Cost => "By cost: that of the lesson’s own mistake and of every mistake that repeats it.",
        _ => "By date, the latest first.",
    };

    private static List<FactView> FactsOf(SiteFigures figures)
    {
        var totals = figures.Lessons.Totals;
        var facts = new List<FactView> { new("Hours lost", Show.HoursOrDash(totals.MinutesLost)) };
        if (totals.MoneyLost > 0)
        {
            facts.Add(new FactView("Money lost", Show.Money(totals.MoneyLost, figures.Journal.Currency)));
        }

        facts.Add(new FactView("Forgotten", totals.Repeated == 0 ? "never" : Count.Times(totals.Repeated)));
        facts.Add(new FactView("Heeded", totals.Heeded == 0 ? "not yet" : Count.Times(totals.Heeded)));
        return facts;
    }

    private static IReadOnlyList<PuttingRightView> PuttingRightOf(SiteFigures figures) =>
    [
        .. figures.Lessons.Totals.PuttingRight.Where(one => one.Minutes > Minutes.Zero).Select(one => new PuttingRightView(
            new LinkView(figures.Journal.Builds.First(build => build.Id == one.Build).Title, Addresses.Of(one.Build)), Show.Hours(one.Minutes), Show.PerCent(one.Share))),
    ];

    // Repeats on hidden evenings are left out: they would tell when those evenings were.
    private static IReadOnlyList<int> DaysToRepeat(SiteFigures figures) =>
        [.. figures.Lessons.All.SelectMany(lesson => lesson.Repeated).Where(repeat => figures.Visibility.Shows(repeat.Entry)).Select(repeat => repeat.DaysAfterLearning).Order()];

    private static string? UntilForgottenOf(IReadOnlyList<int> days) => days.Count switch
    {
        0 => null,
        1 => $"One lesson was forgotten, {Days(days[0])} after it was learned.",
        _ => $"Lessons were forgotten {Days(days[0])} to {Days(days[^1])} after they were learned; the median is {Days(days[days.Count / 2])}.",
    };

    private static string Days(int days) => Show.Count(days, "day", "days");
}
