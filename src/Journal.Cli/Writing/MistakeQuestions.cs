using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Core.Model;
using Journal.Core.PlainWords;
using Journal.Core.Writing.Entries;
using Journal.Core.Writing.Told;

namespace Journal.Cli.Writing;

/// <summary>What went wrong tonight: first what the remarks tell, then what else there was, each question skipped with Enter.</summary>
internal sealed class MistakeQuestions(OpenJournal open, Terminal terminal)
{
    private const int MostCausesListed = 8;

    private readonly Questions questions = new(terminal);

    /// <summary>The mistakes.</summary>
    /// <param name="offered">What may be offered.</param>
    /// <param name="heard">The remarks that it comes from.</param>
    /// <param name="jobs">The evening's jobs.</param>
    public List<NewMistake> Ask(Proposal offered, Heard heard, IReadOnlyList<ToldJob> jobs)
    {
        var mistakes = new List<NewMistake>();
        foreach (var said in offered.Mistakes)
        {
            if (questions.Known("What went wrong?", said.What, heard.Because(said.Words)) is { } what)
            {
                mistakes.Add(Told(what, said, Offered.LessonOfTheMistake(offered), heard) with { Job = ToldJob.NumberAt(jobs, said.Words) });
            }
        }

        while (questions.Line(mistakes.Count == 0 ? "What went wrong? (Enter: nothing)" : "What else went wrong? (Enter: nothing)") is { } what)
        {
            mistakes.Add(Told(what, null, null, heard));
        }

        return mistakes;
    }

    private NewMistake Told(string what, ProposedMistake? said, ProposedText? lesson, Heard heard) => new(what)
    {
        Cause = questions.MaybeChoose(said?.Cause is null ? "Why? (Enter: not said)" : "Why? (`none`: not so)", Causes(), said?.Cause?.Value),
        Lost = questions.Maybe(
            said?.Lost is null ? "How much time did it cost? (Enter: not said)" : "How much time did it cost? (`none`: not so)",
            line => HoursText.IsDuration(line) ? (line, null) : (null, $"`{line}` is not a time. Write `20m` or `1h30`."),
            said?.Lost is { Count: > 0 } lost ? lost.ToString() : null),
        Outcome = said?.Outcome is { } outcome ? AskOutcome(outcome) : null,
        Repeats = said?.Repeats is { } known ? questions.Known("It repeats the lesson", known.Value, null) : null,
        Lesson = lesson is null
            ? questions.Line("What will you do another time? That is the lesson (Enter: none)")
            : questions.Known("What will you do another time?", lesson.Text, heard.Because(lesson.Words)),
    };

    private Outcome? AskOutcome(Outcome said)
    {
        var words = EnumNames.All<Outcome>();
        var word = questions.MaybeChoose("What became of the part? (`none`: not said)", new Choices("outcomes", words, words, one => words.Contains(one) ? one : null), said.ToWord());
        return word is not null && EnumNames.TryFind<Outcome>(word, out var outcome) ? outcome : null;
    }

    // The causes of this maker's mistakes, the most frequent first, then those of the vocabulary.
    private Choices Causes()
    {
        var causes = open.Journal.Vocabulary.Causes;
        var told = open.Journal.Entries.SelectMany(entry => entry.Mistakes).Select(mistake => mistake.Cause).OfType<Id<Cause>>().CountBy(cause => cause).OrderByDescending(count => count.Value).Select(count => count.Key);
        return new Choices(
            "causes",
            [.. told.Concat(causes.Ids).Distinct().Take(MostCausesListed).Select(cause => cause.Value)],
            causes.Spellings,
            word => causes.TryFind(word.Trim().ToLowerInvariant().Replace(' ', '-'), out var id) ? id.Value : null);
    }
}
