using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Site.Templates;

namespace Journal.Site.Pages;

/// <summary>One thing that a lesson was learned on, by the word for it.</summary>
public sealed record LearnedOnView(string Label, IReadOnlyList<LinkView> Links);

/// <summary>A line of what a lesson cost.</summary>
public sealed record LessonCostView(string What, LinkView Entry, string Time, string Money);

/// <summary>A time that the lesson was known and not heeded.</summary>
public sealed record RepeatView(RemarkView? Mistake, EntryLineView Entry, string After);

/// <summary>The page of one lesson: the story behind it, what it cost, and how it fared.</summary>
public sealed record LessonPage(
    PageFrame Frame,
    string Kind,
    string Text,
    string? Verdict,
    string? Better,
    IReadOnlyList<FactView> Facts,
    RemarkView? Mistake,
    Html? Story,
    EntryLineView Learned,
    EntryLineView? MadeIn,
    IReadOnlyList<LearnedOnView> LearnedOn,
    IReadOnlyList<LessonCostView> Costs,
    LessonCostView? CostTotal,
    IReadOnlyList<RepeatView> Forgotten,
    IReadOnlyList<EntryLineView> Heeded,
    IReadOnlyList<EntryLineView> PointingHere,
    IReadOnlyList<LessonLineView> LikeIt) : IShowsWords
{
    private List<ShownWords> words = [];

    IReadOnlyList<ShownWords> IShowsWords.Words => words;

    internal static LessonPage Of(Book book, LessonFigure lesson)
    {
        var desk = new Desk(book, Addresses.Of(lesson.Id));
        var entry = book.Entry(lesson.Entry);
        var costs = CostsOf(book, lesson);
        var block = new TitleBlockView
        {
            Title = Show.Shorten(lesson.Lesson.Text, 60),
            Supplementary = book.Build(entry.Build).Title,
            DocumentType = "Lesson",
            Identification = lesson.Id.Value,
            Issued = DateView.Of(entry.Date),
        };
        return new LessonPage(
            desk.Frame("lesson", lesson.Lesson.Text, $"A lesson about {book.OperationWords(lesson.On.Operations)}: {lesson.Lesson.Text}", [Desk.FrontCrumb, new LinkView("Lessons", Addresses.Lessons)], block),
            $"Lesson · {book.OperationWords(lesson.On.Operations)}",
            lesson.Lesson.Text,
            lesson.Lesson.Verdict is { } verdict ? Desk.VerdictWords(verdict) : null,
            lesson.Lesson.Better,
            FactsOf(book, lesson),
            lesson.Own is { } own ? desk.Mistake(own, withPlace: false) : null,
            desk.Story(entry, lesson),
            desk.Line(entry),
            lesson.MadeIn != lesson.Entry && book.Showing.Shows(lesson.MadeIn) ? desk.Line(book.Entry(lesson.MadeIn)) : null,
            [.. LearnedOnOf(book, lesson)],
            costs,
            costs.Count > 1 ? new LessonCostView("Together", new LinkView("", null), Show.HoursOrDash(lesson.MinutesLost), MoneyOrDash(lesson.Money)) : null,
            [.. lesson.Repeated.Where(repeat => book.Showing.Shows(repeat.Entry)).Select(repeat => RepeatOf(book, desk, lesson, repeat))],
            [.. lesson.Heeded.Select(heeded => heeded.Entry).Distinct().Where(book.Showing.Shows).Select(one => desk.Line(book.Entry(one)))],
            [.. book.BackLinks.To(lesson.Id).Where(link => link.Reason == LinkReason.Text && book.Showing.Shows(link.Entry)).Select(link => link.Entry).Distinct().Select(one => desk.Line(book.Entry(one)))],
            [.. book.Similar.To(lesson.Id).Select(similar => LessonLineView.Of(book, similar.Lesson))])
        {
            words = desk.Words,
        };
    }

    private static List<FactView> FactsOf(Book book, LessonFigure lesson)
    {
        var facts = new List<FactView> { new("Lost", Show.HoursOrDash(lesson.MinutesLost)) };
        if (lesson.Money > 0)
        {
            facts.Add(new FactView("Spent", Show.Money(lesson.Money, book.Journal.Currency)));
        }

        facts.Add(new FactView("Forgotten", lesson.Repeated.Count == 0 ? "never" : Show.Times(lesson.Repeated.Count)));
        facts.Add(new FactView("Heeded", lesson.Heeded.Count == 0 ? "not yet" : Show.Times(lesson.Heeded.Count)));
        if (lesson.Outcome is { } outcome)
        {
            facts.Add(new FactView("The part was", Desk.OutcomeWords(outcome)));
        }

        return facts;
    }

    private static IEnumerable<LearnedOnView> LearnedOnOf(Book book, LessonFigure lesson)
    {
        var on = lesson.On;
        var shown = book.ShownOperations.ToHashSet();
        LearnedOnView[] all =
        [
            new("Operation", [.. on.Operations.Select(id => shown.Contains(id) ? book.Link(id) : book.Link(id) with { Address = null })]),
            new("Part", [.. on.Parts.Where(book.Showing.Shows).Select(book.LinkWithItem)]),
            new("Material", [.. on.Materials.Select(material => new LinkView(PartPage.MaterialWords(book, material), null))]),
            new("Tools", [.. on.Tools.Where(book.Showing.Shows).Select(book.Link)]),
            new("Cause", lesson.Cause is { } cause ? [new LinkView(book.CauseTitle(cause), $"{Addresses.Of(LessonOrder.Cause)}#{LessonsPage.GroupId(cause.Value)}")] : []),
        ];
        return all.Where(one => one.Links.Count > 0);
    }

    // What was lost at once, each job that put it right and each purchase: every one of them once.
    private static List<LessonCostView> CostsOf(Book book, LessonFigure lesson)
    {
        var lines = new List<LessonCostView>();
        foreach (var mistake in lesson.Mistakes)
        {
            if (mistake.Mistake.Lost > Minutes.Zero)
            {
                lines.Add(new LessonCostView(mistake == lesson.Own ? "Lost at once" : "Lost when it was forgotten", DateLink(mistake.Ref.Entry, mistake.On.Date), Show.Hours(mistake.Mistake.Lost), "–"));
            }

            lines.AddRange(mistake.MendedBy.Select(job => new LessonCostView("Putting right", DateLink(job.Entry, job.Date), Show.Hours(job.Minutes), "–")));
            lines.AddRange(mistake.Purchases.Select(bought => new LessonCostView(
                book.Showing.Shows(bought.Entry) ? bought.Purchase.What : "Bought", DateLink(bought.Entry, bought.Date), "–", Show.Money(bought.Purchase.Cost, book.Journal.Currency))));
        }

        return lines;

        LinkView DateLink(EntryRef entry, DateOnly date) => book.Showing.Shows(entry) ? new LinkView(Show.Date(date), Addresses.Of(entry)) : new LinkView("not shown", null);
    }

    private static string MoneyOrDash(decimal money) => money == 0 ? "–" : Show.Sum(money);

    private static RepeatView RepeatOf(Book book, Desk desk, LessonFigure lesson, Repeat repeat) => new(
        desk.Mistake(lesson.Mistakes.First(cost => cost.Ref == repeat.Mistake), withPlace: false),
        desk.Line(book.Entry(repeat.Entry)),
        repeat.DaysAfterLearning switch
        {
            < 0 => "before the lesson was written down",
            0 => "the same day",
            1 => "the day after",
            var days => $"{Show.Number(days)} days after",
        });
}
