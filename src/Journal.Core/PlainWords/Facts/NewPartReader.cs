using Journal.Core.PlainWords.Clauses;
using Journal.Core.PlainWords.Tokens;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Facts;

/// <summary>Reads parts that the build does not list, where the maker says so: “turned a gland nut, not drawn anywhere”, “… isn't on my parts list”.</summary>
internal static class NewPartReader
{
    private const int FarthestNoun = 28;
    private const int LongestName = 3;
    private static readonly HashSet<string> Ends = ["for", "from", "to", "out", "in", "on", "with", "so", "that", "of", "because", "by", "too", "tonight", "today", "which", "isn't", "aren't", "is", "are", "was", "and", "as", "at", "off", "also", "now", "first", "up", "wasn't", "not", "itself"];

    public static IReadOnlyList<ProposedText> Read(Account account)
    {
        var found = new List<ProposedText>();
        foreach (var clause in account.Clauses.Where(clause => !clause.IsOthers && clause.Has(Cue.NotListed)))
        {
            var hit = clause.FirstOf(Cue.NotListed)!.Value;
            foreach (var (first, next) in Nouns(account, clause, hit.First))
            {
                var text = account.TextOf(first, next);
                if (!found.Exists(part => string.Equals(part.Text, text, StringComparison.OrdinalIgnoreCase)))
                {
                    found.Add(new(text, account.SpanOf(first, next)));
                }
            }
        }

        return found;
    }

    // The subject of the clause, else what was worked on last before it.
    private static List<(int First, int Next)> Nouns(Account account, Clause clause, int before)
    {
        var subjects = new List<(int First, int Next)>();
        for (var at = clause.First; at < before; at++)
        {
            if (account.Word(at) is "the" or "a" or "an" && Noun(account, at + 1, before) is { } noun && (at == clause.First || account.Word(at - 1) is "and" || subjects.Count == 0 && at - clause.First <= 1))
            {
                subjects.Add(noun);
            }
        }

        if (subjects.Count > 0)
        {
            return subjects;
        }

        for (var at = before - 1; at >= Math.Max(0, before - FarthestNoun); at--)
        {
            var isWorked = account.Word(at) is "a" or "an" or "the" && (account.OperationEnding(at) || account.Word(at - 1) is "made" or "drew" or "drawing" or "moved" or "turned" or "cut" or "fitted" or "finished" or "bored");
            if (isWorked && Noun(account, at + 1, before) is { } noun)
            {
                return [noun];
            }
        }

        return [];
    }

    private static (int First, int Next)? Noun(Account account, int first, int before)
    {
        var next = first;
        while (next < before && next - first < LongestName && account.Tokens[next].Kind == TokenKind.Word && !Ends.Contains(account.Word(next)) && account.QuantityAt(next) is null)
        {
            next++;
        }

        var isKnown = Enumerable.Range(first, Math.Max(0, next - first)).Any(at => account.NameOf[at] is { IsPart: true } name && name.First == first && name.Next >= next);
        return next > first && !isKnown ? (first, next) : null;
    }
}
