using Journal.Core.PlainWords.Clauses;
using Journal.Core.PlainWords.Tokens;

namespace Journal.Core.PlainWords.Facts;

/// <summary>The maker's own words, without what only joins one clause to the next.</summary>
internal static class Wording
{
    private static readonly HashSet<string> Leading = ["and", "so", "then", "but", "well", "because", "um", "er", "erm", "anyway", "right", "okay", "ok", "also", "now", "which", "that", "oh", "yes", "yeah", "uh", ",", "-", ":", ".", "…", "is", "was", "=", "next", "to", "the", "be", "(", ")", "*", "•", "i'll", "we'll", "it's", "will", "i"];
    private static readonly HashSet<string> Trailing = ["and", "so", "then", "but", "um", "er", "erm", "because", "which", ",", "-", ":", ".", "…", "the", "a", "that", "(", ")", "is", "was", "i", "right", "okay", "anyway", "tonight", "with", "to"];

    /// <summary>Whether a word only leads in.</summary>
    private static readonly HashSet<string> Plain = ["and", "so", "then", "but", "well", "because", "um", "er", "erm", "anyway", "right", "okay", "ok", "also", "now", "oh", "yes", "yeah", "uh", ",", "-", ":", ".", "…", "(", ")", "*", "•", "which", "that"];

    /// <summary>A sentence of the maker's: joining words at its ends are left out.</summary>
    public static (string Text, Span Words)? Of(Account account, int first, int next) => Trimmed(account, first, next, Plain);

    /// <summary>A thing or a step to come: “is to”, “I'll” and the like before it are left out too.</summary>
    public static (string Text, Span Words)? ThingOf(Account account, int first, int next) => Trimmed(account, first, next, Leading);

    private static (string Text, Span Words)? Trimmed(Account account, int first, int next, HashSet<string> leading)
    {
        while (first < next && (leading.Contains(account.Word(first)) || account.Tokens[first].Kind == TokenKind.Break))
        {
            first++;
        }

        while (next > first && (Trailing.Contains(account.Word(next - 1)) || account.Tokens[next - 1].Kind == TokenKind.Break))
        {
            next--;
        }

        return next > first ? (OneLine(account.TextOf(first, next)), account.SpanOf(first, next)) : null;
    }

    private static string OneLine(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
