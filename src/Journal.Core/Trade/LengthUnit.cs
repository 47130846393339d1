namespace Journal.Core.Trade;

/// <summary>The unit of a drawing.</summary>
public enum LengthUnit
{
    /// <summary>mm.</summary>
    Millimetre,

    /// <summary>The international inch of 1959: 25.4 mm exactly.</summary>
    Inch,
}
