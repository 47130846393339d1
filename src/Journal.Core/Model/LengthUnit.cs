namespace Journal.Core.Model;

/// <summary>The unit of a drawing.</summary>
public enum LengthUnit
{
    /// <summary>mm.</summary>
    Millimetre,

    /// <summary>The international inch of 1959: 25.4 mm exactly.</summary>
    Inch,
}

/// <summary>How units are written.</summary>
public static class LengthUnits
{
    /// <summary>The unit's symbol: <c>mm</c> or <c>in</c>.</summary>
    public static string Symbol(this LengthUnit unit) => unit == LengthUnit.Inch ? "in" : "mm";
}
