using Journal.Core.Model;
using Journal.Core.PlainWords.Clauses;
using Journal.Core.PlainWords.Facts.Jobs;
using Journal.Core.PlainWords.Names;
using Journal.Core.PlainWords.Quantities;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Facts;

/// <summary>
/// Reads measured sizes and what the drawing asks of them. A size that is asked for belongs to the readings near it that it can be the size
/// of: of like size, told in the same breath, or of the same feature.
/// </summary>
internal sealed class ReadingReader(Account account, Topic topic, JobList jobs)
{
    /// <summary>How many clauses may stand between a reading and the size asked for.</summary>
    private const int NearEnough = 5;

    /// <summary>The same, where both name one feature.</summary>
    private const int SameFeature = 24;

    /// <summary>How far, as a share, a reading may lie from the size it was made to; a bigger step is another size.</summary>
    private const decimal WidestStep = 0.1m;

    /// <summary>How many clauses back a run-out, play or gap may have been named.</summary>
    private const int TinyNear = 8;

    /// <summary>How many sizes back one may still belong to another.</summary>
    private const int Remembered = 32;

    private readonly List<Draft> readings = [];
    private readonly List<Asked> asked = [];
    private readonly ReadingSizes sizes = new(account);
    private readonly SizeRoles roles = new(account);
    private Quantity? lastSize;
    private (int Next, int Sentence, SizeRole Role) before = (0, -1, SizeRole.None);
    private (string Text, int Clause)? tiny;
    private IReadOnlyList<string> partsBefore = [];

    public IReadOnlyList<ProposedReading> Readings => [.. readings.Where(reading => !reading.IsReplaced).Select(reading => reading.Proposed)];

    public void Read(int index)
    {
        var clause = account.Clauses[index];
        if (clause.FirstOf(Cue.TinyFeature) is { } said)
        {
            tiny = (account.TextOf(said.First, said.Next), index);
        }

        for (var i = 0; i < clause.Quantities.Count; i++)
        {
            var quantity = clause.Quantities[i];
            if (quantity.First < before.Next || sizes.Of(quantity, lastSize) is not { } size)
            {
                continue;
            }

            var isSame = before.Sentence == clause.Sentence;
            var from = isSame ? before.Next : FirstOfSentence(index);
            var to = i + 1 < clause.Quantities.Count && clause.Quantities[i + 1].First >= size.Next ? clause.Quantities[i + 1].First : EndAround(index);
            var isAwaited = asked.Count > 0 && index - asked[^1].Clause <= 2 && !clause.IsPast && !clause.IsOthers;
            var role = IsNewer(clause, size) ? SizeRole.Measured : roles.Of(clause, size, new(from, to, isSame ? before.Role : SizeRole.None, isAwaited));
            lastSize = quantity.Kind == UnitKind.Length ? quantity : lastSize;
            size = role == SizeRole.Measured ? sizes.WithStep(size) : size;
            // A bare number such as "sheet 3" hides nothing that stands before it.
            var isNothing = role == SizeRole.None && !size.IsSure;
            before = (isNothing ? from : size.Next, clause.Sentence, isNothing && isSame || role == SizeRole.Restated ? before.Role : role);

            Take(clause, index, size, role);
        }

        partsBefore = topic.Parts;
    }

    // "… was .7494, one more spring pass, | .7501": a size alone behind one like it.
    private bool IsNewer(Clause clause, SizeSaid size) =>
        size.First == clause.First && size.Next == clause.Next && size is { IsSure: true, IsShort: false } && readings is [.., { Role: SizeRole.Before } last] && clause.Index - last.Clause <= NearEnough && IsLike(size.Length, last.Size.Length);

    private void Take(Clause clause, int index, SizeSaid size, SizeRole role)
    {
        if (role == SizeRole.Required && !clause.IsOthers)
        {
            Ask(clause, index, size);
        }
        else if (role is SizeRole.Measured or SizeRole.Before && clause.IsTonight && !clause.IsFilm)
        {
            Add(clause, index, size, role);
        }
    }

    private int FirstOfSentence(int index)
    {
        for (var clauses = 0; clauses < NearEnough && index > 0 && account.Clauses[index - 1].Sentence == account.Clauses[index].Sentence; clauses++)
        {
            index--;
        }

        return account.Clauses[index].First;
    }

    // Words behind the last size of a clause may stand in the next clause: "1.5, where 1.55 | is asked for".
    private int EndAround(int index)
    {
        var next = index + 1;
        return next < account.Clauses.Count && account.Clauses[next].Sentence == account.Clauses[index].Sentence && account.Clauses[next].Quantities.Count == 0
            ? account.Clauses[next].Next
            : account.Clauses[index].Next;
    }

    private void Ask(Clause clause, int index, SizeSaid size)
    {
        var (text, next) = RequiredSizes.Of(account, sizes, size);
        before.Next = next;
        var wish = new Asked(size, text, FeatureOf(clause, size)?.Text, index, account.SpanOf(clause.First, clause.Next));
        asked.Add(wish);
        foreach (var reading in readings.TakeLast(Remembered).Where(reading => reading.Proposed.Required is null && Belongs(reading, wish)))
        {
            reading.Give(wish);
        }
    }

    private static bool Belongs(Draft reading, Asked wish)
    {
        var step = reading.Size.Length;
        var isOfLikeSize = IsLike(step, wish.Size.Length) || (!wish.Size.HasUnit && IsLike(step, step with { Value = wish.Size.Length.Value }));
        var isNear = Math.Abs(reading.Clause - wish.Clause) <= NearEnough;
        var isSameFeature = wish.Feature is { } feature && reading.Proposed.Feature.EndsWith(feature, StringComparison.OrdinalIgnoreCase) && Math.Abs(reading.Clause - wish.Clause) <= SameFeature;
        return isOfLikeSize && (isNear || isSameFeature);
    }

    private static bool IsLike(Length actual, Length wanted)
    {
        var (one, other) = (actual.Millimetres, wanted.Millimetres);
        return other > 0 && (Math.Abs(one - other) <= other * WidestStep || (one < RequiredSizes.Tiny && other < RequiredSizes.Tiny));
    }

    private void Add(Clause clause, int index, SizeSaid size, SizeRole role)
    {
        var feature = FeatureOf(clause, size);
        var text = feature?.Text ?? EarlierFeature(index) ?? "size";
        if (size.Length.Millimetres < RequiredSizes.Tiny)
        {
            if (tiny is not { } small || index - small.Clause > TinyNear)
            {
                return;
            }

            text = small.Text;
        }

        if (PartOf(clause, index, size) is not { } part)
        {
            return;
        }

        var reading = new Draft(new(new Id<Part>(part), text, size.Length, null, account.SpanOf(clause.First, clause.Next)), size, index, role);
        foreach (var old in readings.TakeLast(Remembered).Where(old => old.Role == SizeRole.Before && old.Proposed.Part == reading.Proposed.Part && index - old.Clause <= NearEnough && IsLike(size.Length, old.Size.Length)))
        {
            old.IsReplaced = true;
        }

        if (asked.TakeLast(Remembered).LastOrDefault(wish => Belongs(reading, wish)) is { } wanted)
        {
            reading.Give(wanted);
        }

        readings.Add(reading);
    }

    private string? PartOf(Clause clause, int index, SizeSaid size)
    {
        var named = clause.Parts.LastOrDefault(name => name.Next <= size.First && IsMeasured(clause, name)) ?? clause.Parts.FirstOrDefault(name => name.First >= size.Next && name.First - size.Next <= 4 && IsMeasured(clause, name));
        if (named is not null && topic.Resolve(named) is { Count: > 0 } ids)
        {
            return ids[0];
        }

        if (partsBefore.Count > 0 && clause.Parts.Any(name => name.First >= size.Next))
        {
            return partsBefore[0];
        }

        var known = topic.IsFresh(index) || jobs.At(index) is not { Parts.Count: > 0 } job ? topic.Parts : job.Parts;
        return known.Count > 0 ? known[0] : null;
    }

    // "the middle for the hot cap spigot" measures no hot cap.
    private bool IsMeasured(Clause clause, NameMention name) =>
        !topic.IsAside(clause, name) && account.Word(name.First - 1) is not ("for" or "to") && !(account.Word(name.First - 1) is "the" or "a" && account.Word(name.First - 2) is "for" or "fit" or "suit" or "match");

    /// <summary>What was measured, in the maker's words: before the size, or right behind it.</summary>
    private (string Text, int First)? FeatureOf(Clause clause, SizeSaid size)
    {
        CueHit? feature = null;
        foreach (var hit in clause.Hits.Where(hit => hit.Cue == Cue.FeatureMeasured))
        {
            if (hit.Next <= size.First || (feature is null && hit.First >= size.Next && hit.First - size.Next <= 1))
            {
                feature = hit;
            }
        }

        return feature is { } found ? (Named(clause, found), found.First) : null;
    }

    private string? EarlierFeature(int index)
    {
        for (var at = index - 1; at >= Math.Max(0, index - 2); at--)
        {
            if (account.Clauses[at].FirstOf(Cue.FeatureMeasured) is { } hit)
            {
                return Named(account.Clauses[at], hit);
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
            case "deep": return "depth";
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
        return account.Tokens[at].Kind == Tokens.TokenKind.Word && account.QuantityAt(at) is null
            && (word is "front" or "rear" or "back" or "top" or "bottom" or "upper" or "lower" or "inner" or "outer" or "inside" or "outside" or "bearing" or "big" or "small" or "left" or "right" or "main" or "centre" or "bolt" or "stud" or "pin" or "port" or "valve" or "key" or "oil" or "ring" or "overall" or "wall" or "finished"
                || (account.HasCueAt(at, Cue.Feature) && word is not ("end" or "side")));
    }

    /// <summary>A size that is asked for.</summary>
    private sealed record Asked(SizeSaid Size, string Text, string? Feature, int Clause, Span Words);

    /// <summary>A reading that may still get its required size, or give way to a newer one.</summary>
    private sealed class Draft(ProposedReading proposed, SizeSaid size, int clause, SizeRole role)
    {
        public ProposedReading Proposed { get; private set; } = proposed;

        public SizeSaid Size => size;

        public int Clause => clause;

        public SizeRole Role => role;

        public bool IsReplaced { get; set; }

        public void Give(Asked wish)
        {
            // A bare number beside a size with its unit is in that unit: "clock wants 9.52, got 9.50 mm".
            var isOwnUnit = wish.Size.HasUnit || IsLike(size.Length, wish.Size.Length);
            var text = isOwnUnit ? wish.Text : new Length(wish.Size.Length.Value, size.Length.Unit).ToString();
            var isNear = Math.Abs(wish.Clause - clause) <= NearEnough;
            Proposed = Proposed with { Required = text, Words = isNear ? new(Math.Min(Proposed.Words.Start, wish.Words.Start), Math.Max(Proposed.Words.End, wish.Words.End)) : Proposed.Words };
        }
    }
}
