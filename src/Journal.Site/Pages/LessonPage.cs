using Journal.Core.Figures;
using Journal.Core.Model;

namespace Journal.Site.Pages;

/// <summary>The page of one lesson: the story behind it, and how it fared.</summary>
public sealed record LessonPage(
    PageFrame Frame,
    string Kind,
    string Text,
    IReadOnlyList<FactView> Facts,
    string? Verdict,
    RemarkView? Mistake,
    EntryLineView Learned,
    EntryLineView? MadeIn,
    IReadOnlyList<EntryLineView> Forgotten,
    IReadOnlyList<EntryLineView> Heeded,
    IReadOnlyList<LinkView> About,
    IReadOnlyList<EntryLineView> PointingHere)
{
    internal static LessonPage Of(Book book, LessonFigure lesson)
    {
        var desk = new Desk(book, Addresses.Of(lesson.Id));
        var entry = book.Entry(lesson.Entry);
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
            FactsOf(book, lesson),
            VerdictOf(lesson.Lesson),
            lesson.Own is { } own ? desk.Mistake(own, withPlace: true) : null,
            desk.Line(entry),
            lesson.MadeIn != lesson.Entry && book.Showing.Shows(lesson.MadeIn) ? desk.Line(book.Entry(lesson.MadeIn)) : null,
            [.. lesson.Repeated.Select(repeat => repeat.Entry).Distinct().Where(book.Showing.Shows).Select(one => desk.Line(book.Entry(one)))],
            [.. lesson.Heeded.Select(heeded => heeded.Entry).Distinct().Where(book.Showing.Shows).Select(one => desk.Line(book.Entry(one)))],
            [.. lesson.On.Parts.Where(book.Showing.Shows).Select(book.LinkWithItem), .. lesson.On.Operations.Select(book.Link)],
            [.. book.BackLinks.To(lesson.Id).Where(link => link.Reason == LinkReason.Text && book.Showing.Shows(link.Entry)).Select(link => link.Entry).Distinct().Select(one => desk.Line(book.Entry(one)))]);
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
        if (lesson.Cause is not null)
        {
            facts.Add(new FactView("Cause", book.CauseTitle(lesson.Cause)));
        }

        if (lesson.Outcome is { } outcome)
        {
            facts.Add(new FactView("The part was", Desk.OutcomeWords(outcome)));
        }

        return facts;
    }

    private static string? VerdictOf(Lesson lesson) => (lesson.Verdict, lesson.Better) switch
    {
        (null, null) => null,
        (null, { } better) => $"Better: {Show.Lower(better)}",
        ({ } verdict, null) => $"Verdict: {Desk.VerdictWords(verdict)}.",
        ({ } verdict, { } better) => $"Verdict: {Desk.VerdictWords(verdict)}. Better: {Show.Lower(better)}",
    };
}
