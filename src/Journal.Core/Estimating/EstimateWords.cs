using System.Globalization;
using Journal.Core.Wording;

namespace Journal.Core.Estimating;

/// <summary>An estimate in words that a tired person understands.</summary>
public static class EstimateWords
{
    // Closer than this is as good as right; nobody guesses better.
    private const double AboutRight = 0.05;

    /// <summary>“Even odds (50 %): 118 h, done by 4 March. Eight in ten (80 %): 160 h, by 20 May.” Of a build under way, the hours still to come.</summary>
    /// <param name="estimate">The estimate.</param>
    /// <param name="written">How a day is written.</param>
    public static string Odds(Estimate estimate, Func<DateOnly, string> written)
    {
        var (hours, more) = estimate.Left is { } left ? (left, " more") : (estimate.Hours, "");
        var even = By(", done by ", estimate.Finish?.P50, written);
        var eight = By(", by ", estimate.Finish?.P80, written);
        return $"Even odds (50 %): {Hours(hours.P50)}{more}{even}. Eight in ten (80 %): {Hours(hours.P80)}{more}{eight}.";
    }

    /// <summary>“The work took 1.3 times your guesses; a third of the extra time was fixtures and putting right.” Null where no finished part had a guess.</summary>
    /// <param name="estimate">The estimate.</param>
    /// <param name="guesses">Whose they are, such as <c>your guesses</c>.</param>
    public static string? Guesses(Estimate estimate, string guesses) => estimate.Overrun is not { } overrun ? null
        : Math.Abs(overrun.Ratio - 1) < AboutRight ? $"{Casing.Capital(guesses)} were about right."
        : overrun.Ratio < 1 ? Invariant($"The work took only {overrun.Ratio:0.0} times {guesses}.")
        : Invariant($"The work took {overrun.Ratio:0.0} times {guesses}{(overrun.ShareOfOverrun is { } share ? $"; {Fraction.InWords(share)} of the extra time was fixtures and putting right" : "")}.");

    /// <summary>How the past fared: “Tested on finished work: 16 of 20 parts within the 80 % range, 11 of 20 within the 50 % range.”</summary>
    public static string Backtest(Estimate estimate)
    {
        var test = estimate.Backtest;
        if (test.Parts == 0 && test.Kits == 0)
        {
            return "There is too little finished work to test this on.";
        }

        var parts = test.Parts == 0 ? null : Tried(test.Parts, "part", test.PartsCovered80!.Value, test.PartsCovered50!.Value);
        var kits = test.Kits == 0 ? null : Tried(test.Kits, "build", test.Covered80!.Value, test.Covered50!.Value);
        return $"Tested on finished work: {string.Join("; ", new[] { parts, kits }.OfType<string>())}.";
    }

    /// <summary>Hours as one says them: whole from ten on.</summary>
    public static string Hours(double hours) => hours >= 9.95
        ? Invariant($"{Math.Round(hours, MidpointRounding.AwayFromZero):0} h")
        : Invariant($"{Math.Round(hours, 1, MidpointRounding.AwayFromZero):0.#} h");

    /// <summary>A day as one says it, with its year only where it lies a year or more after the start.</summary>
    public static string Day(DateOnly day, DateOnly start) => day.ToString(day < start.AddYears(1) ? "d MMMM" : "d MMMM yyyy", CultureInfo.InvariantCulture);

    private static string Tried(int count, string what, double in80, double in50) => Invariant(
        $"{Math.Round(in80 * count):0} of {Basis.Count(count, what)} within the 80 % range, {Math.Round(in50 * count):0} of {count} within the 50 % range");

    private static string By(string words, DateOnly? day, Func<DateOnly, string> written) => day is { } known ? words + written(known) : "";

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);
}
