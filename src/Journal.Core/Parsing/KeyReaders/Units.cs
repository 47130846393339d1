using Journal.Core.Model;

namespace Journal.Core.Parsing.KeyReaders;

/// <summary>The units of length as makers write them.</summary>
internal enum Units
{
    Mm,
    Inch,
}

/// <summary>From what is written to what it means.</summary>
internal static class UnitsMeaning
{
    /// <summary>The unit of lengths that it stands for.</summary>
    public static LengthUnit ToUnit(this Units units) => units == Units.Inch ? LengthUnit.Inch : LengthUnit.Millimetre;
}
