using Journal.Core.PlainWords.Clauses;
using Journal.Core.PlainWords.Tokens;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Facts;

/// <summary>
/// Reads the next step: “next: …”, “… is next”, and near the end of an account a day to come that heads its sentence, “on Thursday I'm bushing
/// …”. What says so outright goes before a day, the later before the earlier, and the maker's last word before his first: “hone it, no, lap it”.
/// </summary>
internal sealed class NextReader(Account account)
{
    /// <summary>A day at the head of an account tells when it was written: only those behind this share of it are days to come.</summary>
    private const double DaysBegin = 0.4;

    private const int LongestStep = 16;
    private const int LongestAnswer = 5;

    private static readonly HashSet<string> Periods = ["week", "time", "session", "evening", "night", "weekend", "day", "go"];
    private static readonly HashSet<string> Days = ["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday", "tomorrow"];
    private static readonly HashSet<string> ShortDays = ["mon", "tue", "tues", "wed", "weds", "thu", "thur", "thurs", "fri", "sat", "sun"];
    private static readonly HashSet<string> Things = ["up", "job", "step", "thing", "task", "on", "the", "list", "is", "'s", "will", "be", "to", "do", "it's", "that's", "i", "i'll", "we'll", "we", "i'm", "we're", "going", "then", "it", ":", ",", "-", "=", "–", "week", "time", "session", "evening", "night", "weekend", "so", "um", "uh", "er", "want", "need", "got", "i've", "have", "must", "shall", "job's", "up's", "one", "though", "bit", "stop", "maybe"];
    private static readonly HashSet<string> Enders = ["because", "so", "but", "which", "if", "since", "once", "unless", "while", "when", "where", "although", "though", "before", "until", "as", "who", "it's", "that's", "there's", "i've", "he", "she", "they", "my", "his"];

    private (ProposedText Step, int Strength)? best;

    public ProposedText? Next => best?.Step;

    public void Read(int index)
    {
        var clause = account.Clauses[index];
        if (clause.IsFilm || (clause.IsPast && !IsDayToCome(clause)))
        {
            return;
        }

        for (var at = clause.First; at < clause.Next; at++)
        {
            if (Candidate(clause, at) is { } found && (best is not { } known || found.Strength >= known.Strength))
            {
                best = found;
            }
        }
    }

    // "on Thursday I'm bushing …": a day without "last" that the maker still has before him.
    private bool IsDayToCome(Clause clause) =>
        clause.FirstOf(Cue.Past) is { } past && account.Word(past.First) is "on" or "at" && !clause.Operations.Exists(operation => operation.Form == VerbForm.Past && account.Word(operation.First - 1) is not ("gets" or "get" or "be"))
        && (account.Word(past.Next) is "i'm" or "i'll" or "we'll" or "we're" or "the" or "it's" or ":" or "," || account.OperationBeginning(past.Next) is not null);

    private (ProposedText Step, int Strength)? Candidate(Clause clause, int at)
    {
        var word = account.Word(at);
        if (word == "next")
        {
            return IsBehind(clause, at) && account.Word(at + 1) is not ("i'll" or "we'll" or "i'm" or "we're") ? Before(clause, at, 3) : IsHead(clause, at) ? Behind(clause, at + 1, 3) : null;
        }

        if (word == "to" && account.Word(at + 1) == "do" && at == clause.First && account.Word(at + 2) == ":")
        {
            return Behind(clause, at + 2, 3);
        }

        if (word == "first" && account.Word(at + 1) is "job" or "thing" && account.Word(at + 2) is "next" or "tomorrow" or "on")
        {
            return Behind(clause, at + 4, 2);
        }

        var isDay = Days.Contains(word) || (ShortDays.Contains(word) && at == clause.First && account.Word(at + 1) is ":" or "," or "=" or "-" or "i'll" or "i");
        if (!isDay || at < account.Tokens.Count * DaysBegin || account.Word(at - 1) is "last" or "since" or "by" or "every" or "till" or "til" or "until")
        {
            return null;
        }

        if (IsBehind(clause, at) && account.Word(at - 1) is "is" or "'s" or "that's")
        {
            return Before(clause, at, 1);
        }

        var head = account.Word(at - 1) is "on" or "for" or "come" or "this" ? at - 1 : at;
        head = account.Word(head - 1) is "and" or "so" or "then" or "but" ? head - 1 : head;
        return head == clause.First || account.Word(head) is "so" or "and" or "then" ? Behind(clause, at + 1, 2) : null;
    }

    // "next" opens its clause, or stands behind a joining word; "next to", "next door" and the next of several do not.
    private bool IsHead(Clause clause, int at)
    {
        var behind = account.Word(at + 1);
        if (behind is "door" or "month" or "year" or "month's" or "film" or "video" or "episode" or "part" || (behind == "to" && account.Word(at + 2) != "do"))
        {
            return false;
        }

        var before = account.Word(at - 1);
        return at == clause.First || before is "so" or "and" or "then" or "what" or "right" or "okay" or "ok" or "well" or "um" or "uh" or "anyway" or "oh" or "for" or "up" || (before == "the" && at - 2 <= clause.First) || account.Tokens[at - 1].Kind != TokenKind.Word || IsLoose(clause, at);
    }

    // In dictation nothing parts "next" from the sentence before; what follows then is a step: "… near enough next i'll lap the valves".
    private bool IsLoose(Clause clause, int at) =>
        account.Word(at + 1) is "i'll" or "to" or "up" or "job" or "job's" or "step" or "thing" or "is" or "week" or "time" or "we'll"
        || account.OperationBeginning(at + 1) is { Form: VerbForm.Plain }
        || (at >= account.Tokens.Count * (1 - (1 - DaysBegin) / 2) && clause.Next - at <= 6 && account.Word(at - 1) is not ("the" or "my" or "his" or "this" or "a"));

    // "the nose thread is next", "rear stop nxt, same again": nothing of its clause stands behind.
    private bool IsBehind(Clause clause, int at) =>
        at > clause.First && (at + 1 >= clause.Next || (account.Word(at - 1) == "that's" && account.Word(at + 1) is "my" or "the" or "i" or "he") || account.Tokens[at + 1].Kind != TokenKind.Word || account.Word(at + 1) is "though" or "then" or "and" or "but" or "because" || account.QuantityAt(at + 1) is not null && account.Word(at - 1) is "are" or "is");

    private (ProposedText Step, int Strength)? Before(Clause clause, int at, int strength)
    {
        var (first, next) = (clause.First, at);
        while (next > first && account.Word(next - 1) is "is" or "'s" or "are" or "be" or "that's" or "thats" or "comes" or "'re" or "will" or "go" or "goes" or "the")
        {
            next--;
        }

        // "Honing I haven't done; forty minutes, and that's next": it was named right before.
        var isNamedBefore = next - first < 1 || Enumerable.Range(first, next - first).All(i => account.Word(i) is "and" or "so" or "then" or "that" or "it" or "they" or "," or "thats");
        var (from, to) = isNamedBefore ? Named(clause.Index) : Noun(first, next);
        return Step(from, to, strength);
    }

    // The clause before that names a part, an operation or a place on the work, as far as its noun goes.
    private (int First, int Next) Named(int index)
    {
        for (var back = index - 1; back >= Math.Max(0, index - 5); back--)
        {
            var clause = account.Clauses[back];
            if (clause.Operations.Count > 0 || clause.Names.Exists(name => name.IsPart) || clause.Has(Cue.Feature))
            {
                var next = clause.Next;
                for (var at = clause.Next - 1; at > clause.First; at--)
                {
                    next = account.Word(at) is "is" or "are" or "i" or "isn't" or "aren't" or "'s" or "was" or "to" ? at : next;
                }

                return account.Word(next) == "to" ? (next + 1, clause.Next) : Noun(clause.First, next);
            }
        }

        return (0, 0);
    }

    // The last noun of a piece with what belongs to it: behind a joining word, or at the last article that no preposition leads.
    private (int First, int Next) Noun(int first, int next)
    {
        for (var at = next - 1; at > first; at--)
        {
            var isJoin = account.Word(at) is "and" or "so" or "then" or "but" or "anyway" or "right";
            var isArticle = account.Word(at) is "the" or "my" && account.Word(at - 1) is not ("of" or "for" or "in" or "on" or "to" or "at" or "from" or "with" or "and" or "off" or "through");
            var isOfVerb = account.OperationBeginning(at - 1) is { Form: VerbForm.Plain or VerbForm.Going };
            if (next - at > 1 && isJoin || (isArticle && !isOfVerb))
            {
                return (isJoin ? at + 1 : at, next);
            }
        }

        return (first, next);
    }

    private (ProposedText Step, int Strength)? Behind(Clause clause, int from, int strength)
    {
        if (Periods.Contains(account.Word(from)) || Days.Contains(account.Word(from)) || ShortDays.Contains(account.Word(from)))
        {
            (from, strength) = (from + 1, Math.Min(strength, 2));
        }

        while (from < account.Tokens.Count && (Things.Contains(account.Word(from)) || account.Tokens[from].Kind == TokenKind.Mark && account.Word(from) is not ("." or "?" or "!")) && SentenceAt(from) == clause.Sentence)
        {
            from++;
        }

        // "next week, if the belt's here, I bore the flywheel".
        if (from < account.Tokens.Count && account.Word(from) is "if" or "once" or "when" && account.ClauseAt(from) + 1 < account.Clauses.Count)
        {
            from = account.Clauses[account.ClauseAt(from) + 1].First;
            from += account.Word(from) is "i" or "i'll" or "we" or "we'll" ? 1 : 0;
        }

        if (from >= account.Tokens.Count || SentenceAt(from) != clause.Sentence)
        {
            return null;
        }

        return Corrected(from, End(from), clause.Sentence) is var (first, next) ? Step(first, next, strength) : null;
    }

    private int SentenceAt(int token) => account.Clauses[account.ClauseAt(token)].Sentence;

    // The step goes on over commas, "and" and "then" as long as nobody else and nothing else begins.
    private int End(int from)
    {
        var at = account.ClauseAt(from);
        var next = Cut(from, account.Clauses[at].Next);
        while (next >= account.Clauses[at].Next && at + 1 < account.Clauses.Count && account.Clauses[at + 1] is var more && more.Sentence == account.Clauses[at].Sentence && more.Next - from <= LongestStep && GoesOn(more))
        {
            at++;
            next = Cut(more.First, more.Next);
        }

        return next;
    }

    private bool GoesOn(Clause clause) =>
        !clause.IsOthers && !clause.IsPast && !Enders.Contains(account.Word(clause.First)) && account.Word(clause.First) is not ("no" or "or") && !clause.Quantities.Exists(quantity => quantity.Kind == UnitKind.Time)
        && !clause.HasAny(Cue.Negation, Cue.Film, Cue.Mistake) && !(clause.Has(Cue.Maker) && account.Word(clause.First) is not ("and" or "then"));

    private int Cut(int first, int next)
    {
        for (var at = first + 1; at < next; at++)
        {
            if (Enders.Contains(account.Word(at)) || account.QuantityAt(at) is { Kind: UnitKind.Time } || (account.Word(at) is "and" && account.Word(at + 1) is "maybe" or "the" && account.Word(at + 2) is "rest"))
            {
                return at;
            }
        }

        return next;
    }

    // "hone it, no, lap it"; "the piston and maybe the crank no just the piston"; "strap, or crank? strap"; "… or I paint. No. Stud holes first."
    private (int First, int Next)? Corrected(int first, int next, int sentence)
    {
        var end = first;
        while (end < account.Tokens.Count && SentenceAt(end) == sentence && end - first < 2 * LongestStep)
        {
            end++;
        }

        for (var at = first; at < end; at++)
        {
            if (account.Word(at) == "no" && IsCorrection(at))
            {
                return ByLastWord(first, next, at, end);
            }
        }

        return Answer(first, end, sentence) ?? (first, next);
    }

    private bool IsCorrection(int at) =>
        account.Tokens[at - 1].Kind == TokenKind.Mark || account.Tokens[at + 1 < account.Tokens.Count ? at + 1 : at].Kind == TokenKind.Mark || account.Word(at + 1) is "just" or "not" or "wait" or "sorry" or "actually" or "only" || account.OperationBeginning(at + 1) is { Form: VerbForm.Plain };

    private (int First, int Next)? ByLastWord(int first, int next, int no, int end)
    {
        var from = no + 1;
        while (from < end && (account.Tokens[from].Kind != TokenKind.Word || account.Word(from) is "actually" or "wait" or "sorry" or "make" or "that" or "i" or "mean"))
        {
            from++;
        }

        if (from >= end)
        {
            return (first, Math.Min(next, no));
        }

        if (account.Word(from) is not ("just" or "only" or "not"))
        {
            return (from, Math.Min(end, End(from)));
        }

        for (var at = Math.Min(no, next) - 1; at > first; at--)
        {
            if (account.Word(at) is "and" or "or" or "then" or ",")
            {
                return (first, at);
            }
        }

        return (first, next);
    }

    // What follows a choice and is short is the choice made.
    private (int First, int Next)? Answer(int first, int end, int sentence)
    {
        if (end >= account.Tokens.Count || end <= first)
        {
            return null;
        }

        var isChoice = account.Clauses[account.ClauseAt(end - 1)].IsQuestion || Enumerable.Range(first, end - first).Any(at => account.Word(at) == "or");
        for (var clause = account.ClauseAt(end - 1) + 1; clause < Math.Min(account.Clauses.Count, account.ClauseAt(end - 1) + 4); clause++)
        {
            var said = account.Clauses[clause];
            if (said.IsQuestion && account.Word(said.First) == "or")
            {
                isChoice = true;
                continue;
            }

            if (said.Next - said.First == 1 && account.Word(said.First) is "no" or "nope" or "nah")
            {
                isChoice = true;
                continue;
            }

            var isShort = said.Next - said.First <= LongestAnswer && said is { IsOthers: false, IsQuestion: false } && said.Sentence > sentence && !said.HasAny(Cue.Negation, Cue.Film, Cue.Finished) && !said.Quantities.Exists(quantity => quantity.Kind is UnitKind.Time or UnitKind.Money);
            return isChoice && isShort ? (said.First, said.Next) : null;
        }

        return null;
    }

    private (ProposedText Step, int Strength)? Step(int first, int next, int strength)
    {
        next = Math.Min(next, first + LongestStep);
        if (next <= first || IsUnsure(first, next) || Wording.ThingOf(account, first, next) is not { } text || !text.Text.Any(char.IsLetter))
        {
            return null;
        }

        return (new(text.Text, text.Words), strength);
    }

    // "tomorrow is no workshop", "next time I should buy a set", "I mill it away, I think".
    private bool IsUnsure(int first, int next)
    {
        var clause = account.Clauses[account.ClauseAt(first)];
        return clause.IsFilm || account.QuantityAt(first) is { Kind: UnitKind.Time } || account.Word(first) is "he" or "she" or "they" || account.HasCueAt(first, Cue.Theirs) || account.Word(first) is "no" or "not" or "nobody" or "shan't" || (account.Word(first) is "a" && account.Word(first + 1) is "film")
            || Enumerable.Range(first, Math.Min(6, next - first)).Any(at => account.HasCueAt(at, Cue.Negation) || account.Word(at) is "should" or "could" or "might" or "perhaps" or "holiday" or "club");
    }
}
