using Journal.Core.Model;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Quantities;

/// <summary>Lengths: “three thou”, “five tenths”, “an inch and a quarter”, “four inches, four thou over”.</summary>
internal sealed partial record QuantityGrammar
{
    /// <summary>Words between a size and what it is over or under: “an inch and an eighth thick, three thou over”.</summary>
    private static readonly HashSet<string> Extents = ["thick", "long", "wide", "high", "deep", "across", "diameter", "tall"];

    private Quantity? Composed(int at)
    {
        if (Length(at) is not { } length)
        {
            return BareWithSmall(at);
        }

        return FromNominal(length) ?? WithSmall(length) ?? (IsSmall(length) && Direction(length.Next, out var next) != 0 ? length with { IsDeviation = true, Next = next } : length);
    }

    // What is over or under is no more than a millimetre: "24 mm over the whole length" is a size.
    private static bool IsSmall(Quantity length) => length.Length.In(LengthUnit.Millimetre).Value <= 1;

    // "three thou under an inch and a quarter", "two thou over four inches", "half a tenth under sixty-three".
    private Quantity? FromNominal(Quantity length)
    {
        var sign = Direction(length.Next, out var behind);
        if (sign == 0 || (Length(behind) ?? Bare(behind)) is not { } nominal || nominal.Unit != length.Unit || nominal.Value <= length.Value * 4)
        {
            return null;
        }

        return nominal with { Value = nominal.Value + sign * length.Value, First = length.First };
    }

    // "four inches, four thou over"; "four inches and four thou"; "an inch and a quarter plus two thou".
    private Quantity? WithSmall(Quantity length)
    {
        var start = length.Next + (Extents.Contains(TextAt(length.Next)) ? 1 : 0);
        var joins = TextAt(start) is "," or "and" or "plus" or "minus" or "less";
        var isLess = TextAt(start) is "minus" or "less";
        start += joins ? 1 : 0;
        start += TextAt(start) is "plus" or "and" ? 1 : 0;
        if (Length(start) is not { } small || small.Unit != length.Unit || small.Value * 4 >= length.Value || small.Said!.On(Drawing) >= length.Said!.On(Drawing))
        {
            return null;
        }

        var sign = Direction(small.Next, out var behind);
        if (sign == 0 && !(joins && TextAt(start - 1) is "and" or "plus" or "minus" or "less") && (joins || start > length.Next))
        {
            return null;
        }

        return length with { Value = length.Value + (sign < 0 || (sign == 0 && isLess) ? -1 : 1) * small.Value, Next = sign == 0 ? small.Next : behind };
    }

    // "six and three hundredths", "two and an eighth plus one thou", "seven fifty minus three tenths": the small unit tells the large one.
    private Quantity? BareWithSmall(int at)
    {
        if (Bare(at) is not { } bare)
        {
            return null;
        }

        var join = TextAt(bare.Next);
        if (join is not ("and" or "plus" or "minus" or "less") || Length(bare.Next + 1) is not { Said: { } said } small || small.Unit != bare.Unit || said.On(Drawing) >= 1 || small.Value * 4 >= bare.Value)
        {
            return null;
        }

        return bare with { Value = bare.Value + (join is "and" or "plus" ? small.Value : -small.Value), Next = small.Next, Said = said };
    }

    // A number without its unit, as a length in the drawing's; a pair is in thousandths of an inch.
    private Quantity? Bare(int at)
    {
        if (Pair(at) is { } pair)
        {
            return Drawing == LengthUnit.Inch ? pair with { Kind = UnitKind.Length, Value = pair.Value / 1000, Unit = Drawing } : null;
        }

        return NumberGrammar.TryNumber(Tokens, at, out var number) && number.Value > 0 && !TryUnit(number.Next, out _, out _) ? new(UnitKind.Length, number.Value, Drawing, at, number.Next) : null;
    }

    // Which way from the size: +1 over, -1 under, 0 not said.
    private int Direction(int at, out int next)
    {
        var isOver = TextAt(at) is "over" or "oversize" or "above" or "big" or "proud" or "up";
        var isUnder = TextAt(at) is "under" or "undersize" or "below" or "shy" or "small" or "short" or "down" or "shallow";
        next = at + 1;
        if (isOver || isUnder)
        {
            next += TextAt(next) is "of" or "on" or "size" ? 1 : 0;
        }

        return isOver ? 1 : isUnder ? -1 : 0;
    }

    private Quantity? Length(int at) => HalfAThou(at) ?? AThou(at) ?? Figures(at);

    // "half a thou", "three sixteenths of an inch", "quarter inch".
    private Quantity? HalfAThou(int at)
    {
        // "half a thou", and "0.4 of a millimetre".
        if (!NumberGrammar.TryNumber(Tokens, at, out var number) || !(number.IsFraction || (number.Value < 1 && TextAt(number.Next) == "of")))
        {
            return null;
        }

        var next = number.Next;
        next += TextAt(next) == "of" ? 1 : 0;
        next += TextAt(next) is "a" or "an" ? 1 : 0;
        return TryUnit(next, out var unit, out var end) && unit.Kind == UnitKind.Length ? LengthOf(number.Value, unit, at, end) : null;
    }

    // "a thou", "an inch and a quarter".
    private Quantity? AThou(int at) =>
        TextAt(at) is "a" or "an" or "one" && TryUnit(at + 1, out var unit, out var end) && unit.Kind == UnitKind.Length && TextAt(at + 1) is not ("in" or "\"" or "tenth" or "mil" or "mill")
            ? WithPart(1, unit, at, end)
            : TextAt(at) is "a" && TextAt(at + 1) is "tenth" && TryUnit(at + 1, out unit, out end) ? LengthOf(1, unit, at, end) : null;

    private Quantity? Figures(int at)
    {
        if (!NumberGrammar.TryNumber(Tokens, at, out var number))
        {
            return null;
        }

        var next = TextAt(number.Next) == "-" ? number.Next + 1 : number.Next;
        return TryUnit(next, out var unit, out var end) && unit.Kind == UnitKind.Length && IsNotASmallHour(next) ? WithPart(number.Value, unit, at, end) : null;
    }

    private bool IsNotASmallHour(int at) => TextAt(at) is not ("mill" or "mills") || at + 1 >= Tokens.Count || TextAt(at + 1) is not ("vice" or "table");

    private Quantity WithPart(decimal number, UnitWord unit, int at, int end)
    {
        if (NumberGrammar.TryAndFraction(Tokens, end, out var part, out var behind))
        {
            return LengthOf(number + part, unit, at, behind);
        }

        // "two inches three eighths".
        if (unit.On(Drawing) == 1 && NumberGrammar.TryNumber(Tokens, end, out var fraction) && fraction is { IsFraction: true, Value: < 1 } && !TryUnit(fraction.Next, out _, out _) && TextAt(fraction.Next) is not ("an" or "a" or "past"))
        {
            return LengthOf(number + fraction.Value, unit, at, fraction.Next);
        }

        return LengthOf(number, unit, at, end);
    }

    // "a tenth of a millimetre", "three thousandths of an inch": a part of the unit that follows.
    private Quantity LengthOf(decimal number, UnitWord unit, int at, int end)
    {
        var part = TextAt(end - 1) switch { "tenth" or "tenths" => 0.1m, "hundredth" or "hundredths" => 0.01m, "thousandth" or "thousandths" => 0.001m, _ => 0 };
        var behind = TextAt(end + 1) is "a" or "an" ? end + 2 : end + 1;
        return part > 0 && TextAt(end) == "of" && TryUnit(behind, out var whole, out var next) && whole.Kind == UnitKind.Length
            ? PlainLength(number * part, whole, at, next)
            : PlainLength(number, unit, at, end);
    }

    private Quantity PlainLength(decimal number, UnitWord unit, int at, int end) =>
        new(UnitKind.Length, number * unit.On(Drawing), unit.UnitOn(Drawing), at, end) { Said = unit };
}
