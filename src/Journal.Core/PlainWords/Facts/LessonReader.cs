using Journal.Core.Model;
using Journal.Core.PlainWords.Clauses;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Facts;

/// <summary>Reads new lessons, and known ones that were heeded.</summary>
internal sealed class LessonReader(Account account, Recall known, MistakeReader mistakes)
{
    private readonly List<ProposedText> lessons = [];
    private readonly List<Known<Lesson>> heeded = [];

    public IReadOnlyList<ProposedText> Lessons => lessons;

    public IReadOnlyList<Known<Lesson>> Heeded => heeded;

    public void Read(int index)
    {
        var clause = account.Clauses[index];
        if (ReadHeeded(clause, index))
        {
            return;
        }

        ReadNew(clause, index);
    }

    private bool ReadHeeded(Clause clause, int index)
    {
        if (!clause.IsTonight || known.In(account, clause.First, EndOfThought(clause, index)) is not [var best, ..])
        {
            return false;
        }

        var isMeant = clause.Has(Cue.Heed);
        var isSure = (best.Share >= 0.6 && best.Words >= 2) || (isMeant && best.Share >= 0.4 && best.Words >= 2);
        var isDenied = !isMeant && clause.Hits.Exists(hit => hit.Cue is Cue.Negation or Cue.Unreal && hit.First < best.First && best.First - hit.First <= 5);
        if (isSure && !isMeant && mistakes.TakeAsRepeated(index, best.Id))
        {
            return true;
        }

        if (!isSure || isDenied || clause.Has(Cue.Ignored))
        {
            return isSure;
        }

        if (!heeded.Exists(lesson => lesson.Id.Value == best.Id))
        {
            heeded.Add(new(new Id<Lesson>(best.Id), account.SpanOf(clause.First, clause.Next)));
        }

        return true;
    }

    // "two spring passes | before I measured" is one thought.
    private int EndOfThought(Clause clause, int index)
    {
        var next = clause.Next;
        for (var at = index + 1; at < account.Clauses.Count && at <= index + 2 && account.Word(account.Clauses[at].First) is "before" or "after" or "when" or "until"; at++)
        {
            next = account.Clauses[at].Next;
        }

        return next;
    }

    private void ReadNew(Clause clause, int index)
    {
        if (clause.IsOthers || clause.IsPast || clause.IsQuestion || clause.FirstOf(Cue.Lesson) is not { } hit || !IsStrong(clause, hit))
        {
            return;
        }

        var word = account.Word(hit.First);
        var first = word is "always" or "never" or "don't" ? hit.First : hit.Next;
        var (end, next) = (clause.Next, index + 1);
        if (Wording.ThingOf(account, first, clause.Next) is null && next < account.Clauses.Count)
        {
            (first, end) = (account.Clauses[next].First, account.Clauses[next].Next);
            next++;
        }

        while (next < account.Clauses.Count && account.Clauses[next].Sentence == account.Clauses[next - 1].Sentence && end - first < 16 && account.Word(account.Clauses[next].First) is "before" or "after" or "when" or "and" or "until" or "if")
        {
            end = account.Clauses[next].Next;
            next++;
        }

        if (Wording.ThingOf(account, first, end) is { } lesson && end - first >= 3)
        {
            lessons.Add(new(lesson.Text, lesson.Words));
        }
    }

    private bool IsStrong(Clause clause, CueHit hit)
    {
        var word = account.Word(hit.First);
        var isAlways = word is "always" or "never" && hit.Next - hit.First == 1;
        var isLearned = word is "learned" or "learnt" && account.Word(hit.Next) is not ("that" or "to" or "not");
        return !isLearned && word is not ("remember" or "rule" or "moral") && !(word is "next")
            && (!isAlways || hit.First == clause.First) && !(word is "next" && clause.Operations.Count == 0 && !clause.Has(Cue.Lesson));
    }
}
