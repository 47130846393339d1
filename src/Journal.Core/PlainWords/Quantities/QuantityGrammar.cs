using Journal.Core.Model;
using Journal.Core.PlainWords.Tokens;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Quantities;

/// <summary>Numbers with their units: times, lengths, speeds and money, also where only several numbers together give the value.</summary>
/// <param name="Tokens">The account.</param>
/// <param name="Drawing">The unit of the drawing.</param>
/// <param name="Half">What “half nine” means here.</param>
internal sealed partial record QuantityGrammar(IReadOnlyList<Token> Tokens, LengthUnit Drawing, HalfHour Half)
{
    private static readonly UnitWords Units = Lexicon.Shared.Units;

    /// <summary>Adjectives between a number and its unit: “a good hour”, “two solid hours”.</summary>
    private static readonly HashSet<string> Between = ["good", "solid", "full", "whole", "happy", "further", "another", "extra", "more", "odd", "fine", "quick", "long", "of", "clear", "frustrating", "pleasant", "quiet", "bare", "straight", "hard", "patient", "miserable", "honest", "careful", "fiddly", "gentle", "decent", "proper", "short"];

    /// <summary>The quantity that begins at a token, the fullest reading of it; null where none does.</summary>
    public Quantity? At(int at) => Money(at) ?? Stretch(at) ?? OutAndIn(at) ?? Time(at) ?? Composed(at) ?? Speed(at) ?? PairAlone(at) ?? Other(at);

    private string TextAt(int at) => at >= 0 && at < Tokens.Count ? Tokens[at].Meant : "";

    private static Quantity Of(UnitKind kind, decimal value, int first, int next) => new(kind, value, default, first, next);

    private bool TryUnit(int at, out UnitWord unit, out int next)
    {
        (unit, next) = (null!, at);
        if (at >= Tokens.Count || !Units.Table.TryLongest(Tokens, at, out unit, out var length))
        {
            return false;
        }

        next = at + length;

        // "in" is an inch behind figures only, and not where it leads to a place: "drilled 3 in the flange".
        if (Tokens[at].Text == "in" && (at == 0 || (Tokens[at - 1].Kind != TokenKind.Number) || TextAt(next) is "the" or "a" or "an" or "all" or "total" or "it" or "my" or "this" or "that" or "one" or "each" or "two" or "place"))
        {
            return false;
        }

        return Tokens[at].Text != "m" || (Tokens[at].IsGlued && TextAt(next) != "of");
    }

    private Quantity? Money(int at)
    {
        if (TextAt(at) is "£" or "$" or "€" && NumberGrammar.TryNumber(Tokens, at + 1, out var sum) && Tokens[at + 1].Kind == TokenKind.Number)
        {
            return Of(UnitKind.Money, sum.Value, at, sum.Next);
        }

        if (TextAt(at) == "a" && TextAt(at + 1) is "tenner" or "fiver")
        {
            return Of(UnitKind.Money, TextAt(at + 1) == "tenner" ? 10 : 5, at, at + 2);
        }

        if (TextAt(at) == "a" && TextAt(at + 1) is "buck" or "quid" or "pound" or "dollar" or "euro")
        {
            return NumberGrammar.TrySmall(Tokens, at + 2, out var odd, out var oddEnd) && odd > 9 ? Of(UnitKind.Money, 1 + odd / 100m, at, oddEnd) : Of(UnitKind.Money, 1, at, at + 2);
        }

        if (!NumberGrammar.TryNumber(Tokens, at, out var number))
        {
            return null;
        }

        // "new one £12.50": the sign belongs to the figure behind it.
        var isOfTheNext = number.Next + 1 < Tokens.Count && Tokens[number.Next + 1] is { Kind: TokenKind.Number, IsGlued: true };
        if (TextAt(number.Next) is "£" or "$" or "€" && !isOfTheNext)
        {
            return Of(UnitKind.Money, number.Value, at, number.Next + 1);
        }

        if (!TryUnit(number.Next, out var unit, out var next) || unit.Kind is not (UnitKind.Money or UnitKind.SmallMoney))
        {
            return null;
        }

        if (unit.Kind == UnitKind.SmallMoney)
        {
            return number.IsFraction ? null : Of(UnitKind.Money, number.Value / 100, at, next);
        }

        // "eighteen pounds fifty", "eighteen pounds and fifty pence".
        var behind = TextAt(next) is "and" ? next + 1 : next;
        if (NumberGrammar.TrySmall(Tokens, behind, out var cents, out var end) && (cents > 9 || TextAt(end) is "p" or "pence"))
        {
            var isCents = TryUnit(end, out var small, out var behindCents);
            if (!isCents || small.Kind == UnitKind.SmallMoney)
            {
                return Of(UnitKind.Money, number.Value + cents / 100m, at, isCents ? behindCents : end);
            }
        }

        return Of(UnitKind.Money, number.Value, at, next);
    }

    private static readonly HashSet<string> Goings = ["out", "started", "start", "began", "in", "on"];
    private static readonly HashSet<string> Comings = ["in", "finished", "stopped", "packed", "knocked", "done", "home", "back", "off", "out", "finish", "ended", "till", "until"];
    private static readonly HashSet<string> BeforeClocks = ["i", "we", "went", "came", "at", "about", "around", "just", "gone", "up", "off", "it", "was", "after", "before", "nearly", "by", "work"];

    // "Out 7.10, in 9.25", "started about ten to seven packed up at quarter past nine": two points of the clock with words for going and coming.
    private Quantity? OutAndIn(int at)
    {
        if (!Goings.Contains(TextAt(at)) || !TryClockSoon(at + 1, out var start) || !(start.IsMarked || start.IsDotted))
        {
            return null;
        }

        var between = start.Next;
        while (TextAt(between) is "," or "and" or "then" or "." or ";" or "-")
        {
            between++;
        }

        if (!Comings.Contains(TextAt(between)) || !TryClockSoon(between + 1, out var end) || !(end.IsMarked || end.IsDotted))
        {
            return null;
        }

        var minutes = Between12(start, end);
        var isUnsure = Half == HalfHour.Unsure && start.IsHalf != end.IsHalf;
        return minutes is > 0 and <= ClockGrammar.HalfDay && !isUnsure ? Of(UnitKind.Time, minutes, at, end.Next) with { IsStretch = true } : null;
    }

    private bool TryClockSoon(int at, out ClockPoint point)
    {
        point = default;
        var first = at;
        while (at - first < 4 && BeforeClocks.Contains(TextAt(at)))
        {
            at++;
        }

        return at < Tokens.Count && Tokens[at].Kind is TokenKind.Word or TokenKind.Number && ClockGrammar.TryPoint(Tokens, at, out point);
    }

    /// <summary>“from half six to nine”, “7.30 till 9”, “between seven and quarter to ten”.</summary>
    private Quantity? Stretch(int at)
    {
        var isFrom = TextAt(at) is "from" or "between";
        var begin = isFrom ? at + 1 : at;
        if (TextAt(begin) is "about" or "around" or "roughly")
        {
            begin++;
        }

        if (begin >= Tokens.Count || Tokens[begin].Kind is TokenKind.Mark or TokenKind.Break || !ClockGrammar.TryPoint(Tokens, begin, out var start))
        {
            return null;
        }

        var between = start.Next;
        while (TextAt(between) is "pretty" or "much" or "right" or "through" or "up" or "straight")
        {
            between++;
        }

        var isSign = TextAt(between) is "-";
        if (!isSign && TextAt(between) is not ("to" or "till" or "til" or "until" or "'til" or "gone") && !(TextAt(at) == "between" && TextAt(between) == "and"))
        {
            return null;
        }

        var ending = between + 1;
        while (TextAt(ending) is "about" or "around" or "roughly" or "gone" or "just" or "after" or "before" or "nearly")
        {
            ending++;
        }

        if (!ClockGrammar.TryPoint(Tokens, ending, out var end))
        {
            return null;
        }

        var isUnited = TryUnit(end.Next, out _, out _) || TextAt(end.Next) is "/";
        var isSure = (isFrom && !isUnited) || start.IsMarked || end.IsMarked || (TextAt(between) is "till" or "til" or "until" && !isUnited);
        // "7.15-9.45": two times in figures with a stroke between them.
        isSure |= isSign && start.IsDotted && end.IsDotted && !isUnited;
        if (!isSure || isUnited)
        {
            return null;
        }

        var minutes = Between12(start, end);
        var isUnsure = Half == HalfHour.Unsure && start.IsHalf != end.IsHalf;
        return minutes is > 0 and <= ClockGrammar.HalfDay && !isUnsure ? Of(UnitKind.Time, minutes, at, end.Next) with { IsStretch = true } : null;
    }

    // By the clock of twelve hours the next time round is meant.
    private static int Between12(ClockPoint start, ClockPoint end)
    {
        var isWhole = start.IsWholeDay && end.IsWholeDay;
        var round = isWhole ? 24 * 60 : ClockGrammar.HalfDay;
        return ((end.Minute - start.Minute) % round + round) % round;
    }

    private Quantity? Time(int at) => Iso(at) ?? HalfAnHour(at) ?? AnHour(at) ?? Hours(at) ?? HourAndAHalf(at);

    // ISO 8601-1:2019, 5.5.2: PT2H45M.
    private Quantity? Iso(int at) =>
        TextAt(at).StartsWith("pt", StringComparison.Ordinal) && Parsing.Values.Duration.TryParse(TextAt(at).ToUpperInvariant(), out var time, out _)
            ? Of(UnitKind.Time, time.Count, at, at + 1)
            : null;

    // "half an hour", "half hour", "three quarters of an hour", "a quarter of an hour".
    private Quantity? HalfAnHour(int at)
    {
        if (!NumberGrammar.TryNumber(Tokens, at, out var number) || !number.IsFraction || number.Value >= 1)
        {
            return null;
        }

        var next = number.Next;
        next += TextAt(next) == "of" ? 1 : 0;
        next += TextAt(next) is "a" or "an" ? 1 : 0;
        next += Between.Contains(TextAt(next)) ? 1 : 0;
        return TryUnit(next, out var unit, out var end) && unit is { Kind: UnitKind.Time, Metric: 60 } ? Of(UnitKind.Time, number.Value * 60, at, end) : null;
    }

    // "an hour", "a good hour and a half", "a full hour twenty".
    private Quantity? AnHour(int at)
    {
        var isThe = TextAt(at) is "the" && TextAt(at - 1) is "spent" or "took";
        if (!isThe && TextAt(at) is not ("a" or "an" or "another" or "whole" or "full" or "solid"))
        {
            return null;
        }

        var next = at + 1;
        while (Between.Contains(TextAt(next)) && next < at + 4)
        {
            next++;
        }

        return TryUnit(next, out var unit, out var end) && unit.Kind == UnitKind.Time && TextAt(next) is "hour" or "minute" or "hr" && IsCounted(at)
            ? WithMinutes(1, unit, at, end)
            : null;
    }

    // "three hundred revs a minute" counts turns.
    private bool IsCounted(int at) => at == 0 || !TryUnit(at - 1, out var before, out _) || before.Kind == UnitKind.Time;

    // "hour and a half".
    private Quantity? HourAndAHalf(int at) =>
        TextAt(at) is not ("hour" or "hr") ? null
        : NumberGrammar.TryAndFraction(Tokens, at + 1, out var part, out var next) ? Of(UnitKind.Time, 60 + part * 60, at, next)
        : NumberGrammar.TrySmall(Tokens, at + 1, out var minutes, out next) && minutes is >= 5 and < 60 && minutes % 5 == 0 && (IsEndOfTime(next) || (TryUnit(next, out var unit, out _) && unit.Kind == UnitKind.Time)) ? Of(UnitKind.Time, 60 + minutes, at, next)
        : null;

    // "two hours", "2h45", "two and a half hours", "forty-five minutes".
    private Quantity? Hours(int at)
    {
        if (TextAt(at) == "a" && TextAt(at + 1) is "couple" or "few" && at + 1 < Tokens.Count)
        {
            var behind = TextAt(at + 2) == "of" ? at + 3 : at + 2;
            return TryUnit(behind, out var vague, out var past) && vague.Kind == UnitKind.Time ? Of(UnitKind.Time, 0, at, past) with { IsVague = true } : null;
        }

        if (!NumberGrammar.TryNumber(Tokens, at, out var number))
        {
            return null;
        }

        var next = number.Next;
        if (TextAt(next) is "or" or "to" && NumberGrammar.TryNumber(Tokens, next + 1, out var other) && TryUnit(other.Next, out var range, out var rangeEnd) && range.Kind == UnitKind.Time)
        {
            return Of(UnitKind.Time, 0, at, rangeEnd) with { IsVague = true };
        }

        if (TextAt(next) == "-" && TextAt(next + 1) is "hour" or "minute")
        {
            next++;
        }

        // "2:40": a time as it stands in keys, where no clock is spoken of.
        if (TextAt(next) == ":" && number is { IsWhole: true, Value: < 10 } && next + 1 < Tokens.Count && Tokens[next].IsGlued && Tokens[next + 1] is { IsGlued: true, Text.Length: 2 } && NumberGrammar.TrySmall(Tokens, next + 1, out var small, out var behindSmall) && small < 60
            && TextAt(at - 1) is not ("at" or "from" or "till" or "until" or "by" or "past" or "to" or "since" or "-" or "around" or "about" or "before" or "after") && TextAt(behindSmall) is not ("to" or "-" or "till" or "until" or "am" or "pm"))
        {
            return Of(UnitKind.Time, number.Value * 60 + small, at, behindSmall);
        }

        while (Between.Contains(TextAt(next)) && next < number.Next + 2)
        {
            next++;
        }

        // "a minute" said twice, as in "2:45 h", is not needed; a clock's colon is.
        if (TextAt(next) == ":" && NumberGrammar.TrySmall(Tokens, next + 1, out var colonMinutes, out var behindColon) && TryUnit(behindColon, out var colonUnit, out var colonEnd) && colonUnit is { Kind: UnitKind.Time, Metric: 60 })
        {
            return Of(UnitKind.Time, number.Value * 60 + colonMinutes, at, colonEnd);
        }

        return TryUnit(next, out var unit, out var end) && unit.Kind == UnitKind.Time ? WithMinutes(number.Value, unit, at, end) : null;
    }

    // "an hour and a half", "two hours and ten minutes", "an hour twenty", "2h45".
    private Quantity WithMinutes(decimal number, UnitWord unit, int at, int next)
    {
        var minutes = number * unit.Metric;
        if (unit.Metric == 60)
        {
            if (NumberGrammar.TryAndFraction(Tokens, next, out var part, out var behind))
            {
                return Of(UnitKind.Time, minutes + part * 60, at, behind) with { Said = unit };
            }

            if (TextAt(next) is "or" && TextAt(next + 1) is "two" or "three" && next + 1 < Tokens.Count)
            {
                return Of(UnitKind.Time, 0, at, next + 2) with { IsVague = true };
            }

            var start = TextAt(next) is "and" or "," or "&" ? next + 1 : next;
            if (NumberGrammar.TrySmall(Tokens, start, out var more, out var end) && more is > 0 and < 60)
            {
                var isUnited = TryUnit(end, out var small, out var smallEnd);
                var isGlued = start == next && Tokens[start].IsGlued;
                if (isUnited && small is { Kind: UnitKind.Time, Metric: 1 })
                {
                    return Of(UnitKind.Time, minutes + more, at, smallEnd);
                }

                if (!isUnited && (isGlued || (TextAt(next) != "," && more >= 5 && IsEndOfTime(end))))
                {
                    return Of(UnitKind.Time, minutes + more, at, end);
                }
            }
        }

        return Of(UnitKind.Time, minutes, at, next) with { Said = unit };
    }

    // "an hour twenty" ends there; "an hour five holes" does not.
    private bool IsEndOfTime(int at) =>
        at >= Tokens.Count || Tokens[at].Kind is TokenKind.Break or TokenKind.Mark || Lexicon.Shared.Cues.At(Tokens, at).Any() || Lexicon.Shared.Operations.TryLongest(Tokens, at, out _, out _) || TextAt(at) is "all" or "for" or "on" or "in" or "to" or "the" or "and" or "with" or "boring" or "turning";

    private Quantity? Speed(int at)
    {
        if (!NumberGrammar.TryNumber(Tokens, at, out var number))
        {
            return null;
        }

        if (TryUnit(number.Next, out var unit, out var next) && unit.Kind == UnitKind.Speed)
        {
            return Of(UnitKind.Speed, number.Value, at, next);
        }

        // "three twenty revs", "twelve fifty rpm".
        return Pair(at) is { } pair && TryUnit(pair.Next, out unit, out next) && unit.Kind == UnitKind.Speed ? Of(UnitKind.Speed, pair.Value, at, next) : null;
    }

    // "five fifty" is 550, "one eighty-six and a half" 186.5: hundreds that go without saying (common practice).
    private Quantity? Pair(int at)
    {
        if (at >= Tokens.Count || Tokens[at].Kind != TokenKind.Word || !NumberGrammar.TrySmall(Tokens, at, out var hundreds, out var next) || hundreds is < 1 or > 40
            || next >= Tokens.Count || Tokens[next].Kind != TokenKind.Word || !NumberGrammar.TrySmall(Tokens, next, out var rest, out var behind) || rest < 10)
        {
            return null;
        }

        var value = hundreds * 100m + rest;
        return NumberGrammar.TryAndFraction(Tokens, behind, out var part, out var end)
            ? Of(UnitKind.None, value + part, at, end) with { IsPair = true }
            : Of(UnitKind.None, value, at, behind) with { IsPair = true };
    }

    // "fifteen twenty minutes" is no pair.
    private Quantity? PairAlone(int at) => Pair(at) is { } pair && !TryUnit(pair.Next, out _, out _) ? pair : null;

    private Quantity? Other(int at)
    {
        if (!NumberGrammar.TryNumber(Tokens, at, out var number))
        {
            return null;
        }

        var kind = TryUnit(number.Next, out var unit, out var next) && unit.Kind == UnitKind.Other ? UnitKind.Other : UnitKind.None;
        return Of(kind, number.Value, at, kind == UnitKind.Other ? next : number.Next) with { IsFraction = number.IsFraction };
    }
}
