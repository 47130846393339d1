using CsCheck;
using Journal.Core.Model;

namespace Journal.Core.Tests.Figures;

public sealed class SharingTests
{
    [Fact]
    public void Share_EqualRemaindersBehindSharesOfDifferentLength_GoesToTheFirstNamed()
    {
        // 13⅓, 1⅓ and 1⅓: decimal fractions of 13⅓ end a digit sooner, which must not decide the tie.
        var shares = new Minutes(16).Share([10, 1, 1]);

        Assert.Equal([14, 1, 1], shares.Select(share => share.Count));
    }

    [Fact]
    public void Share_UnevenWeights_GivesTheMinuteToTheLargestRemainder()
    {
        // 100 in the ratio 3 : 2 : 2 is 42.86, 28.57 and 28.57.
        var shares = new Minutes(100).Share([3, 2, 2]);

        Assert.Equal([43, 29, 28], shares.Select(share => share.Count));
    }

    [Fact]
    public void Share_AnyWeights_AddsUpAndStaysWithinAMinute() =>
        Gen.Select(Gen.Int[0, 100_000], Gen.Int[1, 1000].Array[1, 12]).Sample((count, weights) =>
        {
            var shares = new Minutes(count).Share([.. weights.Select(weight => weight / 10m)]);

            Assert.Equal(count, shares.Sum(share => share.Count));
            Assert.All(shares.Zip(weights), pair =>
                Assert.InRange(pair.First.Count, Math.Floor((double)count * pair.Second / weights.Sum() - 1e-9), Math.Ceiling((double)count * pair.Second / weights.Sum() + 1e-9)));
        });

    [Fact]
    public void ShareEqually_AnyTime_IsWhatEqualWeightsGive() =>
        Gen.Select(Gen.Int[0, 100_000], Gen.Int[0, 12]).Sample((count, among) =>
            Assert.Equal(new Minutes(count).Share([.. Enumerable.Repeat(1m, among)]), new Minutes(count).ShareEqually(among)));
}
