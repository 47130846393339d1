using System.Diagnostics.CodeAnalysis;
using Journal.Core.Model;

namespace Journal.Core.Trade;

/// <summary>A size with the code of a fit: <c>12 H7</c>, <c>ø12 h6</c>, <c>0.5 in H8</c>.</summary>
internal static class FitText
{
    private const decimal MillimetresInAMicrometre = 0.001m;

    /// <summary>Reads the code behind a size, and the unit if it stands behind the code.</summary>
    public static bool TryRead(
        Cursor cursor,
        Measure size,
        LengthUnit defaultUnit,
        [NotNullWhen(true)] out Requirement? requirement,
        [NotNullWhen(false)] out Fault? fault)
    {
        requirement = null;
        var start = cursor.Position;
        var written = cursor.TakeWhile(char.IsAsciiLetterOrDigit);
        if (!written.Any(char.IsAsciiDigit))
        {
            fault = new(
                FaultCode.UnknownUnit,
                $"`{written}` is neither a unit nor a fit.",
                "Write `12 mm`, `0.5 in`, `12 thou`, or a fit with its grade: `12 H7`.",
                start);
            return false;
        }

        if (cursor.Next == '/')
        {
            fault = new(
                FaultCode.LeftOver,
                "This gives the fit of a hole and a shaft together.",
                "Write only this part's, `12 H7` for the hole or `12 g6` for the shaft, and list the pair under `mates`.",
                cursor.Position);
            return false;
        }

        if (!FitCode.TryParse(written, out var code, out fault))
        {
            fault = fault with { Offset = start + fault.Offset };
            return false;
        }

        return TryTakeUnit(cursor, size, out size, out fault)
            && LengthText.TryEnd(cursor, out fault)
            && LengthText.TryGiveUnit(size, defaultUnit, out var nominal, out fault)
            && TryGiveLimits(nominal, code, size.Start, out requirement, out fault);
    }

    private static bool TryTakeUnit(Cursor cursor, Measure size, out Measure withUnit, [NotNullWhen(false)] out Fault? fault)
    {
        (withUnit, fault) = (size, null);
        cursor.SkipBlanks();
        var start = cursor.Position;
        if (cursor.AtEnd)
        {
            return true;
        }

        LengthUnit? unit = cursor.TakeWord("mm") ? LengthUnit.Millimetre
            : cursor.TakeWord("inch") || cursor.TakeWord("in") || cursor.Take("\"") ? LengthUnit.Inch
            : null;
        if (unit is not null && size.Unit is not null && size.Unit != unit)
        {
            fault = new(FaultCode.MixedUnits, "Inches and millimetres are mixed.", "Write the unit once, at the end.", start);
            return false;
        }

        withUnit = size with { Unit = size.Unit ?? unit };
        return true;
    }

    private static bool TryGiveLimits(
        Length nominal,
        FitCode code,
        int start,
        [NotNullWhen(true)] out Requirement? requirement,
        [NotNullWhen(false)] out Fault? fault)
    {
        requirement = null;
        if (!Fits.TryResolve(nominal, code, out var limits, out fault))
        {
            fault = fault with { Offset = start };
            return false;
        }

        requirement = new()
        {
            Kind = RequirementKind.Limits,
            Unit = nominal.Unit,
            Nominal = nominal,
            Least = Beyond(nominal, limits.Lower),
            Greatest = Beyond(nominal, limits.Upper),
            Fit = code,
        };
        return true;
    }

    private static Length Beyond(Length nominal, decimal micrometres)
    {
        var deviation = new Length(micrometres * MillimetresInAMicrometre, LengthUnit.Millimetre).In(nominal.Unit);
        return nominal with { Value = nominal.Value + deviation.Value };
    }
}
