using System.Diagnostics.CodeAnalysis;
using Journal.Core.Model;

namespace Journal.Core.Trade;

/// <summary>A number as written, with the unit behind it if there is one.</summary>
/// <param name="Value">The number, in <paramref name="Unit"/> where there is one.</param>
/// <param name="Unit">The unit written.</param>
/// <param name="IsFraction">Whether it was a fraction, which only inches are written with.</param>
/// <param name="Start">Where it begins.</param>
internal readonly record struct Measure(decimal Value, LengthUnit? Unit, bool IsFraction, int Start);

/// <summary>Lengths as the maker writes them.</summary>
public static class LengthText
{
    /// <summary>Longer texts are no lengths, requirements or feeds.</summary>
    internal const int Longest = 100;

    private const int MostDecimals = 12;
    private const decimal Limit = 1_000_000;

    /// <summary>The units of a drawing with their size; thousandths are of an inch, as the trade has it.</summary>
    private static readonly (string Word, LengthUnit Unit, decimal Size)[] Units =
    [
        ("millimetres", LengthUnit.Millimetre, 1), ("millimetre", LengthUnit.Millimetre, 1),
        ("millimeters", LengthUnit.Millimetre, 1), ("millimeter", LengthUnit.Millimetre, 1),
        ("mm", LengthUnit.Millimetre, 1),
        ("micrometres", LengthUnit.Millimetre, 0.001m), ("micrometre", LengthUnit.Millimetre, 0.001m),
        ("microns", LengthUnit.Millimetre, 0.001m), ("micron", LengthUnit.Millimetre, 0.001m),
        ("µm", LengthUnit.Millimetre, 0.001m), ("um", LengthUnit.Millimetre, 0.001m),
        ("inches", LengthUnit.Inch, 1), ("inch", LengthUnit.Inch, 1), ("in", LengthUnit.Inch, 1),
        ("\"", LengthUnit.Inch, 1), ("''", LengthUnit.Inch, 1),
        ("thousandths", LengthUnit.Inch, 0.001m), ("thousandth", LengthUnit.Inch, 0.001m),
        ("thous", LengthUnit.Inch, 0.001m), ("thou", LengthUnit.Inch, 0.001m),
    ];

    /// <summary>
    /// Reads <c>12</c>, <c>12.5 mm</c>, <c>1/2 in</c>, <c>1-1/8"</c>, <c>12 thou</c>, <c>20 µm</c>. A bare number takes the
    /// unit of the drawing; a bare fraction only where the drawing is in inches.
    /// </summary>
    /// <param name="text">What the maker wrote.</param>
    /// <param name="defaultUnit">The unit of the drawing.</param>
    /// <param name="length">The length, below a kilometre and with at most 12 decimals.</param>
    /// <param name="fault">What is wrong where it is not a length.</param>
    public static bool TryParse(string text, LengthUnit defaultUnit, out Length length, [NotNullWhen(false)] out Fault? fault)
    {
        length = default;
        if (!TryBegin(text, out var cursor, out fault))
        {
            return false;
        }

        var sign = cursor.Next == '-' ? -1 : 1;
        cursor.Position += cursor.Next is '-' or '+' ? 1 : 0;
        if (!TryTake(cursor, out var measure, out fault) || !TryEnd(cursor, out fault) || !TryGiveUnit(measure, defaultUnit, out length, out fault))
        {
            return false;
        }

        length = length with { Value = sign * length.Value };
        return true;
    }

    /// <summary>Reads a length that belongs to no drawing, so that its unit must stand behind it.</summary>
    /// <param name="text">What the maker wrote.</param>
    /// <param name="length">The length.</param>
    /// <param name="fault">What is wrong where it is not a length, or has no unit.</param>
    public static bool TryParse(string text, out Length length, [NotNullWhen(false)] out Fault? fault)
    {
        // A length whose unit changes with the drawing has none of its own.
        if (TryParse(text, LengthUnit.Inch, out length, out fault) && TryParse(text, LengthUnit.Millimetre, out var same, out fault) && same.Unit != length.Unit)
        {
            fault = new(FaultCode.MissingUnit, "The unit is missing.", "Write it after the number: `0.01 mm`, `0.0005 in`.", 0);
        }

        return fault is null;
    }

    /// <summary>Starts to read a text that is neither empty nor overlong.</summary>
    internal static bool TryBegin(string text, out Cursor cursor, [NotNullWhen(false)] out Fault? fault)
    {
        cursor = new Cursor(text.Length > Longest ? "" : text);
        cursor.SkipBlanks();
        fault = text.Length > Longest
            ? new(
                FaultCode.TooLong,
                "This is too long to be a dimension.",
                "Write only the dimension; put remarks in the entry's text.",
                Longest)
            : cursor.AtEnd ? new(FaultCode.Empty, "It is empty.", "Write a dimension such as `12.5 mm`, or leave out the key.", 0)
            : null;
        return fault is null;
    }

    /// <summary>Ends reading: only blanks may be left.</summary>
    internal static bool TryEnd(Cursor cursor, [NotNullWhen(false)] out Fault? fault)
    {
        cursor.SkipBlanks();
        fault = cursor.AtEnd
            ? null
            : new(
                FaultCode.LeftOver,
                $"`{cursor.Rest.Trim()}` is not understood here.",
                "Write only the dimension, as on a drawing: `12 H7`, `12 ±0.02`, `11.98-12.02`.",
                cursor.Position);
        return fault is null;
    }

    /// <summary>Takes a number or fraction and the unit behind it.</summary>
    internal static bool TryTake(Cursor cursor, out Measure measure, [NotNullWhen(false)] out Fault? fault)
    {
        measure = default;
        cursor.SkipBlanks();
        var start = cursor.Position;
        if (!Numbers.TryTake(cursor, out var number, out var isFraction, out fault) || !TryTakeUnit(cursor, out var unit, out var size, out fault))
        {
            return false;
        }

        if (number >= Limit)
        {
            fault = new(FaultCode.SizeOutOfRange, "The size is too large for any workshop.", "Check the decimal point and the unit.", start);
            return false;
        }

        var value = number * size;
        measure = new(value.Scale > MostDecimals ? decimal.Round(value, MostDecimals) : value, unit, isFraction, start);
        return true;
    }

    /// <summary>Gives a measure the unit that it was written with, else the drawing's.</summary>
    internal static bool TryGiveUnit(Measure measure, LengthUnit defaultUnit, out Length length, [NotNullWhen(false)] out Fault? fault)
    {
        length = new(measure.Value, measure.Unit ?? defaultUnit);
        fault = measure.IsFraction && measure.Unit is null && defaultUnit == LengthUnit.Millimetre
            ? new(
                FaultCode.MissingUnit,
                "A fraction needs a unit here, because the drawing is in millimetres.",
                "Write the unit after it: `7/16 in`.",
                measure.Start)
            : measure is { IsFraction: true, Unit: LengthUnit.Millimetre }
            ? new(FaultCode.MixedUnits, "Millimetres are not written as a fraction.", "Write decimals, `0.5 mm`, or inches, `1/2 in`.", measure.Start)
            : null;
        return fault is null;
    }

    /// <summary>Takes the unit if one comes next; a letter with a number behind it is the code of a fit and stays.</summary>
    private static bool TryTakeUnit(Cursor cursor, out LengthUnit? unit, out decimal size, [NotNullWhen(false)] out Fault? fault)
    {
        (unit, size, fault) = (null, 1, null);
        var before = cursor.Position;
        cursor.SkipBlanks();
        var start = cursor.Position;
        foreach (var known in Units)
        {
            if (cursor.TakeWord(known.Word))
            {
                (unit, size) = (known.Unit, known.Size);
                return true;
            }
        }

        var word = cursor.TakeWhile(char.IsLetter);
        var isFit = char.IsAsciiDigit(cursor.Next);
        cursor.Position = before;
        if (isFit || word is not ("cm" or "m" or "ft" or "dm" or "mil" or "mils" or "tenths" or "tenth"))
        {
            return true;
        }

        fault = new(
            FaultCode.UnknownUnit,
            $"`{word}` is not a known unit.",
            "Write millimetres (`12.5 mm`), inches (`0.5 in`) or thousandths (`12 thou`).",
            start);
        return false;
    }
}
