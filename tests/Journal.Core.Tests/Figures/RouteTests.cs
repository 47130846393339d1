using Journal.Core.Figures;
using Journal.Core.Model;

namespace Journal.Core.Tests.Figures;

public sealed class RouteTests
{
    [Fact]
    public void Of_JobsHeldTheSameWay_ShareASetUp()
    {
        var route = RouteOf(
            Held("four-jaw", "boss"),
            Held("Four-jaw ", "boss"),
            Held(null, null),
            Held("four-jaw", null),
            Held("face plate", "machined base"),
            Held(null, "bore"));

        Assert.Equal(
            [(1, "four-jaw", "boss", 4), (2, "face plate", "machined base", 1), (3, null, "bore", 1)],
            route.SetUps.Select(setUp => (setUp.Number, setUp.Held, setUp.Datum, setUp.Steps.Count)));
        Assert.Equal([10, 20, 30, 40, 50, 60], route.Steps.Select(step => step.Number));
        Assert.Equal(3, route.SetUpCount);
    }

    [Fact]
    public void Of_HeldTheSameAgainAfterAnother_IsASetUpOfItsOwn()
    {
        var route = RouteOf(Held("four-jaw", null), Held("vice", null), Held("four-jaw", null));

        Assert.Equal(["four-jaw", "vice", "four-jaw"], route.SetUps.Select(setUp => setUp.Held));
    }

    [Fact]
    public void SetUpCount_JobsBeforeTheFirstHolding_CountsOnlyWhatSaysHow()
    {
        var route = RouteOf(Held(null, null), Held("vice", null));

        Assert.Equal(2, route.SetUps.Count);
        Assert.Equal(1, route.SetUpCount);
    }

    [Fact]
    public void Of_JobSharedWithAnotherPart_TellsThePartsOwnShareAndTheJobsFacts()
    {
        var job = Sample.Job(90, "boring", "head:2 cap:1") with { Tools = [new("boring-head")], Made = [new("plug")], Mends = new("bore-off") };
        var build = Sample.Build("drill", Sample.Entry("2025-10-03", Sample.Job(30), job)) with { Parts = [Sample.Part("cap"), Sample.Part("head")] };

        var routes = Route.Of(build);

        Assert.Equal([("cap", 30), ("head", 60)], routes.Select(route => (route.Part.Part.Value, route.Minutes.Count)));
        var step = Assert.Single(routes[1].Steps);
        Assert.Equal((Sample.Ref("drill", "2025-10-03"), Sample.Day("2025-10-03"), 2), (step.Entry, step.Date, step.Job));
        Assert.Equal(("boring", "boring-head", "plug", "bore-off"), (step.Operations[0].Value, step.Tools[0].Value, step.Made[0].Value, step.Mends!.Value.Value));
    }

    private static Job Held(string? held, string? datum) => Sample.Job(60, "turning", "head") with { Held = held, Datum = datum };

    private static Route RouteOf(params Job[] jobs) => Assert.Single(Route.Of(Sample.Build("drill", Sample.Entry("2025-10-03", jobs))));
}
