using Journal.Cli.Output;
using Journal.Cli.Tables;
using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Wording;

namespace Journal.Cli.Commands;

/// <summary><c>journal lessons --for …</c>: the few lessons to read before a job, with the reason for each.</summary>
internal static class LessonsForTheJob
{
    /// <summary>The figures of one job.</summary>
    /// <param name="command">The command that this narrows.</param>
    /// <param name="understand">The job in a journal's own words, or what was not understood.</param>
    public static FigureCommand Of(FigureCommand command, Func<MakerJournal, (JobToCome? Job, string? Fault)> understand)
    {
        return command with
        {
            Objection = journal => understand(journal).Fault,
            Table = (journal, print) => LessonsToReadList.Print(journal, Job(journal), Ranked(journal, Job(journal)), print),
            Csv = journal => new CsvTable(
                ["id", "text", "build", "entry", "operation", "minutesLost", "repeated", "heeded", "nearness", "reason"],
                Ranked(journal, Job(journal)).Select(read => Row(read, string.Join("; ", Because(read, journal))))),
            Json = journal => Answer(journal, Job(journal)),
        };

        JobToCome Job(MakerJournal journal) => understand(journal).Job!;
    }

    private static object Answer(MakerJournal journal, JobToCome job) => new
    {
        For = new { job.Operations, job.Materials, job.Parts, job.Tools },
        Lessons = Ranked(journal, job).Select(read => Shape(read, Because(read, journal))),
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
