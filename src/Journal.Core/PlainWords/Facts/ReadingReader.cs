using System.Globalization;
using Journal.Core.Model;
using Journal.Core.PlainWords.Clauses;
using Journal.Core.PlainWords.Names;
using Journal.Core.PlainWords.Quantities;
using Journal.Core.PlainWords.Tokens;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Facts;

/// <summary>Reads measured sizes: a feature, a word such as “came out at”, a size. What the drawing asks stands beside it.</summary>
internal sealed class ReadingReader(Account account, Topic topic, JobReader jobs)
{
    private const int FarthestFeature = 9;
    private const int NearEnough = 2;
    private readonly List<ProposedReading> readings = [];
    private readonly ReadingSizes sizes = new(account);
    private int lastClause = -10;
    private Quantity? lastSize;
    private (string Text, int Clause, string? Feature, Span Words)? asked;

    public IReadOnlyList<ProposedReading> Readings => readings;

    public void Read(int index)
    {
        var clause = account.Clauses[index];
        foreach (var quantity in clause.Quantities)
        {
            if (quantity.IsDeviation || sizes.Of(quantity, lastSize) is not { } size || IsInsideSize(clause, quantity))
            {
                continue;
            }

            lastSize = quantity.Kind == UnitKind.Length ? quantity : lastSize;
            if (IsAsked(clause, quantity))
            {
                Ask(clause, index, quantity, size);
            }
            else if (IsActual(clause, quantity, size) && FeatureOf(clause, index, quantity) is { } feature)
            {
                Add(clause, index, size, feature);
            }
        }
    }

    // The second number of "six twenty-seven".
    private bool IsInsideSize(Clause clause, Quantity quantity) =>
        clause.Quantities.Exists(before => before.Next == quantity.First && sizes.Of(before, lastSize) is { } size && size.Next > quantity.First);

    /// <summary>Whether a size is what is wanted: of the drawing, or “should be”.</summary>
    private static bool IsAsked(Clause clause, Quantity quantity)
    {
        foreach (var hit in clause.Hits)
        {
            var isBefore = hit.Next <= quantity.First;
            if (hit.Cue == Cue.Nominal && isBefore && quantity.First - hit.Next <= 6)
            {
                return true;
            }

            if (hit.Cue == Cue.Document && (isBefore || hit.First - quantity.Next <= 3))
            {
                return true;
            }
        }

        return false;
    }

    private void Ask(Clause clause, int index, Quantity quantity, SizeSaid size)
    {
        if (clause.IsPast || clause.IsOthers)
        {
            return;
        }

        var text = RequiredText(quantity, size);
        var words = account.SpanOf(clause.First, clause.Next);
        var isOfAnother = readings.Count > 0 && clause.Parts.Any(part => readings[^1].Part is { } of && topic.Resolve(part) is { Count: > 0 } ids && !ids.Contains(of.Value));
        if (readings.Count > 0 && readings[^1].Required is null && index - lastClause <= NearEnough && !isOfAnother)
        {
            readings[^1] = readings[^1] with { Required = text, Words = Joined(readings[^1].Words, words) };
        }
        else
        {
            asked = (text, index, Feature(clause, quantity) is { } hit ? Named(clause, hit) : null, words);
        }
    }

    private static Span Joined(Span one, Span other) => new(Math.Min(one.Start, other.Start), Math.Max(one.End, other.End));

    // "30 H7", "17 k5": a fit behind the size stays with it.
    private string RequiredText(Quantity quantity, SizeSaid size)
    {
        var behind = account.Word(quantity.Next);
        var isFit = quantity.Next < account.Tokens.Count && behind.Length is 2 or 3 or 4 && char.IsAsciiLetter(behind[0]) && char.IsAsciiDigit(behind[^1]);
        return isFit
            ? $"{size.Length.Value.ToString("0.############", CultureInfo.InvariantCulture)} {account.TextOf(quantity.Next, quantity.Next + 1)}"
            : size.Length.ToString();
    }

    private bool IsActual(Clause clause, Quantity quantity, SizeSaid size)
    {
        if (!clause.IsReal(quantity.First) || clause.HasBefore(Cue.Document, quantity.First) || clause.HasAny(Cue.Depth, Cue.Feed) || (clause.Has(Cue.Bought) && account.Word(clause.FirstOf(Cue.Bought)!.Value.First) is "bought" or "paid" or "ordered" or "cost") || clause.HasBefore(Cue.Unreal, quantity.First))
        {
            return false;
        }

        return size.IsSure || (clause.Has(Cue.Reads) && IsLast(clause, size.Next) && quantity.Value >= 1 && clause.Hits.Exists(hit => hit.Cue == Cue.Reads && quantity.First - hit.Next is 0 or 1 && IsStrong(hit)));
    }

    // "measures", "came out at", "comes to": nothing but a size follows them.
    private bool IsStrong(CueHit hit) =>
        account.Word(hit.First) is "came" or "comes" or "measures" or "measured" or "miked" or "mikes" or "reads" or "read" or "gauged" or "gauges" or "checked" or "checks" or "come" or "finished" or "ended" or "mic'd" or "micced" or "sits" or "showed" or "works" or "landed" or "measure";

    private bool IsLast(Clause clause, int next) => next >= clause.Next || account.Tokens[next].Kind != TokenKind.Word || account.Word(next) is "dead" or "now" or "over" or "so" or "exactly" or "and" or "by" or "with" or "on";

    /// <summary>What was measured, in the maker's words, and of which part; null where the clause does not say that it measures so much.</summary>
    private (string Text, NameMention? Part)? FeatureOf(Clause clause, int index, Quantity quantity)
    {
        var part = clause.Parts.FirstOrDefault(name => name.First < quantity.Next + 4 && !topic.IsAside(clause, name));
        if (Feature(clause, quantity) is { } feature)
        {
            var isBehind = feature.First >= quantity.Next;
            var isSaid = isBehind || quantity.First - feature.Next <= 1 || clause.Hits.Exists(hit => hit.Cue == Cue.Reads && hit.First >= feature.Next - 1 && hit.Next <= quantity.First + 1 && hit.First < quantity.First);
            return isSaid ? (Named(clause, feature), part) : null;
        }

        if (Bare(clause, quantity) is { } label)
        {
            return (label, part);
        }

        var reads = clause.Hits.Find(hit => hit.Cue == Cue.Reads && quantity.First - hit.Next is 0 or 1);
        if (reads.Next == 0)
        {
            return null;
        }

        // "mine's point six two four" behind what should be; "it measures …"; "the first one measures 24.11".
        if (asked is { } wanted && index - wanted.Clause <= NearEnough)
        {
            return (wanted.Feature ?? "size", part);
        }

        return IsStrong(reads) && (part is not null || account.Word(reads.First - 1) is "it" or "mine" or "one" or "they" or "which" or "that" or "and" or "this" || reads.First == clause.First) ? (EarlierFeature(index) ?? "size", part) : null;
    }

    // "Treads 63.50": a label and a size with its decimals, as in notes.
    private string? Bare(Clause clause, Quantity quantity)
    {
        var words = quantity.First - clause.First;
        var isLabel = words is 1 or 2 && quantity.Next >= clause.Next && quantity.Value.Scale >= 2 && clause.Operations.All(operation => operation.Form is VerbForm.Third or VerbForm.Plain) && !clause.HasAny(Cue.Bought, Cue.Took, Cue.Speed, Cue.Reads)
            && account.Tokens[clause.First].Kind == TokenKind.Word && account.NameOf[clause.First] is null && clause.Index + 1 < account.Clauses.Count && account.Clauses[clause.Index + 1].HasAny(Cue.Document, Cue.Nominal);
        return isLabel ? account.TextOf(clause.First, quantity.First) : null;
    }

    private string? EarlierFeature(int index)
    {
        for (var at = index - 1; at >= Math.Max(0, index - NearEnough); at--)
        {
            var clause = account.Clauses[at];
            if (clause.FirstOf(Cue.FeatureMeasured) is { } hit)
            {
                return Named(clause, hit);
            }
        }

        return null;
    }

    private CueHit? Feature(Clause clause, Quantity quantity)
    {
        CueHit? feature = null;
        foreach (var hit in clause.Hits)
        {
            if (hit.Cue == Cue.FeatureMeasured && hit.Next <= quantity.First && quantity.First - hit.Next <= FarthestFeature)
            {
                feature = hit;
            }
        }

        if (feature is not null)
        {
            return feature;
        }

        // "0.7503 bore", "6.02 thick", "42.5 long".
        foreach (var hit in account.CuesAt(quantity.Next))
        {
            if (hit.Cue == Cue.FeatureMeasured && hit.Next <= clause.Next && account.Word(quantity.Next) is not ("hole" or "holes" or "shaft" or "rod") && IsLast(clause, hit.Next))
            {
                return hit;
            }
        }

        return null;
    }

    // "front seat", "bearing seat", "bore": with the adjective or noun before it.
    private string Named(Clause clause, CueHit feature)
    {
        switch (account.Word(feature.First))
        {
            case "thick": return "thickness";
            case "long": return "length";
            case "wide": return "width";
            case "high": return "height";
            default: break;
        }

        var first = feature.First;
        while (first > clause.First && feature.First - first < 2 && account.NameOf[first - 1] is null && IsModifier(first - 1))
        {
            first--;
        }

        return account.TextOf(first, feature.Next);
    }

    private bool IsModifier(int at)
    {
        var word = account.Word(at);
        return account.Tokens[at].Kind == TokenKind.Word && account.QuantityAt(at) is null
            && (word is "front" or "rear" or "back" or "top" or "bottom" or "upper" or "lower" or "inner" or "outer" or "inside" or "outside" or "bearing" or "big" or "small" or "left" or "right" or "main" or "centre" or "bolt" or "stud" or "pin" or "port" or "valve" or "key" or "oil" or "ring" or "overall" or "wall" or "finished"
                || (account.HasCueAt(at, Cue.Feature) && word is not ("end" or "side")));
    }

    private void Add(Clause clause, int index, SizeSaid size, (string Text, NameMention? Part) feature)
    {
        var ids = feature.Part is { } name && topic.Resolve(name) is { Count: 1 } one ? one : topic.IsFresh(index) || jobs.JobAt(index) is not { Parts.Count: > 0 } job ? topic.Parts : job.Parts;
        if (ids.Count == 0)
        {
            return;
        }

        var wanted = asked is { } before && index - before.Clause <= NearEnough ? before.Text : null;
        readings.Add(new(new Id<Part>(ids[0]), feature.Text, size.Length, wanted, account.SpanOf(clause.First, clause.Next)));
        (lastClause, asked) = (index, wanted is null ? asked : null);
    }
}
