using System.Diagnostics.CodeAnalysis;
using Journal.Core.Model;

namespace Journal.Core.Trade;

/// <summary>The one unit of a requirement.</summary>
internal static class OneUnit
{
    /// <summary>
    /// The unit that all measures agree on: the one written with any of them, else the drawing's. Two different ones, or a
    /// fraction in a drawing in millimetres, are faults: inch and millimetre never mix silently.
    /// </summary>
    public static bool TryAgree(IReadOnlyList<Measure> measures, LengthUnit defaultUnit, out LengthUnit unit, [NotNullWhen(false)] out Fault? fault)
    {
        var written = measures.Where(measure => measure.Unit is not null).ToList();
        var agreed = unit = written.Count > 0 ? written[0].Unit!.Value : defaultUnit;
        if (written.Find(measure => measure.Unit != agreed) is { Unit: not null } other)
        {
            fault = new(
                FaultCode.MixedUnits,
                "Inches and millimetres are mixed.",
                "Use one unit for all of it, and write it once at the end.",
                other.Start);
            return false;
        }

        foreach (var measure in measures)
        {
            if (!LengthText.TryGiveUnit(measure with { Unit = measure.Unit ?? (written.Count > 0 ? agreed : null) }, defaultUnit, out _, out fault))
            {
                return false;
            }
        }

        fault = null;
        return true;
    }
}
