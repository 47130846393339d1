using System.Globalization;
using Journal.Core.PlainWords.Tokens;

namespace Journal.Core.PlainWords.Quantities;

/// <summary>What “half nine” means where the maker lives.</summary>
internal enum HalfHour
{
    /// <summary>Half past nine, as in Britain and Ireland (common practice).</summary>
    Past,

    /// <summary>Not sure: to neighbours of English it is half an hour before nine.</summary>
    Unsure,
}

/// <summary>A time by the clock.</summary>
/// <param name="Minute">Minutes from midnight.</param>
/// <param name="Next">The token behind it.</param>
/// <param name="IsMarked">Whether the words can only mean a clock: “half six”, “7:30”, “nine o'clock”.</param>
/// <param name="IsWholeDay">Whether the hour was said by the clock of 24 hours, or with am or pm.</param>
/// <param name="IsHalf">Whether it was said as “half nine”.</param>
/// <param name="IsDotted">Whether it was written with a dot: “7.15”.</param>
internal readonly record struct ClockPoint(int Minute, int Next, bool IsMarked, bool IsWholeDay, bool IsHalf, bool IsDotted = false);

/// <summary>Times by the clock: “half six”, “twenty past seven”, “7.30”, “quarter to ten”, “19:10”.</summary>
internal static class ClockGrammar
{
    public const int HalfDay = 12 * 60;

    public static bool TryPoint(IReadOnlyList<Token> tokens, int at, out ClockPoint point)
    {
        if (!TryUnmarked(tokens, at, out point))
        {
            return false;
        }

        return true;
    }

    private static bool TryUnmarked(IReadOnlyList<Token> tokens, int at, out ClockPoint point)
    {
        point = default;
        if (at >= tokens.Count)
        {
            return false;
        }

        if (tokens[at].Text is "noon" or "midday" or "midnight")
        {
            point = new(tokens[at].Text == "midnight" ? 24 * 60 : HalfDay, at + 1, true, true, false);
            return true;
        }

        return TryHalf(tokens, at, out point) || TryPastOrTo(tokens, at, out point) || TryFigures(tokens, at, out point) || TryHour(tokens, at, out point);
    }

    // "half six", "half past six".
    private static bool TryHalf(IReadOnlyList<Token> tokens, int at, out ClockPoint point)
    {
        point = default;
        if (tokens[at].Text != "half")
        {
            return false;
        }

        var isPast = at + 1 < tokens.Count && tokens[at + 1].Text is "past" or "after";
        var hourAt = at + 1 < tokens.Count && isPast ? at + 2 : at + 1;
        if (!NumberGrammar.TrySmall(tokens, hourAt, out var hour, out var next) || hour is < 1 or > 12)
        {
            return false;
        }

        point = Ended(tokens, hour * 60 + 30, next, true, false) with { IsHalf = !isPast };
        return true;
    }

    // "quarter past seven", "twenty to ten", "ten minutes to nine", "a quarter to ten".
    private static bool TryPastOrTo(IReadOnlyList<Token> tokens, int at, out ClockPoint point)
    {
        point = default;
        if (tokens[at].Text == "a")
        {
            at++;
        }

        int minutes, next;
        if (at < tokens.Count && tokens[at].Text == "quarter")
        {
            (minutes, next) = (15, at + 1);
        }
        else if (!NumberGrammar.TrySmall(tokens, at, out minutes, out next) || minutes is < 1 or > 29)
        {
            return false;
        }

        if (next < tokens.Count && tokens[next].Text is "minutes" or "mins" or "min")
        {
            next++;
        }

        if (next >= tokens.Count || tokens[next].Text is not ("past" or "to" or "before" or "after" or "till" or "of") || !NumberGrammar.TrySmall(tokens, next + 1, out var hour, out var behind) || hour is < 1 or > 12)
        {
            return false;
        }

        var isPast = tokens[next].Text is "past" or "after";
        var isRoundMinute = isPast || minutes % 5 == 0;
        point = Ended(tokens, isPast ? hour * 60 + minutes : hour * 60 - minutes, behind, isRoundMinute, false);
        return isRoundMinute;
    }

    // "7:30", "19:10", "7.30".
    private static bool TryFigures(IReadOnlyList<Token> tokens, int at, out ClockPoint point)
    {
        point = default;
        if (tokens[at].Kind != TokenKind.Number)
        {
            return false;
        }

        if (at + 2 < tokens.Count && tokens[at + 1].Text is ":" && tokens[at + 1].IsGlued && tokens[at + 2] is { IsGlued: true, Text.Length: 2 }
            && NumberGrammar.TrySmall(tokens, at, out var hour, out _) && NumberGrammar.TrySmall(tokens, at + 2, out var minute, out var next) && hour <= 24 && minute < 60)
        {
            point = Ended(tokens, hour * 60 + minute, next, true, hour > 12 || tokens[at].Text.Length == 2 && tokens[at].Text[0] == '0');
            return true;
        }

        var text = tokens[at].Text;
        var dot = text.IndexOf('.', StringComparison.Ordinal);
        if (dot > 0 && text.Length == dot + 3 && int.TryParse(text[..dot], NumberStyles.None, CultureInfo.InvariantCulture, out hour)
            && int.TryParse(text[(dot + 1)..], NumberStyles.None, CultureInfo.InvariantCulture, out minute) && hour is > 0 and <= 24 && minute < 60)
        {
            point = Ended(tokens, hour * 60 + minute, at + 1, false, hour > 12) with { IsDotted = minute % 5 == 0 };
            return true;
        }

        if (text.Length == 4 && text.All(char.IsAsciiDigit))
        {
            var clock = int.Parse(text, CultureInfo.InvariantCulture);
            if (clock / 100 is >= 6 and <= 24 && clock % 100 < 60 && clock % 5 == 0)
            {
                point = Ended(tokens, clock / 100 * 60 + clock % 100, at + 1, false, true);
                return true;
            }
        }

        return false;
    }

    // "seven", "seven thirty", "nine o'clock", "7pm".
    private static bool TryHour(IReadOnlyList<Token> tokens, int at, out ClockPoint point)
    {
        point = default;
        if (!NumberGrammar.TrySmall(tokens, at, out var hour, out var next) || hour is < 1 or > 24)
        {
            return false;
        }

        if (tokens[at].Kind == TokenKind.Word && next == at + 1 && NumberGrammar.TrySmall(tokens, next, out var minute, out var behind)
            && minute is >= 5 and < 60 && minute % 5 == 0 && tokens[next].Kind == TokenKind.Word && minute >= 10)
        {
            point = Ended(tokens, hour * 60 + minute, behind, true, hour > 12);
            return true;
        }

        point = Ended(tokens, hour * 60, next, false, hour > 12);
        return true;
    }

    private static ClockPoint Ended(IReadOnlyList<Token> tokens, int minute, int next, bool isMarked, bool isWholeDay)
    {
        if (next < tokens.Count && tokens[next].Text is "o'clock" or "oclock")
        {
            (next, isMarked) = (next + 1, true);
        }

        if (next < tokens.Count && tokens[next].Text is "am" or "pm")
        {
            var isPm = tokens[next].Text == "pm";
            var inHalf = minute % HalfDay;
            return new(isPm ? inHalf + HalfDay : inHalf, next + 1, true, true, false);
        }

        return new(minute, next, isMarked, isWholeDay, false);
    }
}
