namespace Journal.Core.Trade;

/// <summary>
/// A length with its unit and the digits it was written with. Lengths in different units never mix silently:
/// <see cref="In"/> converts and says so.
/// </summary>
/// <param name="Value">The number in <paramref name="Unit"/>; may be negative, as a deviation is.</param>
/// <param name="Unit">The unit.</param>
public readonly record struct Length(decimal Value, LengthUnit Unit)
{
    /// <summary>The international inch in millimetres, exactly (agreed 1958, in force 1 July 1959).</summary>
    public const decimal MillimetresInAnInch = 25.4m;

    /// <summary>The same length in another unit.</summary>
    public Length In(LengthUnit unit) => (Unit, unit) switch
    {
        (LengthUnit.Inch, LengthUnit.Millimetre) => new(Value * MillimetresInAnInch, unit),
        (LengthUnit.Millimetre, LengthUnit.Inch) => new(Value / MillimetresInAnInch, unit),
        _ => this,
    };

    /// <summary>The length in millimetres.</summary>
    public decimal Millimetres => In(LengthUnit.Millimetre).Value;
}
