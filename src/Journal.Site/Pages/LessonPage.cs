using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Wording;
using Journal.Site.Html;

namespace Journal.Site.Pages;

/// <summary>What a lesson was learned on, of one kind.</summary>
/// <param name="Label">The kind, such as <c>Part</c>.</param>
/// <param name="Links">The things, at least one.</param>
public sealed record LearnedOnView(string Label, IReadOnlyList<LinkView> Links);

/// <summary>A line of what a lesson cost.</summary>
/// <param name="What">What the time or money went into.</param>
/// <param name="Entry">The date of the evening; without a link where that is not shown.</param>
/// <param name="Time">Hours and minutes; a dash for none.</param>
/// <param name="Money">An amount; a dash for none.</param>
public sealed record LessonCostView(string What, LinkView Entry, string Time, string Money);

/// <summary>A time that the lesson was known and not heeded.</summary>
/// <param name="Mistake">What went wrong again.</param>
/// <param name="Entry">The entry that tells of it.</param>
/// <param name="After">How long after the lesson was learned, in words.</param>
public sealed record RepeatView(RemarkView? Mistake, EntryLineView Entry, string After);

/// <summary>The page of one lesson: the story behind it, what it cost, and how often it was forgotten and heeded since.</summary>
public sealed record LessonPage(
    PageFrame Frame,
    string Kind,
    string Text,
    string? Verdict,
    string? Better,
    IReadOnlyList<FactView> Facts,
    RemarkView? Mistake,
    SafeHtml? Story,
    EntryLineView Learned,
    EntryLineView? MadeIn,
    IReadOnlyList<LearnedOnView> LearnedOn,
    IReadOnlyList<LessonCostView> Costs,
    LessonCostView? CostTotal,
    IReadOnlyList<RepeatView> Forgotten,
    IReadOnlyList<EntryLineView> Heeded,
    IReadOnlyList<EntryLineView> PointingHere,
    IReadOnlyList<LessonLineView> LikeIt)
{
    /// <summary>The page of a lesson, which must be one of <see cref="SiteFigures.ShownLessons"/>.</summary>
    internal static LessonPage Of(SiteFigures figures, LessonFigure lesson)
    {
        var views = new SharedViews(figures, Addresses.Of(lesson.Id));
        var entry = figures.Entry(lesson.Entry);
        var costs = CostsOf(figures, lesson);
        var block = new TitleBlockView
        {
            Title = Show.Shorten(lesson.Lesson.Text, 60),
            Supplementary = figures.Build(entry.Build).Title,
            DocumentType = "Lesson",
            Identification = lesson.Id.Value,
            Issued = DateView.Of(entry.Date),
        };
        return new LessonPage(
            views.Frame("lesson", lesson.Lesson.Text, $"A lesson about {figures.OperationWords(lesson.On.Operations)}: {lesson.Lesson.Text}", [SharedViews.FrontCrumb, new LinkView("Lessons", Addresses.Lessons)], block),
            $"Lesson · {figures.OperationWords(lesson.On.Operations)}",
            lesson.Lesson.Text,
            lesson.Lesson.Verdict is { } verdict ? verdict.InWords() : null,
            lesson.Lesson.Better,
            FactsOf(figures, lesson),
            lesson.Own is { } own ? views.Mistake(own, withPlace: false) : null,
            views.Story(entry, lesson),
            views.Line(entry),
            lesson.MadeIn != lesson.Entry && figures.Visibility.Shows(lesson.MadeIn) ? views.Line(figures.Entry(lesson.MadeIn)) : null,
            [.. LearnedOnOf(figures, lesson)],
            costs,
            costs.Count > 1 ? new LessonCostView("Total", new LinkView("", null), Show.HoursOrDash(lesson.MinutesLost), MoneyOrDash(lesson.Money)) : null,
            [.. lesson.Repeated.Where(repeat => figures.Visibility.Shows(repeat.Entry)).Select(repeat => RepeatOf(figures, views, lesson, repeat))],
            [.. lesson.Heeded.Select(heeded => heeded.Entry).Distinct().Where(figures.Visibility.Shows).Select(one => views.Line(figures.Entry(one)))],
            [.. figures.BackLinks.To(lesson.Id).Where(link => link.Reason == LinkReason.Text && figures.Visibility.Shows(link.Entry)).Select(link => link.Entry).Distinct().Select(one => views.Line(figures.Entry(one)))],
            [.. figures.Similar.To(lesson.Id).Select(similar => LessonLineView.Of(figures, similar.Lesson))]);
    }

    private static List<FactView> FactsOf(SiteFigures figures, LessonFigure lesson)
    {
        var facts = new List<FactView> { new("Lost", Show.HoursOrDash(lesson.MinutesLost)) };
        if (lesson.Money > 0)
        {
            facts.Add(new FactView("Spent", Show.Money(lesson.Money, figures.Journal.Currency)));
        }

        facts.Add(new FactView("Forgotten", lesson.Repeated.Count == 0 ? "never" : Count.Times(lesson.Repeated.Count)));
        facts.Add(new FactView("Heeded", lesson.Heeded.Count == 0 ? "not yet" : Count.Times(lesson.Heeded.Count)));
        if (lesson.Outcome is { } outcome)
        {
            facts.Add(new FactView("The part was", outcome.InWords()));
        }

        return facts;
    }

    private static IEnumerable<LearnedOnView> LearnedOnOf(SiteFigures figures, LessonFigure lesson)
    {
        var on = lesson.On;
        var shown = figures.ShownOperations.ToHashSet();
        LearnedOnView[] all =
        [
            new("Operation", [.. on.Operations.Select(id => shown.Contains(id) ? figures.Link(id) : figures.Link(id) with { Address = null })]),
            new("Part", [.. on.Parts.Select(figures.LinkWithItem)]),
            new("Material", [.. on.Materials.Select(material => new LinkView(PartPage.MaterialWords(figures, material), null))]),
            new("Tools", [.. on.Tools.Where(figures.Visibility.Shows).Select(figures.Link)]),
            new("Cause", lesson.Cause is { } cause ? [new LinkView(figures.CauseTitle(cause), $"{Addresses.Of(LessonOrder.Cause)}#{LessonsPage.GroupId(cause.Value)}")] : []),
        ];
        return all.Where(one => one.Links.Count > 0);
    }

    // What was lost at once, each job that put it right and each purchase: every one of them once.
    private static List<LessonCostView> CostsOf(SiteFigures figures, LessonFigure lesson)
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
                figures.Visibility.Shows(bought.Entry) ? bought.Purchase.What : "Bought", DateLink(bought.Entry, bought.Date), "–", Show.Money(bought.Purchase.Cost, figures.Journal.Currency))));
        }

        return lines;

        LinkView DateLink(EntryRef entry, DateOnly date) => figures.Visibility.Shows(entry) ? new LinkView(Show.Date(date), Addresses.Of(entry)) : new LinkView("unpublished", null);
    }

    private static string MoneyOrDash(decimal money) => money == 0 ? "–" : Show.Sum(money);

    private static RepeatView RepeatOf(SiteFigures figures, SharedViews views, LessonFigure lesson, Repeat repeat) => new(
        views.Mistake(lesson.Mistakes.First(cost => cost.Ref == repeat.Mistake), withPlace: false),
        views.Line(figures.Entry(repeat.Entry)),
        repeat.DaysAfterLearning switch
        {
            < 0 => "before the lesson was recorded",
            0 => "the same day",
            1 => "the next day",
            var days => $"{Show.Number(days)} days later",
        });
}
