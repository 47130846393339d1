namespace Journal.Core.Trade;

/// <summary>What can be wrong with a length, a requirement, a thread, a feed.</summary>
public enum FaultCode
{
    /// <summary>Nothing was written.</summary>
    Empty,

    /// <summary>Far too long for what it is.</summary>
    TooLong,

    /// <summary>A number was expected.</summary>
    NotANumber,

    /// <summary>A decimal comma: some read it as thousands.</summary>
    CommaDecimal,

    /// <summary>A fraction with nothing below the line.</summary>
    DividedByZero,

    /// <summary>A unit that is not used here.</summary>
    UnknownUnit,

    /// <summary>It cannot be told which unit is meant.</summary>
    MissingUnit,

    /// <summary>Inch and millimetre in one requirement.</summary>
    MixedUnits,

    /// <summary>A tolerance that cannot be read.</summary>
    BadTolerance,

    /// <summary>The least size is above the greatest, or equal to it.</summary>
    LeastAboveGreatest,

    /// <summary>A letter that is not one of the fits D to S.</summary>
    UnknownFitLetter,

    /// <summary>A grade other than 4 to 13.</summary>
    UnknownFitGrade,

    /// <summary>The standard has no such class for this size.</summary>
    NoSuchFit,

    /// <summary>A size outside of what the standard or the trade covers.</summary>
    SizeOutOfRange,

    /// <summary>A thread that the tables do not know.</summary>
    UnknownThread,

    /// <summary>Not <c>part.feature</c>.</summary>
    NotAFeature,

    /// <summary>Something stands behind what was understood.</summary>
    LeftOver,

    /// <summary>A thread is judged by <c>go</c> or <c>no-go</c>.</summary>
    GaugeWanted,

    /// <summary>A feed that does not say per what.</summary>
    FeedPerWhat,

    /// <summary>Must be more than zero.</summary>
    NotPositive,

    /// <summary>Ten times, or 25.4 times, off: likely a slip of the pen.</summary>
    LikelySlip,
}

/// <summary>
/// Why a text of the trade cannot be taken as it stands. Never thrown: whoever asked decides what to tell the maker.
/// </summary>
/// <param name="Code">Which fault.</param>
/// <param name="What">What is wrong, one sentence.</param>
/// <param name="Remedy">What to write instead, one sentence.</param>
/// <param name="Offset">The character at fault, counted from 0 in UTF-16 units of the text given.</param>
public sealed record Fault(FaultCode Code, string What, string Remedy, int Offset);
