using System.Text.Json;
using Journal.Core.Estimating;
using Journal.Core.Model;
using Xunit.Abstractions;
using static Journal.Core.Tests.Estimating.Shop;

namespace Journal.Core.Tests.Estimating;

/// <summary>Estimates of plans and builds from journals.</summary>
public sealed class EstimateTests(ITestOutputHelper output)
{
    private static readonly EstimateOptions Today = new() { Today = Day("2026-01-05") };

    [Fact]
    public void Of_APlanWithGuesses_SaysWhatEachPartRestsOn()
    {
        var plan = Shaper() with { Parts = [Part("ram", 12), Part("bush", operations: ["turning"]), Part("slide", 6, like: "drill/part-3")] };
        var estimate = Estimated(new Shop().WithDrill(17).Journal(), plan);

        Assert.Matches(@"^your guess 12h × 1\.\d\d, from 17 parts$", estimate.Parts[0].Basis);
        Assert.Equal("17 past turning jobs", estimate.Parts[1].Basis);
        Assert.Matches(@"^your guess 6h × \d\.\d\d, from 17 parts; like drill/part-3$", estimate.Parts[2].Basis);
        Assert.All(estimate.Parts, part => Assert.True(part.P10 < part.P50 && part.P50 < part.P90));
    }

    [Fact]
    public void Of_APlan_HoursRiseWithTheOddsAndHoldThePartsAndTheWhole()
    {
        var plan = Shaper() with { Whole = new Dictionary<Id<Operation>, Minutes> { [new("assembly")] = Time(8), [new("painting")] = Time(5) } };
        var estimate = Estimated(new Shop().WithDrill(17).Journal(), plan);

        Assert.Equal(19, estimate.Quantiles.Count);
        Assert.Equal(estimate.Quantiles.OrderBy(q => q.Hours), estimate.Quantiles);
        Assert.Equal(estimate.Hours.P50, estimate.Quantiles[9].Hours);
        Assert.Equal(estimate.Hours.P80, estimate.Quantiles[15].Hours);
        Assert.Matches(@"^your guess 8h assembly \+ 5h painting × 1\.\d\d, from 17 parts$", estimate.Whole.Basis);

        // Medians of log-normals add up to less than the median of the sum, and not by much here.
        Assert.InRange(estimate.Hours.P50, estimate.Parts.Sum(part => part.P50) + estimate.Whole.P50!.Value, 1.4 * (estimate.Parts.Sum(part => part.P50) + estimate.Whole.P50.Value));
    }

    [Fact]
    public void Of_SameSeed_IsTheSameToTheLastDigit()
    {
        var journal = new Shop().WithDrill(17).Journal();

        Assert.Equal(Json(Estimated(journal, Shaper())), Json(Estimated(journal, Shaper())));
        Assert.NotEqual(Json(Estimated(journal, Shaper())), Json(Estimated(journal, Shaper(), Today with { Seed = 2 })));
    }

    // The widest there is: one part, no guess, a thin history.
    [Theory]
    [InlineData(3, 1, false)]
    [InlineData(3, 10, false)]
    [InlineData(17, 10, true)]
    [InlineData(17, 60, true)]
    public void Of_ANewSeed_MovesTheEightyPerCentFigureByLessThanTwoPerCent(int history, int parts, bool guesses)
    {
        var journal = new Shop().WithDrill(history).Journal();
        var plan = Plan("shaper", [.. Enumerable.Range(0, parts).Select(i => Part($"part-{i}", guesses ? 3 + (i % 7) : null, ["turning", "boring"]))]);

        double[] hours = [.. Enumerable.Range(1, 12).Select(seed => Estimated(journal, plan, Today with { Seed = seed }).Hours.P80)];

        output.WriteLine($"The 80 % figure moves from {hours.Min()} to {hours.Max()}, {(hours.Max() / hours.Min()) - 1:P2}.");
        Assert.InRange(hours.Max() / hours.Min(), 1, 1.02);
    }

    [Fact]
    public void Of_FewFinishedParts_WidensAndSaysSo()
    {
        var few = Estimated(new Shop().WithDrill(4).Journal(), Shaper());
        var enough = Estimated(new Shop().WithDrill(5).Journal(), Shaper());

        Assert.Contains(few.Remarks, remark => remark.StartsWith("Only 4 parts finished so far", StringComparison.Ordinal));
        Assert.DoesNotContain(enough.Remarks, remark => remark.Contains("too few", StringComparison.Ordinal));
        Assert.True(few.Hours.P90 / few.Hours.P10 > 1.1 * (enough.Hours.P90 / enough.Hours.P10));
    }

    [Fact]
    public void Of_NoHistory_WorksFromGuessesAloneAndHasNoDates()
    {
        var estimate = Estimated(new Shop().Journal(), Plan("shaper", Part("ram", 12)));

        Assert.Equal("your guess 12h, with no past guess to compare it with", estimate.Parts[0].Basis);
        Assert.Equal(12, estimate.Parts[0].P50, 0.001);
        Assert.Null(estimate.Finish);
        Assert.Equal(2, estimate.Remarks.Count);
        Assert.Equal((0, 0), (estimate.History.Parts, estimate.History.Minutes));
    }

    [Fact]
    public void Of_NeitherGuessNorHistory_ExplainsWhatToWriteDown()
    {
        var fault = Assert.Single(Faulted(new Shop().Journal(), Plan("shaper", Part("ram", 12), Part("bush", operations: ["turning"]))));

        Assert.Equal(EstimateFaultKind.NothingToGoOn, fault.Kind);
        Assert.Contains("bush", fault.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("ram", fault.Message, StringComparison.Ordinal);
        Assert.Contains("guess: 6h", fault.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_BadInput_IsAnsweredInWords()
    {
        var journal = new Shop().WithDrill(6).Journal();

        Assert.Equal(EstimateFaultKind.NoParts, Assert.Single(Faulted(journal, Plan("shaper"))).Kind);
        Assert.Equal(EstimateFaultKind.GuessOfNothing, Assert.Single(Faulted(journal, Plan("shaper", Part("ram", 0)))).Kind);
        Assert.Equal(EstimateFaultKind.NoPieces, Assert.Single(Faulted(journal, Plan("shaper", Part("ram", 1, quantity: 0)))).Kind);
        Assert.Equal(EstimateFaultKind.UnknownLike, Assert.Single(Faulted(journal, Plan("shaper", Part("ram", 1, like: "drill/ram")))).Kind);
        Assert.Equal(EstimateFaultKind.UnknownWithout, Assert.Single(Faulted(journal, Shaper(), Today with { Without = [new("tail")] })).Kind);
        Assert.Equal(EstimateFaultKind.HoursAWeek, Assert.Single(Faulted(journal, Shaper(), Today with { HoursAWeek = 0 })).Kind);
        Assert.Equal(EstimateFaultKind.TooFewDraws, Assert.Single(Faulted(journal, Shaper(), Today with { Draws = 3 })).Kind);
        Assert.Equal(EstimateFaultKind.NoParts, Assert.Single(Faulted(journal, Plan("shaper", Part("ram", 1)), Today with { Without = [new("ram")] })).Kind);
    }

    [Fact]
    public void Of_AThousandParts_IsAClearAnswer()
    {
        var plan = Plan("liner", [.. Enumerable.Range(0, 1000).Select(i => Part($"part-{i}", 2))]);

        var estimate = Estimated(new Shop().WithDrill(17, from: "2025-09-08").Journal(), plan);

        Assert.Equal(1000, estimate.Parts.Count);
        Assert.InRange(estimate.Hours.P50, 2000, 4000);
        Assert.NotNull(estimate.Finish?.P50);
    }

    [Fact]
    public void Of_WithoutAPart_LeavesTheLuckOfTheOthersAsItWas()
    {
        var journal = new Shop().WithDrill(17).Journal();

        var all = Estimated(journal, Shaper());
        var less = Estimated(journal, Shaper(), Today with { Without = [new("ram")] });

        Assert.Equal(all.Parts.Where(part => part.Part != "ram"), less.Parts);
        Assert.True(less.Hours.P80 < all.Hours.P80);
    }

    [Fact]
    public void Of_LikeALongPart_DrawsThePartTowardsItsHoursWithoutNarrowing()
    {
        var shop = new Shop().WithDrill(12).With("shaper", BuildStatus.Finished, [Part("ram")], ("2025-08-01", "ram", "turning", 30, "ram"));
        var plain = Estimated(shop.Journal(), Plan("planer", Part("bed", operations: ["turning"]))).Parts[0];
        var like = Estimated(shop.Journal(), Plan("planer", Part("bed", operations: ["turning"], like: "shaper/ram"))).Parts[0];

        // 0.7 of the way on the scale of logarithms.
        Assert.Equal(plain.P50 * Math.Pow(30 / plain.P50, 0.7), like.P50, 0.01);
        Assert.Equal(plain.P90 / plain.P10, like.P90 / like.P10, 0.02);
    }

    [Fact]
    public void Of_NoGuessesForTheWhole_TakesItsShareFromFinishedBuilds()
    {
        var shop = new Shop().WithDrill(10).Change("drill", build => build with
        {
            Entries = [.. build.Entries, .. new Shop().With("drill", BuildStatus.Finished, [], ("2025-04-01", "whole", "assembly", 10, null)).Journal().Builds[0].Entries],
        });
        var history = History.Of(shop.Journal(), Today.Today);
        var share = history.Builds[0].OnWhole.InHours / history.Builds[0].OnParts.InHours;

        var estimate = Estimated(shop.Journal(), Shaper());

        Assert.EndsWith("minutes for each hour on parts, as in 1 finished build", estimate.Whole.Basis, StringComparison.Ordinal);
        Assert.InRange(estimate.Whole.P50!.Value / estimate.Parts.Sum(part => part.P50), 0.9 * share, 1.3 * share);
    }

    [Fact]
    public void Of_NothingKnownOfTheWhole_SaysThatItIsNotIncluded()
    {
        var whole = Estimated(new Shop().WithDrill(10).Journal(), Shaper()).Whole;

        Assert.Null(whole.P50);
        Assert.EndsWith("not included", whole.Basis, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_GuessesThatRanOver_SaysHowFarAndHowMuchWasFixtures()
    {
        var journal = new Shop().With(
            "drill", BuildStatus.Finished, [Part("head", 8), Part("quill", 4), Part("cap")],
            ("2025-03-01", "head", "boring", 8, null),
            ("2025-03-02", "head", "fixture-making", 2, "head"),
            ("2025-03-03", "quill", "turning", 6, "quill"),
            ("2025-03-04", "cap", "turning", 50, "cap")).Journal();

        var overrun = Estimated(journal, Shaper()).Overrun;

        Assert.Equal(new Overrun(2, 12, 16, 1.333, 2, 0.5), overrun);
    }

    [Fact]
    public void Of_MixedHistoryAndMixedPlan_ForecastsEachPartFromWhatFitsIt()
    {
        var shop = new Shop().WithDrill(8).WithDrill(9, "shaper", "2025-06-02", guesses: false);
        var plan = Plan("planer", Part("bed", 12), Part("bush", operations: ["turning", "boring"]), Part("odd"), Part("new", operations: ["painting"]), Part("both", operations: ["turning", "painting", "lapping"]));

        var estimate = Estimated(shop.Journal(), plan);

        Assert.EndsWith("from 8 parts", estimate.Parts[0].Basis, StringComparison.Ordinal);
        Assert.Equal("17 past turning, 17 boring jobs", estimate.Parts[1].Basis);
        Assert.Equal("17 finished parts, as it names no operation", estimate.Parts[2].Basis);
        Assert.Equal("17 finished parts, none with painting", estimate.Parts[3].Basis);
        Assert.Equal("17 past turning jobs, none with painting or lapping", estimate.Parts[4].Basis);
        Assert.True(Ratio(estimate.Parts[0]) < Ratio(estimate.Parts[1]));
        static double Ratio(PartEstimate part) => part.P90 / part.P10;
    }

    [Fact]
    public void Of_SixPieces_TakesSixTimesOneAndAGuessForOnePieceIsForEach()
    {
        var guessed = Part("screws", quantity: 6) with { Guess = new Guess { Likely = Time(2), ByOperation = [(new("turning"), Time(2))], ForOnePiece = true } };
        var estimate = Estimated(new Shop().WithDrill(9).Journal(), Plan("shaper", Part("pin", operations: ["turning"]), Part("pins", null, ["turning"], 6), guessed));

        // The reference is six times as long; the slope of step 6 takes a little off what is longer than usual.
        Assert.InRange(estimate.Parts[1].P50 / estimate.Parts[0].P50, 3, 6);
        Assert.StartsWith("your guess 2h for each of 6 × ", estimate.Parts[2].Basis, StringComparison.Ordinal);
        Assert.InRange(estimate.Parts[2].P50, 9, 18);
    }

    [Fact]
    public void Of_LikeAPartNotFinished_IsEstimatedWithoutItAndSaysSo()
    {
        var shop = new Shop().WithDrill(9).With("shaper", BuildStatus.UnderWay, [Part("ram")], ("2025-08-01", "ram", "turning", 30, null));

        var estimate = Estimated(shop.Journal(), Plan("planer", Part("bed", 10, like: "shaper/ram")));

        Assert.DoesNotContain("like", estimate.Parts[0].Basis, StringComparison.Ordinal);
        Assert.Contains("bed is like shaper/ram, which is not finished yet: it is estimated without it.", estimate.Remarks);
    }

    [Fact]
    public void Of_AThreePointGuess_EntersByItsMean()
    {
        var journal = new Shop().WithDrill(9).Journal();
        var three = Part("ram") with { Guess = new Guess { Low = Time(6), Likely = Time(9), High = Time(18) } };

        // (6 + 4 · 9 + 18) / 6 = 10 h.
        Assert.Equal(
            Estimated(journal, Plan("shaper", Part("ram", 10))).Parts[0] with { Basis = "" },
            Estimated(journal, Plan("shaper", three)).Parts[0] with { Basis = "" });
    }

    [Fact]
    public void Of_WorkOnTheWhole_SharesTheLuckOfTheBuildWithItsParts()
    {
        var journal = new Shop().WithDrill(17).Journal();
        var two = Estimated(journal, Plan("shaper", Part("ram", 10), Part("slide", 10, ["assembly"])));
        var whole = Estimated(journal, Plan("shaper", Part("ram", 10)) with { Whole = new Dictionary<Id<Operation>, Minutes> { [new("assembly")] = Time(10) } });

        // Ten hours of assembly are as uncertain on the whole as on a part; with luck of its own the range would be narrower.
        Assert.InRange(whole.Hours.P90 / whole.Hours.P10 / (two.Hours.P90 / two.Hours.P10), 0.985, 1.015);
    }

    [Fact]
    public void Of_OneGreatPart_IsNamedAsTheGreatestUncertainty()
    {
        var estimate = Estimated(new Shop().WithDrill(17).Journal(), Plan("shaper", Part("bush", 1), Part("bed", 60), Part("screw", 2)));

        Assert.Equal("bed", estimate.MostUncertain[0].Part);
        Assert.InRange(estimate.MostUncertain[0].Share, 0.9, 1);
    }

    [Fact]
    public void Of_AnEstimate_HasTheJsonShapeOfTheDesign()
    {
        var plan = Shaper() with { HoursAWeek = 6 };
        using var json = JsonDocument.Parse(Json(Estimated(new Shop().WithDrill(8).WithDrill(6, "shaper", "2025-06-02").Journal(), plan)));
        var root = json.RootElement;

        Assert.Equal("shaper", root.GetProperty("plan").GetString());
        Assert.All(["p10", "p25", "p50", "p75", "p80", "p90"], p => Assert.True(root.GetProperty("hours").GetProperty(p).GetDouble() > 0));
        Assert.Equal([0.05, 0.1, 0.15], root.GetProperty("quantiles").EnumerateArray().Take(3).Select(q => q.GetProperty("p").GetDouble()));
        Assert.Equal(JsonValueKind.Number, root.GetProperty("quantiles")[0].GetProperty("hours").ValueKind);
        Assert.Matches(@"^\d{4}-\d\d-\d\d$", root.GetProperty("finish").GetProperty("p80").GetString());
        Assert.All(["p10", "p50", "p90", "part", "basis"], p => Assert.True(root.GetProperty("parts")[0].TryGetProperty(p, out _)));
        Assert.All(["p10", "p50", "p90", "basis"], p => Assert.True(root.GetProperty("whole").TryGetProperty(p, out _)));
        Assert.Equal(14, root.GetProperty("history").GetProperty("parts").GetInt32());
        Assert.True(root.GetProperty("history").GetProperty("minutes").GetInt32() > 0);
        Assert.Equal(1, root.GetProperty("backtest").GetProperty("kits").GetInt32());
        Assert.All(["covered50", "covered80"], p => Assert.InRange(root.GetProperty("backtest").GetProperty(p).GetDouble(), 0, 1));
        Assert.Equal(1, root.GetProperty("seed").GetInt32());
    }

    internal static Estimate Estimated(MakerJournal journal, Plan plan, EstimateOptions? options = null)
    {
        var result = Estimate.Of(journal, plan, options ?? Today);
        Assert.True(result.IsEstimate, string.Join(" ", result.Faults));
        return result.Estimate;
    }

    private static IReadOnlyList<EstimateFault> Faulted(MakerJournal journal, Plan plan, EstimateOptions? options = null)
    {
        var result = Estimate.Of(journal, plan, options ?? Today);
        Assert.False(result.IsEstimate);
        return result.Faults;
    }

    private static Plan Shaper() => Plan("shaper", Part("ram", 12), Part("slide", 8, ["turning"]), Part("bush", operations: ["turning", "boring"]));

    private static string Json(Estimate estimate) => JsonSerializer.Serialize(estimate, JsonSerializerOptions.Web);
}
