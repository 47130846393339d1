using System.Diagnostics.CodeAnalysis;
using Journal.Core.Model;

namespace Journal.Core.Trade;

/// <summary>What has to suit another feature: <c>to suit quill.diameter</c>, <c>to suit quill.diameter +0.01/+0.03</c>.</summary>
internal static class ToSuitText
{
    /// <summary>Reads the feature behind the words, and the deviations from its size if there are any.</summary>
    public static bool TryRead(
        Cursor cursor,
        LengthUnit defaultUnit,
        [NotNullWhen(true)] out Requirement? requirement,
        [NotNullWhen(false)] out Fault? fault)
    {
        requirement = null;
        cursor.SkipBlanks();
        var start = cursor.Position;
        var feature = cursor.TakeWhile(character => character is '.' or '-' or '_' || char.IsLetterOrDigit(character));
        var point = feature.IndexOf('.', StringComparison.Ordinal);
        if (point <= 0 || point == feature.Length - 1)
        {
            fault = new(
                FaultCode.NotAFeature,
                "It does not say which feature of which part to suit.",
                "Write the part, a dot and the feature: `to suit quill.diameter`.",
                start);
            return false;
        }

        cursor.SkipBlanks();
        requirement = new() { Kind = RequirementKind.ToSuit, Unit = defaultUnit, Suits = feature };
        fault = null;
        return cursor.AtEnd || TryReadBeyond(cursor, defaultUnit, ref requirement, out fault);
    }

    private static bool TryReadBeyond(Cursor cursor, LengthUnit defaultUnit, ref Requirement? requirement, [NotNullWhen(false)] out Fault? fault)
    {
        if (!ToleranceText.Comes(cursor))
        {
            requirement = null;
            return LengthText.TryEnd(cursor, out fault);
        }

        if (!ToleranceText.TryTake(cursor, out var beyond, out fault)
            || !LengthText.TryEnd(cursor, out fault)
            || !OneUnit.TryAgree([beyond.First, beyond.Second], defaultUnit, out var unit, out fault))
        {
            requirement = null;
            return false;
        }

        requirement = requirement! with { Unit = unit, LeastBeyond = new(beyond.Lower, unit), GreatestBeyond = new(beyond.Upper, unit) };
        return true;
    }
}
