using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace Journal.Core.Trade;

/// <summary>Numbers as drawings write them: with a decimal point, or as a fraction of an inch.</summary>
internal static class Numbers
{
    /// <summary>More digits than any length in a workshop has, and few enough that a decimal holds them.</summary>
    private const int MostDigits = 20;

    private const string VulgarFractions = "½¼¾⅛⅜⅝⅞";
    private static readonly decimal[] VulgarValues = [0.5m, 0.25m, 0.75m, 0.125m, 0.375m, 0.625m, 0.875m];

    /// <summary>Takes a number with or without decimals: <c>12</c>, <c>0.50</c>, <c>.5</c>. The digits written are kept.</summary>
    public static bool TryTakeDecimal(Cursor cursor, out decimal number, [NotNullWhen(false)] out Fault? fault)
    {
        number = 0;
        var start = cursor.Position;
        var whole = cursor.TakeWhile(char.IsAsciiDigit);
        if (cursor.Next == ',' && char.IsAsciiDigit(cursor.At(1)))
        {
            fault = new(
                FaultCode.CommaDecimal,
                "A comma in a number could mean decimals or thousands.",
                "Write decimals with a point: `12.5`.",
                cursor.Position);
            return false;
        }

        var decimals = "";
        if (cursor.Next == '.' && char.IsAsciiDigit(cursor.At(1)))
        {
            cursor.Position++;
            decimals = cursor.TakeWhile(char.IsAsciiDigit);
        }

        if (whole.Length + decimals.Length == 0)
        {
            fault = new(
                FaultCode.NotANumber,
                cursor.AtEnd ? "A number is missing at the end." : "A number is needed here.",
                "Write a number such as `12`, `12.5` or `7/16`.",
                start);
            return false;
        }

        if (whole.Length + decimals.Length > MostDigits)
        {
            fault = new(
                FaultCode.TooLong,
                "The number has too many digits.",
                "Write the number with at most 20 digits.",
                start);
            return false;
        }

        number = decimal.Parse($"{whole}.{decimals}".TrimEnd('.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
        fault = null;
        return true;
    }

    /// <summary>Takes a number or a fraction: <c>7/16</c>, <c>1-1/8</c>, <c>1 1/8</c>, <c>1½</c>.</summary>
    public static bool TryTake(Cursor cursor, out decimal number, out bool isFraction, [NotNullWhen(false)] out Fault? fault)
    {
        isFraction = true;
        if (TryTakeVulgar(cursor, out number))
        {
            fault = null;
            return true;
        }

        if (!TryTakeDecimal(cursor, out number, out fault))
        {
            return false;
        }

        if (number.Scale != 0)
        {
            isFraction = false;
            return true;
        }

        if (cursor.Next == '/' && char.IsAsciiDigit(cursor.At(1)))
        {
            return TryTakeDenominator(cursor, number, out number, out fault);
        }

        var whole = number;
        if (TryTakeVulgar(cursor, out var part))
        {
            number = whole + part;
            return true;
        }

        if (FractionFollows(cursor))
        {
            cursor.Position++;
            return TryTakeDecimal(cursor, out var numerator, out fault)
                && TryTakeDenominator(cursor, numerator, out part, out fault)
                && Add(whole, part, out number);
        }

        isFraction = false;
        return true;

        static bool Add(decimal left, decimal right, out decimal sum)
        {
            sum = left + right;
            return true;
        }
    }

    /// <summary>Whether <c>-1/8</c> or <c> 1/8</c> comes next: the fraction behind a whole number of inches.</summary>
    private static bool FractionFollows(Cursor cursor)
    {
        if (cursor.Next is not ('-' or ' '))
        {
            return false;
        }

        var ahead = 1;
        while (char.IsAsciiDigit(cursor.At(ahead)))
        {
            ahead++;
        }

        return ahead > 1 && cursor.At(ahead) == '/' && char.IsAsciiDigit(cursor.At(ahead + 1));
    }

    private static bool TryTakeDenominator(Cursor cursor, decimal numerator, out decimal number, [NotNullWhen(false)] out Fault? fault)
    {
        number = 0;
        cursor.Position++;
        var start = cursor.Position;
        if (!TryTakeDecimal(cursor, out var denominator, out fault))
        {
            return false;
        }

        if (denominator == 0)
        {
            fault = new(FaultCode.DividedByZero, "The fraction divides by zero.", "Write the fraction in full, such as `1/2 in`.", start);
            return false;
        }

        number = numerator / denominator;
        return true;
    }

    private static bool TryTakeVulgar(Cursor cursor, out decimal value)
    {
        var index = cursor.AtEnd ? -1 : VulgarFractions.IndexOf(cursor.Next, StringComparison.Ordinal);
        value = index < 0 ? 0 : VulgarValues[index];
        cursor.Position += index < 0 ? 0 : 1;
        return index >= 0;
    }
}
