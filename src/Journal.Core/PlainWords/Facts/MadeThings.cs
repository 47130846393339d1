using Journal.Core.PlainWords.Clauses;
using Journal.Core.PlainWords.Tokens;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Facts;

/// <summary>A tool, jig or fixture that a clause says was made.</summary>
internal sealed record MadeThing(string Title, string Kind);

/// <summary>Finds what was made for the work: “made a split bush”, “knocked up a drill jig”, “first a drilling jig for the stud holes”.</summary>
internal static class MadeThings
{
    private const int FarthestNoun = 6;
    private static readonly HashSet<string> Articles = ["a", "an", "the", "another", "two", "some", "little", "wee", "small", "new", "simple", "quick", "rough", "its", "my", "bit", "of"];
    private static readonly HashSet<string> Ends = ["for", "from", "to", "out", "in", "on", "with", "so", "that", "of", "because", "by"];

    public static MadeThing? In(Account account, Clause clause)
    {
        foreach (var hit in clause.Hits)
        {
            if (hit.Cue == Cue.Made && clause.IsReal(hit.First) && account.Word(hit.First - 1) is not ("ready" or "was" or "is" or "be") && Behind(account, clause, hit.Next) is { } thing)
            {
                return thing;
            }
        }

        // "Lap took me 25 to make first": the thing heads the clause.
        if (clause.IsTonight && Enumerable.Range(clause.First, clause.Next - clause.First - 1).Any(at => account.Word(at) == "to" && account.Word(at + 1) == "make") && clause.Quantities.Exists(quantity => quantity.Kind == UnitKind.Time))
        {
            var head = clause.Hits.Find(hit => hit.Cue is Cue.Jig or Cue.Fixture or Cue.Tool && hit.First - clause.First <= 3);
            if (head.Next > 0)
            {
                return new(account.TextOf(clause.First, head.Next), head.Cue switch { Cue.Jig => "jig", Cue.Fixture => "fixture", _ => "tool" });
            }
        }

        // Without a verb, as in notes: a jig that heads the clause and has its time.
        return clause.IsTonight && clause.Operations.Count == 0 && clause.FirstOf(Cue.Jig) is not null && clause.Quantities.Exists(quantity => quantity.Kind == UnitKind.Time) && clause.IsReal(clause.FirstOf(Cue.Jig)!.Value.First) && !clause.Has(Cue.Using)
            ? Behind(account, clause, clause.First)
            : null;
    }

    private static MadeThing? Behind(Account account, Clause clause, int first)
    {
        while (first < clause.Next && account.Word(first) is "first" or "then" or "myself" or "me" or "up" or "also" or "evening" or "this" or "steam")
        {
            first++;
        }

        var isLed = Articles.Contains(account.Word(first));
        while (first < clause.Next && Articles.Contains(account.Word(first)))
        {
            first++;
        }

        if (!isLed)
        {
            return null;
        }

        for (var at = first; at < Math.Min(clause.Next, first + FarthestNoun) && !Ends.Contains(account.Word(at)); at++)
        {
            foreach (var hit in account.CuesAt(at))
            {
                var kind = hit.Cue switch { Cue.Jig => "jig", Cue.Fixture => "fixture", Cue.Tool => "tool", _ => null };
                if (kind is not null && account.NameOf[at] is not { IsPart: true } && IsLast(account, clause, hit.Next))
                {
                    return new(account.TextOf(first, hit.Next), kind);
                }
            }
        }

        return null;
    }

    private static bool IsLast(Account account, Clause clause, int at) =>
        at >= clause.Next || account.Tokens[at].Kind != TokenKind.Word || Ends.Contains(account.Word(at)) || account.Word(at) is "first" or "up" or "too" or "tonight" or "today" or "and" or "as" or "a" or "an" or "that" or "which" or "then" or "myself" or "over" || account.QuantityAt(at) is not null;
}
