using Journal.Core.PlainWords.Clauses;
using Journal.Core.PlainWords.Quantities;
using Journal.Core.PlainWords.Tokens;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Facts;

/// <summary>
/// Reads what was bought and what it cost. A sum counts where the maker says that he bought, that a thing was so much, or puts it behind a thing
/// as in notes; what things cost in general, what was offered, looked at or left in the shop does not.
/// </summary>
internal sealed class PurchaseReader(Account account)
{
    private const int MostWords = 7;
    private const int LongestLabel = 8;
    private const int Reach = 3;

    private static readonly HashSet<string> Enders = ["for", "from", "at", "to", "so", "because", "which", "that", "cost", "and", "was", "were", "on", "with", "in", "tonight", "today", "off", "costs", "by", "is", "are", "came", "arrived", "turned", "this", "i", "we", "it", "as", "but", "then", "also", "now", "even"];
    private static readonly HashSet<string> Leading = ["a", "an", "the", "some", "myself", "me", "us", "up", "i", "my", "also", "and", "oh", "then", "so", "just", "only", "did", "of", "for", "on", "um", "uh", "er", "well", ",", ":", "-", "–", "•", "right", "anyway", "our", "another", "this", "that", "did", "buy", "had", "to"];
    private static readonly HashSet<string> Verbs = ["bought", "bt", "purchased", "buy", "picked", "splashed", "treated", "did"];

    private readonly List<ProposedPurchase> bought = [];
    private readonly HashSet<int> spent = [];
    private bool isList;
    private int listSentence = -1;

    public IReadOnlyList<ProposedPurchase> Bought => bought;

    public void Read(int index)
    {
        var clause = account.Clauses[index];
        if (listSentence != clause.Sentence)
        {
            (isList, listSentence) = (false, clause.Sentence);
        }

        if (clause.IsOthers || clause.IsPast || clause.IsQuestion || clause.IsFilm || (clause.IsFuture && VerbIn(clause) is null))
        {
            return;
        }

        var verb = VerbIn(clause);
        if (verb is { } said && Price(index, said) is null && IsSure(clause, said))
        {
            Add(Thing(said.Next, clause.Next) ?? Before(clause, said.First), null, index, index);
        }

        foreach (var quantity in clause.Quantities.Where(quantity => !spent.Contains(quantity.First)))
        {
            ReadSum(clause, index, quantity);
        }
    }

    // "bought some emery": without a price only the plainest verbs count.
    private bool IsSure(Clause clause, CueHit verb) => Verbs.Contains(account.Word(verb.First)) && account.Word(verb.Next) is not ("nothing" or "none" or "it" or "the" or "off" or "in");

    private CueHit? VerbIn(Clause clause)
    {
        foreach (var hit in clause.Hits.Where(hit => hit.Cue == Cue.Bought))
        {
            if (IsSo(clause, hit.First) && !(account.Word(hit.First) == "got" && account.Word(hit.Next) is "to" or "it" or "the" or "out"))
            {
                return hit;
            }
        }

        return null;
    }

    // Nothing before it denies or only wishes it; a day to come behind it changes nothing.
    private static bool IsSo(Clause clause, int at) => !clause.Hits.Exists(hit => hit.First < at && hit.Cue is Cue.Negation or Cue.Unreal or Cue.Future && hit.First < at);

    private void ReadSum(Clause clause, int index, Quantity quantity)
    {
        var (verb, verbClause) = VerbNear(index, quantity.First);
        var isPlain = verb is { } plain && Verbs.Contains(account.Word(plain.First));
        if ((verb is null && !IsSo(clause, quantity.First)) || (!isPlain && IsRefused(index, quantity)))
        {
            return;
        }

        var isWas = account.Word(quantity.First - 1) is "was" or "were" || (account.Word(quantity.First - 2) is "was" or "were" && account.Word(quantity.First - 1) is "a" or "about" or "only" or "just" or "another");
        if (SumOf(clause, quantity, verb is not null, isWas) is not var (cost, next))
        {
            return;
        }

        // "eleven ninety nine a can and I got two so twenty three ninety eight": the sum behind is what was paid.
        if (IsEach(next) && Later(index, next) is { } whole)
        {
            quantity = whole;
            (cost, next) = SumOf(account.Clauses[ClauseOf(whole, index)], whole, true, false) ?? (whole.Value, whole.Next);
        }

        var what = verb is { } hit ? OfVerb(hit, verbClause, quantity) : isWas ? Subject(index, quantity) : Label(clause, quantity, next);
        if (what is not null && (verb is not null || isWas || isList || IsPriced(clause, quantity, next)))
        {
            Add(what, cost, verb is null ? index : verbClause, index);
            spent.UnionWith(clause.Quantities.Where(other => other.First < next).Select(other => other.First));
            spent.Add(quantity.First);
            isList = true;
        }
    }

    // The verb in the clause, or before it in its sentence; "I did buy a belt for it. Twenty-seven ninety-five."
    private (CueHit? Verb, int Clause) VerbNear(int index, int before)
    {
        var clause = account.Clauses[index];
        for (var at = index; at >= Math.Max(0, index - Reach); at--)
        {
            var other = account.Clauses[at];
            var isNear = other.Sentence == clause.Sentence || (other.Sentence == clause.Sentence - 1 && clause.Next - clause.First <= 4 && at == index - 1 && Verbs.Contains(account.Word(VerbIn(other)?.First ?? -1)));
            if (!isNear || other.IsOthers || other.IsPast)
            {
                break;
            }

            if (VerbIn(other) is { } verb && (at == index || Price(at, verb) is not { } first || first.First >= before) && (at < index || verb.First < before || account.Word(verb.First) is "bought"))
            {
                return (verb, at);
            }
        }

        return (null, index);
    }

    // Money named in a clause behind its verb.
    private Quantity? Price(int index, CueHit verb)
    {
        for (var at = index; at < Math.Min(account.Clauses.Count, index + Reach) && account.Clauses[at].Sentence == account.Clauses[index].Sentence; at++)
        {
            var found = account.Clauses[at].Quantities.Find(quantity => !spent.Contains(quantity.First) && SumOf(account.Clauses[at], quantity, true, false) is not null && (at > index || quantity.First > verb.First || account.Word(verb.First) == "bought"));
            if (found is not null)
            {
                return found;
            }
        }

        return null;
    }

    /// <summary>The sum that a quantity is: named money, or a bare number where the words around leave nothing else.</summary>
    private (decimal Cost, int Next)? SumOf(Clause clause, Quantity quantity, bool isBought, bool isWas)
    {
        if (quantity.Kind == UnitKind.Money)
        {
            return (quantity.Value, quantity.Next);
        }

        if (account.Word(quantity.First - 1) is "buck" or "quid" && account.Word(quantity.First - 2) is "a" && quantity is { Kind: UnitKind.None, Value: >= 5 and < 100 })
        {
            return (1 + quantity.Value / 100, quantity.Next);
        }

        if (quantity is not { Kind: UnitKind.None, IsFraction: false } || account.Word(quantity.First - 1) is "m" or "no" or "number" or "of" or "/" or "x")
        {
            return null;
        }

        var mayBe = !clause.Quantities.Exists(other => other.Kind == UnitKind.Money) && (isBought || isList || (isWas && IsBoughtThing(clause, quantity)));
        if (!mayBe)
        {
            return null;
        }

        if (quantity.Value.Scale == 2)
        {
            return (quantity.Value, quantity.Next);
        }

        // "for twenty two fifty": said as a pair.
        if (quantity.IsPair && quantity.Value == decimal.Truncate(quantity.Value))
        {
            return (quantity.Value / 100, quantity.Next);
        }

        var isDirect = account.Word(quantity.First - 1) is "me" or "paid" or "back" or "for" && account.Word(quantity.First - 2) is not "by";
        var isEnd = quantity.Next >= clause.Next && isList && quantity.First > clause.First;
        return quantity.Value >= 1 && ((isDirect && quantity.Next >= clause.Next && isBought && account.Word(quantity.First - 1) != "for") || isEnd) ? (quantity.Value, quantity.Next) : null;
    }

    // "new tap was six fifty", "paint was sixteen eighty": a thing that is bought, or a sum by the piece.
    private bool IsBoughtThing(Clause clause, Quantity quantity) =>
        Enumerable.Range(clause.First, Math.Max(0, quantity.First - clause.First)).Any(at => account.Word(at) is "new" or "paint" or "primer" or "oil" or "bar" or "stock" or "brass" or "bronze" or "steel" or "paste" or "screws" or "springs" or "tap" or "drills" or "belt" or "flux" or "tin" or "can" or "pack") || IsEach(quantity.Next) || account.Word(quantity.Next + 1) is "a" && account.Word(quantity.Next + 2) is "can" or "tin" or "stick" or "tube" or "pack";

    private bool IsEach(int at) => account.HasCueAt(at, Cue.Each) || (account.Word(at) is "a" or "per" && account.Word(at + 1) is "can" or "tin" or "stick" or "tube" or "pack" or "piece" or "foot" or "metre" or "meter" or "length" or "box" or "bottle" or "bar" or "card" or "litre" or "sheet");

    // The sum in the clauses behind that is for all of them.
    private Quantity? Later(int index, int from)
    {
        for (var at = index; at < Math.Min(account.Clauses.Count, index + Reach) && account.Clauses[at].Sentence == account.Clauses[index].Sentence; at++)
        {
            var found = account.Clauses[at].Quantities.Find(quantity => quantity.First > from && (quantity.Kind == UnitKind.Money || SumOf(account.Clauses[at], quantity, true, false) is not null) && quantity.Value >= 1 && !IsCount(quantity));
            if (found is not null)
            {
                return found;
            }
        }

        return null;
    }

    private bool IsCount(Quantity quantity) => quantity is { Kind: UnitKind.None, Value.Scale: 0 } && account.Word(quantity.First - 1) is "got" or "bought" or "took";

    private int ClauseOf(Quantity quantity, int index)
    {
        while (index + 1 < account.Clauses.Count && account.Clauses[index + 1].First <= quantity.First)
        {
            index++;
        }

        return index;
    }

    // "a 20 reamer is 38 EUR, no", "42 bucks, passed", "12 pounds a tin, I had it already": said near the sum.
    private bool IsRefused(int index, Quantity quantity)
    {
        const int Near = 6;
        for (var at = Math.Max(0, index - 1); at < Math.Min(account.Clauses.Count, index + 3); at++)
        {
            var clause = account.Clauses[at];
            if (clause.Sentence != account.Clauses[index].Sentence)
            {
                continue;
            }

            if (at > index && clause.Quantities.Exists(other => other.Kind == UnitKind.Money))
            {
                return false;
            }

            var isNo = at >= index && clause.Next - clause.First <= 2 && account.Word(clause.First) is "no" or "nope" or "nah" or "passed" or "not";
            if (isNo || clause.Hits.Exists(hit => hit.Cue == Cue.NotBought && (hit.Next <= quantity.First ? quantity.First - hit.Next : hit.First - quantity.Next) <= Near))
            {
                return true;
            }
        }

        return false;
    }

    // Sums as in notes: the thing, then what it was: "Tin of primer £9".
    private bool IsPriced(Clause clause, Quantity quantity, int next)
    {
        var isNamed = quantity.Kind == UnitKind.Money || (quantity.Value.Scale == 2 && isList);
        var isAtEnd = next >= clause.Next || account.Word(next) is "inc" or "incl" or "with" or "w" or "for" or "even" or "each" or "delivered" or "plus" || account.Tokens[next].Kind != TokenKind.Word;
        return isNamed && isAtEnd && clause.Operations.Count == 0 && !clause.HasAny(Cue.Negation, Cue.Unreal, Cue.Asks, Cue.Document, Cue.Others) && !SaysIs(clause, quantity.First);
    }

    private bool SaysIs(Clause clause, int before) =>
        Enumerable.Range(clause.First, Math.Max(0, before - clause.First)).Any(at => account.Word(at) is "is" or "are" or "at" or "costs" or "cost" or "it's" or "they're" or "'s");

    private (string Text, Span Words)? Label(Clause clause, Quantity quantity, int next)
    {
        var isIs = SaysIs(clause, quantity.First);
        var first = clause.First;
        if (isIs || quantity.First - first > LongestLabel)
        {
            return null;
        }

        // The sum may stand alone behind its thing: "brg pair 6202, €18.50", "new edge finder came, $23".
        if (Thing(first, quantity.First) is { } thing)
        {
            return thing;
        }

        if (clause.Index == 0 || next < clause.Next - 4)
        {
            return null;
        }

        var before = account.Clauses[clause.Index - 1];
        var isLabel = before is { IsOthers: false, IsPast: false } && before.Sentence == clause.Sentence && before.Next - before.First <= LongestLabel && before.Operations.Count == 0;
        return isLabel && !before.HasAny(Cue.NotBought, Cue.Negation, Cue.Unreal, Cue.Asks) ? Thing(before.First, before.Next) : null;
    }

    // "the brass for the cam gear came in | that was twenty two bucks": what the sum was for stands before it.
    private (string Text, Span Words)? Subject(int index, Quantity quantity)
    {
        var clause = account.Clauses[index];
        for (var at = quantity.First - 1; at >= clause.First; at--)
        {
            if (account.Word(at) is "was" or "were")
            {
                var isThat = at == clause.First || account.Word(at - 1) is "that" or "it" or "which" or "they" or "that's" or "this";
                if (!isThat)
                {
                    return Last(clause.First, at);
                }

                var arrived = clause.Hits.LastOrDefault(hit => hit.Cue == Cue.Arrived && hit.First < at);
                if (arrived.Next > 0)
                {
                    return Last(clause.First, arrived.First);
                }

                return index > 0 && account.Clauses[index - 1] is var before && before.Hits.Find(hit => hit.Cue is Cue.Arrived or Cue.Bought) is { Next: > 0 } come ? Last(before.First, come.First) ?? Thing(come.Next, before.Next) : null;
            }
        }

        return null;
    }

    private (string Text, Span Words)? OfVerb(CueHit verb, int verbClause, Quantity quantity)
    {
        var clause = account.Clauses[verbClause];
        if (account.Word(verb.First) is "cost" or "set" or "came" or "costing")
        {
            return Last(clause.First, verb.First);
        }

        if (account.Word(verb.First) is "paid" or "spent" or "shelled" or "forked" or "splashed" or "invested" && quantity.Next < account.Tokens.Count)
        {
            var from = quantity.Next;
            while (from < account.Tokens.Count && from < quantity.Next + 4 && account.Word(from) is not ("for" or "on" or "in"))
            {
                from++;
            }

            return account.Word(from) is "for" or "on" or "in" ? Thing(from + 1, Math.Min(account.Tokens.Count, from + 1 + MostWords)) : Last(clause.First, verb.First);
        }

        // "Bought: a bar of iron, 9.50": the thing may stand in the clause behind.
        return Thing(verb.Next, quantity.First > clause.Next && quantity.First - verb.Next <= 3 * MostWords ? quantity.First : clause.Next) ?? Last(clause.First, verb.First);
    }

    private (string Text, Span Words)? Before(Clause clause, int at) => Last(clause.First, at);

    // A noun with what belongs to it, up to a word that ends it.
    private (string Text, Span Words)? Thing(int first, int next)
    {
        while (first < next && (Leading.Contains(account.Word(first)) || account.Tokens[first].Kind == TokenKind.Break))
        {
            first++;
        }

        var end = first;
        while (end < next && end - first < MostWords && !(Enders.Contains(account.Word(end)) && !(account.Word(end) == "of" && end > first)) && !IsMoneyAt(end) && account.Tokens[end].Kind is TokenKind.Word or TokenKind.Number or TokenKind.Mark && account.Word(end) is not ("," or "." or ";" or "(" or ":"))
        {
            end++;
        }

        return end > first && account.Word(first) is not ("nothing" or "none" or "it" or "one" or "them" or "two" or "out" or "is" or "not") ? Wording.ThingOf(account, first, end) : null;
    }

    private bool IsMoneyAt(int at) => account.QuantityAt(at) is { Kind: UnitKind.Money } or { Kind: UnitKind.None, Value.Scale: 2 };

    // The last noun of a piece: "oh and the springs" are the springs.
    private (string Text, Span Words)? Last(int first, int next)
    {
        for (var at = next - 1; at >= Math.Max(first, next - MostWords - 1); at--)
        {
            if (account.Word(at) is "the" or "a" or "an" or "my" or "some" or "our" or "oh" or "and" or "new" or "this" && !(account.Word(at - 1) is "of" or "for" or "with" or "from" && at - 1 > first))
            {
                first = account.Word(at) is "new" ? at : at + 1;
                break;
            }
        }

        return next - first > MostWords ? Thing(next - 2, next) : Thing(first, next) is { } thing ? thing : null;
    }

    private void Add((string Text, Span Words)? what, decimal? cost, int first, int last)
    {
        if (what is not { } thing || !thing.Text.Any(char.IsLetter))
        {
            return;
        }

        var whole = account.SpanOf(account.Clauses[first].First, account.Clauses[last].Next);
        bought.Add(new(thing.Text, cost, new(Math.Min(whole.Start, thing.Words.Start), Math.Max(whole.End, thing.Words.End))));
    }
}
