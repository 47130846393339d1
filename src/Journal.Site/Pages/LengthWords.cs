using System.Globalization;
using Journal.Core.Trade;

namespace Journal.Site.Pages;

/// <summary>Lengths on pages, in both units.</summary>
internal static class LengthWords
{
    /// <summary>A length in its own unit and, in brackets, in the other.</summary>
    public static string Both(Length length)
    {
        var (inch, millimetres) = (length.In(LengthUnit.Inch).Value.ToString("0.####", CultureInfo.InvariantCulture), length.Millimetres.ToString("0.###", CultureInfo.InvariantCulture));
        return length.Unit == LengthUnit.Inch ? $"{inch} in [{millimetres} mm]" : $"{millimetres} mm [{inch} in]";
    }
}
