using System.Globalization;
using Journal.Core.PlainWords.Tokens;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Quantities;

/// <summary>A number as said or written.</summary>
/// <param name="Value">Its value, with the decimals said.</param>
/// <param name="First">Its first token.</param>
/// <param name="Next">The token behind it.</param>
/// <param name="IsFraction">Whether a fraction was said: “five eighths”, “two and a half”.</param>
internal readonly record struct NumberPhrase(decimal Value, int First, int Next, bool IsFraction)
{
    public bool IsWhole => Value == decimal.Truncate(Value);
}

/// <summary>
/// Numbers in words and figures: “two hundred and forty-two”, “12.01”, “twelve point oh one”, “two and a half”, “1 1/2”, “five
/// eighths”. The words are those of Unicode CLDR's spelled-out numbers for English, with the shop's “oh” and “nought”.
/// </summary>
internal static class NumberGrammar
{
    private const int MostDigits = 12;
    private static readonly NumberWords Words = Lexicon.Shared.Numbers;

    public static bool TryNumber(IReadOnlyList<Token> tokens, int at, out NumberPhrase number)
    {
        number = default;
        if (at >= tokens.Count)
        {
            return false;
        }

        return tokens[at].Kind switch
        {
            TokenKind.Number => TryFigures(tokens, at, out number),
            TokenKind.Word => TrySpoken(tokens, at, out number),
            _ => false,
        };
    }

    /// <summary>A whole number below a hundred, in words or figures, and nothing behind it: what a clock's figures are made of.</summary>
    public static bool TrySmall(IReadOnlyList<Token> tokens, int at, out int value, out int next)
    {
        (value, next) = (0, at);
        if (at < tokens.Count && tokens[at].Kind == TokenKind.Number)
        {
            next = at + 1;
            return int.TryParse(tokens[at].Text, NumberStyles.None, CultureInfo.InvariantCulture, out value) && value < 100;
        }

        return TryBelowHundred(tokens, ref next, out value);
    }

    private static bool TryFigures(IReadOnlyList<Token> tokens, int at, out NumberPhrase number)
    {
        number = default;
        if (!TryDigits(tokens[at].Text, out var value, out var isVulgar))
        {
            return false;
        }

        var next = at + 1;
        if (isVulgar)
        {
            number = new(value, at, next, true);
            return true;
        }

        if (TryDenominator(tokens, next, out var below))
        {
            number = new(value / below, at, next + 2, true);
            return true;
        }

        if (TryMixed(tokens, next, out var part, out var behind))
        {
            number = new(value + part, at, behind, true);
            return true;
        }

        while (next < tokens.Count && Words.Scales.TryGetValue(tokens[next].Text, out var scale) && value < 1_000_000)
        {
            value *= scale;
            next++;
        }

        number = WithFraction(tokens, value, at, next);
        return true;
    }

    private static bool TryDigits(string text, out decimal value, out bool isVulgar)
    {
        isVulgar = false;
        if (text.Length == 1 && "½¼¾⅛⅜⅝⅞⅓⅔".IndexOf(text[0], StringComparison.Ordinal) is >= 0 and var vulgar)
        {
            ReadOnlySpan<decimal> values = [0.5m, 0.25m, 0.75m, 0.125m, 0.375m, 0.625m, 0.875m, 1m / 3, 2m / 3];
            (value, isVulgar) = (values[vulgar], true);
            return true;
        }

        value = 0;
        return text.Length <= MostDigits && decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out value);
    }

    // "/8" behind a numerator.
    private static bool TryDenominator(IReadOnlyList<Token> tokens, int at, out int below)
    {
        below = 0;
        return at + 1 < tokens.Count && tokens[at].Text == "/" && tokens[at].IsGlued && tokens[at + 1].IsGlued
            && int.TryParse(tokens[at + 1].Text, NumberStyles.None, CultureInfo.InvariantCulture, out below) && below is > 1 and <= 128;
    }

    // "1 1/2", "1-1/2", "1½".
    private static bool TryMixed(IReadOnlyList<Token> tokens, int at, out decimal part, out int next)
    {
        (part, next) = (0, at);
        if (at < tokens.Count && tokens[at].Text == "-" && tokens[at].IsGlued)
        {
            at++;
        }

        if (at >= tokens.Count || tokens[at].Kind != TokenKind.Number || !TryDigits(tokens[at].Text, out part, out var isVulgar))
        {
            return false;
        }

        next = at + 1;
        if (isVulgar)
        {
            return true;
        }

        if (!TryDenominator(tokens, next, out var below))
        {
            return false;
        }

        (part, next) = (part / below, next + 2);
        return part < 1;
    }

    private static bool TrySpoken(IReadOnlyList<Token> tokens, int at, out NumberPhrase number)
    {
        number = default;
        var next = at;
        if (IsPoint(tokens, at, out var decimals, out var behind))
        {
            number = new(decimals, at, behind, false);
            return true;
        }

        if (tokens[at].Text is "a" or "an" && TryFraction(tokens, at + 1, 1, out var lone, out behind))
        {
            number = new(lone, at, behind, true);
            return true;
        }

        if (TryFraction(tokens, at, 1, out lone, out behind))
        {
            number = new(lone, at, behind, true);
            return true;
        }

        if (!TryCardinal(tokens, ref next, out var value))
        {
            return false;
        }

        if (IsPoint(tokens, next, out decimals, out behind))
        {
            number = new(value + decimals, at, behind, false);
            return true;
        }

        if (value < 128 && TryFraction(tokens, next, value, out var fraction, out behind))
        {
            number = new(fraction, at, behind, true);
            return true;
        }

        number = WithFraction(tokens, value, at, next);
        return true;
    }

    // "and a half", "and three quarters", "and 1/2".
    private static NumberPhrase WithFraction(IReadOnlyList<Token> tokens, decimal value, int first, int next) =>
        TryAndFraction(tokens, next, out var part, out var behind, isBehindUnit: false) ? new(value + part, first, behind, true) : new(value, first, next, false);

    /// <summary>“and a half”, “and three quarters”, “and 1/4” behind a number or a unit; less than one.</summary>
    /// <param name="tokens">The account.</param>
    /// <param name="at">Where “and” may stand.</param>
    /// <param name="part">The fraction.</param>
    /// <param name="next">The token behind it.</param>
    /// <param name="isBehindUnit">Whether a unit was said before: then a fraction with a unit of its own is another quantity.</param>
    public static bool TryAndFraction(IReadOnlyList<Token> tokens, int at, out decimal part, out int next, bool isBehindUnit = true)
    {
        (part, next) = (0, at);
        if (at >= tokens.Count || tokens[at].Text is not ("and" or "&" or "n"))
        {
            return false;
        }

        if (at + 1 < tokens.Count && TryNumber(tokens, at + 1, out var fraction) && fraction is { IsFraction: true, Value: < 1 }
            && !(fraction.Next + 1 < tokens.Count && tokens[fraction.Next].Text == "of" && tokens[fraction.Next + 1].Text is "a" or "an")
            && (fraction.Next >= tokens.Count || tokens[fraction.Next].Text is not ("an" or "a" or "past"))
            && (fraction.Next >= tokens.Count || !isBehindUnit || tokens[fraction.Next].Text is not ("hour" or "inch" or "inches" or "mm" or "thou")))
        {
            (part, next) = (fraction.Value, fraction.Next);
            return true;
        }

        return false;
    }

    // "half", "three quarters", "five thirty-seconds"; the numerator has been read.
    private static bool TryFraction(IReadOnlyList<Token> tokens, int at, decimal numerator, out decimal value, out int next)
    {
        (value, next) = (0, at);
        if (at >= tokens.Count)
        {
            return false;
        }

        if (Words.Fractions.TryGetValue(tokens[at].Text, out var below))
        {
            (value, next) = (numerator / below, at + 1);
            return true;
        }

        var is32 = tokens[at].Text == "thirty" && at + 1 < tokens.Count && tokens[at + 1].Text is "second" or "seconds";
        var is64 = tokens[at].Text == "sixty" && at + 1 < tokens.Count && tokens[at + 1].Text is "fourth" or "fourths";
        if (at + 1 < tokens.Count && (is32 || is64))
        {
            (value, next) = (numerator / (is32 ? 32 : 64), at + 2);
            return true;
        }

        return false;
    }

    // "point oh two", "point seven five oh three"; also "point two five".
    private static bool IsPoint(IReadOnlyList<Token> tokens, int at, out decimal decimals, out int next)
    {
        (decimals, next) = (0, at);
        if (at + 1 >= tokens.Count || tokens[at].Text is not ("point" or "comma"))
        {
            return false;
        }

        var digits = "";
        for (next = at + 1; next < tokens.Count && digits.Length < MostDigits; next++)
        {
            var text = tokens[next].Text is "o" or "double" ? "oh" : tokens[next].Text;
            if (Words.Ones.TryGetValue(text, out var one))
            {
                digits += one.ToString(CultureInfo.InvariantCulture);
            }
            else if (Words.Teens.TryGetValue(text, out var teen))
            {
                digits += teen.ToString(CultureInfo.InvariantCulture);
            }
            else if (Words.Tens.TryGetValue(text, out var tens))
            {
                // "point twenty five" is 0.25.
                var below = next + 1 < tokens.Count && Words.Ones.TryGetValue(tokens[next + 1].Text, out var unit) && unit > 0 ? unit : 0;
                next += below > 0 ? 1 : 0;
                digits += (tens + below).ToString(CultureInfo.InvariantCulture);
            }
            else if (tokens[next].Kind == TokenKind.Number && tokens[next].Text.All(char.IsAsciiDigit) && tokens[next].Text.Length <= 6)
            {
                digits += tokens[next].Text;
            }
            else
            {
                break;
            }
        }

        return digits.Length > 0 && decimal.TryParse("0." + digits, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimals);
    }

    /// <summary>A cardinal number: “three hundred and twenty”, “fourteen hundred”, “ten thousand”.</summary>
    private static bool TryCardinal(IReadOnlyList<Token> tokens, ref int next, out decimal value)
    {
        value = 0;
        var start = next;
        decimal group = 0;
        var hasGroup = false;
        var mayAnd = false;
        var most = 100;
        while (next < tokens.Count)
        {
            var text = tokens[next].Text;
            if (text == "and" && mayAnd && next + 1 < tokens.Count && IsSmallWord(tokens[next + 1].Text) && !FractionFollows(tokens, next + 1))
            {
                next++;
                continue;
            }

            if (text == "," && mayAnd && next + 1 < tokens.Count && IsSmallWord(tokens[next + 1].Text))
            {
                break;
            }

            if (text is "hundred" && !hasGroup && value == 0 && next == start && next + 1 < tokens.Count && tokens[next + 1].Text == "and" && next + 2 < tokens.Count && IsSmallWord(tokens[next + 2].Text))
            {
                (group, hasGroup) = (1, true);
            }

            if (text is "a" && !hasGroup && value == 0 && next + 1 < tokens.Count && Words.Scales.ContainsKey(tokens[next + 1].Text))
            {
                (group, hasGroup, next) = (1, true, next + 1);
                continue;
            }

            if (Words.Scales.TryGetValue(text, out var scale) && (hasGroup || value > 0))
            {
                if (scale == 100 && group is > 0 and < 100)
                {
                    group *= 100;
                    most = 100;
                }
                else if (scale == 1000 && group is > 0 and < 1000 && value == 0)
                {
                    (value, group, hasGroup, most) = (group * 1000, 0, false, 1000);
                }
                else
                {
                    break;
                }

                mayAnd = true;
                next++;
                continue;
            }

            var before = next;
            if (most > 0 && (group == 0 || group % 100 == 0) && (!hasGroup || mayAnd) && TryBelowHundred(tokens, ref next, out var small))
            {
                // "and" before it was taken; a zero stands alone.
                if (small == 0 && (hasGroup || value > 0))
                {
                    next = before;
                    break;
                }

                (group, hasGroup, mayAnd) = (group + small, true, false);
                if (small == 0)
                {
                    break;
                }

                continue;
            }

            break;
        }

        // "two hundred and" takes no "and" that nothing follows.
        value += group;
        return next > start && (hasGroup || value > 0);
    }

    private static bool FractionFollows(IReadOnlyList<Token> tokens, int at)
    {
        var next = at;
        return TryBelowHundred(tokens, ref next, out var small) && TryFraction(tokens, next, small, out _, out _);
    }

    private static bool IsSmallWord(string text) => Words.Ones.ContainsKey(text) || Words.Teens.ContainsKey(text) || Words.Tens.ContainsKey(text);

    private static bool TryBelowHundred(IReadOnlyList<Token> tokens, ref int next, out int value)
    {
        value = 0;
        if (next >= tokens.Count)
        {
            return false;
        }

        var text = tokens[next].Text;
        if (Words.Tens.TryGetValue(text, out value))
        {
            next++;
            if (next < tokens.Count && Words.Ones.TryGetValue(tokens[next].Text, out var one) && one > 0)
            {
                value += one;
                next++;
            }

            return true;
        }

        if (Words.Teens.TryGetValue(text, out value) || (text != "oh" && Words.Ones.TryGetValue(text, out value)))
        {
            next++;
            return true;
        }

        return false;
    }
}
