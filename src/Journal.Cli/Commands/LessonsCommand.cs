using System.CommandLine;
using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Cli.Tables;
using Journal.Core.Figures;
using Journal.Core.Model;

namespace Journal.Cli.Commands;

/// <summary><c>journal lessons</c>: what was learned and what it cost.</summary>
internal static class LessonsCommand
{
    private static readonly FigureCommand SiteFigures = new()
    {
        Name = "lessons",
        Description = "What was learned, what it cost, and why things went wrong; or what to read before a job.",
        Example = "journal lessons --for boring --material cast-iron --part head",
        Table = (journal, print) => LessonsTable.Print(journal, Lessons.Of(journal), print),
        Csv = journal => new CsvTable(
            ["id", "text", "build", "entry", "operation", "minutesLost", "repeated", "heeded"],
            Lessons.Of(journal).All.Select(Row)),
        Json = journal => Shape(Lessons.Of(journal)),
    };

    /// <summary>The command, talking to a terminal.</summary>
    public static Command Create(Terminal terminal)
    {
        var question = new JobQuestion();
        return (SiteFigures with
        {
            Options = question.Options,
            Narrowed = asked => question.IsAsked(asked) ? LessonsForTheJob.Of(SiteFigures, journal => question.Understand(asked, journal)) : SiteFigures,
        }).Create(terminal);
    }

    private static object?[] Row(LessonFigure lesson) =>
    [
        lesson.Id, lesson.Lesson.Text, lesson.Entry.Build, lesson.Entry.Entry, lesson.On.Operations[0],
        lesson.MinutesLost, lesson.Repeated.Count, lesson.Heeded.Count,
    ];

    private static object Shape(Lessons lessons) => new
    {
        Lessons = lessons.All.Select(lesson => new
        {
            lesson.Id,
            lesson.Lesson.Text,
            lesson.Entry.Build,
            lesson.Entry.Entry,
            Operation = lesson.On.Operations[0],
            lesson.MinutesLost,
            Repeated = lesson.Repeated.Count,
            Heeded = lesson.Heeded.Count,
            lesson.On.Operations,
            Parts = lesson.On.Parts.Select(part => part.Part),
            lesson.Date,
            MadeIn = lesson.MadeIn.Entry,
            Verdict = lesson.Lesson.Verdict?.ToWord(),
            lesson.Lesson.Better,
            lesson.Cause,
            Outcome = lesson.Outcome?.ToWord(),
            lesson.Money,
        }),
        Causes = lessons.CausesByMinutes.Select(cause => new { cause.Cause, cause.Mistakes, cause.MinutesLost, cause.Share, cause.Cumulative }),
        Totals = new { lessons.Totals.MinutesLost, lessons.Totals.MoneyLost, lessons.Totals.Repeated, lessons.Totals.Heeded, lessons.Totals.MistakesPerHundredHours },
    };
}
