using Journal.Core.Estimating;

namespace Journal.Core.Tests.Estimating.Reference;

/// <summary>A kit as the program and the reference estimate it.</summary>
internal sealed record Compared(Kit Kit, EstimateResult Program, ReferenceEstimate Reference, ReferenceDraws Draws)
{
    /// <summary>Draws of the program; fewer than it takes by itself, for the sake of time.</summary>
    public const int ProgramDraws = 2000;

    /// <summary>Draws of the reference.</summary>
    public const int ReferenceDraws = 10_000;

    public Core.Estimating.Estimate Estimate => Program.Estimate!;

    public required double[] SortedTotals { get; init; }

    public required double[] SortedWhole { get; init; }

    /// <summary>Numbers of the days on which it is done, without end where that takes more than a century; none without a pace.</summary>
    public required double[] SortedDays { get; init; }

    public static Compared Of(Kit kit)
    {
        var reference = new ReferenceEstimate(kit);
        var draws = reference.IsPossible ? reference.Draw(ReferenceDraws) : new ReferenceDraws([], [], []);
        return new Compared(kit, ReferenceJournal.Estimate(kit, ProgramDraws), reference, draws)
        {
            SortedTotals = [.. draws.Totals.Order()],
            SortedWhole = [.. draws.Whole.Order()],
            SortedDays = [.. Days(kit, draws.Totals.Take(ReferenceDraws / 3).Select(hours => hours - reference.SpentHours)).Order()],
        };
    }

    private static IEnumerable<double> Days(Kit kit, IEnumerable<double> hoursToCome)
    {
        var dates = new ReferenceDates(kit);
        return dates.Weeks.Length == 0
            ? []
            : dates.Days(hoursToCome, new ReferenceChance(kit.Seed + 1000)).Select(day => day?.DayNumber ?? double.PositiveInfinity);
    }
}

/// <summary>Where program and reference differ, in words that name the kit, the part and both numbers.</summary>
internal static class ReferenceDifferences
{
    private const double Near = 0.002;

    /// <summary>Numbers that differ by more than 0.2 % and the rounding to a thousandth.</summary>
    public static IEnumerable<string> Numbers(Compared one, string what, params (string Name, double Program, double Reference)[] numbers) =>
        from number in numbers
        where !(Math.Abs(number.Program - number.Reference) <= Near * Math.Abs(number.Reference) + 0.0006)
        select $"{one.Kit.Name}, {what}, {number.Name}: program {number.Program:0.#####}, reference {number.Reference:0.#####}";

    /// <summary>A range of hours, given the hours at each share by the reference.</summary>
    public static IEnumerable<string> Range(Compared one, string what, Func<double, double> reference, params (double P, double Program)[] hours) =>
        Numbers(one, what, [.. hours.Select(at => ($"{100 * at.P:0} %", at.Program, reference(at.P)))]);

    /// <summary>Hours that lie further from their place among the sorted draws of the reference than chance explains.</summary>
    public static IEnumerable<string> Places(Compared one, string what, double[] sorted, int draws, params (double P, double Program)[] hours)
    {
        foreach (var (p, program) in hours)
        {
            var below = (double)CountBelow(sorted, program * (1 - Near) - 0.001) / sorted.Length;
            var notAbove = (double)CountBelow(sorted, program * (1 + Near) + 0.001) / sorted.Length;
            var error = Sampling(p, draws, sorted.Length);
            if (below > p + error || notAbove < p - error)
            {
                yield return $"{one.Kit.Name}, {what} at {100 * p:0} %: program {program:0.###} h, which suffices in {100 * below:0.0} to {100 * notAbove:0.0} % of the reference's draws";
            }
        }
    }

    /// <summary>Days likewise: the first by which at least that share of draws is done.</summary>
    public static IEnumerable<string> Days(Compared one)
    {
        foreach (var quantile in one.Estimate.FinishQuantiles)
        {
            var day = quantile.Date?.DayNumber ?? double.PositiveInfinity;
            var outside = Outside(one.SortedDays, day, quantile.P);
            var error = Sampling(quantile.P, Compared.ProgramDraws, one.SortedDays.Length);
            if (Math.Abs(outside) > error)
            {
                yield return $"{one.Kit.Name}, done at {100 * quantile.P:0} %: program {quantile.Date:yyyy-MM-dd}, which is right for {100 * (quantile.P + outside):0.0} % of the reference's draws";
            }
        }
    }

    /// <summary>
    /// How far hours or days lie outside their place among the sorted draws of the reference, as a share of the draws: above 0 if
    /// they are too high.
    /// </summary>
    public static double Outside(double[] sorted, double value, double p)
    {
        var below = (double)CountBelow(sorted, value - 0.0005) / sorted.Length;
        var notAbove = double.IsInfinity(value) ? 1 : (double)CountBelow(sorted, value + 0.0005) / sorted.Length;
        return Math.Max(0, below - p) - Math.Max(0, p - notAbove);
    }

    /// <summary>How many of the sorted values are below one.</summary>
    public static int CountBelow(double[] sorted, double value)
    {
        var (from, to) = (0, sorted.Length);
        while (from < to)
        {
            var middle = (from + to) / 2;
            (from, to) = sorted[middle] < value ? (middle + 1, to) : (from, middle);
        }

        return from;
    }

    /// <summary>Four and a half standard errors of a share found from draws on both sides.</summary>
    private static double Sampling(double p, int draws, int others) => 4.5 * Math.Sqrt(p * (1 - p) * (1.0 / draws + 1.0 / others));
}
