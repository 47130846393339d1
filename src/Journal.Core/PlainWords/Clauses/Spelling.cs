using Journal.Core.PlainWords.Names;
using Journal.Core.PlainWords.Tokens;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Clauses;

/// <summary>What clipped words stand for, and which known name or verb a slip was meant for.</summary>
internal static class Spelling
{
    public static void Mend(List<Token> tokens, NameIndex names)
    {
        var lexicon = Lexicon.Shared;
        var known = new Dictionary<string, string>(StringComparer.Ordinal);
        for (var at = 0; at < tokens.Count; at++)
        {
            var token = tokens[at];
            if (token.Kind == TokenKind.Number)
            {
                token.Meant = NumberNames.InWords(token.Text) is var word && names.Words.Contains(word) ? word : token.Text;
            }
            else if (token.Text == "no" && IsOfANumber(tokens, at))
            {
                token.Meant = "number";
            }
            else if (token.Kind == TokenKind.Word)
            {
                if (!known.TryGetValue(token.Text, out var meant))
                {
                    known[token.Text] = meant = MeantBy(token.Text, names, lexicon);
                }

                token.Meant = meant;
            }
        }
    }

    // "no 1", "no. 2": which one, not a denial.
    private static bool IsOfANumber(List<Token> tokens, int at)
    {
        var next = at + 1 < tokens.Count && tokens[at + 1] is { Text: ".", IsGlued: true } ? at + 2 : at + 1;
        return next < tokens.Count && tokens[next] is { Kind: TokenKind.Number, Text.Length: <= 2 } && (at == 0 || tokens[at - 1].Kind != TokenKind.Mark || next > at + 1);
    }

    private static string MeantBy(string written, NameIndex names, Lexicon lexicon)
    {
        if (names.IsWhole(written))
        {
            return written;
        }

        if (lexicon.Short.TryGetValue(written, out var whole))
        {
            return whole;
        }

        if (names.Words.Contains(written))
        {
            return written;
        }

        return lexicon.Ordinary.Contains(written) ? written : names.Slips.Nearest(written) ?? lexicon.VerbSlips.Nearest(written) ?? written;
    }
}
