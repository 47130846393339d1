using Journal.Core.Model;
using Journal.Core.Parsing.Yaml;
using Journal.Core.Trade;

namespace Journal.Core.Parsing.Problems;

/// <summary>Turns the faults of dimensions, fits, threads and feeds into problems with their places.</summary>
internal static class DimensionFaults
{
    /// <summary>Reports a fault in the value of a key.</summary>
    public static void Report(ProblemLog log, string key, TextNode value, Fault fault) =>
        log.Add(KindOf(fault.Code), PlaceIn(value, fault.Offset), value.Text.Trim(), key, fault.What, fault.Remedy);

    private static ProblemKind KindOf(FaultCode code) => code switch
    {
        FaultCode.LikelySlip => ProblemTable.LikelySlip,
        FaultCode.FeedPerWhat => ProblemTable.FeedPerWhat,
        FaultCode.MissingUnit => ProblemTable.UnitMissing,
        FaultCode.UnknownFitLetter or FaultCode.UnknownFitGrade or FaultCode.NoSuchFit => ProblemTable.NotAFit,
        _ => ProblemTable.NotADimension,
    };

    /// <summary>
    /// The place of a character of a value. Where quotes, escapes or line ends make what is written longer than what it
    /// says, the beginning of the value must do.
    /// </summary>
    private static Place PlaceIn(TextNode value, int offset)
    {
        var blanks = value.Text.Length - value.Text.TrimStart().Length;
        return value.IsVerbatim ? value.Place with { Column = value.Place.Column + (value.IsQuoted ? 1 : 0) + blanks + offset } : value.Place;
    }
}
