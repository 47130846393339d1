using Journal.Core.PlainWords.Tokens;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Clauses;

/// <summary>
/// Sentences into clauses. Where signs are missing, as in dictation, words that open a clause serve: “then”, “so”, “but”, “because”,
/// a subject behind a verb, “and” before a verb, a subject or a time.
/// </summary>
internal static class ClauseSplitter
{
    /// <summary>Longer than any clause that is spoken: then it is cut, so that no rule looks further.</summary>
    private const int LongestClause = 40;

    private static readonly HashSet<string> Openers = ["then", "so", "but", "because", "which", "when", "while", "whilst", "after", "before", "until", "although", "though", "if", "where", "whereas", "who", "since", "whereupon", "yet", "except", "also", "plus", "otherwise", "anyway", "finally", "afterwards", "unless", "however"];
    private static readonly HashSet<string> Subjects = ["i", "we", "he", "she", "they", "i'm", "i've", "we're", "we've", "he's", "she's", "they're", "i'd", "i'll", "we'll", "it's", "that's", "there's", "it'll", "you", "you'd", "you'll", "you're", "they'll", "he'd"];
    private static readonly HashSet<string> Joiners = ["that", "what", "how", "why", "as", "than", "because", "when", "if", "so", "then", "and", "but", "which", "who", "where", "while", "before", "after", "until", "since", "though", "or", "like", "whatever", "wherever"];
    private static readonly HashSet<string> Verbs = ["was", "is", "were", "are", "has", "have", "had", "did", "do", "went", "took", "got", "came", "made", "put", "cut", "used", "ran", "left", "gave", "found", "said", "says", "told", "spent", "lost", "broke", "bought", "paid", "cost", "held", "set", "kept", "started", "finished", "done", "thought", "need", "needs", "want", "wants", "wanted", "looked", "fell", "slipped", "snapped", "dropped", "forgot", "measured", "miked", "reads", "read", "clamped", "chucked", "gripped", "moved", "borrowed", "ordered", "must", "can", "will", "could", "would", "should", "might", "don't", "didn't", "stays", "goes", "runs", "leaks", "works", "worked", "fits", "fitted", "i'm", "it's", "that's", "there's", "asks", "calls", "shows", "remembered", "learned", "learnt", "knocked", "turned", "tried", "swept", "packed", "sat", "stood", "checked", "wasn't", "isn't", "hasn't", "haven't", "couldn't", "hadn't"];

    private static readonly HashSet<string> Finite = ["came", "comes", "is", "was", "were", "are", "measures", "measured", "miked", "reads", "asks", "says", "calls", "wants", "shows", "gives", "stays", "took", "needs", "broke", "snapped", "slipped", "moved", "goes", "went", "runs", "ran", "leaks", "wobbles", "wandered", "blows", "'s", "has", "had", "still", "isn't", "wasn't", "hasn't", "sat", "wanted", "rattles", "binds", "made", "rubs", "can", "will", "bores", "did", "always"];
    private static readonly HashSet<string> NoEnds = ["the", "a", "an", "my", "of", "in", "on", "to", "with", "for", "at", "from", "by", "and", "or", "into", "off", "over", "under", "through", "its", "his", "her", "their", "one", "two", "three", "four", "both", "each", "not", "no", "between", "against", "this", "that", "first", "far", "front", "rear", "left", "right", "top", "bottom", "old", "new", "big", "little", "bearing", "other", "same", "around", "round", "about", "near", "'s", "all", "every", "some"];

    public static List<Clause> Split(Account account)
    {
        var clauses = new List<Clause>();
        var (sentence, paragraph, start) = (0, 0, 0);
        var state = new State(account, account.Operations);
        for (var at = 0; at < account.Tokens.Count; at++)
        {
            var end = EndsSentence(account, at);
            if (end != Ending.None || state.OpensClause(start, at))
            {
                Close(account, clauses, state, start, at, sentence, paragraph);
                start = end == Ending.None ? at : at + 1;
                if (end is Ending.Sentence or Ending.Question or Ending.Paragraph)
                {
                    if (end == Ending.Question && clauses.Count > 0)
                    {
                        MarkQuestion(clauses, sentence);
                    }

                    sentence++;
                    paragraph += end == Ending.Paragraph ? 1 : 0;
                }
            }
        }

        Close(account, clauses, state, start, account.Tokens.Count, sentence, paragraph);
        return clauses;
    }

    private static void MarkQuestion(List<Clause> clauses, int sentence)
    {
        for (var i = clauses.Count - 1; i >= 0 && clauses[i].Sentence == sentence; i--)
        {
            clauses[i].IsQuestion = true;
        }
    }

    private enum Ending
    {
        None,
        Clause,
        Sentence,
        Question,
        Paragraph,
    }

    private static Ending EndsSentence(Account account, int at)
    {
        var token = account.Tokens[at];
        if (account.IsInQuantity(at))
        {
            return Ending.None;
        }

        if (token.Kind == TokenKind.Break)
        {
            return at + 1 < account.Tokens.Count && account.Tokens[at + 1].Kind == TokenKind.Break ? Ending.Paragraph : IsWrapped(account, at) ? Ending.None : Ending.Sentence;
        }

        if (token.Kind != TokenKind.Mark)
        {
            return Ending.None;
        }

        return token.Text switch
        {
            "." when at + 1 < account.Tokens.Count && account.Tokens[at + 1] is { IsGlued: true, Kind: TokenKind.Word } && account.Tokens[at + 1].Text.Length == 1 => Ending.None,
            "." or "!" or ";" => Ending.Sentence,
            "?" => Ending.Question,
            "," or ":" or "(" or ")" or "-" or "…" or "+" or "&" when !JoinsList(account, at) => Ending.Clause,
            _ => Ending.None,
        };
    }

    // A line that was broken for width goes on in small letters.
    private static bool IsWrapped(Account account, int at)
    {
        var start = at;
        while (start > 0 && at - start < LongestClause && account.Tokens[start - 1].Kind != TokenKind.Break)
        {
            start--;
        }

        var isLong = account.Tokens[at].Start - account.Tokens[start].Start > 68;
        return isLong && at + 1 < account.Tokens.Count && !account.Tokens[at + 1].IsCapital;
    }

    // "drilled, tapped and reamed", "the front, the rear": a comma between words of one kind; and a hyphen inside a code.
    private static bool JoinsList(Account account, int at)
    {
        var token = account.Tokens[at];
        if (token.Text == "-" && token.IsGlued && at + 1 < account.Tokens.Count && account.Tokens[at + 1].IsGlued)
        {
            return true;
        }

        if (token.Text is not ("," or "&" or "+") || at == 0 || at + 1 >= account.Tokens.Count)
        {
            return false;
        }

        return account.OperationEnding(at) && account.OperationBeginning(at + 1) is not null;
    }

    private static void Close(Account account, List<Clause> clauses, State state, int start, int end, int sentence, int paragraph)
    {
        while (start < end && account.Tokens[start].Kind is TokenKind.Break)
        {
            start++;
        }

        for (; start < end; start += LongestClause)
        {
            var next = Math.Min(end, start + LongestClause);
            var clause = new Clause { First = start, Next = next, Sentence = sentence, Paragraph = paragraph };
            clause.Index = clauses.Count;
            state.Fill(clause);
            clauses.Add(clause);
        }
    }

    /// <summary>Goes along the account and knows which operations, quantities and names come next.</summary>
    private sealed class State(Account account, List<OperationHit> operations)
    {
        private int operationAt;
        private int quantityAt;
        private bool hasVerb;
        private int verbStart = -1;

        public bool OpensClause(int start, int at)
        {
            if (verbStart != start)
            {
                (verbStart, hasVerb) = (start, false);
            }

            var opens = at > start && !account.IsInQuantity(at) && account.NameOf[at] is null && Opens(start, at);
            if (!opens)
            {
                hasVerb |= Verbs.Contains(account.Word(at)) || account.OperationBeginning(at) is not null;
            }

            return opens;
        }

        private bool Opens(int start, int at)
        {
            var word = account.Word(at);
            var before = account.Word(at - 1);
            if (word == "so" && before == "or")
            {
                return false;
            }

            if (Openers.Contains(word))
            {
                return before is not ("and" or "just" or "since") || at - 1 > start ? !(before is "and" or "but" && at - 1 == start) : false;
            }

            if (word is "and" or "or")
            {
                return hasVerb && AndOpens(at);
            }

            if (Subjects.Contains(word))
            {
                return (hasVerb || EndsTime(at)) && !Joiners.Contains(before);
            }

            if (hasVerb && EndsTime(at) && (Verbs.Contains(word) || account.OperationBeginning(at) is { Form: VerbForm.Past }))
            {
                return true;
            }

            if (hasVerb && before is "gone" or "altogether" or "tonight" or "hours" or "hour" or "minutes" or "mins" && (account.OperationBeginning(at) is { Form: VerbForm.Past } || word is "started" or "took" or "made" or "put" or "cut" or "bought" or "broke" or "lost") && hasVerb)
            {
                return true;
            }

            if (hasVerb && at - start > 2 && NewSubject(at))
            {
                return true;
            }

            return hasVerb && IsTimeOfDay(at) && !Joiners.Contains(before) && account.Word(at) != "today's" && TimeOpens(at);
        }

        // "and then", "and I", "and bored it", "and half an hour reaming"; but not "drilled and tapped".
        private bool AndOpens(int at)
        {
            var next = account.Word(at + 1);
            if (Openers.Contains(next) || Subjects.Contains(next) || next is "it" or "that" or "the" && Verbs.Contains(account.Word(at + 2)) || next is "it")
            {
                return true;
            }

            if (account.OperationBeginning(at + 1) is { } operation)
            {
                return !account.OperationEnding(at) || operation.Form == VerbForm.Plain;
            }

            return Verbs.Contains(next) || account.QuantityAt(at + 1) is { Kind: UnitKind.Time } || IsTimeOfDay(at + 1) || account.Word(at + 1) is "next" or "no" or "then" || account.Word(at + 2) is "snag" or "lesson" || SubjectFollows(at + 1);
        }

        // "the rear standard was", "the drawing says": a noun with its verb within a few words.
        private bool SubjectFollows(int at)
        {
            if (account.Word(at) is not ("the" or "my" or "his" or "her" or "their" or "this" or "a" or "one" or "our"))
            {
                return false;
            }

            for (var i = at + 1; i < Math.Min(at + 5, account.Tokens.Count) && account.Tokens[i].Kind == TokenKind.Word; i++)
            {
                if (Verbs.Contains(account.Word(i)))
                {
                    return true;
                }
            }

            return false;
        }

        // "… I scraped last week | took the seats down".
        private bool EndsTime(int at)
        {
            for (var first = Math.Max(0, at - 3); first < at; first++)
            {
                if (account.CuesAt(first).Exists(hit => hit.Cue is Cue.Past && hit.Next == at))
                {
                    return true;
                }
            }

            return false;
        }

        // "… in the four jaw | front seat came out at | the drawing asks for": a noun with a finite verb, where the clause before is whole.
        private bool NewSubject(int at)
        {
            var before = account.Word(at - 1);
            if (account.Tokens[at].Kind != TokenKind.Word || NoEnds.Contains(before) || Joiners.Contains(before) || Verbs.Contains(before) || account.OperationEnding(at) || account.HasCueAt(at - 1, Cue.Negation))
            {
                return false;
            }

            var isLed = account.Word(at) is "the" or "my" or "his" or "this" or "that" or "no" or "our" or "their" or "her";
            var i = isLed ? at + 1 : at;
            for (var words = 0; words < 4 && i < account.Tokens.Count && account.Tokens[i].Kind == TokenKind.Word; words++, i++)
            {
                if (i > at && words > 0 && Finite.Contains(account.Word(i)))
                {
                    return true;
                }

                var isNoun = isLed || account.NameOf[i] is not null || account.HasCueAt(i, Cue.Feature) || account.HasCueAt(i, Cue.FeatureMeasured) || account.Word(i) is "front" or "rear" or "left" or "right" or "top" or "bottom" or "old" or "new" or "big" or "little" or "far" or "bearing";
                if (!isNoun || account.HasCueAt(i, Cue.Using) || account.Word(i) is "and" or "or" or "i" or "it")
                {
                    return false;
                }
            }

            return false;
        }

        private bool IsTimeOfDay(int at) => account.CuesAt(at).Any(cue => cue.Cue is Cue.Tonight or Cue.Past || (cue.Cue == Cue.Future && cue.Next - cue.First > 1 && account.Word(cue.First) is "next") || account.Word(cue.First) is "tomorrow");

        // "… took three hours tonight I faced": a time before a subject or a verb opens the next clause.
        private bool TimeOpens(int at)
        {
            var hit = account.CuesAt(at).First(cue => cue.Cue is Cue.Tonight or Cue.Past or Cue.Future);
            return Subjects.Contains(account.Word(hit.Next)) || account.OperationBeginning(hit.Next) is { Form: VerbForm.Past } || account.Word(hit.Next) is "the" or "my" && account.Word(hit.Next - 1) != "of" && hit.Cue == Cue.Tonight;
        }

        public void Fill(Clause clause)
        {
            for (var at = clause.First; at < clause.Next; at++)
            {
                foreach (var hit in account.CuesAt(at))
                {
                    if (hit.Next <= clause.Next)
                    {
                        clause.Add(hit);
                    }
                }

                if (account.NameOf[at] is { } name && name.First == at)
                {
                    clause.Names.Add(name);
                }
            }

            for (; operationAt < operations.Count && operations[operationAt].First < clause.Next; operationAt++)
            {
                clause.Operations.Add(operations[operationAt]);
            }

            for (; quantityAt < account.Quantities.Count && account.Quantities[quantityAt].First < clause.Next; quantityAt++)
            {
                clause.Quantities.Add(account.Quantities[quantityAt]);
            }
        }
    }
}
