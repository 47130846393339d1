using System.Diagnostics.CodeAnalysis;
using System.Text.RegularExpressions;

namespace Journal.Core.Trade;

/// <summary>Two limit deviations, in the order written.</summary>
/// <param name="First">The first, with its sign.</param>
/// <param name="Second">The second, with its sign.</param>
internal readonly record struct WrittenTolerance(Measure First, Measure Second)
{
    /// <summary>The lower limit deviation.</summary>
    public decimal Lower => Math.Min(First.Value, Second.Value);

    /// <summary>The upper limit deviation.</summary>
    public decimal Upper => Math.Max(First.Value, Second.Value);
}

/// <summary>
/// Tolerances behind a size: <c>±0.02</c>, <c>+0.018/0</c>, <c>+0.0005/-0.0000</c>, <c>-0.02 -0.041</c>. The signs say which
/// limit is meant, so either may come first.
/// </summary>
internal static partial class ToleranceText
{
    private const string Remedy = "Write `±0.02`, or both deviations with their signs: `+0.018/0`.";

    /// <summary>
    /// Whether a tolerance comes next. A minus counts only with a second deviation behind it, since <c>11.98-12.02</c> are limits.
    /// </summary>
    public static bool Comes(Cursor cursor) =>
        cursor.Next is '±' or '+' || (cursor.Next is '-' or '0' && TwoDeviations().IsMatch(cursor.Rest));

    /// <summary>Takes a tolerance.</summary>
    public static bool TryTake(Cursor cursor, out WrittenTolerance tolerance, [NotNullWhen(false)] out Fault? fault)
    {
        tolerance = default;
        var start = cursor.Position;
        if (cursor.Take("±") || cursor.Take("+/-") || cursor.Take("+-"))
        {
            if (!LengthText.TryTake(cursor, out var both, out fault))
            {
                return false;
            }

            tolerance = new(both with { Value = -both.Value }, both);
        }
        else if (!TryTakeDeviation(cursor, out var first, out fault) || !TryTakeSecond(cursor, out var second, out fault))
        {
            return false;
        }
        else
        {
            tolerance = new(first, second);
        }

        fault = tolerance.Lower < tolerance.Upper ? null : new(
            FaultCode.LeastAboveGreatest,
            "The two limits are the same.",
            Remedy,
            start);
        return fault is null;
    }

    private static bool TryTakeSecond(Cursor cursor, out Measure second, [NotNullWhen(false)] out Fault? fault)
    {
        second = default;
        cursor.SkipBlanks();
        var separated = cursor.Take("/") || cursor.Next is '+' or '-' or '0';
        if (!separated)
        {
            fault = new(FaultCode.BadTolerance, "The second limit of the tolerance is missing.", Remedy, cursor.Position);
            return false;
        }

        return TryTakeDeviation(cursor, out second, out fault);
    }

    /// <summary>A deviation: a sign and a number, or a bare zero.</summary>
    private static bool TryTakeDeviation(Cursor cursor, out Measure deviation, [NotNullWhen(false)] out Fault? fault)
    {
        deviation = default;
        cursor.SkipBlanks();
        var start = cursor.Position;
        var sign = cursor.Take("+") ? 1 : cursor.Take("-") ? -1 : 0;
        cursor.SkipBlanks();
        if (!TryTakeWithoutFraction(cursor, out deviation, out fault))
        {
            return false;
        }

        if (sign == 0 && deviation.Value != 0)
        {
            fault = new(FaultCode.BadTolerance, "A deviation needs its sign.", Remedy, start);
            return false;
        }

        deviation = deviation with { Value = sign * deviation.Value, Start = start };
        return true;
    }

    /// <summary>In <c>+1/0</c> the stroke parts two deviations: a number with <c>/0</c> behind it is no fraction.</summary>
    private static bool TryTakeWithoutFraction(Cursor cursor, out Measure deviation, [NotNullWhen(false)] out Fault? fault)
    {
        var start = cursor.Position;
        var numerator = cursor.TakeWhile(char.IsAsciiDigit);
        var isStroke = numerator.Length > 0 && cursor.Next == '/' && cursor.At(1) == '0';
        cursor.Position = start;
        if (!isStroke)
        {
            return LengthText.TryTake(cursor, out deviation, out fault);
        }

        deviation = default;
        if (!Numbers.TryTakeDecimal(cursor, out var number, out fault))
        {
            return false;
        }

        deviation = new(number, null, IsFraction: false, start);
        return true;
    }

    /// <summary>A deviation with a second one behind it: parted by a stroke or a blank, signed or zero.</summary>
    [GeneratedRegex(@"^-? ?[\d.]+ ?(mm|in|thou|"")? ?/? ?([+-]|0(\.0+)?(?![\d./]))", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex TwoDeviations();
}
