using Journal.Core.Estimating.Method;
using Xunit.Abstractions;

namespace Journal.Core.Tests.Estimating;

/// <summary>
/// Whether the ranges of builds under way hold what they promise, on invented makers: what is left of a build of twelve parts
/// when a quarter, a half and three quarters of them are finished and one more is begun. In the suite with few makers;
/// <c>JOURNAL_COVERAGE=4000</c> asks for as many as the figures of docs/estimating.md were found with.
/// </summary>
public sealed class CoverageTests(ITestOutputHelper output)
{
    private const int Planned = 12;

    private static readonly int Makers = int.TryParse(Environment.GetEnvironmentVariable("JOURNAL_COVERAGE"), out var makers) ? makers : 150;

    public static TheoryData<int> PastParts => [0, 3, 5, 8, 15, 60];

    public static TheoryData<string> WrongWorlds => ["past builds differ", "heavy tails", "drift", "odd build"];

    // Two in a hundred, and what chance makes of so many makers (2.58 standard errors of a share of 0.8).
    private static double Allowed => 0.02 + (2.58 * Math.Sqrt(0.16 / Makers));

    [Theory]
    [MemberData(nameof(PastParts))]
    public void Left_InTheMethodsOwnWorld_HoldsWhatItPromises(int past)
    {
        foreach (var withGuesses in new[] { true, false })
        {
            var held = Held(new InventedWorld(withGuesses) { Finished = past, AreFewOfOneLuck = true }, $"{past} past parts, {Words(withGuesses)}");

            Assert.All(held.Index(), cell => Assert.InRange(cell.Item, Expected(past, withGuesses, cell.Index) - Allowed, 0.8 + Allowed));
        }
    }

    [Theory]
    [MemberData(nameof(WrongWorlds))]
    public void Left_InAnotherWorld_HoldsRoughly(string what)
    {
        foreach (var withGuesses in new[] { true, false })
        {
            var held = Held(InventedWorld.Wrong(what, withGuesses) with { Finished = 15 }, $"{what}, {Words(withGuesses)}");

            Assert.All(held, share => Assert.InRange(share, 0.5, 0.97));
        }
    }

    // 80 %, less what the method leaves out: at a quarter of the first build operation times rest on three parts, and after sixty
    // parts the cap on residuals takes makers who scatter far for steadier than they are (docs/estimating.md, What ranges held).
    private static double Expected(int past, bool withGuesses, int quarter) => withGuesses ? 0.79
        : past == 0 && quarter == 0 ? 0.73
        : past == 60 ? 0.77
        : 0.79;

    private static string Words(bool withGuesses) => withGuesses ? "with guesses" : "without";

    // At a quarter, a half and three quarters: how often the hours left fell in the range for eight in ten.
    private double[] Held(InventedWorld world, string what)
    {
        var makers = world.Makers(Makers, Planned).ToList();
        double[] held = [.. new[] { 3, 6, 9 }.Select(done => makers.Average(invented => Place(invented, done) is >= 0.1 and <= 0.9 ? 1 : 0))];
        output.WriteLine($"{what}: {string.Join(", ", held.Select(share => $"{100 * share:0.0} %"))} at a quarter, a half and three quarters");
        return held;
    }

    // Where what was left fell among the draws, 0 to 1.
    private static double Place(InventedMaker invented, int done)
    {
        var finished = invented.Plan.Take(done).Zip(invented.Hours).ToList();
        var isKnown = invented.Past.Count >= MethodConstants.EnoughParts;
        var maker = isKnown ? new Maker(invented.Past) : Maker.OfOneBuild([.. invented.Past, .. invented.Made.Take(done)]);
        var luck = isKnown ? maker.LuckAfter(finished) : SharedLuck.Unknown;

        var begun = invented.Plan[done] with { SoFar = new(1, invented.Halves[done].Worked, invented.Halves[done].Last) };
        Outlook[] outlooks = [maker.OutlookOn(begun), .. invented.Plan.Skip(done + 1).Select(maker.OutlookOn)];
        var totals = Draws.Of(outlooks, luck, seed: 1, count: 500).Totals();

        // What the method gives back of the luck, the world takes: parts to come are not quite of one luck with those done.
        var gained = 1 - Math.Min(1, (Math.Pow(luck.Scale, 2) - MethodConstants.LuckGivenBack) / (1 - MethodConstants.LuckGivenBack));
        var turn = Math.Exp(outlooks[0].SharedScale * Math.Sqrt(MethodConstants.LuckGivenBack * gained) * invented.Turn);
        var left = (invented.Halves[done].HoursLeft + invented.Hours.Skip(done + 1).Sum()) * turn;
        return (totals.Count(total => total - 1 < left) + 0.5) / (totals.Length + 1);
    }
}
