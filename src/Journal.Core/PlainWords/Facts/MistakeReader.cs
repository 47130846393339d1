using Journal.Core.Model;
using Journal.Core.PlainWords.Clauses;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Facts;

/// <summary>Reads what went wrong: the words, and where they say so the cause, the time lost, what became of the part and the lesson not heeded.</summary>
internal sealed class MistakeReader(Account account, Recall lessons)
{
    /// <summary>How many clauses behind a mistake may still tell of it.</summary>
    private const int Aftermath = 4;

    private readonly List<ProposedMistake> mistakes = [];
    private int lastClause = -10;
    private int heading = -1;

    public IReadOnlyList<ProposedMistake> Mistakes => mistakes;

    /// <summary>Whether a clause is part of a mistake that was read.</summary>
    public HashSet<int> Clauses { get; } = [];

    public void Read(int index)
    {
        var clause = account.Clauses[index];
        var isNear = index - lastClause <= Aftermath;
        if (Tells(clause) && IsHeading(clause) && index + 1 < account.Clauses.Count)
        {
            heading = index;
        }
        else if ((Tells(clause) || (heading >= 0 && index - heading <= 2 && clause.IsTonight && clause.Next - clause.First > 3)) && (!isNear || index - lastClause > 2))
        {
            Begin(clause, index);
            heading = -1;
        }
        else if (Tells(clause))
        {
            Clauses.Add(index);
        }

        if (mistakes.Count > 0 && index - lastClause <= Aftermath && clause.IsTonight)
        {
            AddWhatFollows(clause, index);
        }
    }

    // "One mistake:", "Mistake, and a known one."
    private bool IsHeading(Clause clause) => clause.Next - clause.First <= 4 && clause.Hits.Exists(hit => hit.Cue == Cue.Mistake && account.Word(hit.First) is "mistake" or "blunder" or "error" or "slip");

    /// <summary>A known lesson spoken of right after a mistake is the one that was not heeded.</summary>
    public bool TakeAsRepeated(int index, string lesson)
    {
        const int SoonAfter = 6;
        if (mistakes.Count == 0 || index - lastClause > SoonAfter || (mistakes[^1].Repeats is { } known && known.Value != lesson))
        {
            return false;
        }

        mistakes[^1] = mistakes[^1] with { Repeats = new Id<Lesson>(lesson) };
        return true;
    }

    private bool Tells(Clause clause)
    {
        if (clause.FirstOf(Cue.Mistake) is not { } hit || !clause.IsReal(hit.First) || clause.HasBefore(Cue.Negation, hit.First) || account.Word(hit.First - 1) is "no" or "not" or "any" or "without")
        {
            return false;
        }

        return !clause.HasAny(Cue.Document, Cue.Lesson, Cue.Film);
    }

    private void Begin(Clause clause, int index)
    {
        if (Wording.Of(account, clause.First, clause.Next) is not { } what)
        {
            return;
        }

        mistakes.Add(new(what.Text, what.Words));
        lastClause = index;
        Clauses.Add(index);
        for (var back = Math.Max(0, index - 1); back < index; back++)
        {
            AddWhatFollows(account.Clauses[back], back);
        }
    }

    private void AddWhatFollows(Clause clause, int index)
    {
        var mistake = mistakes[^1];
        for (var at = clause.First; at < clause.Next; at++)
        {
            // What the maker says with "because" goes before what only happened.
            if ((mistake.Cause is null || clause.Has(Cue.Reason)) && Lexicon.Shared.Causes.TryLongest(account.Tokens, at, out var cause, out _) && account.Journal.Vocabulary.Causes.Has(cause))
            {
                mistake = mistake with { Cause = cause };
            }

            if (index >= lastClause && mistake.Outcome is null && Lexicon.Shared.Outcomes.TryLongest(account.Tokens, at, out var outcome, out _) && !clause.HasBefore(Cue.Negation, at))
            {
                mistake = mistake with { Outcome = outcome };
            }
        }

        if (index >= lastClause && mistake.Lost is null && clause.Quantities.Find(time => time.Kind == UnitKind.Time && TimeRoles.Of(account, clause, time) == TimeRole.Lost) is { } lost)
        {
            mistake = mistake with { Lost = new Minutes(lost.Minutes), Words = new(mistake.Words.Start, Math.Max(mistake.Words.End, account.SpanOf(clause.First, clause.Next).End)) };
        }

        if (mistake.Repeats is null && clause.HasAny(Cue.Ignored) && lessons.In(account, clause.First, clause.Next) is [{ Share: > 0.4, Words: > 1 } best, ..])
        {
            mistake = mistake with { Repeats = new Id<Lesson>(best.Id) };
        }

        mistakes[^1] = mistake;
    }
}
