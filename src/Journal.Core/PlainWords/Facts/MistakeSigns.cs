using Journal.Core.Model;
using Journal.Core.PlainWords.Clauses;
using Journal.Core.PlainWords.Quantities;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Facts;

/// <summary>What in a clause speaks for a mistake.</summary>
internal sealed record MistakeSigns
{
    /// <summary>Words that tell of nothing else: “broke the tap”, “misread the drawing”.</summary>
    public bool IsPlain { get; init; }

    /// <summary>Harm that may as well be a snag, or no fault of tonight's: “a nick”, “too short”.</summary>
    public bool IsHarm { get; init; }

    /// <summary>A size off from what it should be, or what had been done before: little by itself.</summary>
    public bool IsHint { get; init; }

    /// <summary>“my own fault”, “in a rush”.</summary>
    public bool IsBlame { get; init; }

    /// <summary>A word or two without the event: “One mistake:”, “Now the confession.”</summary>
    public bool IsHeading { get; init; }

    /// <summary>Why it happened.</summary>
    public Id<Cause>? Cause { get; init; }

    /// <summary>What became of the part.</summary>
    public Outcome? Outcome { get; init; }

    /// <summary>The time lost.</summary>
    public Minutes? Lost { get; init; }

    /// <summary>Whether the clause may tell what happened.</summary>
    public bool IsEvent => (IsPlain || IsHarm || IsHint || Cause is not null) && !IsHeading;

    public bool IsAny => IsEvent || IsBlame || IsHeading || Outcome is not null || Lost is not null;
}

/// <summary>Looks for the signs of a mistake, clause by clause.</summary>
internal sealed class MistakeSignReader(Account account)
{
    private const int LostNear = 8;
    private const int LongestHeading = 4;
    private const int LongestGap = 6;

    private static readonly HashSet<string> AgainAfter = ["again", "over"];

    public MistakeSigns Of(Clause clause)
    {
        if (!IsTonights(clause))
        {
            return new() { Lost = clause.Has(Cue.Lost) && clause.Hits.Exists(hit => hit.Cue == Cue.Lost && account.Word(hit.Next - 1) is "me") ? LostIn(clause) : null };
        }

        if (clause.Has(Cue.NoMistake))
        {
            return new();
        }

        var isPlain = Has(clause, Cue.Mistake);
        return new()
        {
            IsPlain = isPlain,
            IsHarm = Has(clause, Cue.Harm) && !clause.Has(Cue.Document),
            IsHint = IsOff(clause) || IsPluperfect(clause),
            IsBlame = Has(clause, Cue.Blame),
            IsHeading = clause.Next - clause.First <= LongestHeading && (clause.HasAny(Cue.Blame) || isPlain) && clause.Operations.Count == 0 && !clause.Hits.Exists(hit => hit.Cue == Cue.Mistake && account.Word(hit.First) is not ("mistake" or "blunder" or "error" or "slip" or "mistakes")),
            Cause = CauseOf(clause),
            Outcome = OutcomeOf(clause),
            Lost = LostIn(clause),
        };
    }

    // "I'd wound in from the wrong side" is the past before the past, and still tonight's.
    private bool IsTonights(Clause clause) =>
        clause is { IsOthers: false, IsQuestion: false, IsTakenBack: false, IsFilm: false, IsPast: false, IsFuture: false } || (clause.IsFuture && clause.Has(Cue.Mistake) && !clause.IsOthers && account.Word(clause.First) is "i" or "the");

    private bool Has(Clause clause, Cue cue) => clause.Hits.Exists(hit => hit.Cue == cue && IsSo(clause, hit.First));

    /// <summary>Whether what stands at a token really happened: nothing before it denies it, hopes for it or only just missed it.</summary>
    private bool IsSo(Clause clause, int at)
    {
        foreach (var hit in clause.Hits)
        {
            var isPluperfect = account.Word(hit.First) == "i'd";
            var isNear = hit.First < at && at - hit.First <= LongestGap;
            if (isNear && hit.Cue is Cue.Negation or Cue.Unreal && isNear && !isPluperfect && !IsOfTheSlip(hit))
            {
                return false;
            }
        }

        // "dropped it to one-twenty" is a speed.
        if (account.Word(at) == "dropped" && account.Word(at + 2) is "to" or "down")
        {
            return false;
        }

        return account.Word(at - 1) is not ("no" or "not" or "any" or "without" or "from" or "old" or "nothing" or "never");
    }

    // "hadn't tapped it down", "never wiped the vice": what was not done is the slip itself.
    private bool IsOfTheSlip(CueHit hit) => account.Word(hit.First) is "hadn't" or "hadnt" or "never" or "didn't" or "without" or "rather" or "instead" or "wasn't";

    // Of several in a clause the one said with "because", else the one behind the harm: "broke the tap off because I was rushing".
    private Id<Cause>? CauseOf(Clause clause)
    {
        Id<Cause>? found = null;
        var reason = clause.FirstOf(Cue.Reason)?.First ?? int.MaxValue;
        for (var at = clause.First; at < clause.Next; at++)
        {
            if (Lexicon.Shared.Causes.TryLongest(account.Tokens, at, out var cause, out var words) && account.Journal.Vocabulary.Causes.Has(cause) && IsSo(clause, at))
            {
                found = found is { } known && !IsSymptom(known) && at < reason ? found : cause;
                at += words - 1;
            }
        }

        return found;
    }

    /// <summary>Whether a cause is rather what happened, so that another one near it goes before.</summary>
    public static bool IsSymptom(Id<Cause> cause) => cause.Value is "tool-broke" or "chatter" or "distortion" or "drill-wander" or "handling";

    // "one hole 0.8 off", "two thou too wide".
    private bool IsOff(Clause clause) =>
        clause.Quantities.Exists(quantity => quantity.Kind is UnitKind.Length or UnitKind.None && quantity is { Next: var next } && (quantity.Kind == UnitKind.Length || quantity.IsFraction || quantity.Value.Scale > 0) && account.Word(next) is "off" or "wide" or "too" or "oversize" or "undersize" or "out" && !clause.HasAny(Cue.Reads, Cue.Depth));

    // "I'd started with the coarse paste": said to explain.
    private bool IsPluperfect(Clause clause)
    {
        for (var at = clause.First; at < Math.Min(clause.Next, clause.First + 3); at++)
        {
            var participle = account.Word(at) == "i'd" ? account.Word(at + 1) : account.Word(at) == "i" && account.Word(at + 1) == "had" ? account.Word(at + 2) : "";
            if (participle.EndsWith("ed", StringComparison.Ordinal) || participle is "put" or "set" or "left" or "wound" or "cut" or "taken" or "got" or "run" or "drawn" or "read" or "made" or "forgotten" or "done" or "given")
            {
                return true;
            }
        }

        return false;
    }

    private Outcome? OutcomeOf(Clause clause)
    {
        for (var at = clause.First; at < clause.Next; at++)
        {
            var isHeld = clause.Hits.Exists(hit => hit.Cue is Cue.Negation && hit.First < at && at - hit.First <= 3);
            if (Lexicon.Shared.Outcomes.TryLongest(account.Tokens, at, out var outcome, out _) && !isHeld && account.Word(at - 1) is not ("no" or "old" or "the" or "his" or "of") && account.Word(at + 1) is not ("box" or "bar" or "pile" or "of" or "metal"))
            {
                return outcome;
            }
        }

        return DoneAgain(clause) ? Outcome.Rework : null;
    }

    // "had to go over it again", "did it over", "cut it off and start again": a verb with "again" or "over" near behind.
    private bool DoneAgain(Clause clause)
    {
        for (var at = clause.First + 1; at < clause.Next; at++)
        {
            if (!AgainAfter.Contains(account.Word(at)) || (account.Word(at) == "over" && account.Word(at - 1) is not ("it" or "that" or "start" or "started" or "them")))
            {
                continue;
            }

            var isVerb = Enumerable.Range(Math.Max(clause.First, at - LongestGap), Math.Min(LongestGap, at - clause.First)).Any(back => account.Word(back) is "did" or "do" or "go" or "went" or "start" or "started" or "heated" or "took" or "set" or "cut" || account.OperationBeginning(back) is { Form: VerbForm.Past or VerbForm.Plain });
            if (isVerb && !clause.HasAny(Cue.Negation, Cue.Heed))
            {
                return true;
            }
        }

        return false;
    }

    // "lost 15", "ten minutes down the drain", "dropped 10 min to …", "twenty minutes picking it out".
    private Minutes? LostIn(Clause clause)
    {
        foreach (var hit in clause.Hits.Where(hit => hit.Cue == Cue.Lost))
        {
            var time = clause.Quantities.Where(quantity => quantity is { Kind: UnitKind.Time, IsVague: false, IsStretch: false } && quantity.Minutes > 0 && Distance(quantity, hit) <= LostNear).MinBy(quantity => Distance(quantity, hit));
            time ??= account.Word(hit.First) is "lost" or "wasted" ? clause.Quantities.Find(quantity => quantity is { Kind: UnitKind.None, IsFraction: false, Value: >= 5 and <= 90 } && quantity.First - hit.Next is 0 or 1 && quantity.Next >= clause.Next) : null;
            var isElsewhere = clause.Has(Cue.Waiting) && account.Word(hit.First) is not ("lost" or "wasted");
            if (time is not null && !isElsewhere && !clause.Hits.Exists(other => other.Cue == Cue.Negation && other.First < Math.Min(time.First, hit.First) && Math.Min(time.First, hit.First) - other.First <= 4))
            {
                return new(time.Minutes);
            }
        }

        return null;
    }

    private static int Distance(Quantity time, CueHit hit) => hit.First >= time.Next ? hit.First - time.Next : time.First >= hit.Next ? time.First - hit.Next : 0;
}
