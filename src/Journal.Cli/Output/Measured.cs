using Journal.Core.Model;

namespace Journal.Cli.Output;

/// <summary>Lengths and speeds as numbers for spreadsheets and programs: no more digits than mean anything.</summary>
internal static class Measured
{
    private const int DecimalsOfAnInch = 6;
    private const int DecimalsOfAMillimetre = 4;
    private const int DecimalsOfARate = 3;

    /// <summary>A length in a unit, with the digits it was written with, else to a tenth of a micrometre or so.</summary>
    public static decimal? Number(Length? length, LengthUnit unit)
    {
        var most = unit == LengthUnit.Inch ? DecimalsOfAnInch : DecimalsOfAMillimetre;
        return length?.In(unit) is { } size ? size.Decimals > most ? size.Rounded(most).Value : size.Value : null;
    }

    /// <summary>A speed or another rate.</summary>
    public static decimal? Rate(decimal? rate) => rate is { } number ? decimal.Round(number, DecimalsOfARate) : null;

    /// <summary>A unit as journal.yaml writes it.</summary>
    public static string Word(LengthUnit unit) => unit == LengthUnit.Inch ? "inch" : "mm";
}
