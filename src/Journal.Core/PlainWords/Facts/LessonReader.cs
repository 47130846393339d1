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
    private static readonly HashSet<string> GoOn = ["before", "after", "when", "and", "until", "if", "or", "not", "every", "while", "than", "once", "unless", "then"];
    private static readonly HashSet<string> NoLesson = ["paid", "has", "about", "says", "said", "number", "already", "bought", "did", "was", "were", "had", "went", "got", "came", "which", "old", "part", "known", "written", "hard", "the", "just", "i'm", "it's"];

    private static readonly HashSet<string> Imperatives = ["put", "push", "keep", "lay", "let", "start", "back", "support", "turn", "write", "leave", "use", "check", "clean", "oil", "cover", "wipe", "take", "plug", "mark", "make", "set", "run", "pin", "stone", "hold", "don't", "do", "never", "always", "lock", "count", "touch", "pack", "wire", "buy", "go", "get", "try", "measure", "read", "wait", "tap", "spot", "clamp", "test", "think", "look", "stop", "zero", "warm", "cool", "trust"];
    private static readonly HashSet<string> Telling = ["before", "after", "first", "every", "never", "always", "don't", "than", "better", "when", "if", "until", "last", "both", "each", "once", "only", "twice", "beats"];
    private const int MostLessons = 50;

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

        var isOwn = clause.Has(Cue.Heed);
        var isDenied = !isOwn && clause.Hits.Exists(hit => hit.Cue is Cue.Negation or Cue.Unreal && hit.First < clause.Next && (hit.First < best.First || account.Word(hit.First) is "hadn't" or "didn't" or "never"));
        var isIgnored = !isOwn && (clause.Has(Cue.Ignored) || mistakes.Tells(index));
        if (isDenied || isIgnored)
        {
            mistakes.TakeAsRepeated(index, best.Id);
            return true;
        }

        if (!isMeant && (IsTold(clause) || (IsOrder(account.Word(best.First)) && account.Word(best.First - 1) is not ("i" or "we" or "did" or "to"))))
        {
            return false;
        }

        if (!heeded.Exists(lesson => lesson.Id.Value == best.Id))
        {
            heeded.Add(new(new Id<Lesson>(best.Id), account.SpanOf(clause.First, clause.Next)));
        }

        return true;
    }

    // "lock the saddle before facing, everybody": said to others, not done.
    private bool IsTold(Clause clause)
    {
        var first = clause.First + (account.Word(clause.First) is "and" or "then" or "so" or "but" ? 1 : 0);
        return IsOrder(account.Word(first)) || account.OperationBeginning(first) is { Form: VerbForm.Plain };
    }

    // A verb whose past is another word.
    private static bool IsOrder(string word) => Imperatives.Contains(word) && word is not ("put" or "let" or "set" or "read" or "spot" or "oil" or "stone" or "wire" or "zero" or "tap" or "test" or "pin" or "plug" or "mark" or "cover" or "back" or "lock" or "touch" or "last" or "clean" or "cool" or "warm" or "measure" or "support") || word is "lock";

    // By the clause, or with the thought that goes on behind it.
    private Remembered? Recalled(Clause clause, int index, bool isMeant)
    {
        foreach (var next in new[] { clause.Next, EndOfThought(clause, index), index + 1 < account.Clauses.Count && account.Clauses[index + 1] is { IsOthers: false } behind && behind.Sentence == clause.Sentence ? behind.Next : clause.Next })
        {
            if (known.In(account, clause.First, next) is [var best, ..] && best.Words >= 2 && (best.Share >= 0.6 && (best.TextShare >= 0.45 || best.Words >= 3) || (isMeant && best.Share >= 0.35 && (best.TextShare >= 0.3 || best.Words >= 3))))
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
        // "you" is anybody in a lesson.
        if (clause.IsPast || (clause.IsOthers && clause.Hits.Exists(hit => hit.Cue is Cue.Others or Cue.Theirs && account.Word(hit.First) is not ("you" or "your" or "you've" or "you're" or "you'll"))))
        {
            return;
        }

        var seal = clause.FirstOf(Cue.LessonBehind);
        if (clause.FirstOf(Cue.Lesson) is not { } hit || (seal is { } end && end.First <= hit.First))
        {
            ReadSealed(clause, seal);
            return;
        }

        if (clause.Hits.Exists(no => no.Cue == Cue.Negation && no.First < hit.First && hit.First - no.First <= 3) || !Announces(clause, hit))
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

    private void ReadSealed(Clause clause, CueHit? seal)
    {
        if (seal is not { } hit)
        {
            return;
        }

        // "That's the lesson: oil the key before it goes in."
        if (account.Word(hit.Next) is ":" or "," or "-" && Content(hit.Next, clause) is var first && first < account.Tokens.Count)
        {
            Add(first, End(first));
        }
        else if (Before(clause, hit) is { } before && !(lessons is [.., var last] && last.Words.End > account.Tokens[before.First].Start))
        {
            Add(before.First, before.Next);
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
        var at = account.ClauseAt(first);
        var next = account.Clauses[at].Next;
        while (at + 1 < account.Clauses.Count && account.Clauses[at + 1].Sentence == account.Clauses[at].Sentence && account.Clauses[at + 1].Next - first <= MostWords && (GoOn.Contains(account.Word(account.Clauses[at + 1].First)) || IsSmall(first, next)))
        {
            at++;
            next = account.Clauses[at].Next;
        }

        for (var end = first; end < next; end++)
        {
            if ((end > first && account.HasPauseBefore(end)) || account.Word(end) is "anyway" or "oh" || account.HasCueAt(end, Cue.LessonBehind) || (account.Word(end) == "i" && account.Word(end + 1) is "mean" or "know") || (account.Word(end) == "next" && account.Word(end + 1) is "week" or "time" or "i'll" or "job"))
            {
                return end;
            }
        }

        return next;
    }

    private static bool IsSmall(int first, int next) => next - first <= FewestWords;

    // "write the count down … every time you leave the handle, that's the lesson".
    private (int First, int Next)? Before(Clause clause, CueHit seal)
    {
        var first = clause.First;
        if (seal.First - first < FewestWords && clause.Index > 0)
        {
            first = account.Clauses[clause.Index - 1].First;
        }

        while (seal.First - first < MostWords / 2 && first > 0 && account.ClauseAt(first) is > 0 and var at && account.Clauses[at - 1].Sentence == clause.Sentence && account.Word(first) is not ("and" or "so" or "but"))
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

        if (lessons.Count < MostLessons && next - first >= FewestWords && IsAdvice(first, next) && !NoLesson.Contains(account.Word(first)) && account.QuantityAt(first) is not { Kind: Words.UnitKind.Time } && Wording.ThingOf(account, first, next) is { } lesson && !lessons.Exists(other => other.Text == lesson.Text))
        {
            lessons.Add(new(lesson.Text, lesson.Words));
        }
    }

    // An instruction, or a comparison: "push …", "a box with foam is better than …".
    private bool IsAdvice(int first, int next) =>
        account.QuantityAt(first) is null or { Kind: UnitKind.None } && (account.OperationBeginning(first) is { Form: VerbForm.Plain or VerbForm.Phrase } || Imperatives.Contains(account.Word(first))
            || Enumerable.Range(first, next - first).Any(at => Telling.Contains(account.Word(at))));

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
            "nb" when isOne => true,
            "rule" or "tip" or "moral" or "note" or "remember" when isOne => hit.First == clause.First && behind is ":" or "is" or "-",
            _ => true,
        };
    }
}
