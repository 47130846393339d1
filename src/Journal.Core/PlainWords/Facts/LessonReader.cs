using Journal.Core.Model;
using Journal.Core.PlainWords.Clauses;
using Journal.Core.PlainWords.Tokens;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Facts;

/// <summary>Reads new lessons, behind the words that announce them or before those that seal them, and known ones that were heeded.</summary>
internal sealed class LessonReader(Account account, Recall known, MistakeReader mistakes)
{
    private const int MostWords = 24;
    private const int FewestWords = 3;

    private static readonly HashSet<string> LeadingIn = ["is", "was", "there", "here", "then", "from", "this", "that", "tonight", "it", "if", "you", "want", "one", "learned", "learnt", "today", "evening", "my", ":", ",", "-", "–", "to", "be", "'s", "it's", "that's", "and", "so", "of", "i", "we", "out", "on", "for", "me", "um", "uh", "er", "anything", "have", "i've", "again", "number", "new", "old", "the", "a", "going"];
    private static readonly HashSet<string> GoOn = ["before", "after", "when", "and", "until", "if", "or", "not", "every", "while", "than", "so", "as", "because", "once", "unless", "then"];
    private static readonly HashSet<string> NoLesson = ["paid", "has", "about", "says", "said", "number", "already", "bought", "did", "was", "were", "had", "went", "got", "came", "which", "old", "blade", "part"];

    private readonly List<ProposedText> lessons = [];
    private readonly List<Known<Lesson>> heeded = [];

    public IReadOnlyList<ProposedText> Lessons => lessons;

    public IReadOnlyList<Known<Lesson>> Heeded => heeded;

    public void Read(int index)
    {
        var clause = account.Clauses[index];
        if (!ReadHeeded(clause, index))
        {
            ReadNew(clause, index);
        }
    }

    private bool ReadHeeded(Clause clause, int index)
    {
        if (!clause.IsTonight || clause.Hits.Exists(hit => hit.Cue == Cue.Others && account.Word(hit.First) is "everybody" or "everyone" or "people" or "folks"))
        {
            return false;
        }

        var isMeant = clause.Has(Cue.Heed) || account.Neighbours(clause).Any(other => other.Has(Cue.Heed) && other.IsTonight);
        if (Recalled(clause, index, isMeant) is not { } best)
        {
            return false;
        }

        var isDenied = clause.Hits.Exists(hit => hit.Cue is Cue.Negation or Cue.Unreal && hit.First < best.First && best.First - hit.First <= 5);
        var isIgnored = clause.Has(Cue.Ignored) && !clause.Has(Cue.Heed);
        if ((isDenied || isIgnored) && mistakes.TakeAsRepeated(index, best.Id))
        {
            return true;
        }

        if ((isDenied && !clause.Has(Cue.Heed)) || isIgnored)
        {
            return true;
        }

        if (!heeded.Exists(lesson => lesson.Id.Value == best.Id))
        {
            heeded.Add(new(new Id<Lesson>(best.Id), account.SpanOf(clause.First, clause.Next)));
        }

        return true;
    }

    // By the clause, or with the thought that goes on behind it.
    private Remembered? Recalled(Clause clause, int index, bool isMeant)
    {
        foreach (var next in new[] { clause.Next, EndOfThought(clause, index), index + 1 < account.Clauses.Count && account.Clauses[index + 1] is { IsOthers: false } behind && behind.Sentence == clause.Sentence ? behind.Next : clause.Next })
        {
            if (known.In(account, clause.First, next) is [var best, ..] && best.Words >= 2 && (best.Share >= 0.6 && (best.TextShare >= 0.45 || best.Words >= 3) || (isMeant && best.Share >= 0.35)))
            {
                return best;
            }
        }

        return null;
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
        if (clause.IsOthers || clause.IsPast)
        {
            return;
        }

        if (clause.FirstOf(Cue.LessonBehind) is { } seal && Before(clause, seal) is { } sealedText)
        {
            Add(sealedText.First, sealedText.Next);
            return;
        }

        if (clause.FirstOf(Cue.Lesson) is not { } hit || clause.HasBefore(Cue.Negation, hit.First) || !Announces(clause, hit))
        {
            return;
        }

        var word = account.Word(hit.First);
        var first = word is "always" or "never" or "don't" ? hit.First : hit.Next;
        if (clause.IsQuestion)
        {
            first = clause.Next;
        }

        first = Content(first, clause);
        if (first < account.Tokens.Count)
        {
            Add(first, End(first));
        }
    }

    // Words that lead in are left out; an aside such as "for the blackboard" too.
    private int Content(int first, Clause clause)
    {
        while (first < account.Tokens.Count && first - clause.Next < 8 && (LeadingIn.Contains(account.Word(first)) || account.Tokens[first].Kind is TokenKind.Mark or TokenKind.Break))
        {
            if (account.Word(first) == "for" && account.Word(first + 1) == "the" && account.Tokens.Count > first + 3 && account.Tokens[first + 3].Kind == TokenKind.Mark)
            {
                first += 3;
            }

            // "if the jaws mark the rim …" is the lesson's own "if".
            if (account.Word(first) == "if" && account.Word(first + 1) is not ("you" or "i've" or "i"))
            {
                break;
            }

            first++;
        }

        return first;
    }

    // To the end of the sentence in writing; in dictation to a pause or a clause that begins something else.
    private int End(int first)
    {
        var at = ClauseAt(first);
        var next = account.Clauses[at].Next;
        while (at + 1 < account.Clauses.Count && account.Clauses[at + 1].Sentence == account.Clauses[at].Sentence && account.Clauses[at + 1].Next - first <= MostWords && (GoOn.Contains(account.Word(account.Clauses[at + 1].First)) || IsSmall(first, next)))
        {
            at++;
            next = account.Clauses[at].Next;
        }

        for (var end = first; end < next; end++)
        {
            if (account.Word(end) is "um" or "uh" or "er" or "erm" or "anyway" or "oh" || account.HasCueAt(end, Cue.LessonBehind) || (account.Word(end) == "i" && account.Word(end + 1) is "mean" or "know") || (account.Word(end) == "next" && account.Word(end + 1) is "week" or "time" or "i'll" or "job" or "ream"))
            {
                return end;
            }
        }

        return next;
    }

    private bool IsSmall(int first, int next) => next - first <= FewestWords;

    private int ClauseAt(int token)
    {
        var at = account.Clauses.FindLastIndex(clause => clause.First <= token);
        return Math.Max(0, at);
    }

    // "write the count down … every time you leave the handle, that's the lesson".
    private (int First, int Next)? Before(Clause clause, CueHit seal)
    {
        var first = clause.First;
        if (seal.First - first < FewestWords && clause.Index > 0)
        {
            first = account.Clauses[clause.Index - 1].First;
        }

        while (seal.First - first < MostWords / 2 && first > 0 && ClauseAt(first) is > 0 and var at && account.Clauses[at - 1].Sentence == clause.Sentence && account.Word(first) is not ("and" or "so" or "but"))
        {
            first = account.Clauses[at - 1].First;
        }

        return seal.First - first is >= FewestWords and <= MostWords ? (first, seal.First) : null;
    }

    private void Add(int first, int next)
    {
        while (first < next && account.Word(first) is "i" or "i'll" or "and" or "so" or "but" or "," or "we")
        {
            first++;
        }

        if (next - first >= FewestWords && !NoLesson.Contains(account.Word(first)) && account.QuantityAt(first) is not { Kind: Words.UnitKind.Time } && Wording.ThingOf(account, first, next) is { } lesson && !lessons.Exists(other => other.Text == lesson.Text))
        {
            lessons.Add(new(lesson.Text, lesson.Words));
        }
    }

    private bool Announces(Clause clause, CueHit hit)
    {
        var word = account.Word(hit.First);
        var isOne = hit.Next - hit.First == 1;
        var behind = account.Word(hit.Next);
        return word switch
        {
            "always" or "never" when isOne => hit.First == clause.First && account.OperationBeginning(hit.Next) is { Form: VerbForm.Plain },
            "next" => false,
            "learned" or "learnt" when isOne => behind is "that" or "to" or "not" or "is" or ":" or "anything" or "?",
            "lesson" when isOne => behind is ":" or "is" or "there" or "from" or "here" or "if" or "then" or "was" or "," or "learned" or "learnt" or "-" or "to" or "for" or "=" or "for" || account.OperationBeginning(hit.Next) is { Form: VerbForm.Plain } || hit.Next >= clause.Next,
            "rule" or "tip" or "nb" or "moral" or "note" or "remember" when isOne => hit.First == clause.First,
            _ => true,
        };
    }
}
