namespace Journal.Core.PlainWords.Tokens;

/// <summary>
/// Takes an account apart into words, numbers and signs, in one pass. A hyphen between letters joins nothing: “four-jaw” is two
/// words, as in “four jaw”; between or before figures it stays a sign.
/// </summary>
internal static class Tokenizer
{
    /// <summary>Longer than any word: what is longer is nobody's, and is not put into lower case.</summary>
    private const int LongestWord = 48;

    /// <summary>“EN3”, “H7”: a code of letters and figures is no longer.</summary>
    private const int LongestCode = 4;

    /// <summary>“PT12H45M”.</summary>
    private const int LongestDuration = 9;

    /// <summary>Sounds that mean nothing (from memory).</summary>
    private static readonly HashSet<string> Hesitations = ["um", "er", "erm", "uh", "uhm", "umm", "hmm", "ah", "ahem", "uhh", "ehm"];

    private static readonly HashSet<string> Pronouns = ["it", "that", "he", "she", "there", "here", "what", "who", "where", "let", "how", "when", "someone", "somebody", "today", "tonight", "week", "month", "year", "dad", "mate", "friend", "neighbour", "club", "evening"];

    private const string VulgarFractions = "½¼¾⅛⅜⅝⅞⅓⅔";

    public static List<Token> Tokens(string text)
    {
        var tokens = new List<Token>(text.Length / 5 + 4);
        var at = 0;
        var glued = false;
        while (at < text.Length)
        {
            var start = at;
            var kind = Take(text, ref at);
            if (kind is null)
            {
                glued = false;
                continue;
            }

            var isHyphen = kind == TokenKind.Mark && text[start] is '-' or '\u2010' or '\u2011';
            if (isHyphen && tokens.Count > 0 && glued && at < text.Length && char.IsLetter(text[at]) && tokens[^1].Kind != TokenKind.Mark)
            {
                continue;
            }

            var written = TextOf(text, start, at);
            if (kind == TokenKind.Word && Hesitations.Contains(written))
            {
                continue;
            }

            var cut = kind == TokenKind.Word ? ContractionAt(written) : -1;
            if (cut > 0)
            {
                tokens.Add(new(start, start + cut, written[..cut], kind.Value, glued, char.IsUpper(text[start])));
                tokens.Add(new(start + cut, at, "'s", kind.Value, true, false));
            }
            else
            {
                tokens.Add(new(start, at, written, kind.Value, glued, char.IsUpper(text[start])));
            }

            glued = true;
        }

        return Joined(tokens);
    }

    /// <summary>A line that was broken for width goes on: its end is white space. A short line ends there, and so does one before a capital or a list mark.</summary>
    private static List<Token> Joined(List<Token> tokens)
    {
        const int Wide = 45;
        var kept = new List<Token>(tokens.Count);
        var lineStart = 0;
        for (var at = 0; at < tokens.Count; at++)
        {
            var token = tokens[at];
            if (token.Kind != TokenKind.Break)
            {
                kept.Add(token);
                continue;
            }

            var isWrapped = token.Start - lineStart >= Wide && at + 1 < tokens.Count && tokens[at + 1] is { IsCapital: false, Kind: TokenKind.Word or TokenKind.Number } && tokens[at - 1] is { Kind: not TokenKind.Break, Text: not ("." or "!" or "?" or ":" or ";") };
            lineStart = token.End;
            if (!isWrapped)
            {
                kept.Add(token);
            }
        }

        return kept;
    }

    /// <summary>Where “'s” begins behind a noun: “the bore's”; not in “it's” and the like, which are words of their own.</summary>
    private static int ContractionAt(string word) =>
        word.Length > 3 && word.EndsWith("'s", StringComparison.Ordinal) && !Pronouns.Contains(word[..^2]) ? word.Length - 2 : -1;

    private static string TextOf(string text, int start, int end)
    {
        if (end - start > LongestWord)
        {
            return "…";
        }

        var lower = text[start..end].ToLowerInvariant();
        return lower.Replace('’', '\'').Replace('‘', '\'').Replace('–', '-').Replace('—', '-').Replace("μ", "µ", StringComparison.Ordinal)
            .Replace(",", lower.Length > 1 && IsThousands(lower) ? "" : lower.Length > 1 ? "." : ",", StringComparison.Ordinal);
    }

    private static bool IsThousands(string number) => number.Length - number.IndexOf(',', StringComparison.Ordinal) == 4 && number[0] != '0';

    /// <summary>Goes over the next token; null over white space.</summary>
    private static TokenKind? Take(string text, ref int at)
    {
        var first = text[at];
        if (first == '\n')
        {
            at++;
            return TokenKind.Break;
        }

        if (char.IsWhiteSpace(first) || char.IsControl(first))
        {
            at++;
            return null;
        }

        if (char.IsAsciiDigit(first) || (first == '.' && at + 1 < text.Length && char.IsAsciiDigit(text[at + 1]) && (at == 0 || !char.IsLetterOrDigit(text[at - 1]))))
        {
            TakeNumber(text, ref at);
            return TokenKind.Number;
        }

        if (VulgarFractions.Contains(first, StringComparison.Ordinal))
        {
            at++;
            return TokenKind.Number;
        }

        if (char.IsLetter(first) || first == 'µ')
        {
            TakeWord(text, ref at);
            return TokenKind.Word;
        }

        at += char.IsHighSurrogate(first) && at + 1 < text.Length && char.IsLowSurrogate(text[at + 1]) ? 2 : 1;
        return TokenKind.Mark;
    }

    private static void TakeNumber(string text, ref int at)
    {
        var digits = 0;
        while (at < text.Length)
        {
            var isThousands = text[at] == ',' && digits is > 0 and < 4 && at + 3 < text.Length && AreDigits(text, at + 1, 3) && !IsDigit(text, at + 4);
            var isComma = text[at] == ',' && digits > 0 && !isThousands && IsDigit(text, at + 1) && IsDecimalComma(text, at);
            var isPoint = (text[at] == '.' && IsDigit(text, at + 1)) || isComma;
            if (!char.IsAsciiDigit(text[at]) && !isThousands && !isPoint)
            {
                return;
            }

            digits = isThousands ? 1 : digits + 1;
            at++;
        }
    }

    // "1,5 h" and "24,11": one or two figures behind it, or more behind a nought.
    private static bool IsDecimalComma(string text, int at)
    {
        var behind = 1;
        while (behind < 7 && IsDigit(text, at + behind))
        {
            behind++;
        }

        var isNought = text[at - 1] == '0' && (at == 1 || !IsDigit(text, at - 2));
        return behind - 1 <= 2 || isNought;
    }

    private static void TakeWord(string text, ref int at)
    {
        var start = at;
        while (at < text.Length)
        {
            var isApostrophe = text[at] is '\'' or '’' && at + 1 < text.Length && char.IsLetter(text[at + 1]);
            var isMark = char.GetUnicodeCategory(text[at]) == System.Globalization.UnicodeCategory.NonSpacingMark;
            if (!char.IsLetter(text[at]) && !isApostrophe && !isMark)
            {
                // "M6", "H7", "EN3": a letter before figures is one word; "h" and "m" behind a number are units, "2h45".
                var isCode = char.IsAsciiDigit(text[at]) && at - start <= (text[start] is 'P' or 'p' ? LongestDuration : LongestCode) && (start == 0 || !char.IsAsciiDigit(text[start - 1]));
                if (!isCode)
                {
                    return;
                }
            }

            at++;
        }
    }

    private static bool AreDigits(string text, int at, int count)
    {
        for (var i = 0; i < count; i++)
        {
            if (!IsDigit(text, at + i))
            {
                return false;
            }
        }

        return true;
    }

    private static bool IsDigit(string text, int at) => at < text.Length && char.IsAsciiDigit(text[at]);
}
