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
        foreach (var clause in account.Clauses.Where(clause => clause.IsTonight && clause.HasAny(Cue.Tool, Cue.NewTool)))
        {
            foreach (var hit in clause.Hits.Where(hit => hit.Cue is Cue.Tool or Cue.NewTool && account.NameOf[hit.First] is null && clause.IsReal(hit.First)))
            {
                if (FirstOf(account, clause, hit) is { } first && IsUsed(account, clause, first) && titles.Add(account.TextOf(first, hit.Next)))
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

    private static bool IsUsed(Account account, Clause clause, int first)
    {
        for (var at = first - 1; at >= Math.Max(clause.First, first - 3); at--)
        {
            if (account.Word(at) is "with" or "used" or "using" or "bought" or "bt" or "borrowed")
            {
                return true;
            }

            if (account.Word(at) is not ("a" or "an" or "the" or "new" or "my" or "some"))
            {
                break;
            }
        }

        return false;
    }
}
