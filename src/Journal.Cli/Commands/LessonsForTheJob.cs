using Journal.Core.Figures;
using Journal.Core.Model;

namespace Journal.Cli.Commands;

/// <summary>The lessons to read before going on with the latest job of a build.</summary>
internal static class LessonsForTheJob
{
    private const int Most = 5;

    /// <summary>
    /// At most five lessons learned on its operations or parts: those that share both first, then the dearest in time,
    /// then the newest.
    /// </summary>
    public static IReadOnlyList<LessonFigure> Of(Build build, Lessons lessons)
    {
        if (build.Entries.Count == 0)
        {
            return [];
        }

        var job = build.Entries[^1].Jobs[^1];
        return Of(lessons, [.. job.Parts.Select(share => new PartRef(build.Id, share.Part))], job.Operations);
    }

    /// <summary>The same for work on certain parts with certain operations.</summary>
    public static IReadOnlyList<LessonFigure> Of(Lessons lessons, IReadOnlyCollection<PartRef> parts, IReadOnlyCollection<Id<Operation>> operations) =>
        [
            .. lessons.All
                .Select(lesson => (Lesson: lesson, Shared: Shared(lesson, parts, operations)))
                .Where(ranked => ranked.Shared > 0)
                .OrderByDescending(ranked => ranked.Shared)
                .ThenByDescending(ranked => ranked.Lesson.MinutesLost)
                .ThenByDescending(ranked => ranked.Lesson.Date)
                .Select(ranked => ranked.Lesson)
                .Take(Most),
        ];

    // 2 where operation and part are shared, 1 where one of them is.
    private static int Shared(LessonFigure lesson, IReadOnlyCollection<PartRef> parts, IReadOnlyCollection<Id<Operation>> operations) =>
        (lesson.On.Operations.Intersect(operations).Any() ? 1 : 0) + (lesson.On.Parts.Any(parts.Contains) ? 1 : 0);
}
