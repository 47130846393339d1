using System.CommandLine;
using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Cli.Tables;
using Journal.Cli.Writing;
using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Writing.Bench;

namespace Journal.Cli.Commands;

/// <summary><c>journal next</c>: where was I?</summary>
internal static class NextCommand
{
    /// <summary>The command, talking to a terminal.</summary>
    public static Command Create(Terminal terminal) => (Of(terminal, null) with { Narrowed = asked => Of(terminal, asked.GetValue<DateOnly?>("--today")) }).Create(terminal);

    private static FigureCommand Of(Terminal terminal, DateOnly? today) => new()
    {
        Name = "next",
        Description = "Where was I? The next step, the set-up left on the machine, open snags, and lessons for the job.",
        Example = "journal next",
        By = Narrows.Build,
        Table = (journal, print) =>
        {
            NextNote.Print(journal, print);
            DueList.Print(DueTool.Of(journal, Today(terminal, today, journal)), print);
        },
        Csv = journal => new CsvTable(
            ["what", "id", "text", "entry"],
            Rows(journal).Concat(DueTool.Of(journal, Today(terminal, today, journal)).Select(due => new object?[] { "due", due.Tool.Id, Wording.Written.Date(due.Tool.Due), null }))),
        Json = journal => Shape(journal, DueTool.Of(journal, Today(terminal, today, journal))),
        Besides = (folder, journal) => AtTheBench(folder, journal, terminal),
    };

    private static DateOnly Today(Terminal terminal, DateOnly? said, MakerJournal journal) => said ?? BenchClock.Of(journal).Evening(terminal.Now);

    // A stint that is running, and remarks that no entry has yet.
    private static IEnumerable<string> AtTheBench(string folder, MakerJournal journal, Terminal terminal)
    {
        try
        {
            var (slate, clock) = (SlateFile.Peek(folder), BenchClock.Of(journal));
            var waiting = WaitingRemarks.Told(slate, evening => evening == slate.Unwritten?.Evening || (slate.Stint is { } stint && clock.Evening(stint.Began) == evening));
            return slate.Stint is { } running ? waiting.Prepend(StintText.Of(running, journal, clock, terminal.Now)) : waiting;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return [e.Message];
        }
    }

    private static List<object?[]> Rows(MakerJournal journal)
    {
        if (State.Of(journal).Current is not { } state)
        {
            return [];
        }

        var rows = new List<object?[]>();
        if (state.Next is { } next)
        {
            rows.Add(["next", null, next.Text, next.Entry.Entry]);
        }

        if (state.Left?.Held is { } held)
        {
            rows.Add(["held", null, held, state.Left.Entry.Entry]);
        }

        rows.AddRange(state.Snags.Select(open => new object?[] { "snag", open.Snag.Id, open.Snag.Text, open.Entry.Entry }));
        rows.AddRange(state.ToGo.Select(part => new object?[] { "part-to-go", part.Part, null, null }));
        rows.AddRange(Lessons(journal, state).Select(lesson => new object?[] { "lesson", lesson.Id, lesson.Lesson.Text, lesson.Entry.Entry }));
        return rows;
    }

    private static object Shape(MakerJournal journal, IEnumerable<DueTool> due)
    {
        var state = State.Of(journal).Current;
        return new
        {
            Build = state?.Build,
            Entry = state?.Latest?.Entry,
            Next = state?.Next?.Text,
            state?.Left?.Held,
            Snags = (state?.Snags ?? []).Select(open => new { open.Snag.Id, open.Snag.Text, open.Entry.Entry }),
            PartsToGo = (state?.ToGo ?? []).Select(part => part.Part),
            Lessons = (state is null ? [] : Lessons(journal, state)).Select(lesson => new { lesson.Id, lesson.Lesson.Text, lesson.MinutesLost }),
            state?.Left?.Datum,
            Date = state?.LatestDate,
            NextFrom = state?.Next?.Entry.Entry,
            Due = due.Select(one => new { Tool = one.Tool.Id, one.Tool.BorrowedFrom, one.Tool.Due, one.Days }),
            PiecesToGo = (state?.ToGo ?? []).Select(part => new { part.Part, part.Pieces, part.Of }),
        };
    }

    private static IEnumerable<LessonFigure> Lessons(MakerJournal journal, BuildState state) =>
        JobToCome.GoingOn(journal.Builds.Single(build => build.Id == state.Build)) is { } job
            ? LessonsToRead.Of(Core.Figures.Lessons.Of(journal).All).For(job).Select(read => read.Lesson)
            : [];
}
