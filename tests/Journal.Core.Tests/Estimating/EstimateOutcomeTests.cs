using Journal.Core.Estimating;
using Journal.Core.Model;
using static Journal.Core.Tests.Estimating.Shop;

namespace Journal.Core.Tests.Estimating;

/// <summary>How the estimate of a plan did, once its build is finished.</summary>
public sealed class EstimateOutcomeTests
{
    [Fact]
    public void Of_AFinishedBuild_SaysWhereTheTrueHoursAndDayFell()
    {
        var outcome = EstimateOutcome.Of(Shaper, Made(12, 9).Journal())!;

        // The same estimate that was made on the eve of the work.
        var then = EstimateTests.Estimated(Made(12, 9).Journal(), Shaper, new EstimateOptions { Today = Day("2025-09-07") });
        Assert.Equal(then.Hours, outcome.Foreseen.Hours);
        Assert.Equal((21, Day("2025-10-12"), true), (outcome.Hours, outcome.Day, outcome.IsWholeLeftOut));
        Assert.InRange(outcome.HoursPlace, 0.05, 0.6);
        Assert.InRange(outcome.DayPlace!.Value, 0.01, 0.99);
        Assert.Equal(["ram", "slide"], outcome.Parts.Select(part => part.Foreseen.Part));
    }

    [Fact]
    public void Of_MoreHours_FallFurtherUpTheRange()
    {
        var (little, much) = (EstimateOutcome.Of(Shaper, Made(6, 5).Journal())!, EstimateOutcome.Of(Shaper, Made(60, 9).Journal())!);

        Assert.True(little.HoursPlace < 0.1 && much.HoursPlace > 0.9);
        Assert.Equal((false, true), (much.Parts[0].Held, much.Parts[1].Held));
        Assert.Equal(little.DayPlace, much.DayPlace);
    }

    // A part that took just the hours foreseen at even odds, or at nine in ten, fell at 0.5 or 0.9.
    [Theory]
    [InlineData(0.1)]
    [InlineData(0.5)]
    [InlineData(0.9)]
    public void Of_APart_FellWhereItsRangeSays(double place)
    {
        var foreseen = EstimateTests.Estimated(Made(12, 9).Journal(), Shaper, new EstimateOptions { Today = Day("2025-09-07") }).Parts[0];
        var hours = place switch { 0.1 => foreseen.P10, 0.5 => foreseen.P50, _ => foreseen.P90 };

        Assert.Equal(place, EstimateOutcome.Of(Shaper, Made(hours, 9).Journal())!.Parts[0].Place, 0.005);
    }

    [Fact]
    public void Of_WorkThatThePlanDidNotName_CountsInTheHoursAndInNoPart()
    {
        var shop = Made(12, 9).Change("shaper", build => build with { Parts = [.. build.Parts, Part("guard")] });
        var journal = shop.Change("shaper", build => build with
        {
            Entries = [.. build.Entries.SkipLast(1), .. new Shop().With("shaper", BuildStatus.Finished, [], ("2025-10-10", "guard", "turning", 4, null)).Journal().Builds[0].Entries, build.Entries[^1]],
        }).Journal();

        var outcome = EstimateOutcome.Of(Shaper, journal)!;

        Assert.Equal((25, 2), (outcome.Hours, outcome.Parts.Count));
    }

    [Fact]
    public void Of_APlanNotBegunOrUnderWay_IsNothing()
    {
        var journal = new Shop().WithDrill(8).With("shaper", BuildStatus.UnderWay, [Part("ram", 12)], ("2025-09-08", "ram", "turning", 3, "ram")).Journal();

        Assert.Null(EstimateOutcome.Of(Shaper, journal));
        Assert.Null(EstimateOutcome.Of(Plan("lamp", Part("ram", 12)), journal));
    }

    private static Plan Shaper => Plan("shaper", Part("ram", 10), Part("slide", 8));

    // A drill made from June to August, then the shaper from 8 September to 12 October.
    private static Shop Made(double ram, double slide) => new Shop().WithDrill(12, from: "2025-06-02").With(
        "shaper",
        BuildStatus.Finished,
        [.. Shaper.Parts],
        ("2025-09-08", "ram", "turning", ram, "ram"),
        ("2025-10-12", "slide", "turning", slide, "slide"));
}
