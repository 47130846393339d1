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
        foreach (var token in tokens)
        {
            if (token.Kind == TokenKind.Number)
            {
                token.Meant = NumberNames.InWords(token.Text) is var word && names.Words.Contains(word) ? word : token.Text;
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

    private static string MeantBy(string written, NameIndex names, Lexicon lexicon)
    {
        if (names.Words.Contains(written))
        {
            return written;
        }

        if (lexicon.Short.TryGetValue(written, out var whole))
        {
            return whole;
        }

        return lexicon.Ordinary.Contains(written) ? written : names.Slips.Nearest(written) ?? lexicon.VerbSlips.Nearest(written) ?? written;
    }
}
