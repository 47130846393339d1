using Journal.Core.PlainWords.Clauses;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Facts.Jobs;

/// <summary>
/// Which words for operations tell of work that the maker did tonight. Whether the clause is tonight's and real is settled by
/// <see cref="Clause.IsReal"/>; here the form of the word decides: a verb in the past, a verb that goes on, a noun with its time, an
/// adjective that tells of work long done.
/// </summary>
internal sealed class WorkReader(Account account)
{
    /// <summary>What is done in passing with every job: a job of its own only where its time was said, or what it was done to.</summary>
    private static readonly HashSet<string> InPassing = ["measuring", "cleaning", "planning", "drawing", "maintenance", "filming", "adjusting", "fitting", "packing", "other", "searching", "indexing", "setting-up", "polishing", "printing", "blackening", "deburring", "trial-running"];

    /// <summary>Words that make a past form behind them an adjective: “the turned rim”, “freshly bored”.</summary>
    private static readonly HashSet<string> BeforeAdjectives = ["the", "a", "an", "its", "my", "that", "this", "of", "from", "off", "on", "to", "freshly", "newly", "nicely", "each", "with", "in", "already", "against", "by", "for", "per", "datum", "had", "as", "than", "being", "own"];

    /// <summary>Words behind which a verb that goes on, or a noun, tells of work.</summary>
    private static readonly HashSet<string> LeadingOn = ["am", "i'm", "we're", "was", "were", "been", "on", "spent", "started", "finished", "did", "some", "done", "of", "kept", "more", "by", "carried", "got", "began", "tonight", "evening", "today", "just", "now", "then", "first", "with", "the", "just", "actual", "half", "went", "getting", "busy", "mostly", "mainly", "it's", "that's"];
    private static readonly HashSet<string> LeadingAway = ["for", "before", "without", "than", "any", "no", "not", "or", "ready", "about", "wants", "needs", "want", "need", "wanted", "instead", "worth", "after"];
    private static readonly HashSet<string> LeadingAwayWithoutTime = ["when", "if", "to", "more", "like", "stop", "a", "while", "of"];

    /// <summary>The words for work done tonight, in order.</summary>
    /// <param name="clause">The clause.</param>
    /// <param name="hasTime">Whether a time of a job stands in it or waits before it.</param>
    public List<OperationHit> In(Clause clause, bool hasTime) =>
        [.. clause.Operations.Where(operation => !TimeRoles.IsSetUp(operation) && IsDone(clause, operation, hasTime) && (hasTime || !InPassing.Contains(operation.Operation.Value) || HasObject(clause, operation) || IsTimed(clause)))];

    // "cleaned the lathe, an hour and a half": its time stands alone right behind.
    private bool IsTimed(Clause clause) =>
        account.Clauses.ElementAtOrDefault(clause.Index + 1) is { } next && next.Sentence == clause.Sentence && IsTimeAlone(next, account.Clauses.ElementAtOrDefault(clause.Index + 2) is { } after && after.Sentence == clause.Sentence ? after : null);

    // "polished the rod": its part was named behind it.
    private static bool HasObject(Clause clause, OperationHit operation) =>
        operation.Form == VerbForm.Past && operation.Operation.Value is "polishing" or "fitting" or "adjusting" or "deburring" or "packing" && clause.Parts.Any(part => part.First >= operation.Next && part.First - operation.Next <= 3);

    private bool IsDone(Clause clause, OperationHit operation, bool hasTime)
    {
        if (!clause.IsReal(operation.First) || IsDenied(clause, operation) || (clause.Has(Cue.Film) && operation.Form != VerbForm.Past))
        {
            return false;
        }

        var before = operation.First > clause.First ? account.Word(operation.First - 1) : "";
        var after = account.Word(operation.Next);
        if (IsOfSomethingElse(operation, before, after))
        {
            return false;
        }

        return operation.Form switch
        {
            VerbForm.Past => !IsAdjective(clause, operation, before),
            VerbForm.Going => IsGoingOn(clause, operation, before, hasTime),
            VerbForm.Phrase => !operation.IsNoun || IsGoingOn(clause, operation, before, hasTime),
            VerbForm.Plain => IsPlainDone(clause, operation, before, hasTime),
            _ => false,
        };
    }

    private bool IsDenied(Clause clause, OperationHit operation) =>
        account.Word(operation.Next) is "nothing" or "none" || (operation.First > clause.First && account.Word(operation.First - 1) is "no")
        || (operation.Form is VerbForm.Going or VerbForm.Phrase && account.HasCueAt(operation.Next, Cue.Negation));

    // "turning time", "boring is dull", "the rod bent in the vice".
    private bool IsOfSomethingElse(OperationHit operation, string before, string after)
    {
        if (after is "time" or "day" or "evening" or "night" || (after is "is" or "isn't" && operation.Form is VerbForm.Going or VerbForm.Phrase && before != "the"))
        {
            return true;
        }

        // "drawing 20": what it asks; "cleaned up and usable": how it is.
        if ((operation.Operation.Value == "drawing" && (account.QuantityAt(operation.Next) is not null || account.HasCueAt(operation.First, Cue.Document))) || (operation.Operation.Value == "cleaning" && after is "and" or "at" or "nicely" or "well" or ""))
        {
            return true;
        }

        return operation.Operation.Value == "bending" && operation.Form == VerbForm.Past && !(after is "the" or "it" or "them" or "both" or "up" or "my" or "two" or "this" or "that" || account.NameOf.ElementAtOrDefault(operation.Next) is { IsPart: true });
    }

    // "the turned rim", "a drilled hole"; but "the flywheel turned", "got the rim turned".
    private bool IsAdjective(Clause clause, OperationHit operation, string before)
    {
        var after = account.Word(operation.Next);
        var isLed = BeforeAdjectives.Contains(before) && operation.Next < account.Tokens.Count && !(before is "that" or "this" or "each" && after is "the" or "it");
        // "the parting tool ground narrow".
        isLed |= operation.First > clause.First && account.NameOf[operation.First - 1] is { IsPart: false };
        // "wants turned", "needs faced", "is to be bored".
        isLed |= before is "wants" or "needs" or "be" or "get" or "getting" or "half";
        // "a slot sawn down it": a participle without its helping verb.
        isLed |= account.Word(operation.First) is "sawn" or "drawn" or "hacksawn" && operation.First > clause.First && before is not ("have" or "has" or "i've" or "we've" or "been" or "was" or "were" or "is" or "got" or "and" or "'ve");
        return isLed || (before is "his" or "her" or "their" or "your");
    }

    // "spent an hour boring", "the boring took", "boring: 2 h"; not "for boring", "before drilling".
    private bool IsGoingOn(Clause clause, OperationHit operation, string before, bool hasTime)
    {
        var ownTime = clause.Quantities.Exists(quantity => quantity.Kind == UnitKind.Time);
        if (LeadingAway.Contains(before) || (!ownTime && LeadingAwayWithoutTime.Contains(before)))
        {
            return false;
        }

        var isNamed = before != "the" || clause.HasAny(Cue.Finished, Cue.Rest) || ownTime;
        return hasTime || (LeadingOn.Contains(before) && isNamed) || HeadsItsSentence(clause, operation) || clause.Has(Cue.Rest);
    }

    private bool HeadsItsSentence(Clause clause, OperationHit operation) =>
        operation.First == clause.First && (clause.Index == 0 || account.Clauses[clause.Index - 1].Sentence != clause.Sentence);

    // "Then drill and ream for the pivot. Half an hour."
    private bool IsTimeAlone(Clause next, Clause? after) =>
        IsTime(next) || (next.Operations.All(operation => operation.Form == VerbForm.Plain) && after is not null && IsTime(after));

    private bool IsTime(Clause clause) => clause.Operations.Count == 0 && clause.Next - clause.First <= 5 && clause.Quantities.Exists(quantity => quantity.Kind == UnitKind.Time && TimeRoles.Of(account, clause, quantity) == TimeRole.Job);

    // "took an hour to bore", "managed to bore", "had to bore it again"; "I turn the piston", told as it goes on; "bore flywheel 2h", typed.
    private bool IsPlainDone(Clause clause, OperationHit operation, string before, bool hasTime)
    {
        var isLed = clause.Hits.Exists(hit => hit.Cue == Cue.Done && hit.Next == operation.First);
        var ownTime = clause.Quantities.Exists(quantity => quantity.Kind == UnitKind.Time && TimeRoles.Of(account, clause, quantity) == TimeRole.Job);
        var isPresent = before is "i" or "we" or "did" || (operation.First == clause.First && ownTime);
        var isNarrated = (operation.First == clause.First || before is "then" or "and") && clause.Index + 1 < account.Clauses.Count && !clause.HasAny(Cue.Next, Cue.Lesson) && IsTimeAlone(account.Clauses[clause.Index + 1], account.Clauses.ElementAtOrDefault(clause.Index + 2)) && (clause.Index == 0 || !account.Clauses[clause.Index - 1].HasAny(Cue.Next, Cue.Lesson, Cue.Future));
        return isLed || isPresent || isNarrated || (before == "to" && (ownTime || hasTime) && clause.Has(Cue.Took));
    }
}
