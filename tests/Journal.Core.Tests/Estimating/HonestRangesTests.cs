using Journal.Core.Estimating.Method;
using Journal.Core.Model;
using Xunit.Abstractions;

namespace Journal.Core.Tests.Estimating;

/// <summary>
/// Whether ranges hold what they promise, over 400 invented makers: where the world is as the method thinks, and by how
/// much they miss where it is not.
/// </summary>
public sealed class HonestRangesTests(ITestOutputHelper output)
{
    private const int Makers = 400;

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Ranges_InTheMethodsOwnWorld_HoldWhatTheyPromise(bool withGuesses)
    {
        var shares = Shares(new InventedWorld(withGuesses));

        var (half, eight) = (Within(shares, 0.5), Within(shares, 0.8));
        var distance = Distance(shares);
        output.WriteLine($"50 %: {half:0.000}, 80 %: {eight:0.000}, Kolmogorov–Smirnov {distance * Math.Sqrt(Makers):0.00}");

        // Binomial error: 1.96 standard errors either way.
        Assert.InRange(half, 0.5 - (1.96 * Math.Sqrt(0.25 / Makers)), 0.5 + (1.96 * Math.Sqrt(0.25 / Makers)));
        Assert.InRange(eight, 0.8 - (1.96 * Math.Sqrt(0.16 / Makers)), 0.8 + (1.96 * Math.Sqrt(0.16 / Makers)));

        // The probability-integral transform is uniform: Kolmogorov–Smirnov, 5 % point 1.358 / √n.
        Assert.True(distance < 1.358 / Math.Sqrt(Makers), $"distance {distance}");
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Ranges_OfABuildHalfDone_HoldWhatTheyPromise(bool withGuesses)
    {
        List<double> shares = [.. new InventedWorld(withGuesses).Makers(Makers, planned: 12).Select(invented =>
        {
            var maker = new Maker(invented.Past);
            var luck = maker.LuckAfter(invented.Plan.Zip(invented.Hours).Take(6));
            var totals = Draws.Of([.. invented.Plan.Skip(6).Select(maker.OutlookOn)], luck, seed: 1, count: 1000).Totals();
            return Place(totals, invented.Hours.Skip(6).Sum());
        })];

        var (half, eight) = (Within(shares, 0.5), Within(shares, 0.8));
        output.WriteLine($"half done, {(withGuesses ? "with" : "without")} guesses: 50 %: {half:0.000}, 80 %: {eight:0.000}");

        // Within 2.58 standard errors: with six parts left the unknown scatter of the maker shows (4,000 makers: 48 and 78 %
        // with guesses, 50 and 80 % without).
        Assert.InRange(half, 0.5 - (2.58 * Math.Sqrt(0.25 / Makers)), 0.5 + (2.58 * Math.Sqrt(0.25 / Makers)));
        Assert.InRange(eight, 0.8 - (2.58 * Math.Sqrt(0.16 / Makers)), 0.8 + (2.58 * Math.Sqrt(0.16 / Makers)));
    }

    public static TheoryData<string, bool, double, double> WrongWorlds => new()
    {
        { "past builds differ", true, 0.41, 0.70 },
        { "past builds differ", false, 0.41, 0.70 },
        { "heavy tails", true, 0.41, 0.70 },
        { "heavy tails", false, 0.41, 0.70 },
        { "drift", true, 0.28, 0.55 },
        { "drift", false, 0.35, 0.60 },
        { "odd build", true, 0.35, 0.60 },
        { "odd build", false, 0.35, 0.60 },
    };

    // How far it falls when the world is not as the method thinks: loose bounds, the figures are printed.
    [Theory]
    [MemberData(nameof(WrongWorlds))]
    public void Ranges_InAnotherWorld_HoldRoughly(string what, bool withGuesses, double leastHalf, double leastEight)
    {
        var world = InventedWorld.Wrong(what, withGuesses);

        var shares = Shares(world);

        output.WriteLine($"{what}, {(withGuesses ? "with" : "without")} guesses: 50 %: {Within(shares, 0.5):0.000}, 80 %: {Within(shares, 0.8):0.000}, mean {shares.Average():0.000}");
        Assert.InRange(Within(shares, 0.5), leastHalf, 0.75);
        Assert.InRange(Within(shares, 0.8), leastEight, 0.95);
    }

    // Where what happened fell among the draws, 0 to 1.
    private static List<double> Shares(InventedWorld world) =>
    [
        .. world.Makers(Makers).Select(invented =>
        {
            var maker = new Maker(invented.Past);
            var totals = Draws.Of([.. invented.Plan.Select(maker.OutlookOn)], SharedLuck.Unknown, seed: 1, count: 1000).Totals();
            return Place(totals, invented.Took);
        }),
    ];

    private static double Place(double[] totals, double took) => (totals.Count(total => total < took) + 0.5) / (totals.Length + 1);

    private static double Within(List<double> shares, double range) => shares.Count(share => Math.Abs(share - 0.5) <= range / 2) / (double)shares.Count;

    private static double Distance(List<double> shares) =>
        shares.Order().Select((share, i) => Math.Max(share - (i / (double)Makers), ((i + 1) / (double)Makers) - share)).Max();
}
