using Journal.Core.PlainWords.Clauses;
using Journal.Core.PlainWords.Tokens;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Facts;

/// <summary>Finds tools that were used or bought and that the crib does not list: “with a wad punch”, “bought an edge finder”.</summary>
internal static class ToolNames
{
    private const int MostModifiers = 2;

    public static IReadOnlyList<ProposedText> New(Account account)
    {
        var found = new List<ProposedText>();
        var titles = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var clause in account.Clauses.Where(clause => clause.HasAny(Cue.Tool, Cue.NewTool) && (clause.IsTonight || clause is { IsPast: false, IsFuture: false, IsQuestion: false })))
        {
            foreach (var hit in clause.Hits.Where(hit => hit.Cue is Cue.Tool or Cue.NewTool && account.NameOf[hit.First] is null && (clause.IsReal(hit.First) || IsLent(account, hit.Next))))
            {
                if (FirstOf(account, clause, hit) is { } first && IsUsed(account, clause, hit, first) && !IsMissing(account, clause) && titles.Add(account.TextOf(first, hit.Next)))
                {
                    found.Add(new(account.TextOf(first, hit.Next), account.SpanOf(first, hit.Next)));
                }
            }
        }

        return found;
    }

    // The noun with the words before it that say which: "wad punch".
    private static int? FirstOf(Account account, Clause clause, CueHit hit)
    {
        var first = hit.First;
        while (first > clause.First && hit.First - first < MostModifiers && account.Tokens[first - 1].Kind == TokenKind.Word && !IsSmall(account, first - 1))
        {
            first--;
        }

        var isWhole = hit.Next >= clause.Next || !account.HasCueAt(hit.Next, Cue.Tool);
        return isWhole && (first < hit.First || hit.Cue == Cue.NewTool) ? first : null;
    }

    private static bool IsSmall(Account account, int at) => Lexicon.Shared.Ordinary.Contains(account.Word(at)) || account.QuantityAt(at) is not null;

    // "with a wad punch", "on a bit of plate glass", "I borrowed Derek's compressor", "a test bar Archie lent me".
    private static bool IsUsed(Account account, Clause clause, CueHit hit, int first)
    {
        for (var at = first - 1; at >= Math.Max(clause.First, first - 5); at--)
        {
            var word = account.Word(at);
            if (word is "with" or "used" or "using" or "bought" or "bt" or "borrowed" || (hit.Cue == Cue.NewTool && word is "on" or "w" or "setting" or "between"))
            {
                return true;
            }

            if (word is not ("a" or "an" or "the" or "new" or "my" or "some" or "bit" or "of" or "pair" or "sheet" or "piece" or "set" or "up" or "little" or "borrowed" or "old") && !word.EndsWith("'s", StringComparison.Ordinal))
            {
                break;
            }
        }

        return IsLent(account, hit.Next);
    }

    // "with a steady rest, and I don't own one".
    private static bool IsMissing(Account account, Clause clause) =>
        clause.Index + 1 < account.Clauses.Count && account.Clauses[clause.Index + 1] is var behind && behind.Sentence == clause.Sentence && behind.Has(Cue.Negation)
        && Enumerable.Range(behind.First, behind.Next - behind.First).Any(at => account.Word(at) is "own" or "got" or "one");

    // "… lent me", "… off Dave" right behind it.
    private static bool IsLent(Account account, int next)
    {
        const int Near = 9;
        for (var at = next; at < Math.Min(account.Tokens.Count, next + Near) && account.Tokens[at].Kind == TokenKind.Word; at++)
        {
            if (account.Word(at) is "lent" or "loaned" && account.Word(at + 1) is "me" or "us")
            {
                return true;
            }
        }

        return account.Word(next) == "off" && next + 1 < account.Tokens.Count && account.Tokens[next + 1].IsCapital;
    }
}
