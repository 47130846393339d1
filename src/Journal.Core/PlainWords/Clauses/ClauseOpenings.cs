using Journal.Core.PlainWords.Tokens;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Clauses;

/// <summary>
/// Where a clause opens without a sign, as in dictation: at “then”, “so”, “but”, “because”; at a subject with its verb where the clause
/// before has one already; at “and” before a verb, a subject or a time; behind a time that ends the clause before.
/// </summary>
internal sealed class ClauseOpenings(Account account)
{
    private const int LongestSubject = 4;

    private static readonly HashSet<string> Openers = ["then", "so", "but", "because", "which", "when", "while", "whilst", "after", "before", "until", "although", "though", "if", "where", "whereas", "who", "since", "whereupon", "yet", "except", "also", "plus", "otherwise", "anyway", "finally", "afterwards", "unless", "however"];

    /// <summary>Who or what does it; with these the clause needs no look at its verb.</summary>
    private static readonly HashSet<string> Subjects = ["i", "we", "he", "she", "they", "i'm", "i've", "we're", "we've", "he's", "she's", "they're", "i'd", "i'll", "we'll", "it's", "that's", "there's", "it'll", "you", "you'd", "you'll", "you're", "you've", "they'll", "they've", "he'd", "she'd", "that'll", "we'd", "they'd"];

    /// <summary>Pronouns that are as often objects: they open a clause with a finite verb only.</summary>
    private static readonly HashSet<string> Pronouns = ["it", "that", "this", "these", "those", "there", "everything", "nothing", "something", "mine", "one"];
    private static readonly HashSet<string> Joiners = ["that", "what", "how", "why", "as", "than", "because", "when", "if", "so", "then", "and", "but", "which", "who", "where", "while", "before", "after", "until", "since", "though", "or", "like", "whatever", "wherever", "thing", "way"];
    private static readonly HashSet<string> Verbs = ["was", "is", "were", "are", "has", "have", "had", "did", "do", "went", "took", "got", "came", "made", "put", "cut", "used", "ran", "left", "gave", "found", "said", "says", "told", "spent", "lost", "broke", "bought", "paid", "cost", "held", "set", "kept", "started", "finished", "done", "thought", "need", "needs", "want", "wants", "wanted", "looked", "fell", "slipped", "snapped", "dropped", "forgot", "measured", "miked", "reads", "read", "clamped", "chucked", "gripped", "moved", "borrowed", "ordered", "must", "can", "will", "could", "would", "should", "might", "don't", "didn't", "stays", "goes", "runs", "leaks", "works", "worked", "fits", "fitted", "i'm", "it's", "that's", "there's", "asks", "calls", "shows", "remembered", "learned", "learnt", "knocked", "turned", "tried", "swept", "packed", "sat", "stood", "checked", "wasn't", "isn't", "hasn't", "haven't", "couldn't", "hadn't", "wouldn't", "can't", "won't", "doesn't", "weren't", "aren't", "comes", "gets", "sits", "means", "became", "began", "brought", "caught", "chose", "drew", "drove", "felt", "hit", "hung", "heard", "knew", "laid", "let", "met", "sent", "shook", "shot", "slid", "spun", "stuck", "threw", "tore", "wore", "wound", "wrote"];
    private static readonly HashSet<string> Finite = ["came", "comes", "is", "was", "were", "are", "measures", "reads", "read", "asks", "says", "said", "calls", "wants", "want", "shows", "gives", "stays", "took", "takes", "needs", "broke", "goes", "went", "runs", "ran", "leaks", "wobbles", "blows", "'s", "has", "had", "have", "still", "isn't", "wasn't", "aren't", "weren't", "hasn't", "hadn't", "doesn't", "didn't", "won't", "can't", "couldn't", "wouldn't", "sat", "rattles", "binds", "made", "makes", "rubs", "can", "will", "bores", "did", "does", "always", "must", "should", "would", "could", "may", "might", "got", "gets", "fell", "stood", "stands", "sits", "fits", "left", "lost", "leaves", "costs", "began", "begins", "stuck", "sticks", "hit", "caught", "tore", "gave", "let", "lets", "spun", "starts", "helps", "works", "looks", "does", "seems", "means", "weeps", "knocks", "drips", "never", "cost", "held", "holds", "kept", "keeps", "gauges", "mikes", "mics"];

    /// <summary>Words behind which a noun phrase goes on: articles, prepositions and the like.</summary>
    private static readonly HashSet<string> NoEnds = ["the", "a", "an", "my", "of", "in", "on", "to", "with", "for", "at", "from", "by", "and", "or", "into", "off", "over", "under", "through", "its", "his", "her", "their", "one", "two", "three", "four", "both", "each", "not", "no", "between", "against", "this", "that", "first", "far", "front", "rear", "left", "right", "top", "bottom", "old", "new", "big", "little", "bearing", "other", "same", "around", "round", "about", "near", "'s", "all", "every", "some", "inside", "outside", "across", "along", "behind", "underneath", "per", "via", "using", "w", "only", "even", "just"];

    /// <summary>Words behind which “you” is spoken to: “tell you”, “thank you”.</summary>
    private static readonly HashSet<string> SpokenTo = ["tell", "show", "thank", "see", "let", "remind", "give", "promise", "promised", "told", "showed", "join", "warn", "assure", "bore", "shows", "tells", "with", "for", "to", "of"];

    private static readonly HashSet<string> Adverbs = ["left", "still", "always", "never"];

    /// <summary>Verbs whose subject may be a time: “half an hour was setting up”.</summary>
    private static readonly HashSet<string> OfTimes = ["was", "is", "were", "are", "went", "'s", "has", "had", "will", "gone"];

    private bool hasVerb;
    private int verbStart = -1;

    /// <summary>Whether a clause opens at a token, when the one before it began at <paramref name="start"/>. Ask for each token in order.</summary>
    public bool OpensAt(int start, int at)
    {
        if (verbStart != start)
        {
            (verbStart, hasVerb) = (start, false);
        }

        var opens = at > start && !account.IsInQuantity(at) && IsNotInsideAName(at) && Opens(start, at);
        if (!opens)
        {
            hasVerb |= IsVerb(at);
        }

        return opens;
    }

    private bool IsNotInsideAName(int at) => account.NameOf[at] is not { } name || name.First == at;

    private bool IsVerb(int at) => Verbs.Contains(account.Word(at)) || account.OperationBeginning(at) is not null || (IsFinite(at) && !Adverbs.Contains(account.Word(at)));

    private bool Opens(int start, int at)
    {
        var word = account.Word(at);
        var before = account.Word(at - 1);
        if (word == "so" && before == "or")
        {
            return false;
        }

        // "the after pin" opens nothing.
        if (Openers.Contains(word))
        {
            var isLed = before is "the" or "a" or "an" or "my" or "this";
            var isJoined = before is "and" or "just" or "since" or "but" && at - 1 == start;
            return !isLed && !isJoined;
        }

        if (word is "and" or "or")
        {
            return hasVerb && AndOpens(at);
        }

        if (Subjects.Contains(word))
        {
            return (hasVerb || EndsTime(at)) && !Joiners.Contains(before) && !(word is "you" && SpokenTo.Contains(before));
        }

        return hasVerb && (BehindATime(at) || (at - start > 2 && NewSubject(at)) || WithATime(at) || TimeOfDayOpens(at));
    }

    // "… that took two hours | drilled …", "… I scraped last week | took the seats down".
    private bool BehindATime(int at) =>
        (EndsTime(at) || EndsQuantity(at) || account.Word(at - 1) is "gone" or "altogether" or "tonight" or "together") && !OfTimes.Contains(account.Word(at)) && (Verbs.Contains(account.Word(at)) || account.OperationBeginning(at) is { Form: VerbForm.Past });

    private bool EndsQuantity(int at) => account.QuantityOver(at - 1) is { Kind: not (UnitKind.None or UnitKind.Other) } quantity && quantity.Next == at;

    // "… an hour and three quarters | with forty minutes of that setting up".
    private bool WithATime(int at) =>
        account.Word(at) == "with" && account.QuantityAt(at + 1) is { Kind: UnitKind.Time } time && (account.HasCueAt(time.Next, Cue.ShareOf) || account.HasCueAt(time.Next, Cue.Setup));

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

        return Verbs.Contains(next) || account.HasCueAt(at + 1, Cue.ShareOf) || account.QuantityAt(at + 1) is { Kind: UnitKind.Time } || IsTimeOfDay(at + 1) || next is "next" or "no" or "then" or "half" || (next is "the" or "another" && account.Word(at + 2) is "half" or "rest" or "other") || account.Word(at + 2) is "snag" or "lesson" || SubjectFollows(at + 1);
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
        if (account.Tokens[at].Kind != TokenKind.Word || !MayEndBefore(at))
        {
            return false;
        }

        var word = account.Word(at);
        if (Pronouns.Contains(word))
        {
            return IsFinite(at + 1) && !Adverbs.Contains(account.Word(at + 1));
        }

        var isLed = word is "the" or "my" or "his" or "this" or "that" or "no" or "our" or "their" or "her" or "its" or "your" or "all" or "both" || (word is "a" or "an" && account.QuantityOver(at - 1) is null);
        var i = isLed ? at + 1 : at;
        for (var words = 0; words < LongestSubject && i < account.Tokens.Count && account.Tokens[i].Kind == TokenKind.Word; words++, i++)
        {
            if (words > 0 && IsFinite(i))
            {
                return true;
            }

            if (!(isLed || IsNoun(i)) || account.HasCueAt(i, Cue.Using) || account.Word(i) is "and" or "or" or "i" or "it" or "that" or "which" || account.QuantityAt(i) is { Kind: UnitKind.Time })
            {
                return false;
            }
        }

        return false;
    }

    private bool MayEndBefore(int at)
    {
        var before = account.Word(at - 1);
        return account.QuantityOver(at - 1) is { Kind: not UnitKind.None }
            || !(NoEnds.Contains(before) || Joiners.Contains(before) || Verbs.Contains(before) || account.OperationEnding(at) || account.HasCueAt(at - 1, Cue.Negation))
            || (Verbs.Contains(before) && account.HasCueAt(at + 1, Cue.Others));
    }

    private bool IsFinite(int at) =>
        Finite.Contains(account.Word(at)) || (account.NameOf.ElementAtOrDefault(at) is null && account.Word(at) is { Length: > 4 } word && word.EndsWith("ed", StringComparison.Ordinal) && account.Word(at - 1) is not ("the" or "a" or "an" or "my"));

    private bool IsNoun(int at) => account.NameOf[at] is not null || account.HasCueAt(at, Cue.Feature) || account.HasCueAt(at, Cue.FeatureMeasured) || account.HasCueAt(at, Cue.Document)
        || account.Word(at) is "front" or "rear" or "left" or "right" or "top" or "bottom" or "old" or "new" or "big" or "little" or "far" or "bearing" or "drawing" or "print" or "sheet" or "dwg" or "speed" or "datum" or "film" or "setting";

    private bool IsTimeOfDay(int at) => account.CuesAt(at).Any(cue => cue.Cue is Cue.Tonight or Cue.Past || (cue.Cue == Cue.Future && cue.Next - cue.First > 1 && account.Word(cue.First) is "next") || account.Word(cue.First) is "tomorrow");

    // "… took three hours | tonight I faced": a time before a subject or a verb opens the next clause.
    private bool TimeOfDayOpens(int at)
    {
        if (!IsTimeOfDay(at) || Joiners.Contains(account.Word(at - 1)) || account.Word(at) == "today's")
        {
            return false;
        }

        var hit = account.CuesAt(at).First(cue => cue.Cue is Cue.Tonight or Cue.Past or Cue.Future);
        return Subjects.Contains(account.Word(hit.Next)) || account.OperationBeginning(hit.Next) is { Form: VerbForm.Past } || (account.Word(hit.Next) is "the" or "my" && account.Word(hit.Next - 1) != "of" && hit.Cue == Cue.Tonight);
    }
}
