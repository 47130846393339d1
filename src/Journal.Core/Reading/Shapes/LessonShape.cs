using Journal.Core.Model;
using Journal.Core.Reading.Problems;
using Journal.Core.Reading.Yaml;

namespace Journal.Core.Reading.Shapes;

/// <summary>Reads mistakes, the lessons from them, and lessons learned without one.</summary>
internal sealed class LessonShape(FileScope scope, EntryRef entry, int jobs)
{
    private readonly TradeWords words = new(scope);

    // Lessons are numbered in the order of the file, whichever key holds them, before ids are given out.
    private readonly List<(Place Place, string? Id, Lesson Lesson, int Mistake)> found = [];
    private readonly List<Mistake> mistakes = [];

    public (IReadOnlyList<Mistake> Mistakes, IReadOnlyList<Lesson> Lessons) Read(Fields fields)
    {
        foreach (var node in fields.Items("mistakes"))
        {
            ReadMistake(fields, node);
        }

        foreach (var node in fields.Items("lessons"))
        {
            ReadLesson(fields, node, Keys.Lesson, mistake: null, job: null);
        }

        var lessons = new List<Lesson>();
        foreach (var (place, given, lesson, mistake) in found.OrderBy(one => one.Place))
        {
            var id = new Id<Lesson>(given ?? $"{entry.Build}-{entry.Entry}-{lessons.Count + 1}");
            scope.Definitions.Add(new Definition(IdKind.Lesson, null, id.Value, place));
            lessons.Add(lesson with { Id = id });
            if (mistake >= 0)
            {
                mistakes[mistake] = mistakes[mistake] with { Lesson = id };
            }
        }

        return (mistakes, lessons);
    }

    private void ReadMistake(Fields list, Node node)
    {
        if (node is not MapNode)
        {
            if (list.TextOf(node, "mistakes") is { } what)
            {
                mistakes.Add(new Mistake { What = what });
            }

            return;
        }

        var fields = list.Map(node, Keys.Mistake)!;
        var id = MistakeId(fields);
        if (!fields.Wants("what", "Say in a sentence what went wrong."))
        {
            return;
        }

        var mistake = new Mistake
        {
            What = fields.Text("what") ?? "",
            Id = id,
            Cause = words.Cause(fields),
            Lost = fields.DurationOrZero("lost"),
            Outcome = fields.Choice<Outcome>("outcome"),
            Pieces = fields.Count("pieces"),
            MadeOn = fields.Mention<Entry>("made-on", IdKind.Entry, entry.Build),
            Repeats = fields.Mention<Lesson>("repeats", IdKind.Lesson, null),
            Job = JobNumber(fields),
        };
        mistakes.Add(mistake);
        if (fields["lesson"] is { } lesson)
        {
            ReadLesson(fields, lesson, Keys.MistakesLesson, mistakes.Count - 1, mistake.Job);
        }
    }

    private Id<Mistake>? MistakeId(Fields fields)
    {
        if (fields["id"] is not { } node || fields.NewId(node, "id") is not { } id)
        {
            return null;
        }

        scope.Definitions.Add(new Definition(IdKind.Mistake, entry.Build, id, node.Place));
        return new Id<Mistake>(id);
    }

    private void ReadLesson(Fields list, Node node, string[] known, int? mistake, int? job)
    {
        if (node is not MapNode)
        {
            if (list.TextOf(node, "lesson") is { } text)
            {
                found.Add((node.Place, null, New(text, mistake, job ?? 1), mistake ?? -1));
            }

            return;
        }

        var fields = list.Map(node, known)!;
        fields.Wants("text", "Say in a sentence what to do next time.");
        var id = fields["id"] is { } idNode ? fields.NewId(idNode, "id") : null;
        var lesson = New(fields.Text("text") ?? "", mistake, job ?? JobNumber(fields)) with
        {
            Verdict = fields.Choice<Verdict>("verdict"),
            Better = fields.Text("better"),
        };
        found.Add((fields["id"]?.Place ?? node.Place, id, lesson, mistake ?? -1));
    }

    private Lesson New(string text, int? mistake, int job) => new()
    {
        Id = default,
        Text = text,
        Entry = entry,
        Job = job,
        FromMistake = mistake is not null,
    };

    private int JobNumber(Fields fields)
    {
        var number = fields.Count("job") ?? 1;
        if (number <= Math.Max(jobs, 1))
        {
            return number;
        }

        scope.Log.Add(ProblemTable.UnknownJob, fields["job"]!.Place, number, jobs);
        return 1;
    }
}
