using Journal.Core.Model;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Quantities;

/// <summary>A number with what it counts.</summary>
/// <param name="Kind">What it counts; none for a bare number.</param>
/// <param name="Value">Minutes, a length in <paramref name="Unit"/>, turns a minute, money, or the bare number.</param>
/// <param name="Unit">The unit of a length.</param>
/// <param name="First">Its first token.</param>
/// <param name="Next">The token behind it.</param>
internal sealed record Quantity(UnitKind Kind, decimal Value, LengthUnit Unit, int First, int Next)
{
    /// <summary>Whether it is a difference from a size that was not said: “three thou under”.</summary>
    public bool IsDeviation { get; init; }

    /// <summary>Whether it is time by the clock: “from half six to nine”.</summary>
    public bool IsStretch { get; init; }

    /// <summary>Whether a fraction was said.</summary>
    public bool IsFraction { get; init; }

    /// <summary>Whether it was said as a pair, the hundreds going without saying: “five fifty”.</summary>
    public bool IsPair { get; init; }

    /// <summary>Whether the words leave it open: “a couple of hours”, “an hour or two”.</summary>
    public bool IsVague { get; init; }

    /// <summary>The worth of the unit, so that a correction without a unit can take it over.</summary>
    public UnitWord? Said { get; init; }

    public Length Length => new(Value, Unit);

    /// <summary>Whole minutes, rounded half up.</summary>
    public int Minutes => (int)decimal.Round(Value, MidpointRounding.AwayFromZero);
}
