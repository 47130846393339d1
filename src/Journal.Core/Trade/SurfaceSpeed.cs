using Journal.Core.Model;

namespace Journal.Core.Trade;

/// <summary>How fast the cutting edge meets the work.</summary>
/// <param name="MetresPerMinute">Metres a minute.</param>
public readonly record struct SurfaceSpeed(decimal MetresPerMinute) : IComparable<SurfaceSpeed>
{
    private const decimal Pi = 3.1415926535897932384626433833m;
    private const decimal MillimetresInAMetre = 1000;
    private const decimal MetresInAFoot = 0.3048m;

    /// <summary>Feet a minute; the international foot is 0.3048 m exactly.</summary>
    public decimal FeetPerMinute => MetresPerMinute / MetresInAFoot;

    /// <summary>
    /// π·d·n: the circumference times the speed (in every machinist's handbook).
    /// </summary>
    /// <param name="diameter">Of the work in turning, of the cutter in milling and drilling.</param>
    /// <param name="rpm">Revolutions a minute.</param>
    public static SurfaceSpeed Of(Length diameter, decimal rpm) => new(Pi * diameter.Millimetres * rpm / MillimetresInAMetre);

    /// <inheritdoc/>
    public int CompareTo(SurfaceSpeed other) => MetresPerMinute.CompareTo(other.MetresPerMinute);
}
