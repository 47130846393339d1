using Journal.Core.Model;

namespace Journal.Core.Trade;

/// <summary>How much metal comes off.</summary>
/// <param name="CubicCentimetresPerMinute">Cubic centimetres a minute.</param>
public readonly record struct RemovalRate(decimal CubicCentimetresPerMinute)
{
    private const decimal Pi = 3.1415926535897932384626433833m;
    private const decimal CubicMillimetresInACubicCentimetre = 1000;
    private const decimal CubicCentimetresInACubicInch = 16.387064m;

    /// <summary>Cubic inches a minute; a cubic inch is 16.387064 cm³ exactly.</summary>
    public decimal CubicInchesPerMinute => CubicCentimetresPerMinute / CubicCentimetresInACubicInch;

    /// <summary>
    /// Turning: surface speed × feed per turn × depth of cut on the radius. Parting and grooving feed along the radius, and
    /// there the width of the tool stands for the depth.
    /// </summary>
    public static RemovalRate OfTurning(SurfaceSpeed speed, Length feedPerTurn, Length depth) =>
        new(speed.MetresPerMinute * feedPerTurn.Millimetres * depth.Millimetres);

    /// <summary>Milling: width of cut × depth of cut × feed per minute.</summary>
    public static RemovalRate OfMilling(Length width, Length depth, Length feedPerMinute) =>
        new(width.Millimetres * depth.Millimetres * feedPerMinute.Millimetres / CubicMillimetresInACubicCentimetre);

    /// <summary>Drilling in the solid: the area of the hole × feed per minute.</summary>
    public static RemovalRate OfDrilling(Length diameter, Length feedPerMinute) =>
        new(Pi / 4 * diameter.Millimetres * diameter.Millimetres * feedPerMinute.Millimetres / CubicMillimetresInACubicCentimetre);
}
