using Journal.Core.Trade;

namespace Journal.Core.Tests.Trade;

public class BarCuttingTests
{
    // R. L. Graham, Bounds on performance of scheduling algorithms, in Computer and Job-Shop Scheduling Theory (1976), figure
    // 5.46, an example of S. Halász: the pieces fill seven bars of 524 exactly; without the piece of 46 the rule needs eight.
    private static readonly int[] Halasz =
        [442, 252, 252, 252, 252, 252, 252, 252, 127, 127, 127, 127, 127, 106, 106, 106, 106, 85, 84, 46, 37, 37, 12, 12, 12, 10, 10, 10, 10, 10, 10, 9, 9];

    [Fact]
    public void FirstFitDecreasing_ThePublishedExample_TakesSevenBarsAndWithOnePieceFewerEight()
    {
        Assert.Equal(7 * 524, Halasz.Sum());
        Assert.Equal(7, BarCutting.FirstFitDecreasing(Halasz, piece => piece, 524).Count);
        Assert.Equal(8, BarCutting.FirstFitDecreasing(Halasz.Where(piece => piece != 46), piece => piece, 524).Count);
    }

    // Johnson, Demers, Ullman, Garey and Graham, Worst-case performance bounds for simple one-dimensional packing algorithms,
    // SIAM J. Comput. 3 (1974): pieces of a half and a little more, and quarters with a little more and less, fit nine bars,
    // for which the rule takes eleven.
    [Fact]
    public void FirstFitDecreasing_TheWorstThatWasPublished_TakesElevenBarsForNine()
    {
        int[] pieces = [.. Enumerable.Repeat(510, 6), .. Enumerable.Repeat(270, 6), .. Enumerable.Repeat(260, 6), .. Enumerable.Repeat(230, 12)];

        Assert.Equal(11, BarCutting.FirstFitDecreasing(pieces, piece => piece, 1000).Count);
        Assert.Equal(9 * 1000, pieces.Sum());
    }

    [Fact]
    public void FirstFitDecreasing_EveryPieceOnce_AndNoBarTooFull()
    {
        var random = new Random(7);
        for (var turn = 0; turn < 200; turn++)
        {
            var pieces = Enumerable.Range(0, random.Next(0, 40)).Select(_ => random.Next(1, 1000)).ToList();
            var bars = BarCutting.FirstFitDecreasing(pieces, piece => piece, 1000);
            Assert.Equal(pieces.Order(), bars.SelectMany(bar => bar).Order());
            Assert.All(bars, bar => Assert.True(bar.Sum() <= 1000));
        }
    }

    [Fact]
    public void FirstFitDecreasing_PieceLongerThanABar_HasOneOfItsOwn() =>
        Assert.Equal([[1200], [300]], BarCutting.FirstFitDecreasing([300, 1200], piece => piece, 1000));
}
