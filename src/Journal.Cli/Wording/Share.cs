using System.Globalization;
using Journal.Core.Model;

namespace Journal.Cli.Wording;

/// <summary>Parts of a whole.</summary>
internal static class Share
{
    /// <summary>Per cent for a cell: <c>33 %</c>.</summary>
    public static string Percent(double share) => string.Create(CultureInfo.InvariantCulture, $"{100 * share:0} %");

    /// <summary>Whole per cent for a cell.</summary>
    public static string Percent(int percent) => string.Create(CultureInfo.InvariantCulture, $"{percent} %");

    /// <summary>A time as a share of another; 0 of nothing.</summary>
    public static double Of(Minutes part, Minutes whole) => whole == Minutes.Zero ? 0 : (double)part.Count / whole.Count;
}
