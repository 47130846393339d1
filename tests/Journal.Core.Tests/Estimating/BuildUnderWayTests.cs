using Journal.Core.Estimating;
using Journal.Core.Model;
using static Journal.Core.Tests.Estimating.Shop;

namespace Journal.Core.Tests.Estimating;

/// <summary>A build under way: hours so far, what is left, and what the finished parts tell.</summary>
public sealed class BuildUnderWayTests
{
    private static readonly EstimateOptions Today = new() { Today = Day("2026-01-05") };

    [Fact]
    public void Of_PartsThatAllRanFarOver_RaisesWhatIsLeft()
    {
        var asGuessed = Left(10);
        var farOver = Left(25);

        Assert.InRange(farOver.P50 / asGuessed.P50, 1.15, 2.5);
    }

    [Fact]
    public void Of_PartsFinishedSince_NarrowsTheLuckOfTheBuild()
    {
        var before = Estimated(Underway(finished: 0, hours: 10));
        var after = Estimated(Underway(finished: 8, hours: 12));

        Assert.True(Ratio(after.Parts[^1]) < Ratio(before.Parts[^1]));
        static double Ratio(PartEstimate part) => part.P90 / part.P10;
    }

    [Fact]
    public void Of_ABuild_CountsHoursSoFarAndPartsFinishedAsTheyWere()
    {
        var estimate = Estimated(Underway(finished: 3, hours: 10));

        Assert.Equal(30 * 60, estimate.MinutesSoFar);
        Assert.Equal("finished in 10h", estimate.Parts[0].Basis);
        Assert.Equal((10, 10, true), (estimate.Parts[0].P10, estimate.Parts[0].P90, estimate.Parts[0].IsFinished));
        Assert.Equal(estimate.Hours.P50 - 30, estimate.Left!.P50, 0.002);
    }

    [Fact]
    public void Of_APartBegun_TakesMoreThanWasSpentOnIt()
    {
        var part = Estimated(Begun(Underway(finished: 3, hours: 10), "part-9", ("turning", 40))).Parts[9];

        // Guessed at 10 h, four times spent: a tenth of what such a part takes is thought to be left.
        Assert.True(part.P10 > 40);
        Assert.InRange(part.P50, 40.8, 41.5);
        Assert.EndsWith("; 40h spent so far", part.Basis, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_APartBegunWithPlannedOperations_NamesWhatIsDoneAndWhatIsToCome()
    {
        var shop = Underway(finished: 3, hours: 10).Change("shaper", build => build with
        {
            Parts = [.. build.Parts.SkipLast(1), Part("part-9", 10, ["boring", "turning", "assembly", "painting"])],
        });
        var untouched = Estimated(shop);
        var half = Estimated(Begun(shop, "part-9", ("boring", 2), ("turning", 1), ("boring", 1)));
        var all = Estimated(Begun(shop, "part-9", ("painting", 1), ("assembly", 3)));

        Assert.EndsWith("; 4h spent so far: boring and turning done; assembly and painting to come", half.Parts[9].Basis, StringComparison.Ordinal);
        Assert.EndsWith("; 8h spent so far: boring, turning, painting and assembly done; no other operation planned", all.Parts[9].Basis, StringComparison.Ordinal);

        // What is still to come shrinks with each operation.
        Assert.True(all.Parts[9].P50 - 8 < 0.5 * (half.Parts[9].P50 - 4));
        Assert.True(half.Parts[9].P50 - 4 < 0.8 * untouched.Parts[9].P50);
    }

    [Fact]
    public void Of_APartBegunWithoutOperations_TakesThoseOfThePartItIsLike()
    {
        var shop = Begun(
            Underway(finished: 3, hours: 10).Change("shaper", build => build with { Parts = [.. build.Parts.SkipLast(1), Part("part-9", 10, like: "drill/part-0")] }),
            "part-9", ("turning", 4));

        Assert.EndsWith("; 4h spent so far: turning done; boring to come", Estimated(shop).Parts[9].Basis, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_ASecondGuess_IsUsedFromThenOn()
    {
        var first = Estimated(Underway(finished: 2, hours: 10)).Parts[9];
        var second = Estimated(Underway(finished: 2, hours: 10).Change("shaper", build => build with
        {
            Parts = [.. build.Parts.Select(part => part.Id.Value == "part-9" ? part with { Reguess = Hours(20) } : part)],
        })).Parts[9];

        Assert.StartsWith("your second guess 20h (at first ", second.Basis, StringComparison.Ordinal);
        Assert.InRange(second.P50 / first.P50, 1.7, 2.1);
    }

    [Fact]
    public void Of_TheFirstBuildThereIs_LearnsFromItsOwnParts()
    {
        var shop = new Shop().With(
            "drill", BuildStatus.UnderWay, [Part("head", 4), Part("quill", 4), Part("cap", 4), Part("table", 4), Part("column", 4), Part("base", 4)],
            [.. new[] { "head", "quill", "cap", "table", "column" }.Select((part, i) => ($"2025-12-0{i + 1}", part, "turning", 8.0, (string?)part))]);

        var part = Estimated(shop, "drill").Parts[^1];

        // Five parts took twice their guess; the sixth will not be thought to take 4 h.
        Assert.InRange(part.P50, 4.8, 8);
        Assert.Matches(@"^your guess 4h × 1\.\d\d, from 5 parts$", part.Basis);
    }

    [Fact]
    public void Of_OnlyAssemblyLeft_ForecastsTheWholeBeyondWhatWasSpent()
    {
        var shop = new Shop().WithDrill(8).With(
            "shaper", BuildStatus.UnderWay, [Part("ram", 10)],
            ("2025-11-01", "ram", "turning", 12, "ram"),
            ("2025-11-08", "whole", "assembly", 5, null)).Change("shaper", build => build with
            {
                Whole = new Dictionary<Id<Operation>, Minutes> { [new("assembly")] = Time(6) },
            });

        var estimate = Estimated(shop);

        Assert.True(estimate.Whole.P10 > 5);
        Assert.Equal(estimate.Hours.P50, 12 + estimate.Whole.P50!.Value, 0.002);
        Assert.Equal("whole", Assert.Single(estimate.MostUncertain).Part);
    }

    [Fact]
    public void Of_NothingLeft_IsDoneOnTheFirstDay()
    {
        var shop = new Shop().WithDrill(8).With("shaper", BuildStatus.UnderWay, [Part("ram", 10)], ("2025-11-01", "ram", "turning", 12, "ram"));

        var estimate = Estimated(shop);

        Assert.Equal((0, 12), (estimate.Left!.P90, estimate.Hours.P90));
        Assert.Equal(Today.Today, estimate.Finish!.P90);
        Assert.Empty(estimate.MostUncertain);
    }

    [Fact]
    public void Of_AFinishedBuild_IsRefusedInWords()
    {
        var journal = new Shop().WithDrill(6).Journal();

        var fault = Assert.Single(Estimate.Of(journal, journal.Builds[0], Today).Faults);

        Assert.Equal(EstimateFaultKind.AlreadyFinished, fault.Kind);
        Assert.Contains("it took", fault.Message, StringComparison.Ordinal);
    }

    private static Shop Begun(Shop shop, string part, params (string Operation, double Hours)[] jobs) => shop.Change("shaper", build => build with
    {
        Entries =
        [
            .. build.Entries,
            .. new Shop().With("shaper", BuildStatus.UnderWay, [], [.. jobs.Select(job => ("2025-12-30", part, job.Operation, job.Hours, (string?)null))]).Journal().Builds[0].Entries,
        ],
    });

    private static HourRange Left(double hours) => Estimated(Underway(finished: 5, hours)).Left!;

    // Ten parts guessed at 10 h each, some finished in so many hours; a drill of 17 parts came before.
    private static Shop Underway(int finished, double hours) => new Shop().WithDrill(17).With(
        "shaper",
        BuildStatus.UnderWay,
        [.. Enumerable.Range(0, 10).Select(i => Part($"part-{i}", 10))],
        [.. Enumerable.Range(0, finished).Select(i => ($"2025-11-{i + 10}", $"part-{i}", "turning", hours, (string?)$"part-{i}"))]);

    private static Estimate Estimated(Shop shop, string build = "shaper")
    {
        var journal = shop.Journal();
        var result = Estimate.Of(journal, journal.Builds.First(b => b.Id.Value == build), Today);
        Assert.True(result.IsEstimate, string.Join(" ", result.Faults));
        return result.Estimate;
    }
}
