using Journal.Core.Estimating;
using Journal.Core.Estimating.Method;
using Journal.Core.Model;

namespace Journal.Core.Tests.Estimating;

/// <summary>How a guess enters the method.</summary>
public sealed class GuessTests
{
    [Fact]
    public void MeanMinutes_ThreePoints_WeighsTheLikelyFourTimes()
    {
        // Malcolm, Roseboom, Clark and Fazar 1959: (low + 4 likely + high) / 6.
        var guess = new Guess { Low = new(360), Likely = new(540), High = new(960) };

        Assert.Equal(580, guess.MeanMinutes, 1e-12);
    }

    [Fact]
    public void HoursFor_OnePieceOrAll_CountsPiecesOnlyWhereTheGuessIsForOne()
    {
        var part = Shop.Part("pulley", quantity: 3);
        var byOperation = new Guess { Likely = new(120), ByOperation = [(new("turning"), new(90)), (new("boring"), new(30))] };

        Assert.Equal(2, byOperation.HoursFor(part));
        Assert.Equal(6, (byOperation with { ForOnePiece = true }).HoursFor(part));
        // Wright 1936 on the 80 % curve: the average of two pieces is 0.8 of the first.
        Assert.Equal(3.2, (byOperation with { ForOnePiece = true }).HoursFor(Shop.Part("pair", quantity: 2), LearningCurve.OfRate(0.8))!.Value, 1e-12);
    }

    [Fact]
    public void ForAll_OfOnePiece_MultipliesEveryTimeOnce()
    {
        var guess = new Guess { Likely = new(120), ByOperation = [(new("turning"), new(90)), (new("boring"), new(30))], ForOnePiece = true };

        var all = guess.ForAll(3);

        Assert.Equal((360, false), (all.Likely.Count, all.ForOnePiece));
        Assert.Equal([270, 90], all.ByOperation.Select(one => one.Time.Count));
        Assert.Equal(all.Likely, all.ForAll(3).Likely);
    }
}
