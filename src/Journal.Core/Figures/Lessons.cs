using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>What was learned and what it cost (docs/figures.md, What lessons cost).</summary>
/// <param name="All">Every lesson by date, build, entry and order in the file; of lessons that share an id only the first.</param>
/// <param name="Mistakes">Every mistake with its cost, in the same order, those without a lesson too.</param>
/// <param name="CausesByMinutes">Causes in Pareto order by time lost.</param>
/// <param name="CausesByCount">Causes in Pareto order by count.</param>
/// <param name="Totals">Over the whole journal.</param>
public sealed record Lessons(
    IReadOnlyList<LessonFigure> All,
    IReadOnlyList<MistakeCost> Mistakes,
    IReadOnlyList<CauseShare> CausesByMinutes,
    IReadOnlyList<CauseShare> CausesByCount,
    LessonTotals Totals)
{
    /// <summary>The lessons of a journal.</summary>
    public static Lessons Of(MakerJournal journal) => Of(journal, Hours.Of(journal));

    /// <summary>The lessons of a journal whose hours are known.</summary>
    public static Lessons Of(MakerJournal journal, Hours hours) => Of(journal, hours, _ => true);

    /// <summary>The lessons and mistakes of a piece of a journal; what each cost, and how often it was repeated and heeded, is counted in the whole.</summary>
    public static Lessons Of(MakerJournal journal, MakerJournal piece)
    {
        var entries = piece.Builds.SelectMany(build => build.Entries).Select(entry => entry.Ref).ToHashSet();
        return Of(journal, Hours.Of(piece), entries.Contains);
    }

    private static Lessons Of(MakerJournal journal, Hours hours, Func<EntryRef, bool> isMeant)
    {
        var all = MistakeCost.Of(journal);
        IReadOnlyList<MistakeCost> mistakes = [.. all.Where(cost => isMeant(cost.Ref.Entry))];
        var lessons = Figures(journal, all).Where(lesson => isMeant(lesson.Entry)).ToList();
        return new Lessons(
            lessons,
            mistakes,
            CauseShare.ByMinutes(mistakes, journal.Vocabulary),
            CauseShare.ByCount(mistakes, journal.Vocabulary),
            LessonTotals.Of(lessons, mistakes, hours));
    }

    private static List<LessonFigure> Figures(MakerJournal journal, IReadOnlyList<MistakeCost> mistakes)
    {
        var entries = journal.Entries;
        var parts = journal.Builds.ToDictionary(build => build.Id, BuildParts.PartsById);
        var mistakesOf = mistakes
            .SelectMany(cost => new[] { cost.Mistake.Lesson, cost.Mistake.Repeats }.OfType<Id<Lesson>>().Distinct(), (cost, id) => (cost, id))
            .ToLookup(pair => pair.id, pair => pair.cost);
        var heeded = entries.SelectMany(entry => entry.Heeded.Distinct(), (entry, id) => (entry, id))
            .ToLookup(pair => pair.id, pair => new HeededOn(pair.entry.Ref, pair.entry.Date) { On = [.. pair.entry.Jobs.Select(job => JobFacts.Of(pair.entry, job.Number, parts[pair.entry.Build]))] });
        return
        [
            .. entries.SelectMany(entry => entry.Lessons, (entry, lesson) => (entry, lesson))
                .DistinctBy(learned => learned.lesson.Id)
                .Select(learned => Figure(learned.entry, learned.lesson)),
        ];

        LessonFigure Figure(Entry entry, Lesson lesson)
        {
            IReadOnlyList<MistakeCost> costs = [.. mistakesOf[lesson.Id]];
            var repeats = costs.Where(cost => cost.Mistake.Repeats == lesson.Id)
                .Select(cost => new Repeat(cost.Ref.Entry, cost.On.Date, cost.On.Date.DayNumber - entry.Date.DayNumber, cost.Ref) { On = cost.On });
            return new LessonFigure(
                lesson,
                JobFacts.Of(entry, lesson.Job, parts[entry.Build]),
                costs.FirstOrDefault(cost => cost.Mistake.Lesson == lesson.Id),
                costs,
                [.. repeats],
                [.. heeded[lesson.Id]]);
        }
    }
}
