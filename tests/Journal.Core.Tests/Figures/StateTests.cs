using CsCheck;
using Journal.Core.Figures;
using Journal.Core.Model;

namespace Journal.Core.Tests.Figures;

public sealed class StateTests
{
    [Fact]
    public void Next_LatestEntrySaysNothing_TakesTheLatestThatDoes()
    {
        var state = StateOf(
            Sample.Entry("2025-10-01") with { Next = "Bore it." },
            Sample.Entry("2025-10-03") with { Next = "Face the back." },
            Sample.Entry("2025-10-05"));

        Assert.Equal(new NextStep("Face the back.", Sample.Ref("drill", "2025-10-03"), Sample.Day("2025-10-03")), state.Next);
        Assert.Equal(Sample.Ref("drill", "2025-10-05"), state.Latest);
    }

    [Fact]
    public void Left_LatestEntry_TellsTheHoldingOfItsLastJob()
    {
        var state = StateOf(Sample.Entry("2025-10-03", Sample.Job(30) with { Held = "vice" }, Sample.Job(30) with { Held = "face plate", Datum = "base" }));

        Assert.Equal(new LeftStanding("face plate", "base", Sample.Ref("drill", "2025-10-03")), state.Left);
    }

    [Fact]
    public void Snags_ClearedOrRaisedAgain_AreOpenOnlyWhileNotPutRight()
    {
        var state = StateOf(
            Snags("2025-10-01", ["rattle", "drip", "burr"], []),
            Snags("2025-10-03", ["tight-spot"], ["rattle", "tight-spot"]),
            Snags("2025-10-05", ["rattle"], ["burr"]));

        Assert.Equal(
            [("drip", "2025-10-01"), ("rattle", "2025-10-05")],
            state.Snags.Select(open => (open.Snag.Id.Value, open.Entry.Entry.Value)));
    }

    [Fact]
    public void ToGo_PiecesFinishedOverTime_LeavesTheRest()
    {
        var build = Sample.Build(
            "drill",
            Finished("2025-10-01", new Finished(new("gib-screw"), 2), new Finished(new("head"), null)),
            Finished("2025-10-03", new Finished(new("gib-screw"), 1), new Finished(new("pin"), 1)),
            Finished("2025-10-05", new Finished(new("pin"), null), new Finished(new("not-listed"), null))) with
        {
            Parts = [Sample.Part("gib-screw", 4), Sample.Part("head"), Sample.Part("pin", 3), Sample.Part("table")],
        };

        var state = State.Of(Sample.Journal(build)).Builds[0];

        Assert.Equal([new PartToGo(new("gib-screw"), 1, 4), new PartToGo(new("table"), 1, 1)], state.ToGo);
        Assert.Equal([("head", "2025-10-01"), ("pin", "2025-10-05")], state.Finished.Select(part => (part.Part.Value, part.Entry!.Value.Entry.Value)));
    }

    [Fact]
    public void Finished_BuildFinished_CountsEveryPart()
    {
        var build = Sample.Build("drill", Finished("2025-10-01", new Finished(new("head"), null)), Sample.Entry("2025-10-05")) with
        {
            Status = BuildStatus.Finished,
            Parts = [Sample.Part("head"), Sample.Part("table")],
        };

        var state = State.Of(Sample.Journal(build)).Builds[0];

        Assert.Empty(state.ToGo);
        Assert.Equal([("head", Sample.Day("2025-10-01")), ("table", Sample.Day("2025-10-05"))], state.Finished.Select(part => (part.Part.Value, part.Date!.Value)));
    }

    [Fact]
    public void Current_SeveralBuilds_IsTheOneUnderWayWithTheLatestEntry()
    {
        var journal = Sample.Journal(
            Sample.Build("drill", Sample.Entry("2025-12-01")) with { Status = BuildStatus.Finished },
            Sample.Build("head", Sample.Entry("2025-11-03")),
            Sample.Build("vice", Sample.Entry("2025-10-05")),
            Sample.Build("yoke"));

        Assert.Equal("head", State.Of(journal).Current!.Build.Value);
    }

    [Theory]
    [InlineData("2025-10-05", "2025-11-03", "vice")]
    [InlineData("2025-11-04", "2025-11-03", "head")]
    public void Current_OfTwoUnderWay_IsTheOneWorkedOnLast(string head, string vice, string current)
    {
        var journal = Sample.Journal(Sample.Build("anvil"), Sample.Build("head", Sample.Entry(head)), Sample.Build("vice", Sample.Entry(vice)));

        Assert.Equal(current, State.Of(journal).Current!.Build.Value);
    }

    [Theory]
    [InlineData("2025-10-04", "engine")]
    [InlineData("2025-10-03", "engine")]
    [InlineData("2025-10-02", "drill")]
    public void Current_BuildBegunLastAndNotWorkedOnYet_CountsByTheDayItWasBegun(string started, string current)
    {
        var journal = Sample.Journal(Sample.Build("drill", Sample.Entry("2025-10-03")), Sample.Build("engine") with { Started = Sample.Day(started) });

        Assert.Equal(current, State.Of(journal).Current!.Build.Value);
        Assert.Equal(2, State.Of(journal).UnderWay.Count);
    }

    [Fact]
    public void Current_OnlyABuildWithoutEntriesUnderWay_IsThatOne() =>
        Assert.Equal("yoke", State.Of(Sample.Journal(Sample.Build("yoke"))).Current!.Build.Value);

    [Fact]
    public void Current_NothingUnderWay_IsNone() =>
        Assert.Null(State.Of(Sample.Journal(Sample.Build("drill") with { Status = BuildStatus.LaidAside })).Current);

    [Fact]
    public void Of_AnyJournal_HasEveryPartEitherToGoOrFinished() => Generated.Journals.Sample(journal =>
    {
        foreach (var (build, state) in journal.Builds.Zip(State.Of(journal).Builds))
        {
            var told = state.ToGo.Select(part => part.Part).Concat(state.Finished.Select(part => part.Part));
            Assert.Equal(build.Parts.Select(part => part.Id).Order(), told.Order());
            Assert.All(state.ToGo, part => Assert.InRange(part.Pieces, 1, part.Of));
        }
    });

    private static BuildState StateOf(params Entry[] entries) => State.Of(Sample.Journal(Sample.Build("drill", entries))).Builds[0];

    private static Entry Finished(string date, params Finished[] finished) => Sample.Entry(date) with { Finished = finished };

    private static Entry Snags(string date, string[] raised, string[] cleared) => Sample.Entry(date) with
    {
        Snags = [.. raised.Select(id => new Snag(new(id), id))],
        Cleared = [.. cleared.Select(id => new Id<Snag>(id))],
    };
}
