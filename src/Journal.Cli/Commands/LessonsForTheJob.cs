using Journal.Cli.Output;
using Journal.Cli.Tables;
using Journal.Cli.Wording;
using Journal.Core.Figures;
using Journal.Core.Model;

namespace Journal.Cli.Commands;

/// <summary><c>journal lessons --for …</c>: the few lessons to read before a job, with the reason for each.</summary>
internal static class LessonsForTheJob
{
    /// <summary>The figures of one job.</summary>
    public static FigureCommand Of(JobToCome job) => new()
    {
        Name = "lessons",
        Description = "What to read before a job.",
        Example = "journal lessons --for boring",
        Table = (journal, print) => LessonsToReadList.Print(journal, job, Ranked(journal, job), print),
        Csv = journal => new CsvTable(
            ["id", "text", "build", "entry", "operation", "minutesLost", "repeated", "heeded", "nearness", "reason"],
            Ranked(journal, job).Select(read => Row(read, string.Join("; ", Because(read, journal))))),
        Json = journal => new
        {
            For = new { job.Operations, job.Materials, job.Parts, job.Tools },
            Lessons = Ranked(journal, job).Select(read => Shape(read, Because(read, journal))),
        },
    };

    private static IReadOnlyList<LessonToRead> Ranked(MakerJournal journal, JobToCome job) => LessonsToRead.Of(Lessons.Of(journal).All).For(job);

    private static IReadOnlyList<string> Because(LessonToRead read, MakerJournal journal) => Reasons.Of(read, new TitleBook(journal), journal.Currency);

    private static object?[] Row(LessonToRead read, string reason) =>
    [
        read.Lesson.Id, read.Lesson.Lesson.Text, read.Lesson.Entry.Build, read.Lesson.Entry.Entry, read.Lesson.On.Operations[0],
        read.Lesson.MinutesLost, read.Lesson.Repeated.Count, read.Lesson.Heeded.Count, Math.Round(read.Nearness, 3), reason,
    ];

    private static object Shape(LessonToRead read, IReadOnlyList<string> reasons) => new
    {
        read.Lesson.Id,
        read.Lesson.Lesson.Text,
        read.Lesson.Entry.Build,
        read.Lesson.Entry.Entry,
        Operation = read.Lesson.On.Operations[0],
        read.Lesson.MinutesLost,
        Repeated = read.Lesson.Repeated.Count,
        Heeded = read.Lesson.Heeded.Count,
        Nearness = Math.Round(read.Nearness, 3),
        Reasons = reasons,
        read.Lesson.Money,
        Verdict = read.Lesson.Lesson.Verdict?.ToWord(),
        read.Lesson.Lesson.Better,
    };
}
