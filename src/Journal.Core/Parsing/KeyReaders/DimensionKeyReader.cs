using Journal.Core.Model;
using Journal.Core.Parsing.Problems;
using Journal.Core.Parsing.Yaml;
using Journal.Core.Trade;

namespace Journal.Core.Parsing.KeyReaders;

/// <summary>Reads the lengths that stand outside of readings and settings.</summary>
internal static class DimensionKeyReader
{
    /// <summary>What a tool can tell apart. The crib belongs to no drawing, so the unit must be written.</summary>
    public static Length? Resolution(Fields fields, FileScope scope)
    {
        const string Key = "resolution";
        if (fields.Text(Key) is not { } text)
        {
            return null;
        }

        if (LengthText.TryParse(text, out var length, out var fault) && (fault = MustBePositive(length)) is null)
        {
            return length;
        }

        DimensionFaults.Report(scope.Log, Key, (TextNode)fields[Key]!, fault!);
        return null;
    }

    /// <summary>The general tolerance of a drawing: <c>0.005</c>, <c>±0.1</c>, <c>0.1 mm</c>.</summary>
    public static Length? GeneralTolerance(Fields fields, FileScope scope, LengthUnit units)
    {
        const string Key = "general-tolerance";
        if (fields.Text(Key) is not { } text)
        {
            return null;
        }

        var bare = text.TrimStart('±');
        if (LengthText.TryParse(bare, units, out var length, out var fault) && (fault = MustBePositive(length)) is null)
        {
            return length;
        }

        DimensionFaults.Report(scope.Log, Key, (TextNode)fields[Key]!, fault! with { Offset = fault.Offset + text.Length - bare.Length });
        return null;
    }

    private static Fault? MustBePositive(Length length) =>
        length.Value > 0 ? null : new(FaultCode.NotPositive, "It must be more than zero.", "Write it as on the drawing or the tool, or leave out the key.", 0);
}
