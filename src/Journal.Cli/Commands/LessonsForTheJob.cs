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
        var parts = job.Parts.Select(share => new PartRef(build.Id, share.Part)).ToHashSet();
        return
        [
            .. lessons.All
                .Select(lesson => (Lesson: lesson, Shared: Shared(lesson, job, parts)))
                .Where(ranked => ranked.Shared > 0)
                .OrderByDescending(ranked => ranked.Shared)
                .ThenByDescending(ranked => ranked.Lesson.MinutesLost)
                .ThenByDescending(ranked => ranked.Lesson.Date)
                .Select(ranked => ranked.Lesson)
                .Take(Most),
        ];
    }

    // 2 where operation and part are shared, 1 where one of them is.
    private static int Shared(LessonFigure lesson, Job job, HashSet<PartRef> parts) =>
        (lesson.On.Operations.Intersect(job.Operations).Any() ? 1 : 0) + (lesson.On.Parts.Any(parts.Contains) ? 1 : 0);
}
