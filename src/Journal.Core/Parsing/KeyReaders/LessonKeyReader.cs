using Journal.Core.Model;
using Journal.Core.Parsing.Problems;
using Journal.Core.Parsing.Yaml;

namespace Journal.Core.Parsing.KeyReaders;

/// <summary>Reads mistakes, the lessons from them, and lessons learned without one.</summary>
internal sealed class LessonKeyReader(FileScope scope, Entry entry)
{
    private readonly VocabularyKeyReader words = new(scope);

    // Lessons are numbered in the order of the file, whichever key holds them, before ids are given out.
    private readonly List<(Place Place, string? Id, Lesson Lesson, int Mistake)> found = [];
    private readonly List<Mistake> mistakes = [];

    /// <summary>The mistakes and lessons of an entry, each lesson with an id: its own, or one made from the entry and its number.</summary>
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
            var id = new Id<Lesson>(given ?? $"{entry.Build}-{entry.Id}-{lessons.Count + 1}");
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
        if (!fields.Wants("what", "Describe in a sentence what went wrong."))
        {
            return;
        }

        var mistake = new Mistake
        {
            What = fields.Text("what") ?? "",
            Id = id,
            Cause = words.Cause(fields),
            Lost = Lost(fields),
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

    // A number alone is hours; where more hours are lost than were worked, minutes may have been meant.
    private Minutes Lost(Fields fields)
    {
        var lost = fields.DurationOrZero("lost");
        if (lost > entry.Time && fields["lost"] is TextNode { Text: var text } node && text.Trim() is { Length: > 0 } number && number.All(char.IsAsciiDigit))
        {
            scope.Log.Add(ProblemTable.MoreLostThanWorked, node.Place, number, lost, entry.Time);
        }

        return lost;
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
        fields.Wants("text", "Describe in a sentence what to do next time.");
        var id = fields["id"] is { } idNode ? fields.NewId(idNode, "id") : null;
        var lesson = New(fields.Text("text") ?? "", mistake, job ?? JobNumber(fields)) with
        {
            Verdict = fields.Choice<Verdict>("verdict"),
            Better = fields.Text("better"),
            Formerly = fields.FormerIds(id, IdKind.Lesson, null),
        };
        found.Add((fields["id"]?.Place ?? node.Place, id, lesson, mistake ?? -1));
    }

    private Lesson New(string text, int? mistake, int job) => new()
    {
        Id = default,
        Text = text,
        Entry = entry.Ref,
        Job = job,
        FromMistake = mistake is not null,
    };

    private int JobNumber(Fields fields)
    {
        var number = fields.Count("job") ?? 1;
        if (number <= Math.Max(entry.Jobs.Count, 1))
        {
            return number;
        }

        scope.Log.Add(ProblemTable.UnknownJob, fields["job"]!.Place, number, entry.Jobs.Count);
        return 1;
    }
}
