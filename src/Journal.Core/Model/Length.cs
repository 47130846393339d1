using System.Globalization;

namespace Journal.Core.Model;

/// <summary>
/// A length with its unit and the digits it was written with: <c>12.50 mm</c> stays <c>12.50 mm</c>, though it equals
/// <c>12.5 mm</c>. Lengths in different units never mix silently: <see cref="In"/> converts and says so.
/// </summary>
/// <param name="Value">The number in <paramref name="Unit"/>; may be negative, as a deviation is.</param>
/// <param name="Unit">The unit.</param>
public readonly record struct Length(decimal Value, LengthUnit Unit)
{
    /// <summary>The international inch in millimetres, exactly (agreed 1958, in force 1 July 1959).</summary>
    public const decimal MillimetresInAnInch = 25.4m;

    /// <summary>
    /// Where millimetres over 25.4 do not come out, the inches are cut here, three digits beyond the finest length that can
    /// be written, so that sizes that are equal in millimetres are equal in inches.
    /// </summary>
    private const int DecimalsOfAQuotient = 15;

    /// <summary>The length in millimetres.</summary>
    public decimal Millimetres => In(LengthUnit.Millimetre).Value;

    /// <summary>How many decimals it was written with.</summary>
    public int Decimals => Value.Scale;

    /// <summary>The same length in another unit.</summary>
    public Length In(LengthUnit unit) => (Unit, unit) switch
    {
        (LengthUnit.Inch, LengthUnit.Millimetre) => new(Value * MillimetresInAnInch, unit),
        (LengthUnit.Millimetre, LengthUnit.Inch) => new(decimal.Round(Value / MillimetresInAnInch, DecimalsOfAQuotient), unit),
        _ => this,
    };

    /// <summary>The length rounded to a number of decimals, halves away from zero, and padded with zeros up to it.</summary>
    public Length Rounded(int decimals)
    {
        var rounded = decimal.Round(Value, decimals, MidpointRounding.AwayFromZero);
        return this with { Value = rounded + new decimal(0, 0, 0, isNegative: false, (byte)decimals) };
    }

    /// <summary>The length with its unit and the digits it was written with: <c>12.50 mm</c>, <c>0.4995 in</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Value} {Unit.Symbol()}");

    /// <summary>
    /// The length as a page shows it. What was converted before is cut to what can be measured: six decimals of an inch,
    /// which 64ths need, and four of a millimetre.
    /// </summary>
    public Length Shown
    {
        get
        {
            var most = Unit == LengthUnit.Inch ? 6 : 4;
            return Decimals > most ? Rounded(most) : this;
        }
    }

    /// <summary>The same length in the other unit, with as many decimals as the digits of the drawing are worth.</summary>
    public Length Beside
    {
        get
        {
            var other = Unit == LengthUnit.Inch ? LengthUnit.Millimetre : LengthUnit.Inch;
            return In(other).Rounded(DecimalsIn(other));
        }
    }

    /// <summary>Both units side by side, the one it was written in first: <c>12.00 mm (0.4724 in)</c>.</summary>
    public string ToStringInBoth() => string.Create(CultureInfo.InvariantCulture, $"{Shown} ({Beside})");

    /// <summary>
    /// The decimals by which another unit is no coarser than the digits written, since 0.0001 in is 0.00254 mm:
    /// one fewer in millimetres, two more in inches; at least 2 and 3, at most 3 and 5.
    /// </summary>
    private int DecimalsIn(LengthUnit other) =>
        other == LengthUnit.Millimetre ? Math.Clamp(Decimals - 1, 2, 3) : Math.Clamp(Decimals + 2, 3, 5);
}
