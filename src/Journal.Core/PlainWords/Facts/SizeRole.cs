using Journal.Core.PlainWords.Clauses;
using Journal.Core.PlainWords.Tokens;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Facts;

/// <summary>What a size in an account is.</summary>
internal enum SizeRole
{
    /// <summary>A size of a tool, a cut, a stock; or not sure.</summary>
    None,

    /// <summary>What the drawing asks, or the maker was after.</summary>
    Required,

    /// <summary>What it was before the work; it counts only where no newer one follows.</summary>
    Before,

    /// <summary>What was measured tonight.</summary>
    Measured,

    /// <summary>The size before in other words: “so 0.3134”.</summary>
    Restated,
}

/// <summary>The place of a size: the first token that may tell of it, the token where the next thing begins, and what stood before.</summary>
/// <param name="From">Behind the size before, or where the sentence begins.</param>
/// <param name="To">The size behind, or where the sentence ends.</param>
/// <param name="Before">What the size before in the sentence was; none where there is none.</param>
/// <param name="IsAwaited">Whether a size was asked for right before, so that a plain “is” is enough.</param>
internal readonly record struct SizePlace(int From, int To, SizeRole Before, bool IsAwaited);

/// <summary>Tells what a size is by the nearest word before it that can tell, else by the words behind it.</summary>
internal sealed class SizeRoles(Account account)
{
    private const int FarthestBefore = 12;
    private const int FarthestBehind = 6;
    private const int LongestLabel = 4;

    /// <summary>Words between two sizes of one list, beside places: “0.6252 forward, 0.6252 in the middle”.</summary>
    private const int LongestJoin = 7;

    private static readonly HashSet<string> Copulas = ["'s", "is", "are", "at", "=", "be", "about", "exactly", "bang", "dead", "to", "it's", "i'm", "they're", "mine's", "around", "roughly", "just", "only"];
    private static readonly HashSet<string> Restating = ["is", "about", "(", ",", "'s", "just", "roughly", "nearly", "around", "exactly", "was", "makes"];
    private static readonly HashSet<string> OtherSizes = ["m", "no", "number", "from", "by", "another", "off", "tool", "drill", "reamer", "endmill", "tap", "cutter", "bar", "stock", "sheet", "ba", "every", "per", "with", "wheel", "part", "size", "like", "say", "through", "hole"];
    private static readonly HashSet<string> Differences = ["short", "out", "off", "over", "under", "high", "low", "undersize", "oversize", "proud", "shy", "tight", "loose", "down", "light", "deeper", "bigger", "smaller", "longer", "shorter", "thinner", "thicker", "gap", "less", "more", "clearance", "left", "nearer", "further", "tall", "late", "early", "taper"];
    private static readonly HashSet<string> Joining = ["and", "&", "+", ",", "/", "on", "the", "in", "at", "one", "other", "first", "second", "third", "of", "end", "ends", "both", "for", "top", "bottom", "middle", "front", "back", "rear", "forward", "aft", "after", "left", "right", "mouth", "is", "was", "'s", "near", "far", "inner", "outer", "little", "big", "centre", "a", "no", "number", "or", "then", "(", ")", "side", "inside", "outside", "with", "across", "2", "1"];

    private static readonly HashSet<string> NoLabels = ["i", "we", "it", "he", "she", "they", "you", "to", "with", "for", "from", "by", "at", "and", "a", "an", "had", "was", "put", "did", "new", "old", "some", "but", "so", "then", "not", "no", "after", "before", "about"];

    public SizeRole Of(Clause clause, SizeSaid size, SizePlace place)
    {
        if (IsOther(clause, size))
        {
            return SizeRole.None;
        }

        if ((place.Before is SizeRole.Measured or SizeRole.Required or SizeRole.Restated && IsRestated(place.From, size.First)) || account.Word(size.First - 1) == "that's")
        {
            return SizeRole.Restated;
        }

        var (before, isSaid) = ByWordsBefore(clause, size, place);
        if (before is SizeRole.Measured or SizeRole.Required)
        {
            return before;
        }

        if (ByWordsBehind(clause, size, place) is { } behind)
        {
            return behind;
        }

        if (before == SizeRole.Before)
        {
            return IsOldSize(size, place) ? SizeRole.Before : SizeRole.None;
        }

        if (place.Before is SizeRole.Measured or SizeRole.Required or SizeRole.Restated && size.IsSure && IsListed(place.From, size.First))
        {
            return place.Before;
        }

        return size is { IsSure: true, IsShort: false } && clause.IsReal(size.First) && (isSaid && (place.IsAwaited || FeatureIn(Math.Max(place.From, size.First - LongestLabel - 2), size.First)) || IsLabelled(clause, size, place)) ? SizeRole.Measured : SizeRole.None;
    }

    // "was 0.5004", "the bore was 19.06": what a newer reading may replace; "19.06 when we bored it" is none of tonight's.
    private bool IsOldSize(SizeSaid size, SizePlace place)
    {
        var first = Math.Max(place.From, size.First - LongestLabel);
        var was = Enumerable.Range(first, Math.Max(0, size.First - first)).FirstOrDefault(at => account.Word(at) is "was" or "were", -1);
        return size is { IsSure: true, IsShort: false } && was >= 0 && account.Word(size.Next) is not ("when" or "before" or "new" or "originally" or "to" or "until" or "deep")
            && (FeatureIn(first, size.First) || was == place.From || account.Word(was - 1) is "it" or "2" or "two" or "one" or "1");
    }

    // "drill 5.7", "a 3/16 end mill", "three thou short", "10 thou a side".
    private bool IsOther(Clause clause, SizeSaid size)
    {
        var behind = account.Word(size.Next);
        var isDifference = Differences.Contains(behind) && !(behind == "left" && !size.HasUnit) && !account.HasCueAt(size.Next, Cue.Gauge);
        var isTool = OtherSizes.Contains(account.Word(size.First - 1)) || account.NameOf[size.First - 1 < 0 ? 0 : size.First - 1] is { IsPart: false } && size.First > 0 && size.First - 1 >= clause.First && !IsInstrument(size.First - 1)
            || account.HasCueAt(size.Next, Cue.Tool) || account.HasCueAt(size.Next, Cue.NewTool) || (size.Next < account.Tokens.Count && account.NameOf[size.Next] is { IsPart: false } && account.Word(size.Next) is not ("micrometer" or "mic"));
        return isDifference || isTool || (account.HasCueAt(size.Next, Cue.Depth) && behind is not ("deep" or "depth" or "takes")) || account.HasCueAt(size.Next, Cue.Feed);
    }

    private bool IsInstrument(int at) => account.NameOf[at] is { IsPart: false } name && account.HasCueAt(name.First, Cue.Gauge);

    // "19.05, which is about 0.750", "three quarter inch so nineteen oh five", "= 19.05": the words right before say so.
    private bool IsRestated(int from, int to)
    {
        const int Longest = 3;
        for (var at = to - 1; at >= Math.Max(from, to - Longest); at--)
        {
            if (account.Word(at) is "=" or "so" or "that's" or "or" || (account.Word(at) is "which" && account.Word(at + 1) is "is" or "was" or "makes"))
            {
                return true;
            }

            if (!Restating.Contains(account.Word(at)))
            {
                return false;
            }
        }

        return false;
    }

    private (SizeRole Role, bool IsSaid) ByWordsBefore(Clause clause, SizeSaid size, SizePlace place)
    {
        var (isSaid, wasBefore) = (false, false);
        for (var at = size.First - 1; at >= Math.Max(place.From, size.First - FarthestBefore); at--)
        {
            var word = account.Word(at);
            if (account.Tokens[at].Kind == TokenKind.Break && at < size.First - 1)
            {
                break;
            }

            if (IsWanted(at, size.First))
            {
                return (SizeRole.Required, isSaid);
            }

            if (Tells(at, size.First, Cue.Gauged))
            {
                var isOfDrawing = account.HasCueAt(at, Cue.Asks) && DrawingBefore(at, place.From);
                return (isOfDrawing ? SizeRole.Required : wasBefore ? SizeRole.Before : MayCount(clause, size, at, place) ? SizeRole.Measured : SizeRole.None, isSaid);
            }

            if (word is "was" or "were" or "had")
            {
                wasBefore = true;
            }

            isSaid |= Copulas.Contains(word);
            if (account.HasCueAt(at, Cue.Negation) || account.HasCueAt(at, Cue.Unreal) || account.HasCueAt(at, Cue.Took) && word is "took" or "taking")
            {
                return (SizeRole.None, false);
            }
        }

        return (wasBefore ? SizeRole.Before : SizeRole.None, isSaid);
    }

    // Whether a hint stands at a token and ends before the size.
    private bool Tells(int at, int before, Cue cue) => account.CuesAt(at).Exists(hit => hit.Cue == cue && hit.Next <= before);

    // "drawing", "dwg says", "wants", "meant to be"; a verb of asking counts where the drawing or the work is its subject.
    private bool IsWanted(int at, int before) => Tells(at, before, Cue.Nominal) || Tells(at, before, Cue.Document) || IsSheet(at);

    // "sheet 3 says".
    private bool IsSheet(int at) => account.Word(at) == "sheet" && account.QuantityAt(at + 1) is not null;

    private bool DrawingBefore(int at, int from)
    {
        for (var back = at - 1; back >= Math.Max(from, at - 4); back--)
        {
            if (account.HasCueAt(back, Cue.Document) || account.HasCueAt(back, Cue.Nominal) || IsSheet(back))
            {
                return true;
            }

            if (account.HasCueAt(back, Cue.Maker) || account.HasCueAt(back, Cue.Gauge))
            {
                return false;
            }
        }

        return false;
    }

    // What has neither unit nor decimals, or only figures spoken, must follow the verb at once: "measures 24", "mics at seven four nine seven".
    private bool MayCount(Clause clause, SizeSaid size, int verbAt, SizePlace place)
    {
        var verb = account.CuesAt(verbAt).Find(hit => hit.Cue == Cue.Gauged && hit.Next <= size.First);
        var word = account.Word(verbAt);
        if (!clause.IsReal(size.First) || (word == "within" && !TellsBetween(Math.Max(place.From, verbAt - 2), verbAt, Cue.TinyFeature)) || IsOfATool(verbAt, place.From))
        {
            return false;
        }

        if (size.IsSure && !size.IsShort)
        {
            return size.First - verbAt <= 7;
        }

        var isNext = size.First - verb.Next <= 1;
        if (size.IsShort)
        {
            return isNext && account.Word(verb.Next - 1) != "to" && (place.IsAwaited || word is "mics" or "miked" or "measures" or "measured" or "gauged" or "reads" || FeatureIn(place.From, size.First) || TellsBetween(size.Next, size.Next + 3, Cue.Gauge) || HasPart(clause, size));
        }

        var isStrong = word is not ("now" or "still" or "got" or "i've" or "i" or "have" or "found" or "down" or "and" or "which" or "holding" or "held" or "hit" or "says" or "say" or "said");
        var isWhole = account.Tokens[size.Next - 1].Kind == TokenKind.Word || size.Length.Unit == Model.LengthUnit.Millimetre;
        return isNext && isStrong && isWhole && size.Length.Value >= 1 && EndsThere(size);
    }

    private static bool HasPart(Clause clause, SizeSaid size) => clause.Parts.Any(part => part.Next <= size.First && size.First - part.Next <= 4);

    // "the parting tool ground down to 1.5".
    private bool IsOfATool(int verbAt, int from)
    {
        for (var at = verbAt - 1; at >= Math.Max(from, verbAt - 3); at--)
        {
            if ((account.HasCueAt(at, Cue.Tool) || account.HasCueAt(at, Cue.NewTool) || account.NameOf[at] is { IsPart: false }) && !account.HasCueAt(at, Cue.Gauge))
            {
                return true;
            }
        }

        return false;
    }

    private bool TellsBetween(int from, int to, Cue cue)
    {
        for (var at = from; at < to; at++)
        {
            if (account.HasCueAt(at, cue))
            {
                return true;
            }
        }

        return false;
    }

    private bool EndsThere(SizeSaid size) =>
        size.Next >= account.Tokens.Count || account.Tokens[size.Next].Kind != TokenKind.Word || account.Word(size.Next) is "dead" or "now" or "exactly" or "over" or "on" or "at" or "and" or "so" or "across" or "long" or "wide" or "thick";

    private SizeRole? ByWordsBehind(Clause clause, SizeSaid size, SizePlace place)
    {
        if (account.Word(size.Next) == "now" && size.IsSure && clause.IsReal(size.First))
        {
            return SizeRole.Measured;
        }

        // "3/8 = 9.525, got 9.51 mm": put beside its own size in another unit, a size is the one aimed at.
        if (account.Word(size.Next) == "=")
        {
            return SizeRole.Required;
        }

        for (var at = size.Next; at < Math.Min(place.To, size.Next + FarthestBehind); at++)
        {
            if (account.HasCueAt(at, Cue.WantedBehind))
            {
                return SizeRole.Required;
            }

            if (account.HasCueAt(at, Cue.Gauge) && account.Word(at - 1) is "on" or "by" or "with" or "the" or "my" && size.IsSure && clause.IsReal(size.First))
            {
                return SizeRole.Measured;
            }

            if (account.Word(at) is "," or "and" or "but" || account.Tokens[at].Kind == TokenKind.Break)
            {
                break;
            }
        }

        return null;
    }

    private bool IsListed(int from, int to)
    {
        if (to - from is < 1 or > LongestJoin)
        {
            return false;
        }

        for (var at = from; at < to; at++)
        {
            if (!Joining.Contains(account.Word(at)) && !account.HasCueAt(at, Cue.Feature))
            {
                return false;
            }
        }

        return true;
    }

    private bool FeatureIn(int from, int to) => TellsBetween(from, to, Cue.FeatureMeasured);

    // "Slipper width 0.748", "Piston 19.98, dwg …": a label and a size, as in notes.
    private bool IsLabelled(Clause clause, SizeSaid size, SizePlace place)
    {
        var enough = size.Length.Unit == Model.LengthUnit.Inch ? 3 : 2;
        var words = size.First - clause.First;
        if (words is < 1 or > LongestLabel || size.Length.Decimals < enough || clause.First < place.From || clause.Operations.Exists(operation => operation.First < size.First && operation.Form is VerbForm.Past or VerbForm.Going) || clause.HasAny(Cue.Bought, Cue.Took, Cue.Speed, Cue.Trial, Cue.Film, Cue.Snag))
        {
            return false;
        }

        var isNamed = false;
        for (var at = clause.First; at < size.First; at++)
        {
            isNamed |= account.HasCueAt(at, Cue.FeatureMeasured) || account.NameOf[at] is { IsPart: true };
            if (account.Tokens[at].Kind != TokenKind.Word || NoLabels.Contains(account.Word(at)))
            {
                return false;
            }
        }

        return isNamed && (size.Next >= account.Tokens.Count || account.Tokens[size.Next].Kind != TokenKind.Word || size.Next >= clause.Next || account.Word(size.Next) is "now" or "dead" or "both" or "at" or "and" or "on");
    }
}
