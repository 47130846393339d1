namespace Journal.Core.Wording;

/// <summary>Parts of a whole as people say them.</summary>
public static class Fraction
{
    private static readonly (double Size, string Words)[] Usual =
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
        _ => Usual.MinBy(fraction => Math.Abs(fraction.Size - share)).Words,
    };
}
