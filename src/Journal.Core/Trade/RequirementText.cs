using System.Diagnostics.CodeAnalysis;
using Journal.Core.Model;

namespace Journal.Core.Trade;

/// <summary>Requirements as drawings write them.</summary>
internal static class RequirementText
{
    /// <summary>Signs and words for a diameter or a radius, which say nothing about the size.</summary>
    private static readonly string[] Prefixes = ["ø", "diameter", "dia.", "dia", "radius", "rad.", "rad", "R"];

    /// <summary>Reads a requirement and nothing else.</summary>
    public static bool TryParse(
        string text,
        LengthUnit defaultUnit,
        Length? generalTolerance,
        [NotNullWhen(true)] out Requirement? requirement,
        [NotNullWhen(false)] out Fault? fault)
    {
        requirement = null;
        if (!LengthText.TryBegin(text, out var cursor, out fault))
        {
            return false;
        }

        if (cursor.TakeWord("to suit") || cursor.TakeWord("suit"))
        {
            return ToSuitText.TryRead(cursor, defaultUnit, out requirement, out fault);
        }

        if (TakeBound(cursor) is { } kind)
        {
            return TryReadBound(cursor, kind, defaultUnit, out requirement, out fault);
        }

        if (Threads.LooksLikeOne(cursor.Rest))
        {
            requirement = Threads.TryParse(cursor.Rest, out var thread, out fault)
                ? new() { Kind = RequirementKind.Thread, Unit = defaultUnit, Thread = thread }
                : null;
            return requirement is not null;
        }

        _ = Prefixes.Any(cursor.TakeWord);
        return TryReadSize(cursor, defaultUnit, generalTolerance, out requirement, out fault);
    }

    private static RequirementKind? TakeBound(Cursor cursor) =>
        cursor.TakeWord("max.") || cursor.TakeWord("max") || cursor.Take("≤") ? RequirementKind.AtMost
        : cursor.TakeWord("min.") || cursor.TakeWord("min") || cursor.Take("≥") ? RequirementKind.AtLeast
        : null;

    /// <summary><c>max 0.02</c>.</summary>
    private static bool TryReadBound(
        Cursor cursor,
        RequirementKind kind,
        LengthUnit defaultUnit,
        [NotNullWhen(true)] out Requirement? requirement,
        [NotNullWhen(false)] out Fault? fault)
    {
        requirement = null;
        return LengthText.TryTake(cursor, out var size, out fault) && TryEndBound(cursor, kind, size, defaultUnit, out requirement, out fault);
    }

    private static bool TryEndBound(
        Cursor cursor,
        RequirementKind kind,
        Measure size,
        LengthUnit defaultUnit,
        [NotNullWhen(true)] out Requirement? requirement,
        [NotNullWhen(false)] out Fault? fault)
    {
        requirement = null;
        if (!LengthText.TryEnd(cursor, out fault) || !LengthText.TryGiveUnit(size, defaultUnit, out var bound, out fault))
        {
            return false;
        }

        requirement = new()
        {
            Kind = kind,
            Unit = bound.Unit,
            Least = kind == RequirementKind.AtLeast ? bound : null,
            Greatest = kind == RequirementKind.AtMost ? bound : null,
        };
        return true;
    }

    private static bool TryReadSize(
        Cursor cursor,
        LengthUnit defaultUnit,
        Length? generalTolerance,
        [NotNullWhen(true)] out Requirement? requirement,
        [NotNullWhen(false)] out Fault? fault)
    {
        requirement = null;
        if (!LengthText.TryTake(cursor, out var size, out fault))
        {
            return false;
        }

        cursor.SkipBlanks();
        return ToleranceText.Comes(cursor) ? TryReadTolerance(cursor, size, defaultUnit, out requirement, out fault)
            : LimitsFollow(cursor) ? TryReadLimits(cursor, size, defaultUnit, out requirement, out fault)
            : TakeBound(cursor) is { } kind ? TryEndBound(cursor, kind, size, defaultUnit, out requirement, out fault)
            : char.IsAsciiLetter(cursor.Next) ? FitText.TryRead(cursor, size, defaultUnit, out requirement, out fault)
            : TryReadBare(cursor, size, defaultUnit, generalTolerance, out requirement, out fault);
    }

    private static bool LimitsFollow(Cursor cursor) => cursor.Next == '-' || (cursor.Next is 't' or 'T' && cursor.At(1) is 'o' or 'O');

    /// <summary><c>12 ±0.02</c>, <c>12 +0.018/0</c>.</summary>
    private static bool TryReadTolerance(
        Cursor cursor,
        Measure size,
        LengthUnit defaultUnit,
        [NotNullWhen(true)] out Requirement? requirement,
        [NotNullWhen(false)] out Fault? fault)
    {
        requirement = null;
        if (!ToleranceText.TryTake(cursor, out var tolerance, out fault)
            || !LengthText.TryEnd(cursor, out fault)
            || !OneUnit.TryAgree([size, tolerance.First, tolerance.Second], defaultUnit, out var unit, out fault))
        {
            return false;
        }

        var nominal = new Length(size.Value, unit);
        requirement = new()
        {
            Kind = RequirementKind.Limits,
            Unit = unit,
            Nominal = nominal,
            Least = nominal with { Value = size.Value + tolerance.Lower },
            Greatest = nominal with { Value = size.Value + tolerance.Upper },
        };
        return true;
    }

    /// <summary><c>11.98-12.02</c>, <c>11.98 to 12.02</c>. A nominal size in the middle serves for the deviation.</summary>
    private static bool TryReadLimits(
        Cursor cursor,
        Measure least,
        LengthUnit defaultUnit,
        [NotNullWhen(true)] out Requirement? requirement,
        [NotNullWhen(false)] out Fault? fault)
    {
        requirement = null;
        _ = cursor.TakeWord("to") || cursor.Take("-");
        if (!LengthText.TryTake(cursor, out var greatest, out fault)
            || !LengthText.TryEnd(cursor, out fault)
            || !OneUnit.TryAgree([least, greatest], defaultUnit, out var unit, out fault))
        {
            return false;
        }

        if (least.Value >= greatest.Value)
        {
            fault = new(
                FaultCode.LeastAboveGreatest,
                "The smaller size is not below the larger.",
                "Write the smaller one first: `11.98-12.02`.",
                greatest.Start);
            return false;
        }

        requirement = new()
        {
            Kind = RequirementKind.Limits,
            Unit = unit,
            Nominal = new((least.Value + greatest.Value) / 2, unit),
            Least = new(least.Value, unit),
            Greatest = new(greatest.Value, unit),
        };
        return true;
    }

    /// <summary>A bare size: within the general tolerance if there is one.</summary>
    private static bool TryReadBare(
        Cursor cursor,
        Measure size,
        LengthUnit defaultUnit,
        Length? generalTolerance,
        [NotNullWhen(true)] out Requirement? requirement,
        [NotNullWhen(false)] out Fault? fault)
    {
        requirement = null;
        if (!LengthText.TryEnd(cursor, out fault) || !LengthText.TryGiveUnit(size, defaultUnit, out var nominal, out fault))
        {
            return false;
        }

        var room = generalTolerance?.In(nominal.Unit).Value;
        requirement = new()
        {
            Kind = room is null ? RequirementKind.Size : RequirementKind.Limits,
            Unit = nominal.Unit,
            Nominal = nominal,
            Least = room is null ? null : nominal with { Value = nominal.Value - room.Value },
            Greatest = room is null ? null : nominal with { Value = nominal.Value + room.Value },
            IsByGeneralTolerance = room is not null,
        };
        return true;
    }
}
