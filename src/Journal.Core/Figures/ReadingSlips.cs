using System.Globalization;
using Journal.Core.Model;
using Journal.Core.Trade;

namespace Journal.Core.Figures;

/// <summary>
/// Sizes that are ten times, a hundred times or 25.4 times off: nobody bores that far out, but the point slips easily, and
/// so does the unit.
/// </summary>
internal static class ReadingSlips
{
    /// <summary>How near to the exact multiple a size must be, as a share of the nominal one (our choice).</summary>
    private const decimal Nearness = 0.02m;

    private static readonly (decimal Times, string What)[] Points =
    [
        (10, "ten times"), (0.1m, "a tenth of"), (100, "a hundred times"), (0.01m, "a hundredth of"),
    ];

    /// <summary>The slip that explains a reading; null where none does.</summary>
    public static Finding? Find(ReadingFigure reading)
    {
        if (reading is not { Actual.Value: > 0, Nominal.Value: > 0 } || reading.Within == true)
        {
            return null;
        }

        var (actual, nominal) = (reading.Actual.Value, reading.Nominal.Value);
        return (PointSlip(actual, nominal) ?? UnitSlip(actual, nominal)) is { } fault ? new(reading.Place, "actual", fault) : null;

        static Fault? PointSlip(Length actual, Length nominal)
        {
            var slip = Array.Find(Points, point => IsNear(actual.Value / point.Times, nominal.Value));
            return slip.What is null ? null : Slip(
                $"The actual size is {slip.What} the required one. The decimal point is probably wrong.",
                $"If it was {Plain(actual.Value / slip.Times)}, write that.");
        }

        static Fault? UnitSlip(Length actual, Length nominal)
        {
            var other = actual.Unit == LengthUnit.Inch ? LengthUnit.Millimetre : LengthUnit.Inch;
            return IsNear(new Length(actual.Value, other).In(actual.Unit).Value, nominal.Value)
                ? Slip(
                    "The actual size is out by a factor of 25.4. The unit is probably wrong.",
                    $"If it was measured in that unit, write `{Plain(actual.Value)} {other.Symbol()}`.")
                : null;
        }
    }

    private static bool IsNear(decimal value, decimal nominal) => Math.Abs(value - nominal) <= Nearness * nominal;

    private static Fault Slip(string what, string remedy) => new(FaultCode.LikelySlip, what, remedy, 0);

    private static string Plain(decimal value) => value.ToString("0.############", CultureInfo.InvariantCulture);
}
