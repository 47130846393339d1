using Journal.Core.PlainWords.Tokens;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Quantities;

/// <summary>All quantities of an account from left to right. Where the maker corrects himself, the last word counts.</summary>
internal static class QuantityReader
{
    /// <summary>How many words may stand between a slip of the tongue and its correction.</summary>
    private const int MostBetween = 8;

    /// <summary>How many quantities back a time may stand that tells that a bare number counts minutes.</summary>
    private const int MostBefore = 24;

    private static readonly HashSet<string> Fillers = ["a", "an", "it", "was", "i", "the", ",", "-", ".", "…", "make", "it's", "that's", "about", "nearer", "closer", "to", "at", "is", "for", "call", "let", "me", "think", "of", "did", "took", "near", "enough", "say"];

    /// <param name="grammar">The grammar over the account.</param>
    /// <param name="isName">Whether a token belongs to the name of a part or tool, where numbers are not quantities.</param>
    public static List<Quantity> Read(QuantityGrammar grammar, Func<int, bool> isName)
    {
        var quantities = new List<Quantity>();
        for (var at = 0; at < grammar.Tokens.Count; at++)
        {
            if (grammar.Tokens[at].Kind == TokenKind.Break || isName(at) || grammar.At(at) is not { } quantity)
            {
                continue;
            }

            AddCorrected(quantities, AsTime(quantity, grammar.Tokens, quantities), grammar.Tokens);
            at = quantity.Next - 1;
        }

        return quantities;
    }

    // "two and a half of it", "thirty of that setting up", "two and a quarter all in": hours or minutes that go without saying.
    private static Quantity AsTime(Quantity quantity, IReadOnlyList<Token> tokens, List<Quantity> before)
    {
        if (quantity.Kind == UnitKind.None && IsMinutes(quantity, tokens, before))
        {
            return quantity with { Kind = UnitKind.Time };
        }

        if (quantity.Kind != UnitKind.None || quantity.Next >= tokens.Count)
        {
            return quantity;
        }

        var cues = Lexicon.Shared.Cues.At(tokens, quantity.Next).Select(hit => hit.Value).ToList();
        var isShare = cues.Contains(Cue.ShareOf) && tokens[quantity.Next].Meant is "of" or "from" or "out" && !(quantity.Next + 1 < tokens.Count && tokens[quantity.Next + 1].Meant is "them" or "those" && !(quantity.Next + 2 < tokens.Count && tokens[quantity.Next + 2].Meant is "minutes" or "hours"));
        var isTotal = quantity.IsFraction && cues.Contains(Cue.Total) && tokens[quantity.Next].Meant is "all" or "altogether" or "in";
        var isWork = IsBehindATime(before, quantity) && (cues.Contains(Cue.Setup) || tokens[quantity.Next].Meant is "cutting" or "machining" || IsGoing(tokens, quantity.Next));
        if (!isShare && !isTotal && !isWork)
        {
            return quantity;
        }

        // "half of it" is a share, not half an hour.
        var isHours = quantity.IsFraction && quantity.Value is > 0.2m and < 12 && (quantity.Value >= 1 || isTotal);
        var isMinutes = !quantity.IsFraction && quantity.Value is >= 5 and < 120 && quantity.Value == decimal.Truncate(quantity.Value);
        return isHours || isMinutes ? quantity with { Kind = UnitKind.Time, Value = isHours ? quantity.Value * 60 : quantity.Value } : quantity;
    }

    // "incl 25 setting over", "lost maybe 15", "took me 25 to make": minutes that go without saying.
    private static bool IsMinutes(Quantity quantity, IReadOnlyList<Token> tokens, List<Quantity> before)
    {
        if (quantity.IsFraction || quantity.IsPair || quantity.Value is < 5 or > 180 || quantity.Value % 5 != 0 || !before.TakeLast(MostBefore).Any(other => other.Kind == UnitKind.Time))
        {
            return false;
        }

        var lead = quantity.First - 1;
        while (lead > 0 && tokens[lead].Meant is "maybe" or "about" or "abt" or "another" or "a" or "good" or "me" or "us" or "say" or "some" or "roughly" or "around")
        {
            lead--;
        }

        var word = lead >= 0 ? tokens[lead].Meant : "";
        var behind = quantity.Next < tokens.Count ? tokens[quantity.Next] : null;
        var ends = behind is null || behind.Kind != TokenKind.Word || behind.Meant is "to" or "for" or "on" or "of" or "in" or "setting" or "getting" or "clocking" or "and" or "so" or "lost" or "gone";
        if (ends && ((lead >= 0 && tokens[lead].Meant != "drawing" && IsGoing(tokens, lead)) || (word is "other" && quantity.Value < 60)))
        {
            return true;
        }

        return word is "incl" or "including" or "includes" or "inc" && (ends || IsGoing(tokens, quantity.Next)) || (word is "lost" or "took" or "wasted" && ends);
    }

    private static bool IsBehindATime(List<Quantity> before, Quantity quantity)
    {
        const int NearEnough = 16;
        for (var at = before.Count - 1; at >= 0 && quantity.First - before[at].Next < NearEnough; at--)
        {
            if (before[at].Kind == UnitKind.Time)
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsGoing(IReadOnlyList<Token> tokens, int at) =>
        Lexicon.Shared.Operations.TryLongest(tokens, at, out var word, out _) && tokens[at].Meant.EndsWith("ing", StringComparison.Ordinal) && word.Form is VerbForm.Going or VerbForm.Phrase;

    private static void AddCorrected(List<Quantity> quantities, Quantity quantity, IReadOnlyList<Token> tokens)
    {
        if (quantities.Count > 0 && quantity is { Kind: UnitKind.Time, IsVague: false } && quantities[^1] is { Kind: UnitKind.Time, IsVague: false } whole && whole.Value > quantity.Value && IsLess(tokens, whole.Next, quantity.First))
        {
            quantities[^1] = whole with { Value = whole.Value - quantity.Value, Next = quantity.Next };
            return;
        }

        if (quantities.Count > 0 && !IsNumbered(quantities[^1], quantity) && IsCorrection(tokens, quantities[^1].Next, quantity.First) && Corrected(quantities[^1], quantity) is { } corrected)
        {
            quantities[^1] = corrected;
            return;
        }

        quantities.Add(quantity);
    }

    // "print wants .750, no 1 came in at .7503": the first of several, not a correction.
    private static bool IsNumbered(Quantity before, Quantity quantity) =>
        before is { Kind: UnitKind.None, IsFraction: false, Value.Scale: > 0 } && quantity is { Kind: UnitKind.None, IsFraction: false, Value.Scale: 0 };

    // "from quarter past six to half past eight, less twenty minutes".
    private static bool IsLess(IReadOnlyList<Token> tokens, int from, int to) =>
        to - from is 1 or 2 && tokens[to - 1].Meant is "less" or "minus" or "bar" && (to - from == 1 || tokens[from].Text == ",");

    // The first may lack the unit, or the second: "forty, no, fifty minutes", "two hours, no, two and a half".
    private static Quantity? Corrected(Quantity slip, Quantity last)
    {
        if (slip.Kind == last.Kind || slip.Kind == UnitKind.None)
        {
            return last with { First = slip.First };
        }

        if (last.Kind != UnitKind.None)
        {
            return null;
        }

        return slip switch
        {
            { Kind: UnitKind.Time, IsStretch: false, Said: { } said } => last with { Kind = UnitKind.Time, Value = last.Value * said.Metric, First = slip.First },
            { Kind: UnitKind.Length, Said: { } said } => last with { Kind = UnitKind.Length, Value = last.Value * (slip.Unit == said.InchUnit ? said.Inch : said.Metric), Unit = slip.Unit, First = slip.First },
            { Kind: UnitKind.Speed or UnitKind.Money } => last with { Kind = slip.Kind, First = slip.First },
            _ => null,
        };
    }

    /// <summary>Whether the words between say that what was before is put right by what comes.</summary>
    public static bool IsCorrection(IReadOnlyList<Token> tokens, int from, int to)
    {
        if (to - from is < 1 or > MostBetween)
        {
            return false;
        }

        var isCorrected = false;
        for (var at = from; at < to;)
        {
            var length = 0;
            foreach (var (cue, words) in Lexicon.Shared.Cues.At(tokens, at))
            {
                if (cue is Cue.Correction or Cue.Filler && at + words <= to && words > length)
                {
                    length = words;
                }

                isCorrected |= cue == Cue.Correction && at + words <= to;
            }

            if (length == 0 && !Fillers.Contains(tokens[at].Text))
            {
                return false;
            }

            at += Math.Max(length, 1);
        }

        return isCorrected;
    }
}
