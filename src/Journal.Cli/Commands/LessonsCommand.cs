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
    private static FigureCommand Of(Func<MakerJournal, Lessons> lessons) => new()
    {
        Name = "lessons",
        Description = "What was learned, what it cost, and why things went wrong; or what to read before a job.",
        Example = "journal lessons --for boring --material cast-iron --part head",
        Table = (journal, print) => LessonsTable.Print(journal, lessons(journal), print),
        Csv = journal => new CsvTable(
            ["id", "text", "build", "entry", "operation", "minutesLost", "repeated", "heeded"],
            lessons(journal).All.Select(Row)),
        Json = journal => Shape(lessons(journal)),
    };

    /// <summary>The command, talking to a terminal.</summary>
    public static Command Create(Terminal terminal)
    {
        var (question, excerpt) = (new JobQuestion(), new ExcerptOptions(Narrows.Build | Narrows.Dates));
        FigureCommand Of(ParseResult asked)
        {
            var all = LessonsCommand.Of(journal => Lessons.Of(journal, excerpt.Of(asked, journal))) with { Objection = journal => excerpt.Objection(asked, journal) };
            return !question.IsAsked(asked) ? all
                : excerpt.Options.Any(option => asked.GetResult(option) is not null) ? all with { Objection = _ => "What to read before a job is looked for in all builds and years: leave out `--build`, `--since` and `--until`." }
                : LessonsForTheJob.Of(all, journal => question.Understand(asked, journal));
        }

        return (LessonsCommand.Of(Lessons.Of) with { Options = [.. question.Options, .. excerpt.Options], Narrowed = Of }).Create(terminal);
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
