using Journal.Core.Estimating;
using Journal.Core.Model;
using static Journal.Core.Tests.Estimating.Shop;

namespace Journal.Core.Tests.Estimating;

/// <summary>The smaller figures of an estimate, each held against a sum done by hand.</summary>
public sealed class PiecesOfEstimatesTests
{
    private static readonly DateOnly Today = Day("2026-01-05");

    [Fact]
    public void WholeShare_FinishedBuilds_IsTheirSumAndSpreadsAsTheyDo()
    {
        // 10 h on parts and 5 h on the whole; 20 h and 4 h; 10 h and none. One is not finished and does not count.
        var journal = new Shop()
            .With("drill", BuildStatus.Finished, [Part("head")], ("2025-01-06", "head", "boring", 10, null), ("2025-01-07", "whole", "painting", 5, null))
            .With("vice", BuildStatus.Finished, [Part("jaw")], ("2025-02-03", "jaw", "boring", 20, null), ("2025-02-04", "whole", "painting", 4, null))
            .With("lamp", BuildStatus.Finished, [Part("arm")], ("2025-03-03", "arm", "turning", 10, null))
            .With("saw", BuildStatus.UnderWay, [Part("frame")], ("2025-04-07", "frame", "turning", 1, null), ("2025-04-08", "whole", "painting", 50, null))
            .Journal();

        var share = WholeShare.Of(History.Of(journal, Today), null)!;

        var together = 9 / 40.0;
        var off = Math.Pow(Math.Log(0.5 / together), 2) + Math.Pow(Math.Log(0.2 / together), 2);
        Assert.Equal(together, share.Share, 1e-12);
        Assert.Equal(Math.Sqrt(((2 * 0.6 * 0.6) + off) / (2 + 2)), share.Spread, 1e-12);
        Assert.Equal(3, share.Builds);

        // A build says nothing of its own share: without the vice, 5 h on 20 h.
        var others = WholeShare.Of(History.Of(journal, Today), new("vice"))!;
        Assert.Equal((0.25, 2), (others.Share, others.Builds));
    }

    [Fact]
    public void WholeShare_NoFinishedBuildWithWorkOnTheWhole_IsNotKnown() =>
        Assert.Null(WholeShare.Of(History.Of(new Shop().WithDrill(3).Journal(), Today), null));

    [Fact]
    public void Overruns_TwoGuesses_AreAddedUp()
    {
        // Guessed 4 h and 2 h, took 7 h and 2 h: 3 h over, of which 1 h 30 was fixtures and 30 min putting right.
        var journal = new Shop().With(
            "drill", BuildStatus.Finished, [Part("head", 4), Part("cap", 2), Part("pin")],
            ("2025-01-06", "head", "fixture-making", 1, null),
            ("2025-01-07", "head", "boring", 5.5, null),
            ("2025-01-08", "head", "turning", 0.5, null),
            ("2025-01-09", "cap", "fixture-making", 0.5, null),
            ("2025-01-10", "cap", "boring", 1.5, null),
            ("2025-01-11", "pin", "turning", 40, null)).Change("drill", build => build with { Entries = [.. build.Entries.Select((entry, i) => i == 2 ? Mending(entry) : entry)] }).Journal();

        var overrun = Overruns.Of(History.Of(journal, Today))!;

        Assert.Equal((2, 6, 9, 1.5, 2, 0.667), (overrun.Parts, overrun.GuessedHours, overrun.TakenHours, overrun.Ratio, overrun.FixturesAndPuttingRightHours, Math.Round(overrun.ShareOfOverrun!.Value, 3)));
    }

    [Fact]
    public void Overruns_GuessesMetOrNone_HaveNothingToShareOut()
    {
        var met = new Shop().With("drill", BuildStatus.Finished, [Part("head", 4)], ("2025-01-06", "head", "boring", 4, null)).Journal();
        var none = new Shop().With("drill", BuildStatus.Finished, [Part("head")], ("2025-01-06", "head", "boring", 4, null)).Journal();

        Assert.Null(Overruns.Of(History.Of(met, Today))!.ShareOfOverrun);
        Assert.Null(Overruns.Of(History.Of(none, Today)));
    }

    // Draws in which each item moves alone, so that an item's share of the variance is the square of how far it moves.
    [Theory]
    [InlineData(new[] { 1.0, 1 }, 1)]
    [InlineData(new[] { 3.0, 3, 3, 1, 1, 1 }, 2)]
    [InlineData(new[] { 1.0, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1 }, 5)]
    public void Uncertainty_ItemsOfKnownShares_StopsAtHalfOrAtFive(double[] moves, int named)
    {
        var draws = 2 * moves.Length;
        var items = moves.Select((move, i) => ($"item-{i}", Enumerable.Range(0, draws).Select(draw => 10 + (draw == 2 * i ? move : draw == (2 * i) + 1 ? -move : 0)).ToArray())).ToList();
        double[] totals = [.. Enumerable.Range(0, draws).Select(draw => items.Sum(item => item.Item2[draw]))];

        var most = Uncertainty.Most(items, totals);

        Assert.Equal(named, most.Count);
        Assert.Equal(moves.Take(named).Select(move => Math.Round(move * move / moves.Sum(m => m * m), 3)), most.Select(part => Math.Round(part.Share, 3)));
    }

    [Fact]
    public void AsOf_ABuildFinishedByThen_IsFinishedStillAndADayCountsToItsEnd()
    {
        var journal = new Shop().WithDrill(2).WithDrill(2, "vice", "2025-06-02").Journal();

        var builds = History.Of(journal, Day("2025-06-02")).Builds;

        Assert.True(builds[0].IsFinished);
        Assert.False(builds[1].IsFinished);
        Assert.Equal(Time(2), builds[1].OnParts);
    }

    [Theory]
    [InlineData(3, null, 3)]
    [InlineData(null, 8, 8)]
    [InlineData(3, 8, 3)]
    public void Pace_AskedOrGivenByThePlan_WhatIsAskedComesFirst(int? asked, int? plans, double pace)
    {
        var estimate = Estimated(new Shop().WithDrill(10).Journal(), Ram() with { HoursAWeek = plans }, asked);

        Assert.Equal(pace, estimate.HoursAWeek);
        Assert.True(estimate.IsPaceSaid);
    }

    [Fact]
    public void Pace_NeitherAskedNorGiven_IsNotSaid() =>
        Assert.False(Estimated(new Shop().WithDrill(10).Journal(), Ram()).IsPaceSaid);

    [Fact]
    public void Remarks_HistoryWithoutGuesses_SaysThatGuessesAreNotProved()
    {
        Assert.Contains(
            "No finished part had a guess: how good the guesses are is not known yet, so the range is wider.",
            Estimated(new Shop().WithDrill(6, guesses: false).Journal(), Ram()).Remarks);
        Assert.Contains(
            "Only 2 finished parts had a guess: too few to show how good the guesses are, so the range is wider.",
            Estimated(new Shop().WithDrill(6, guesses: false).WithDrill(2, "vice", "2025-06-02").Journal(), Ram()).Remarks);
        Assert.Empty(Estimated(new Shop().WithDrill(6, from: "2025-11-03", guesses: false).Journal(), Plan("shaper", Part("bush", operations: ["turning"]))).Remarks);
    }

    [Fact]
    public void Remarks_NoPartFinished_SaysThatGuessesAreAllThereIs()
    {
        var estimate = Estimated(new Shop().Journal(), Ram());

        Assert.Equal(
            ["No part is finished yet: this is based on guesses alone, and the range is wide.", "The pace is not known yet. Add `hours-a-week` to get dates."],
            estimate.Remarks);
    }

    [Fact]
    public void Remarks_NoWorkFor13Weeks_SaysWhyThereAreNoDates()
    {
        var estimate = Estimated(new Shop().WithDrill(6).Journal(), Ram());

        Assert.Null(estimate.Finish);
        Assert.Equal(["No work is noted in the last 13 weeks, so nothing is known of the pace: dates want `hours-a-week`."], estimate.Remarks);
    }

    [Fact]
    public void Remarks_FewWeeksAtTheBench_AskToTakeDatesLightly()
    {
        Assert.Contains("The dates treat every week alike, until the journal has a few weeks of its own.", Estimated(new Shop().Journal(), Ram(), 5).Remarks);
        Assert.Contains("The dates are based on only 3 weeks at the bench: do not rely on them.", Estimated(new Shop().WithDrill(3, from: "2025-12-15").Journal(), Ram()).Remarks);
        Assert.DoesNotContain(Estimated(new Shop().WithDrill(4, from: "2025-12-08").Journal(), Ram()).Remarks, remark => remark.Contains("lightly", StringComparison.Ordinal));
    }

    [Fact]
    public void Remarks_APaceThatNeverEnds_SaysThatDatesAreLeftOut()
    {
        const string Century = "At this pace it may take more than a century; some dates are left out.";
        var years = new Shop().Journal();

        Assert.Contains(Century, Estimated(years, Plan("shaper", Part("ram", 9000)), 1).Remarks);
        Assert.DoesNotContain(Century, Estimated(years, Ram(), 1).Remarks);
    }

    [Fact]
    public void Whole_WorkThatNoGuessForesaw_IsAddedToWhatTheGuessesSay()
    {
        var lamp = new Shop().WithDrill(10).With(
            "lamp", BuildStatus.UnderWay, [Part("arm", 4)], ("2025-06-02", "whole", "painting", 30, null)).Change("lamp", build => build with { Whole = new Dictionary<Id<Operation>, Minutes> { [new("assembly")] = Time(1) } });
        var without = new Shop().WithDrill(10).With(
            "lamp", BuildStatus.UnderWay, [Part("arm", 4)], ("2025-06-02", "arm", "turning", 0.5, null)).Change("lamp", build => build with { Whole = new Dictionary<Id<Operation>, Minutes> { [new("assembly")] = Time(1) } });

        var (more, less) = (OfBuild(lamp.Journal()).Whole, OfBuild(without.Journal()).Whole);

        Assert.Equal(30, more.P50!.Value - less.P50!.Value, 0.11);
        Assert.Equal(30, more.P90!.Value - less.P90!.Value, 0.11);
    }

    [Fact]
    public void Left_ABuildUnderWay_IsAllLessWhatWasSpentOnPartsAndWhole()
    {
        var journal = new Shop().WithDrill(10).With(
            "lamp", BuildStatus.UnderWay, [Part("arm", 4), Part("base", 40)],
            ("2025-06-02", "arm", "turning", 3, null),
            ("2025-06-03", "whole", "painting", 2, null)).Journal();

        var estimate = OfBuild(journal);

        Assert.Equal(300, estimate.MinutesSoFar);
        Assert.Equal(5, estimate.Hours.P50 - estimate.Left!.P50, 0.11);
        Assert.Null(Estimated(journal, Ram()).Left);
    }

    private static Plan Ram() => Plan("shaper", Part("ram", 12));

    private static Entry Mending(Entry entry) => entry with { Jobs = [entry.Jobs[0] with { Mends = new("off-centre") }] };

    private static Estimate Estimated(MakerJournal journal, Plan plan, int? hoursAWeek = null) =>
        EstimateTests.Estimated(journal, plan, new EstimateOptions { Today = Today, HoursAWeek = hoursAWeek });

    private static Estimate OfBuild(MakerJournal journal) => Estimate.Of(journal, journal.Builds.Single(build => build.Id.Value == "lamp"), new EstimateOptions { Today = Today }).Estimate!;
}
