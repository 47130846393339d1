using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Site.Charts;

namespace Journal.Site.Pages;

/// <summary>Lessons that belong together.</summary>
public sealed record LessonGroupView(string Id, LinkView Heading, IReadOnlyList<RemarkView> Lessons);

/// <summary>The lessons book.</summary>
public sealed record LessonsPage(PageFrame Frame, string Kind, IReadOnlyList<FactView> Facts, IReadOnlyList<LessonGroupView> Groups, ChartView Causes)
{
    internal static LessonsPage Of(Book book)
    {
        var desk = new Desk(book, Addresses.Lessons);
        var shown = book.Lessons.All.Where(lesson => book.Showing.Shows(lesson.Id)).ToList();
        var fromMistakes = shown.Count(lesson => lesson.Lesson.FromMistake);
        var block = new TitleBlockView { Title = "Lessons book", Supplementary = book.Journal.Title, DocumentType = "Lessons", Identification = "lessons", Issued = desk.LatestDate(book.Journal.Entries) };
        var operations = shown.GroupBy(lesson => lesson.On.Operations[0]).OrderBy(group => book.Operation(group.Key).Title, StringComparer.Ordinal);
        return new LessonsPage(
            desk.Frame("lessons", "Lessons", $"{Show.Count(shown.Count, "lesson", "lessons")} from the bench, by operation, with what each cost.", [Desk.FrontCrumb], block),
            $"Lessons book · {Show.Number(fromMistakes)} from mistakes, {Show.Number(shown.Count - fromMistakes)} from what worked",
            FactsOf(book),
            [.. operations.Select(group => new LessonGroupView(
                $"of_{group.Key}",
                book.Link(group.Key),
                [.. group.OrderByDescending(lesson => lesson.MinutesLost).ThenBy(lesson => lesson.Id).Select(lesson => desk.Lesson(lesson, HeadingOf(book, lesson)))]))],
            CausesOf(book, "causes"));
    }

    internal static ChartView CausesOf(Book book, string id) => ParetoChart.Draw(
        id,
        "Where the lost hours came from",
        "Causes of mistakes by hours lost, with what they come to together and the mark at 80 %.",
        [.. book.Lessons.CausesByMinutes.Select(cause => new CauseBar(book.CauseTitle(cause.Cause), cause.Mistakes, cause.MinutesLost))]);

    private static string HeadingOf(Book book, LessonFigure lesson)
    {
        var parts = lesson.On.Parts.Where(book.Showing.Shows).Select(part => book.Part(part).Title).ToList();
        return parts.Count == 0 ? Show.Date(lesson.Date) : $"{string.Join(", ", parts)} · {Show.Date(lesson.Date)}";
    }

    private static List<FactView> FactsOf(Book book)
    {
        var totals = book.Lessons.Totals;
        var share = book.Hours.Minutes > Minutes.Zero ? (double)totals.MinutesLost.Count / book.Hours.Minutes.Count : 0;
        var facts = new List<FactView>
        {
            new("Lost", Show.Hours(totals.MinutesLost), $"{Show.PerCent(share)} of all hours"),
            new("Mistakes", Show.Number(book.Lessons.Mistakes.Count)),
            new("Forgotten", Show.Times(book.Lessons.All.Sum(lesson => lesson.Repeated.Count))),
            new("Heeded", Show.Times(book.Lessons.All.Sum(lesson => lesson.Heeded.Count))),
        };
        if (totals.MoneyLost > 0)
        {
            facts.Insert(1, new FactView("Spent on them", Show.Money(totals.MoneyLost, book.Journal.Currency)));
        }

        return facts;
    }
}
