using Journal.Core.Model;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Clauses;

/// <summary>
/// Operations that no word names: “opened out the bore”, “took a skim off the rim”, “cleaned it up with a file”, “ran a reamer through”.
/// Read where a clause names none; the tool goes before the thing, the thing before the machine.
/// </summary>
internal static class ImpliedReader
{
    private const int FarthestThing = 8;
    private const int FarthestTool = 14;

    private static readonly HashSet<string> Determiners = ["the", "a", "an", "my", "its", "both", "all", "each", "that", "those", "these", "this", "every", "one", "two", "three", "four", "six", "it", "them", "out", "up", "down", "off", "back", "in", "to"];

    /// <summary>What a tool does where it is put: “ran a tap down the holes”.</summary>
    private static readonly HashSet<string> Motions = ["run", "put", "push", "pass", "send", "wind", "work", "take", "get", "pop", "go"];
    private static readonly HashSet<string> Ways = ["through", "down", "in", "into", "over", "along", "across", "up", "to", "on", "round", "around"];
    private static readonly HashSet<string> With = ["with", "using", "by", "w", "on"];
    private static readonly HashSet<string> Ends = ["in", "on", "to", "for", "from", "with", "and", "so", "because", "which", "by", "at", "into", "until", "before", "after", "it", "them", "using"];

    /// <summary>Verbs whose thing stands behind a preposition: “took ten thou off the face”.</summary>
    private static readonly HashSet<string> TakesOff = ["take", "clean", "skim", "shave", "trim", "thin", "remove", "knock", "stone", "break", "dress", "true", "kiss"];

    /// <summary>Verbs that say nothing of cutting, unless a tool is named.</summary>
    private static readonly HashSet<string> Empty = ["run", "go", "push", "pass", "wind", "send", "get", "work", "pop", "touch", "kiss", "lick", "thread", "tidy", "chew", "nibble"];

    public static void Read(Account account)
    {
        foreach (var clause in account.Clauses)
        {
            if (clause.Operations.TrueForAll(operation => operation.Operation.Value == "cleaning") && In(account, clause) is { } hit)
            {
                clause.Operations.Clear();
                clause.Operations.Add(hit);
            }
        }
    }

    private static OperationHit? In(Account account, Clause clause)
    {
        for (var at = clause.First; at < clause.Next; at++)
        {
            if (account.NameOf[at] is null && Lexicon.Shared.Implied.Verbs.TryGetValue(account.Word(at), out var verb) && IsVerb(account, clause, at)
                && (ByTool(account, clause, at, verb.Plain) ?? ByThing(account, clause, at, verb.Plain) ?? ByMachine(account, clause, at, verb.Plain)) is { } operation)
            {
                return new(operation, verb.Form, false, at, at + 1);
            }
        }

        return null;
    }

    // "a cut", "the finish", "finished bore": no verb.
    private static bool IsVerb(Account account, Clause clause, int at)
    {
        var before = at > clause.First ? account.Word(at - 1) : "";
        return before is not ("the" or "a" or "an" or "of" or "per" or "no" or "this" or "that" or "each" or "my" or "its" or "first" or "last" or "one" or "clean" or "fine" or "good" or "nice")
            && (Determiners.Contains(account.Word(at + 1)) || account.QuantityAt(at + 1) is not null || (at + 1 < account.Tokens.Count && account.NameOf[at + 1] is not null) || account.Word(at) is "went" or "ran" or "put" || account.Word(at + 1) is "with" or "w" or "m" || (at + 1 < account.Tokens.Count && account.Word(at + 1) is [_, .., >= '0' and <= '9']) || IsBehindAThing(account, clause, at));
    }

    // "after bore opened from 1 3/16", "rim skimmed": the thing stands before its verb, and nothing behind it is its object.
    private static bool IsBehindAThing(Account account, Clause clause, int at) =>
        at > clause.First && account.Word(at - 1) is not ("depth" or "finish" or "clean") && Lexicon.Shared.Implied.Things.TryLongest(account.Tokens, at - 1, out _, out _) && Lexicon.Shared.Implied.Verbs[account.Word(at)].Form == VerbForm.Past && (at + 1 >= clause.Next || account.Word(at + 1) is "from" or "to" or "out" or "up" or "down" or "off" or "with" or "on" or "in" or "and" or "back" or "true");

    private static Id<Operation>? ByTool(Account account, Clause clause, int verb, string plain)
    {
        for (var at = verb + 1; at < Math.Min(clause.Next, verb + FarthestTool); at++)
        {
            if (Lexicon.Shared.Implied.Tools.TryLongest(account.Tokens, at, out var operation, out var length) && at + length <= clause.Next && (IsLed(account, clause, verb, at) || (Motions.Contains(plain) && at - verb <= 5 && IsPut(account, clause, at + length))))
            {
                return operation;
            }
        }

        return null;
    }

    // "with the big flat file": the preposition stands within a few words before the tool.
    private static bool IsLed(Account account, Clause clause, int verb, int tool)
    {
        for (var at = tool - 1; at > verb && at >= tool - 5 && at >= clause.First; at--)
        {
            if (With.Contains(account.Word(at)))
            {
                return true;
            }

            if (account.Word(at) is "and" or "to" or "for" or "in" or "of" or "from")
            {
                return false;
            }
        }

        return false;
    }

    private static bool IsPut(Account account, Clause clause, int behind) =>
        behind < clause.Next && (Ways.Contains(account.Word(behind)) || Ways.Contains(account.Word(behind + 1)));

    private static Id<Operation>? ByThing(Account account, Clause clause, int verb, string plain)
    {
        if (Empty.Contains(plain))
        {
            return null;
        }

        if (IsBehindAThing(account, clause, verb) && Lexicon.Shared.Implied.Things.TryLongest(account.Tokens, verb - 1, out var before, out _))
        {
            return before;
        }

        for (var at = verb + 1; at < Math.Min(clause.Next, verb + FarthestThing); at++)
        {
            if (account.NameOf[at] is null && Lexicon.Shared.Implied.Things.TryLongest(account.Tokens, at, out var operation, out var length) && at + length <= clause.Next)
            {
                return operation;
            }

            if (Ends.Contains(account.Word(at)) && !(TakesOff.Contains(plain) && account.Word(at) is "from" or "it"))
            {
                return null;
            }
        }

        return null;
    }

    private static Id<Operation>? ByMachine(Account account, Clause clause, int verb, string plain)
    {
        if (Empty.Contains(plain) || plain is "put" or "make" or "do" or "break" or "finish" or "open" or "clean" or "bring" or "knock" or "ease")
        {
            return null;
        }

        // "I had the lathe down at 140 and took ten thou cuts": the machine of the sentence cuts.
        var isCut = Enumerable.Range(verb, Math.Min(6, clause.Next - verb)).Any(at => account.Word(at) is "cuts" or "cut" or "pass" or "passes" or "skim");
        var first = isCut ? account.Clauses[Math.Max(0, clause.Index - 2)] is { } near && near.Sentence == clause.Sentence ? near.First : clause.First : verb + 1;
        for (var at = first; at < clause.Next; at++)
        {
            if (isCut && at < verb && Lexicon.Shared.Implied.Machines.TryLongest(account.Tokens, at, out var machine, out _))
            {
                return machine;
            }

            if (Lexicon.Shared.Implied.Machines.TryLongest(account.Tokens, at, out var operation, out _) && (account.Word(at - 1) is "on" or "in" || account.Word(at - 2) is "on" or "in"))
            {
                return operation;
            }
        }

        return null;
    }
}
