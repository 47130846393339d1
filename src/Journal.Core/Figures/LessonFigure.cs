using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>A lesson with what it has cost so far and what became of it.</summary>
/// <param name="Lesson">The lesson as written.</param>
/// <param name="On">The job that it was learned on.</param>
/// <param name="Own">The mistake that taught it; null for what was learned without one.</param>
/// <param name="Mistakes">Its own mistake and every mistake that repeats it, in order, each once.</param>
/// <param name="Repeated">Each time it was known and not heeded, in order.</param>
/// <param name="Heeded">Each entry that applied it, in order.</param>
public sealed record LessonFigure(
    Lesson Lesson,
    JobFacts On,
    MistakeCost? Own,
    IReadOnlyList<MistakeCost> Mistakes,
    IReadOnlyList<Repeat> Repeated,
    IReadOnlyList<HeededOn> Heeded)
{
    /// <summary>The lesson's id.</summary>
    public Id<Lesson> Id => Lesson.Id;

    /// <summary>The entry that learned it; a mistake found later was found here.</summary>
    public EntryRef Entry => Lesson.Entry;

    /// <summary>The date of that entry.</summary>
    public DateOnly Date => On.Date;

    /// <summary>The entry where its mistake was made; the one that learned it otherwise.</summary>
    public EntryRef MadeIn => Own?.MadeIn ?? Lesson.Entry;

    /// <summary>Why its mistake happened, where the maker says so.</summary>
    public Id<Cause>? Cause => Own?.Mistake.Cause;

    /// <summary>What became of the part, where the maker says so.</summary>
    public Outcome? Outcome => Own?.Mistake.Outcome;

    /// <summary>The jobs on which it was forgotten or heeded later: a lesson forgotten in turning is about turning too.</summary>
    public IReadOnlyList<JobFacts> Again { get; } = [.. Repeated.Select(repeat => repeat.On).OfType<JobFacts>(), .. Heeded.SelectMany(heeded => heeded.On)];

    /// <summary>The time that its mistakes cost together.</summary>
    public Minutes MinutesLost { get; } = Mistakes.Sum(mistake => mistake.Minutes);

    /// <summary>The money that its mistakes cost together, in the journal's currency.</summary>
    public decimal Money { get; } = Mistakes.Sum(mistake => mistake.Money);
}

/// <summary>A lesson known already and not heeded.</summary>
/// <param name="Entry">The entry that tells of it.</param>
/// <param name="Date">That entry's date.</param>
/// <param name="DaysAfterLearning">Days from learning to telling of the repeat; below 0 where the lesson is dated later.</param>
/// <param name="Mistake">The mistake that repeats it.</param>
public sealed record Repeat(EntryRef Entry, DateOnly Date, int DaysAfterLearning, MistakeRef Mistake)
{
    /// <summary>The job that the mistake belongs to.</summary>
    public JobFacts? On { get; init; }
}

/// <summary>A lesson applied.</summary>
/// <param name="Entry">The entry that says so.</param>
/// <param name="Date">That entry's date.</param>
public sealed record HeededOn(EntryRef Entry, DateOnly Date)
{
    /// <summary>The jobs of that evening.</summary>
    public IReadOnlyList<JobFacts> On { get; init; } = [];
}
