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
}
