using Journal.Core.Estimating.Method;
using Journal.Core.Model;
using Journal.Core.Statistics;
using Xunit.Abstractions;

namespace Journal.Core.Tests.Estimating;

/// <summary>
/// How near the forecasts come on invented logs that were not used to find the method: the mean continuous ranked probability
/// score of log hours (Gneiting and Raftery, <i>Journal of the American Statistical Association</i> 102, 2007), against
/// the plain way of drawing past ratios (without guesses: past parts' hours) independently.
/// </summary>
public sealed class AccuracyTests(ITestOutputHelper output)
{
    private const int Makers = 200;
    private const int Count = 1000;

    [Theory]
    [InlineData(true, 1.00)]
    [InlineData(false, 0.97)]
    public void Score_AgainstDrawingThePastIndependently_IsNoWorse(bool withGuesses, double most)
    {
        var invented = (new InventedWorld(withGuesses) { PastBuildsDiffer = true }).Makers(Makers).ToList();

        var ours = invented.Average(maker => Score(Forecast(maker), Math.Log(maker.Took)));
        var plain = invented.Average(maker => Score(Plain(maker), Math.Log(maker.Took)));

        output.WriteLine($"{(withGuesses ? "with" : "without")} guesses: {ours:0.000} against {plain:0.000}, ratio {ours / plain:0.00}");
        Assert.InRange(ours / plain, 0, most);
    }

    private static double[] Forecast(InventedMaker invented)
    {
        var maker = new Maker(invented.Past);
        return Draws.Of([.. invented.Plan.Select(maker.OutlookOn)], SharedLuck.Unknown, seed: 1, count: Count).Totals();
    }

    private static double[] Plain(InventedMaker invented)
    {
        var luck = Luck.For(1, "plain");
        return [.. Enumerable.Range(0, Count).Select(_ => invented.Plan.Sum(part =>
        {
            var past = invented.Past[luck.Below(invented.Past.Count)];
            return part.Guess is { } guess ? guess * past.Hours / past.Guess!.Value : past.Hours;
        }))];
    }

    // mean |X − y| − ½ mean |X − X′| over draws X of log hours.
    private static double Score(double[] totals, double happened)
    {
        double[] sorted = [.. totals.Select(total => Math.Log(total)).Order()];
        var n = sorted.Length;
        return sorted.Average(x => Math.Abs(x - happened)) - (sorted.Select((x, i) => ((2 * i) - n + 1.0) * x).Sum() / n / n);
    }
}
