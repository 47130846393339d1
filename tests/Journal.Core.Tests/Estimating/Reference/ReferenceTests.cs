using System.Globalization;

namespace Journal.Core.Tests.Estimating.Reference;

/// <summary>
/// The program against <see cref="ReferenceMethod"/>, which was written from docs/estimating.md alone. Where they differ, one of
/// program and page is wrong.
/// </summary>
public sealed class ReferenceTests
{
    private static readonly Lazy<List<Compared>> All = new(() => [.. ReferenceKits.All.AsParallel().AsOrdered().Select(Compared.Of)]);

    private static IEnumerable<Compared> Estimated => All.Value.Where(one => one.Program.IsEstimate && one.Reference.IsPossible);

    [Fact]
    public void Estimate_OfEveryKit_IsMadeWhereThePageMakesOne() => None(All.Value
        .Where(one => one.Program.IsEstimate != one.Reference.IsPossible)
        .Select(one => $"{one.Kit.Name}: {string.Join("; ", one.Program.Faults)}"));

    [Fact]
    public void History_OfEveryKit_IsThatOfThePage() => None(Estimated.SelectMany(one => ReferenceDifferences.Numbers(one, "history",
        ("parts", one.Estimate.History.Parts, one.Reference.Past.Length),
        ("minutes", one.Estimate.History.Minutes, Math.Round(60 * one.Reference.Past.Sum(part => part.Hours))))));

    [Fact]
    public void Parts_OfEveryKit_HaveTheMiddleAndSpreadOfThePage() => None(Estimated.SelectMany(PartDifferences));

    [Fact]
    public void Totals_OfEveryKit_HaveTheQuantilesOfThePage() => None(Estimated.SelectMany(one => ReferenceDifferences.Places(
        one, "total", one.SortedTotals, Compared.ProgramDraws, [.. one.Estimate.Quantiles.Select(at => (at.P, at.Hours))])));

    [Fact]
    public void Whole_OfEveryKit_HasTheQuantilesOfThePage() => None(Estimated.SelectMany(one => ReferenceDifferences.Places(
        one, "whole", one.SortedWhole, Compared.ProgramDraws, [.. new[] { 0.1, 0.5, 0.9 }.Select(p => (p, Whole(one, p)))])));

    /// <summary>The mean over all kits, as chance hides small differences in one kit and not in two hundred.</summary>
    [Theory]
    [InlineData(0.1)]
    [InlineData(0.5)]
    [InlineData(0.9)]
    public void AllKitsTogether_LieNeitherHigherNorLowerThanThePageSays(double p)
    {
        var paced = Estimated.Where(one => one.Estimate.Finish is not null).ToList();
        Assert.Equal(0, Estimated.Average(one => ReferenceDifferences.Outside(one.SortedTotals, one.Estimate.Quantiles.Single(at => at.P.Equals(p)).Hours, p)), 0.002);
        Assert.Equal(0, Estimated.Average(one => ReferenceDifferences.Outside(one.SortedWhole, Whole(one, p), p)), 0.002);
        Assert.Equal(0, paced.Average(one => ReferenceDifferences.Outside(one.SortedDays, Day(one, p), p)), 0.002);
    }

    [Fact]
    public void Left_OfEveryKit_IsTheTotalLessWhatWasSpent() => None(Estimated.Where(one => !one.Kit.IsPlan).SelectMany(one =>
        ReferenceDifferences.Numbers(one, "left",
            ("minutes so far", one.Estimate.MinutesSoFar ?? 0, Math.Round(60 * one.Reference.SpentHours)),
            ("10 %", one.Estimate.Left?.P10 ?? 0, Math.Max(0, one.Estimate.Hours.P10 - one.Reference.SpentHours)),
            ("90 %", one.Estimate.Left?.P90 ?? 0, Math.Max(0, one.Estimate.Hours.P90 - one.Reference.SpentHours)))));

    [Fact]
    public void Pace_OfEveryKit_IsThatOfThePage() => None(Estimated.SelectMany(one => ReferenceDifferences.Numbers(one, "pace",
        ("hours a week", one.Estimate.HoursAWeek ?? -1, new ReferenceDates(one.Kit).HoursAWeek ?? -1),
        ("start", one.Estimate.Start.DayNumber, new ReferenceDates(one.Kit).Start.DayNumber))));

    [Fact]
    public void Days_OfEveryKit_AreThoseOfThePage() => None(Estimated.SelectMany(DayDifferences));

    [Fact]
    public void BacktestOfParts_OfEveryKit_IsThatOfThePage() => None(Estimated.SelectMany(BacktestDifferences));

    [Fact]
    public void BacktestOfBuilds_OfEveryKit_IsThatOfThePage() => None(Estimated.SelectMany(BuildDifferences));

    [Fact]
    public void GuessesRunOver_OfEveryKit_AreThoseOfThePage() => None(Estimated.SelectMany(one =>
    {
        var guessed = one.Reference.Past.Where(part => part.Guess is not null).ToArray();
        var (taken, guess) = (guessed.Sum(part => part.Hours), guessed.Sum(part => part.Guess!.Value));
        return ReferenceDifferences.Numbers(one, "guesses",
            ("parts", one.Estimate.Overrun?.Parts ?? 0, guessed.Length),
            ("hours taken", one.Estimate.Overrun?.TakenHours ?? 0, taken),
            ("hours guessed", one.Estimate.Overrun?.GuessedHours ?? 0, guess),
            ("ratio", one.Estimate.Overrun?.Ratio ?? 0, guessed.Length == 0 ? 0 : taken / guess),
            ("fixtures", one.Estimate.Overrun?.FixturesAndPuttingRightHours ?? 0, guessed.Sum(part => part.HoursOf("fixture-making"))));
    }));

    [Fact]
    public void MostUncertain_OfEveryKitWithGuesses_AreThoseOfThePage() => None(Estimated
        .Where(one => one.Reference.Open.All(item => item.HasGuess && item.Spent == 0) && one.Reference.Open.Length > 0)
        .SelectMany(UncertaintyDifferences));

    private static IEnumerable<string> PartDifferences(Compared one)
    {
        foreach (var item in one.Reference.Open)
        {
            var what = $"{item.Name}{(item.Spent > 0 ? ", begun" : "")}{(item.HasGuess ? ", with a guess" : "")}";
            var part = one.Estimate.Parts.FirstOrDefault(part => part.Part == item.Name);
            var differences = part is null
                ? [$"{one.Kit.Name}, {what}: not in the program's estimate"]
                : ReferenceDifferences.Range(
                    one, what, p => item.At(p, one.Reference.MeanZ, one.Reference.VarianceZ), (0.1, part.P10), (0.5, part.P50), (0.9, part.P90));
            foreach (var line in differences)
            {
                yield return line;
            }
        }

        foreach (var (part, hours) in one.Reference.Finished)
        {
            var taken = one.Estimate.Parts.Single(other => other.Part == part);
            foreach (var line in ReferenceDifferences.Numbers(one, $"{part}, finished", ("at least", taken.P10, hours), ("at most", taken.P90, hours)))
            {
                yield return line;
            }
        }
    }

    /// <summary>Shares in the variance of 2,000 and of 10,000 draws, which chance moves by some hundredths.</summary>
    private static IEnumerable<string> UncertaintyDifferences(Compared one)
    {
        var named = one.Estimate.MostUncertain;
        var shares = named.Select(part => one.Draws.ShareInVariance(Array.FindIndex(one.Reference.Open, item => item.Name == part.Part))).ToArray();
        foreach (var (part, share) in named.Zip(shares).Where(pair => Math.Abs(pair.First.Share - pair.Second) > 0.12))
        {
            yield return $"{one.Kit.Name}, uncertainty of {part.Part}: program {part.Share:0.000}, reference {share:0.000}";
        }

        if (shares.SkipLast(1).Sum() > 0.62 || (shares.Sum() < 0.38 && named.Count < 5))
        {
            yield return $"{one.Kit.Name}, uncertainty: {named.Count} are named, of {string.Join(", ", shares.Select(share => share.ToString("0.00", CultureInfo.InvariantCulture)))}";
        }
    }

    private static IEnumerable<string> DayDifferences(Compared one) => (one.SortedDays.Length > 0, one.Estimate.Finish is not null) switch
    {
        (true, true) => ReferenceDifferences.Days(one),
        (false, false) => [],
        _ => [$"{one.Kit.Name}: days with one and none with the other"],
    };

    /// <summary>The program's day; without end where it names none.</summary>
    private static double Day(Compared one, double p) => one.Estimate.FinishQuantiles.Single(at => at.P.Equals(p)).Date?.DayNumber ?? double.PositiveInfinity;

    /// <summary>The program's hours on the whole; 0 where none are included.</summary>
    private static double Whole(Compared one, double p)
    {
        var whole = one.Estimate.Whole;
        return (p < 0.5 ? whole.P10 : p > 0.5 ? whole.P90 : whole.P50) ?? 0;
    }

    private static IEnumerable<string> BacktestDifferences(Compared one)
    {
        var backtest = one.Estimate.Backtest;
        var parts = ReferenceBacktest.Parts(one.Reference.Past);
        if (!parts.Select(part => part.Part).SequenceEqual(backtest.PartForecasts.Select(part => part.Part)))
        {
            return [$"{one.Kit.Name}, back-test: program {string.Join(' ', backtest.PartForecasts.Select(part => part.Part))}, reference {string.Join(' ', parts.Select(part => part.Part))}"];
        }

        var fell = parts.Select(part => ReferenceBacktest.Fell(part.Forecast, part.Hours)).ToArray();
        return parts.Zip(backtest.PartForecasts)
            .SelectMany(pair => ReferenceDifferences.Range(
                one, $"back-test of {pair.Second.Part}", p => pair.First.Forecast.At(p, 0, 1),
                (0.1, pair.Second.P10), (0.25, pair.Second.P25), (0.5, pair.Second.P50), (0.75, pair.Second.P75), (0.9, pair.Second.P90)))
            .Concat(ReferenceDifferences.Numbers(one, "back-test",
                ("held 80 %", backtest.PartsCovered80 ?? -1, Share(fell, at => at is >= 0.1 and <= 0.9)),
                ("held 50 %", backtest.PartsCovered50 ?? -1, Share(fell, at => at is >= 0.25 and <= 0.75))));
    }

    private static IEnumerable<string> BuildDifferences(Compared one)
    {
        var builds = ReferenceBacktest.Builds(one.Kit, one.Reference.Past, draws: 2000);
        var program = one.Estimate.Backtest.Forecasts;
        return builds.Select(build => build.Build).Order().SequenceEqual(program.Select(build => build.Build).Order())
            ? program.SelectMany(forecast =>
            {
                var build = builds.Single(build => build.Build == forecast.Build);
                return ReferenceDifferences.Numbers(one, $"back-test of {build.Build}", ("hours", forecast.Hours, build.Hours)).Concat(ReferenceDifferences.Places(
                    one, $"back-test of {build.Build}", build.Sorted, 1000,
                    (0.1, forecast.P10), (0.25, forecast.P25), (0.5, forecast.P50), (0.75, forecast.P75), (0.9, forecast.P90)));
            })
            : [$"{one.Kit.Name}, back-test of builds: program {string.Join(' ', program.Select(build => build.Build))}, reference {string.Join(' ', builds.Select(build => build.Build))}"];
    }

    private static double Share(double[] places, Func<double, bool> isWithin) =>
        places.Length == 0 ? -1 : Math.Round((double)places.Count(isWithin) / places.Length, 3);

    private static void None(IEnumerable<string> differences)
    {
        var all = differences.ToList();
        Assert.True(all.Count == 0, $"{all.Count} differences:\n{string.Join('\n', all.Take(40))}");
    }
}
