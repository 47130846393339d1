using System.Globalization;
using Journal.Core.Model;

namespace Journal.Cli.Wording;

/// <summary>Parts of a whole.</summary>
internal static class Share
{
    private static readonly (double Size, string Words)[] Fractions =
    [
        (0.1, "a tenth"), (0.2, "a fifth"), (0.25, "a quarter"), (1.0 / 3, "a third"), (0.4, "two fifths"), (0.5, "half"),
        (0.6, "three fifths"), (2.0 / 3, "two thirds"), (0.75, "three quarters"), (0.8, "four fifths"), (0.9, "nine tenths"),
    ];

    /// <summary>The nearest fraction that people say: “a third”; “little” below one in twenty, “nearly all” above nineteen.</summary>
    /// <param name="share">0 to 1.</param>
    public static string InWords(double share) => share switch
    {
        < 0.05 => "little",
        >= 0.9999 => "all",
        > 0.95 => "nearly all",
        _ => Fractions.MinBy(fraction => Math.Abs(fraction.Size - share)).Words,
    };

    /// <summary>Per cent for a cell: <c>33 %</c>.</summary>
    public static string Percent(double share) => string.Create(CultureInfo.InvariantCulture, $"{100 * share:0} %");

    /// <summary>A time as a share of another; 0 of nothing.</summary>
    public static double Of(Minutes part, Minutes whole) => whole == Minutes.Zero ? 0 : (double)part.Count / whole.Count;
}
