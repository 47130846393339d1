using Journal.Core.PlainWords.Tokens;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Clauses;

/// <summary>
/// Whose work a clause tells of and when: tonight's by the maker unless something says otherwise. What was said of one clause goes on
/// into the next of its sentence until a subject or a time of its own ends it.
/// </summary>
internal static class Frames
{
    /// <summary>How many clauses without a subject of their own still tell of the person before.</summary>
    private const int LongestCarry = 2;

    /// <summary>How many clauses “they” and “she” may stand behind the person that they mean.</summary>
    private const int PersonLasts = 6;

    private static bool IsPronoun(string word) => word is "he" or "she" or "they" or "he's" or "she's" or "they're" or "he'd" or "she'd" or "they'd" or "they've" or "him" or "you" or "you're" or "you've" or "your";

    private static readonly HashSet<string> Prepositions = ["from", "to", "with", "for", "of", "like", "than", "at", "on", "off", "in", "via", "unlike", "between"];

    public static void Settle(Account account)
    {
        var person = -PersonLasts;
        var endedPast = false;
        var headed = 0;
        var (ahead, lastAhead) = (0, -1);
        var (sentence, isOthers, isPast, isFuture, isFilm, carried) = (-1, false, false, false, false, 0);
        foreach (var clause in account.Clauses)
        {
            if (clause.Sentence != sentence)
            {
                var goesOn = GoesOn(account, clause);
                (sentence, carried) = (clause.Sentence, 0);
                headed = 0;
                (isOthers, isPast, isFilm) = (isOthers && goesOn, isPast && goesOn, isFilm && goesOn);
                isFuture = false;
            }

            if (clause.HasAny(Cue.Tonight, Cue.Resets) && !clause.Has(Cue.Past))
            {
                (isPast, isFuture, isOthers) = (false, false, false);
            }

            person = clause.Hits.Exists(hit => hit.Cue == Cue.Others && !IsPronoun(account.Word(hit.First))) ? clause.Index : person;
            var subject = SubjectOf(account, clause, clause.Index - person < PersonLasts);
            isOthers = subject switch { Person.Others => true, Person.Maker => false, _ => isOthers && carried < LongestCarry };
            carried = subject is null ? carried + 1 : 0;
            headed = IsHeading(account, clause) ? LongestCarry : clause.HasAny(Cue.Tonight) ? 0 : headed - 1;
            isPast = isPast && !endedPast;
            endedPast = EndsWithPast(account, clause);
            isPast = IsPast(account, clause) || (isPast && subject != Person.Maker) || (isPast && !account.Word(clause.First).Equals("but", StringComparison.Ordinal) && carried == 0 && IsSameTime(account, clause));
            isPast |= headed > 0;
            isFuture = clause.Hits.Exists(hit => hit.Cue == Cue.Future && IsTimeToCome(account, hit)) || (isFuture && !clause.Has(Cue.Tonight) && subject != Person.Maker && carried <= 1 && account.Word(clause.First) is "and" or "then" or "or");
            // Viewers are spoken to: "you join me at the mill" tells nothing of what comes behind.
            var isAddress = isOthers && subject == Person.Others && clause.Hits.Exists(hit => hit.Cue == Cue.Others && account.Word(hit.First) is "you" or "you're" or "you've" or "you'll" or "you'd") && !clause.Hits.Exists(hit => hit.Cue == Cue.Others && !account.Word(hit.First).StartsWith("you", StringComparison.Ordinal));
            ahead = IsAhead(account, clause) ? LongestCarry : clause.HasAny(Cue.Tonight) ? 0 : ahead - 1;
            (clause.IsOthers, clause.IsPast, clause.IsFuture) = (isOthers, isPast, isFuture || (ahead >= 0 && ahead < LongestCarry && clause.Sentence == lastAhead));
            clause.IsFuture |= IsBehindNext(account, clause);
            lastAhead = ahead == LongestCarry ? clause.Sentence : lastAhead;
            clause.IsSupposed = subject is null && account.Word(clause.First) is "and" or "or" && IsSupposed(account, clause);
            clause.IsFilm = clause.Has(Cue.Film);
            clause.IsOthers &= !(isAddress && clause.Operations.Count == 0);
            isOthers = isOthers && !isAddress;
        }

        TakeBack(account);
    }

    // "That took three hours", "He …" behind a sentence goes on with it.
    private static bool GoesOn(Account account, Clause clause) =>
        account.Word(clause.First) is "that" or "it" or "he" or "she" or "they" or "this" or "which" or "took" && !clause.Has(Cue.Tonight);

    // "Last month, you'll remember, I bored …": a time that heads its sentence holds for what follows.
    private static bool IsHeading(Account account, Clause clause) =>
        clause.FirstOf(Cue.Past) is { } hit && hit.First <= clause.First + 1 && hit.Next >= clause.Next - 1 && !clause.Has(Cue.Tonight);

    // "… the underside I scraped last week": a time said last ends with its clause.
    private static bool EndsWithPast(Account account, Clause clause) => clause.Hits.Exists(hit => hit.Cue == Cue.Past && hit.First > clause.First + 1 && account.Clauses.Count > 0 && hit.Next >= clause.Next - 1);

    // "Next week, if the belt's here, I bore the flywheel": a day to come that heads its sentence holds for what follows.
    private static bool IsAhead(Account account, Clause clause) =>
        clause.Next - clause.First <= 3 && account.Clauses.ElementAtOrDefault(clause.Index + 1)?.Sentence == clause.Sentence && clause.Hits.Exists(hit => hit.Cue is Cue.Future or Cue.Next && IsTimeToCome(account, hit) || hit.Cue == Cue.Next && account.Word(hit.First) == "to");

    // "Next: cut the thread", "Next, ream both": a step to come, where nobody does it yet.
    private static bool IsBehindNext(Account account, Clause clause) =>
        clause.Index > 0 && account.Clauses[clause.Index - 1] is { } before && before.Sentence == clause.Sentence && before.Next - before.First <= 3 && before.Has(Cue.Next) && account.OperationBeginning(clause.First) is not null;

    // "should have set it from the edge | and painted it".
    private static bool IsSupposed(Account account, Clause clause) =>
        clause.Index > 0 && account.Clauses[clause.Index - 1] is { } before && before.Sentence == clause.Sentence && (before.IsSupposed || before.Hits.Exists(hit => hit.Cue == Cue.Unreal && account.Word(hit.Next - 1) is "have" or "of" or "should've" or "would've" or "could've" or "'d" or "shoulda" or "woulda"));

    private static bool IsSameTime(Account account, Clause clause) => account.Word(clause.First) is "and" or "because" or "which" or "when" or "where" or "so";

    private static bool IsTimeToCome(Account account, CueHit hit) =>
        account.Word(hit.First) is "tomorrow" or "next" || (account.Word(hit.First) is "another" or "some" or "one" or "later" && hit.Next - hit.First > 1);

    // An earlier day named, or the past before the past: "I'd bored it", "I had bored it".
    private static bool IsPast(Account account, Clause clause)
    {
        foreach (var hit in clause.Hits)
        {
            if (hit.Cue == Cue.Past && !Prepositions.Contains(account.Word(hit.First - 1)) && !IsOfAName(account, hit) && !(IsWeekday(account, hit) && IsToCome(account, clause, hit)))
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsWeekday(Account account, CueHit hit) => account.Word(hit.First) == "on" || account.Word(hit.First) is "at" or "over";

    // "On Monday I'm rubbing it down", "on sunday i'll set the crank".
    private static bool IsToCome(Account account, Clause clause, CueHit hit) =>
        clause.Hits.Exists(other => other.Cue == Cue.Future && other.First >= hit.Next) || (account.Word(hit.Next) is "i'm" or "we're") || (account.Word(hit.Next) is "," && account.Word(hit.Next + 1) is "i'm");

    // "last week's" lesson, "since last week".
    private static bool IsOfAName(Account account, CueHit hit) => account.Word(hit.First - 1) is "since" or "as" or "the";

    private enum Person
    {
        Maker,
        Others,
    }

    /// <summary>Who does what the clause tells: the first that stands before its verb.</summary>
    /// <param name="account">The account.</param>
    /// <param name="clause">The clause.</param>
    /// <param name="isOfSomeone">Whether somebody was spoken of, so that “they” may be people and “she” no engine.</param>
    private static Person? SubjectOf(Account account, Clause clause, bool isOfSomeone)
    {
        Person? subject = null;
        var verbAt = clause.Operations.Count > 0 ? clause.Operations[0].First : clause.Next;
        CueHit others = default;
        foreach (var hit in clause.Hits)
        {
            if (hit.First >= verbAt)
            {
                break;
            }

            if (IsOfThings(account, hit) || !isOfSomeone && account.Word(hit.First) is "they" or "she" or "they're" or "she's" or "they'd" or "she'd" or "they've" or "her" && !account.HasCueAt(hit.Next, Cue.Asks))
            {
                continue;
            }

            var before = WordBefore(account, clause, hit.First);
            if (hit.Cue == Cue.Others && before is not "its" && (!Prepositions.Contains(before) || (account.Word(hit.First) is not ("him" or "them" or "you") && before is "at" or "in" && subject is null)))
            {
                if (account.Word(hit.First) is "you" or "your" or "him" && subject == Person.Maker)
                {
                    continue;
                }

                (subject, others) = (subject == Person.Maker && account.Word(hit.First) is not ("he" or "she" or "they" or "he's" or "they've") ? subject : Person.Others, hit);
            }
            else if (hit.Cue == Cue.Theirs && (hit.First == clause.First || subject is null) && account.Word(hit.First) is not ("your"))
            {
                subject = Person.Others;
            }
            else if (hit.Cue == Cue.Maker && account.Word(hit.First) is "i" or "i'm" or "i've" or "we" or "we've" or "we're" && (others.Next == 0 || hit.First >= others.Next))
            {
                subject = Person.Maker;
            }
        }

        if (IsByOthers(account, clause))
        {
            return Person.Others;
        }

        return subject ?? Stranger(account, clause);
    }

    // "they measure seven point one", "they're both done": the pieces, not people.
    private static bool IsOfThings(Account account, CueHit hit) =>
        account.Word(hit.First) is "they" or "they're" or "they've" && (account.HasCueAt(hit.Next, Cue.Gauged) || account.Word(hit.First) == "they're" || account.Word(hit.Next) is "are" or "were" or "fit" or "need" or "want" or "match" or "line" or "all" or "both" or "look" or "go" or "went" or "came" or "stay" or "run" or "clean");

    // The word before a noun, its article and one adjective left out: "from the american man".
    private static string WordBefore(Account account, Clause clause, int at)
    {
        for (var back = at - 1; back >= clause.First && back >= at - 3; back--)
        {
            var word = account.Word(back);
            if (Prepositions.Contains(word) || word == "by" || word == "its")
            {
                return word;
            }

            if (word is not ("the" or "a" or "an" or "my" or "old") && back < at - 1)
            {
                break;
            }
        }

        return "";
    }

    // "was bored by my mate".
    private static bool IsByOthers(Account account, Clause clause) =>
        clause.Hits.Exists(hit => hit.Cue == Cue.Others && hit.First > clause.First && account.Word(hit.First - 1) == "by");

    // A name that nobody knows, with a verb of the trade behind it: somebody's.
    private static Person? Stranger(Account account, Clause clause)
    {
        if (clause.Operations.Count == 0 || clause.Operations[0] is not { Form: VerbForm.Past } operation || operation.First <= clause.First)
        {
            return null;
        }

        var token = account.Tokens[operation.First - 1];
        var isName = token is { IsCapital: true, Kind: TokenKind.Word } && account.NameOf[operation.First - 1] is null && !Lexicon.Shared.Ordinary.Contains(token.Meant) && account.CuesAt(operation.First - 1).Count == 0
            && operation.First - 1 > 0 && operation.First - 1 == clause.First;
        return isName && clause.Has(Cue.Theirs) ? Person.Others : null;
    }

    // "I have cut the keyway, no, I have not": the clause before is taken back.
    private static void TakeBack(Account account)
    {
        for (var i = 1; i < account.Clauses.Count; i++)
        {
            var clause = account.Clauses[i];
            var at = clause.First;
            var isNo = account.Word(at) is "no" || account.Word(at - 1) is "no";
            var isDenial = clause.Operations.Count > 0 || clause.Next - clause.First <= 8;
            if (isNo && isDenial && clause.Has(Cue.Negation) && clause.Sentence == account.Clauses[i - 1].Sentence)
            {
                account.Clauses[i - 1].IsTakenBack = account.Clauses[i - 1].Operations.Count > 0;
            }
        }
    }
}
