using Journal.Core.Estimating.Method;
using Journal.Core.Model;

namespace Journal.Core.Tests.Estimating;

/// <summary>Quantity and the learning curve.</summary>
public sealed class LearningCurveTests
{
    private static readonly Id<Operation> Turning = new("turning");

    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 0.8)]
    [InlineData(4, 0.64)]
    [InlineData(8, 0.512)]
    public void Average_EightyPerCentCurve_FallsByAFifthWithEachDoubling(int pieces, double expected) =>
        Assert.Equal(expected, LearningCurve.OfRate(0.8).Average(pieces), 1e-12); // Wright 1936: the cumulative average

    [Fact]
    public void Of_NoRepeats_IsNoLearning() =>
        Assert.Equal(LearningCurve.None, LearningCurve.Of([Screws(1, 1), Screws(1, 1.4), Screws(1, 0.9)]));

    [Fact]
    public void Of_PiecesThatTookInProportion_StaysNearNone() =>
        Assert.InRange(LearningCurve.Of([Screws(1, 1), Screws(6, 6), Screws(4, 4), Screws(1, 1)]).Exponent, -0.02, 0);

    [Fact]
    public void Of_ManyRepeatsThatWentFaster_LearnsFromThemAndStaysHeldBack()
    {
        PastPart[] past = [.. Enumerable.Range(0, 40).Select(i => i % 2 == 0 ? Screws(1, 1) : Screws(8, 8 * 0.512))];

        // Half of the parts show it, and the typical hours already hold part of it: towards −0.32, not all the way.
        Assert.InRange(LearningCurve.Of(past).Exponent, -0.32, -0.05);
    }

    [Fact]
    public void OutlookOn_SixPiecesWithoutRepeatsInTheHistory_TakesSixTimesOne()
    {
        var maker = new Maker([Screws(1, 1), Screws(1, 1.2), Screws(1, 0.8)]);

        var one = maker.Curve.Total(1);
        var six = maker.Curve.Total(6);

        Assert.Equal(6 * one, six, 1e-12);
    }

    private static PastPart Screws(int quantity, double hours) => new("drill/screw", hours, null, [new(Turning, hours)], quantity);
}
