using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using Journal.Core.Model;

namespace Journal.Core.Trade;

/// <summary>How far the limits of size lie from the nominal size, in micrometres; whole numbers or halves.</summary>
/// <param name="Lower">The lower limit deviation.</param>
/// <param name="Upper">The upper limit deviation, above the lower.</param>
public readonly record struct LimitDeviations(decimal Lower, decimal Upper);

/// <summary>
/// Limits and fits by ISO 286-1 and -2 for sizes over 0 up to 500 mm: grades 4 to 13, holes D to S, shafts d to s.
/// The numbers stand in <c>shared/fits.yaml</c> with the source of each.
/// </summary>
public static class Fits
{
    /// <summary>The largest nominal size, in millimetres.</summary>
    public const decimal LargestSize = 500;

    private static readonly Lazy<FitTable> Table = new(FitTable.Load);

    /// <summary>The letters known, of holes and of shafts.</summary>
    public static IReadOnlyCollection<string> Letters => Table.Value.Letters;

    /// <summary>Finds the limit deviations of a nominal size.</summary>
    /// <param name="nominal">The nominal size.</param>
    /// <param name="code">The tolerance class.</param>
    /// <param name="limits">The limit deviations in micrometres.</param>
    /// <param name="fault">What is wrong where the standard has none: the size, or the class for that size.</param>
    public static bool TryResolve(Length nominal, FitCode code, out LimitDeviations limits, [NotNullWhen(false)] out Fault? fault)
    {
        limits = default;
        var size = nominal.Millimetres;
        if (size is <= 0 or > LargestSize)
        {
            fault = new(
                FaultCode.SizeOutOfRange,
                $"{nominal} is outside the table of fits, which goes from 0 to 500 mm.",
                "Write the limits: `12 +0.018/0`.",
                0);
            return false;
        }

        if (Table.Value.Find(size, code) is not { } found)
        {
            fault = new(
                FaultCode.NoSuchFit,
                string.Create(CultureInfo.InvariantCulture, $"ISO 286 has no class {code} for {nominal}."),
                "Check the code on the drawing, or write the limits: `12 +0.018/0`.",
                0);
            return false;
        }

        (limits, fault) = (found, null);
        return true;
    }
}
