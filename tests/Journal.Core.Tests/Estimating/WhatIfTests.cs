using Journal.Core.Estimating;
using Journal.Core.Model;
using static Journal.Core.Tests.Estimating.Shop;

namespace Journal.Core.Tests.Estimating;

/// <summary>What an estimate would be under other conditions, as differences from the same draws.</summary>
public sealed class WhatIfTests
{
    private static readonly EstimateOptions Today = new() { Today = Day("2026-01-05") };

    [Fact]
    public void Without_APart_IsTheAnswerLessThePlainAnswer()
    {
        var (plain, without) = (Asked(Today), Asked(Today with { Without = [new("slide")] }));

        var difference = Assert.Single(without.Differences);

        Assert.Equal("Without slide", difference.Change);
        Assert.Equal(without.Hours.P50 - plain.Hours.P50, difference.Hours.P50, 1e-9);
        Assert.Equal(without.Hours.P80 - plain.Hours.P80, difference.Hours.P80, 1e-9);
        Assert.Equal(without.Finish!.P80!.Value.DayNumber - plain.Finish!.P80!.Value.DayNumber, difference.Days!.P80);
        Assert.True(difference.Hours.P50 < -5 && difference.Days.P80 < 0);
        Assert.Empty(plain.Differences);
    }

    // The draws are common: a part that takes next to nothing makes next to no difference, far less than another seed would.
    [Fact]
    public void Without_ATrifle_MakesNoDifferenceByChance()
    {
        var plan = Plan("shaper", Part("ram", 12), Part("slide", 9), Part("dot", 1 / 60.0));
        var journal = new Shop().WithDrill(17, from: "2025-09-08").Journal();

        var trifle = Assert.Single(EstimateTests.Estimated(journal, plan, Today with { Without = [new("dot")] }).Differences);
        var (one, two) = (EstimateTests.Estimated(journal, plan, Today), EstimateTests.Estimated(journal, plan, Today with { Seed = 2 }));

        Assert.InRange(trifle.Hours.P80, -0.05, 0);
        Assert.InRange(trifle.Days!.P80!.Value, -1, 0);
        Assert.True(Math.Abs(one.Hours.P80 - two.Hours.P80) > 0.05 || one.Finish != two.Finish);
    }

    [Fact]
    public void Twice_APart_AddsWhatMakingItAgainTakes()
    {
        var estimate = Asked(Today with { Twice = [new("ram")] });

        Assert.Equal(["ram", "slide", "ram/again"], estimate.Parts.Select(part => part.Part));
        Assert.Equal(("ram, made again", estimate.Parts[0].P50), (estimate.Parts[2].Title, estimate.Parts[2].P50));
        Assert.Equal("With ram made twice", estimate.Differences[0].Change);
        Assert.InRange(estimate.Differences[0].Hours.P50, 0.8 * estimate.Parts[0].P50, 1.4 * estimate.Parts[0].P50);
    }

    [Fact]
    public void Pace_Another_MovesDaysAndNotHours()
    {
        var estimate = Asked(Today with { HoursAWeek = 9.5m });

        var difference = Assert.Single(estimate.Differences);

        Assert.Equal(("With 9.5 h a week", 0.0, 0.0), (difference.Change, difference.Hours.P50, difference.Hours.P80));
        Assert.True(difference.Days!.P50 < 0);
    }

    [Fact]
    public void Start_ALater_MovesEveryDayByAsMuch()
    {
        var difference = Assert.Single(Asked(Today with { Start = Today.Today.AddDays(35) }).Differences);

        Assert.Equal(("Begun on 2026-02-09", new DayDifference(35, 35, 35)), (difference.Change, difference.Days));
    }

    [Fact]
    public void Several_Changes_AreToldOneByOneAndTogether()
    {
        var estimate = Asked(Today with { Without = [new("slide")], HoursAWeek = 9 });

        Assert.Equal(["Without slide", "With 9 h a week", "All together"], estimate.Differences.Select(difference => difference.Change));
        Assert.Equal(estimate.Differences[0].Hours, estimate.Differences[2].Hours);
        Assert.True(estimate.Differences[2].Days!.P80 < Math.Min(estimate.Differences[0].Days!.P80!.Value, estimate.Differences[1].Days!.P80!.Value));
    }

    [Fact]
    public void Without_APartThatHasNothingToGoOn_IsAnsweredWithoutADifference()
    {
        var estimate = EstimateTests.Estimated(new Shop().Journal(), Plan("shaper", Part("ram", 12), Part("bush")), Today with { Without = [new("bush")] });

        Assert.Empty(estimate.Differences);
        Assert.Equal(12, estimate.Hours.P50, 0.1);
    }

    [Fact]
    public void Without_APartBegun_KeepsWhatWasSpentOnIt()
    {
        var journal = new Shop().WithDrill(17, from: "2025-06-02").With(
            "shaper", BuildStatus.UnderWay, [Part("ram", 12), Part("slide", 9)], ("2025-12-29", "ram", "turning", 5, null)).Journal();

        var estimate = Estimate.Of(journal, journal.Builds.Single(build => build.Id.Value == "shaper"), Today with { Without = [new("ram")] }).Estimate!;

        Assert.Equal(estimate.Left!.P50 + 5, estimate.Hours.P50, 0.002);
        Assert.True(estimate.Differences[0].Hours.P50 < 0);
    }

    [Fact]
    public void Twice_APartThatIsNotThere_IsAnsweredInWords()
    {
        var fault = Assert.Single(Estimate.Of(new Shop().WithDrill(6).Journal(), Plan("shaper", Part("ram", 3)), Today with { Twice = [new("tail")] }).Faults);

        Assert.Equal((EstimateFaultKind.UnknownTwice, "shaper has no part tail to make twice."), (fault.Kind, fault.Message));
    }

    private static Estimate Asked(EstimateOptions options) =>
        EstimateTests.Estimated(new Shop().WithDrill(17, from: "2025-09-08").Journal(), Plan("shaper", Part("ram", 12), Part("slide", 9)), options);
}
