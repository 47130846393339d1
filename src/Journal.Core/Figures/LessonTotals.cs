using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>What mistakes and lessons come to over the whole journal.</summary>
/// <param name="MinutesLost">The time of all mistakes, each once.</param>
/// <param name="MoneyLost">The money of all mistakes, each once.</param>
/// <param name="Repeated">How often a lesson was repeated.</param>
/// <param name="Heeded">How often a lesson was heeded.</param>
/// <param name="DaysToRepeat">Days between learning and repeating, one for each repeat, shortest first.</param>
/// <param name="PuttingRight">Putting right in each build, by build.</param>
/// <param name="MistakesPerHundredHours">Only for the terminal: the site does not give a maker a score for mistakes admitted. Null without hours.</param>
public sealed record LessonTotals(
    Minutes MinutesLost,
    decimal MoneyLost,
    int Repeated,
    int Heeded,
    IReadOnlyList<int> DaysToRepeat,
    IReadOnlyList<PuttingRightShare> PuttingRight,
    double? MistakesPerHundredHours)
{
    /// <summary>Totals of lessons and mistakes that come from the same journal as the hours.</summary>
    internal static LessonTotals Of(IReadOnlyList<LessonFigure> lessons, IReadOnlyList<MistakeCost> mistakes, Hours hours)
    {
        IReadOnlyList<int> days = [.. lessons.SelectMany(lesson => lesson.Repeated).Select(repeat => repeat.DaysAfterLearning).Order()];
        return new LessonTotals(
            mistakes.Sum(mistake => mistake.Minutes),
            mistakes.Sum(mistake => mistake.Money),
            days.Count,
            lessons.Sum(lesson => lesson.Heeded.Count),
            days,
            [.. hours.Builds.Select(build => PuttingRightShare.Of(build.Build, build.Work))],
            hours.Minutes == Minutes.Zero ? null : 100 * mistakes.Count / hours.Minutes.InHours);
    }
}

/// <summary>The part of a build's hours that went into putting right.</summary>
/// <param name="Build">The build.</param>
/// <param name="Minutes">The time of that kind: jobs that mend, without their setting up.</param>
/// <param name="Share">Its share of all the build's hours, 0 to 1; 0 without hours.</param>
public sealed record PuttingRightShare(Id<Build> Build, Minutes Minutes, double Share)
{
    /// <summary>The share of a build by its time, which may be none.</summary>
    internal static PuttingRightShare Of(Id<Build> build, Work work)
    {
        var minutes = work.In(TimeKind.PuttingRight);
        return new PuttingRightShare(build, minutes, work.Minutes == Minutes.Zero ? 0 : (double)minutes.Count / work.Minutes.Count);
    }
}
