using Journal.Core.Estimating.Method;
using Journal.Core.Model;
using Journal.Core.Statistics;

namespace Journal.Core.Tests.Estimating;

/// <summary>
/// The worked example of docs/estimating.md, worked through on three finished parts with nothing but <see cref="Math"/>,
/// each line as a reader with a pocket calculator would write it.
/// </summary>
public sealed class SmallCaseByHand
{
    private static readonly Id<Operation> Boring = new("boring");
    private static readonly Id<Operation> Turning = new("turning");

    // head: guessed 8 h, took 9 h boring and 3 h turning; quill: guessed 6 h, took 5 h turning; cap: guessed 2 h, took 4 h boring.
    private static readonly PastPart[] Past =
    [
        new("drill/head", 12, 8, [new(Boring, 9), new(Turning, 3)]),
        new("drill/quill", 5, 6, [new(Turning, 5)]),
        new("drill/cap", 4, 2, [new(Boring, 4)]),
    ];

    private static readonly double[] W = [Math.Pow(2, -2 / 40.0), Math.Pow(2, -1 / 40.0), 1];

    [Fact]
    public void WithGuesses_ThreeParts_EveryStepAsByHand()
    {
        var (w1, w2, w3) = (W[0], W[1], W[2]);

        // Operation times. head leaves itself out: boring is known from cap alone, turning from quill alone, m from both.
        var mHead = ((w2 * Math.Log(5)) + (w3 * Math.Log(4))) / (w2 + w3);
        var qHead = Math.Exp(((w3 * Math.Log(4)) + (5 * mHead)) / (w3 + 5)) + Math.Exp(((w2 * Math.Log(5)) + (5 * mHead)) / (w2 + 5));
        var mQuill = ((w1 * (Math.Log(9) + Math.Log(3))) + (w3 * Math.Log(4))) / (w1 + w1 + w3);
        var qQuill = Math.Exp(((w1 * Math.Log(3)) + (5 * mQuill)) / (w1 + 5));
        var mCap = ((w1 * (Math.Log(9) + Math.Log(3))) + (w2 * Math.Log(5))) / (w1 + w1 + w2);
        var qCap = Math.Exp(((w1 * Math.Log(9)) + (5 * mCap)) / (w1 + 5));

        // Reference: λ and the references.
        double[] ratios = [Math.Log(8 / qHead), Math.Log(6 / qQuill), Math.Log(2 / qCap)];
        var lambda = Math.Exp(ratios.Order().ElementAt(1));
        double[] x = [LogR(8, qHead), LogR(6, qQuill), LogR(2, qCap)];
        double LogR(double g, double q) => Math.Log(Math.Pow(g, 0.9) * Math.Pow(lambda * q, 0.1));

        // Weights by recency and size.
        var median = Math.Exp(x.Order().ElementAt(1));
        double[] raw = [.. Enumerable.Range(0, 3).Select(i => W[i] * Math.Sqrt(Math.Clamp(Math.Exp(x[i]) / median, 0.1, 10)))];
        var n = Math.Pow(raw.Sum(), 2) / raw.Sum(v => v * v);
        double[] v = [.. raw.Select(value => value * n / raw.Sum())];
        var centre = Enumerable.Range(0, 3).Sum(i => v[i] * x[i]) / n;

        // Residuals; none is beyond the weighted median ± 2.1 here.
        double[] r = [Math.Log(12) - x[0], Math.Log(5) - x[1], Math.Log(4) - x[2]];

        // Slope.
        var mean = Enumerable.Range(0, 3).Sum(i => v[i] * r[i]) / n;
        var variance = Enumerable.Range(0, 3).Sum(i => v[i] * Math.Pow(r[i] - mean, 2)) / n;
        var squares = Enumerable.Range(0, 3).Sum(i => v[i] * Math.Pow(x[i] - centre, 2));
        var slope = Enumerable.Range(0, 3).Sum(i => v[i] * (x[i] - centre) * r[i]) / (squares + (Math.Max(variance, 0.001) / (0.15 * 0.15)));

        // Scatter.
        var left = Enumerable.Range(0, 3).Sum(i => v[i] * Math.Pow(r[i] - mean - (slope * (x[i] - centre)), 2));
        var scatter = Math.Sqrt(((10 * 0.65 * 0.65) + left) / (9 + n));

        // Habit.
        var doubt = 1 / ((n / (scatter * scatter)) + (1 / (0.2 * 0.2)));
        var shift = doubt * n * mean / (scatter * scatter);

        // A frame of boring and turning, guessed 10 h; three finished parts are few, so τ = 0.3.
        var m = ((w1 * (Math.Log(9) + Math.Log(3))) + (w2 * Math.Log(5)) + (w3 * Math.Log(4))) / (w1 + w1 + w2 + w3);
        var boring = Math.Exp(((w1 * Math.Log(9)) + (w3 * Math.Log(4)) + (5 * m)) / (w1 + w3 + 5));
        var turning = Math.Exp(((w1 * Math.Log(3)) + (w2 * Math.Log(5)) + (5 * m)) / (w1 + w2 + 5));
        var xFrame = LogR(10, boring + turning);
        var middle = xFrame + shift + (slope * (xFrame - centre));
        var shared = Math.Sqrt(doubt + (0.3 * 0.3));

        var maker = new Maker(Past);
        var habit = maker.WithGuesses;
        var outlook = maker.OutlookOn(new PlannedPart("shaper/frame", 10, [Boring, Turning]));

        Assert.Equal(n, habit.EffectiveParts, 1e-12);
        Assert.Equal(centre, habit.Centre, 1e-12);
        Assert.Equal(slope, habit.Slope, 1e-12);
        Assert.Equal(scatter, habit.Scatter, 1e-12);
        Assert.Equal(doubt, habit.ShiftVariance, 1e-12);
        Assert.Equal(shift, habit.Shift, 1e-12);
        Assert.Equal(middle, outlook.Middle, 1e-12);
        Assert.Equal(shared, outlook.SharedScale, 1e-12);
        Assert.Equal(scatter, outlook.Scatter, 1e-12);
    }

    [Fact]
    public void WithoutGuesses_ThreeParts_EveryStepAsByHand()
    {
        var (w1, w2, w3) = (W[0], W[1], W[2]);

        // Reference: R = Q, the part's own hours left out.
        var mHead = ((w2 * Math.Log(5)) + (w3 * Math.Log(4))) / (w2 + w3);
        var mQuill = ((w1 * (Math.Log(9) + Math.Log(3))) + (w3 * Math.Log(4))) / (w1 + w1 + w3);
        var mCap = ((w1 * (Math.Log(9) + Math.Log(3))) + (w2 * Math.Log(5))) / (w1 + w1 + w2);
        double[] x =
        [
            Math.Log(Math.Exp(((w3 * Math.Log(4)) + (5 * mHead)) / (w3 + 5)) + Math.Exp(((w2 * Math.Log(5)) + (5 * mHead)) / (w2 + 5))),
            ((w1 * Math.Log(3)) + (5 * mQuill)) / (w1 + 5),
            ((w1 * Math.Log(9)) + (5 * mCap)) / (w1 + 5),
        ];

        // Weights: the size exponent is 0: recency alone.
        var n = Math.Pow(W.Sum(), 2) / W.Sum(w => w * w);
        double[] v = [.. W.Select(w => w * n / W.Sum())];
        var centre = Enumerable.Range(0, 3).Sum(i => v[i] * x[i]) / n;

        // Residuals to habit, with c₀ = −0.25, σ_c = 0.25, σ₀ = 1.3, σ_a = 1.
        double[] h = [12, 5, 4];
        double[] r = [.. Enumerable.Range(0, 3).Select(i => Math.Log(h[i]) - x[i] + (0.25 * (x[i] - centre)))];
        var mean = Enumerable.Range(0, 3).Sum(i => v[i] * r[i]) / n;
        var variance = Enumerable.Range(0, 3).Sum(i => v[i] * Math.Pow(r[i] - mean, 2)) / n;
        var squares = Enumerable.Range(0, 3).Sum(i => v[i] * Math.Pow(x[i] - centre, 2));
        var slope = Enumerable.Range(0, 3).Sum(i => v[i] * (x[i] - centre) * r[i]) / (squares + (Math.Max(variance, 0.001) / 0.0625));
        var left = Enumerable.Range(0, 3).Sum(i => v[i] * Math.Pow(r[i] - mean - (slope * (x[i] - centre)), 2));
        var scatter = Math.Sqrt(((10 * 1.3 * 1.3) + left) / (9 + n));
        var doubt = 1 / ((n / (scatter * scatter)) + 1);
        var shift = doubt * n * mean / (scatter * scatter);

        // A bush, turned only; τ = 0.7 with few parts.
        var m = ((w1 * (Math.Log(9) + Math.Log(3))) + (w2 * Math.Log(5)) + (w3 * Math.Log(4))) / (w1 + w1 + w2 + w3);
        var xBush = ((w1 * Math.Log(3)) + (w2 * Math.Log(5)) + (5 * m)) / (w1 + w2 + 5);
        var middle = xBush + shift + ((-0.25 + slope) * (xBush - centre));

        var outlook = new Maker(Past).OutlookOn(new PlannedPart("shaper/bush", null, [Turning]));

        Assert.Equal(middle, outlook.Middle, 1e-12);
        Assert.Equal(Math.Sqrt(doubt + 0.49), outlook.SharedScale, 1e-12);
        Assert.Equal(scatter, outlook.Scatter, 1e-12);
    }

    // The frame above with 4 h of boring done: turning to come, and boring half done.
    [Fact]
    public void BegunPart_OneOperationOfTwoWorked_IsAsByHand()
    {
        var (w1, w2, w3) = (W[0], W[1], W[2]);
        var m = ((w1 * (Math.Log(9) + Math.Log(3))) + (w2 * Math.Log(5)) + (w3 * Math.Log(4))) / (w1 + w1 + w2 + w3);
        var boring = Math.Exp(((w1 * Math.Log(9)) + (w3 * Math.Log(4)) + (5 * m)) / (w1 + w3 + 5));
        var turning = Math.Exp(((w1 * Math.Log(3)) + (w2 * Math.Log(5)) + (5 * m)) / (w1 + w2 + 5));
        var left = (turning + (0.5 * boring)) / (boring + turning);

        var maker = new Maker(Past);
        var whole = maker.OutlookOn(new PlannedPart("shaper/frame", 10, [Boring, Turning]));
        var begun = maker.OutlookOn(new PlannedPart("shaper/frame", 10, [Boring, Turning]) { SoFar = new(4, [Boring], Boring) });

        Assert.Equal(left, begun.ShareLeft, 1e-12);
        Assert.Equal(0.73495, left, 5e-6);
        Assert.Equal(whole.Middle, begun.Middle, 1e-12);
        foreach (var (share, normal) in new[] { (0.1, -1.2815515655446004), (0.5, 0), (0.9, 1.2815515655446004) })
        {
            var spread = Math.Sqrt(Math.Pow(whole.SharedScale, 2) + Math.Pow(1.8 * whole.Scatter, 2));
            Assert.Equal(4 + (left * Math.Exp(whole.Middle + (spread * normal))), begun.Quantile(share, SharedLuck.Unknown), 1e-9);
        }

        // As docs/estimating.md prints it.
        Assert.Equal(new[] { 5.701, 11.527, 37.302 }, new[] { 0.1, 0.5, 0.9 }.Select(share => Math.Round(begun.Quantile(share, SharedLuck.Unknown), 3)));
        Assert.Equal(new[] { 4.142, 10.242, 25.326 }, new[] { 0.1, 0.5, 0.9 }.Select(share => Math.Round(whole.Quantile(share, SharedLuck.Unknown), 3)));
        Assert.Equal(
            new[] { 0.707, 4.815, 32.815 },
            new[] { 0.1, 0.5, 0.9 }.Select(share => Math.Round(maker.OutlookOn(new("shaper/bush", null, [Turning])).Quantile(share, SharedLuck.Unknown), 3)));

        // The draws are of the same distribution.
        var sorted = Draws.Of([begun], SharedLuck.Unknown, seed: 1, count: 10_000).Hours[0].Order().ToArray();
        Assert.All(new[] { 0.1, 0.5, 0.9 }, share => Assert.InRange(Quantiles.OfSorted(sorted, share) / begun.Quantile(share, SharedLuck.Unknown), 0.985, 1.015));
    }

    // Each operation usually takes the same before any part is finished: of three, one is to come and the last is half done.
    [Fact]
    public void BegunPart_BeforeAnyPartIsFinished_CountsOperationsAlike()
    {
        var begun = new Maker([]).OutlookOn(new PlannedPart("frame", 10, [Boring, Turning, new("lapping")]) { SoFar = new(4, [Boring, Turning], Turning) });

        Assert.Equal(1.5 / 3, begun.ShareLeft, 1e-12);
    }

    [Theory]
    [InlineData(new[] { "boring", "turning" }, "boring", 0.25)] // all worked: half of the last of two
    [InlineData(new[] { "lapping" }, "lapping", 2.5 / 3)] // work that was not planned: both to come
    public void BegunPart_AllOrNothingOfThePlanWorked_CountsTheLastAsHalfDone(string[] worked, string last, double left)
    {
        var begun = new Maker([]).OutlookOn(new PlannedPart("frame", 10, [Boring, Turning]) { SoFar = new(4, [.. worked.Select(one => new Id<Operation>(one))], new(last)) });

        Assert.Equal(left, begun.ShareLeft, 1e-12);
    }

    // No operations are planned: what is not spent of 10 h guessed, at least a tenth and at most 0.98.
    [Theory]
    [InlineData(4, 0.6)]
    [InlineData(0.1, 0.98)]
    [InlineData(9.5, 0.1)]
    [InlineData(40, 0.1)]
    public void BegunPart_NoOperationsPlanned_GoesByTheGuess(double spent, double left) =>
        Assert.Equal(left, new Maker(Past).OutlookOn(new PlannedPart("frame", 10, []) { SoFar = new(spent, [Boring], Boring) }).ShareLeft, 1e-12);

    [Fact]
    public void BegunPart_NeitherOperationsNorGuess_GoesByWhatPartsTake()
    {
        var maker = new Maker(Past);
        var whole = Math.Exp(maker.OutlookOn(new PlannedPart("frame", null, [])).Middle);

        Assert.Equal(1 - (2 / whole), maker.OutlookOn(new PlannedPart("frame", null, []) { SoFar = new(2, [Boring], Boring) }).ShareLeft, 1e-12);
    }

    [Fact]
    public void Residuals_OneFreak_IsCappedAtItsLimitFromTheMedian()
    {
        // Four parts as guessed and one that took 100 times as long: r is capped at 0 + 2.1 (Residuals), so with equal weights,
        // sizes and no slope r̄ = 2.1 / 5.
        double[] x = [1, 1, 1, 1, 1];
        var habit = Habit.Of(x, [1, 1, 1, 1, 1 + Math.Log(100)], [1, 1, 1, 1, 1], MethodConstants.WithGuesses);

        var scatter = ((10 * 0.65 * 0.65) + (4 * 0.42 * 0.42) + (1.68 * 1.68)) / (9 + 5);
        var doubt = 1 / ((5 / scatter) + 25);
        Assert.Equal(Math.Sqrt(scatter), habit.Scatter, 1e-12);
        Assert.Equal(doubt * 5 * 0.42 / scatter, habit.Shift, 1e-12);
    }

    [Fact]
    public void LuckAfter_TwoFinishedParts_IsTheNormalPosterior()
    {
        // Z ~ N(0, 1); d = σ Z + s ε with σ = 0.5, s = 0.8 for d = 0.4 and d = 0.9:
        // precision 1 + 2 · 0.25 / 0.64, mean (0.5 · 0.4 + 0.5 · 0.9) / 0.64 over that.
        var outlook = new Outlook("part", Middle: 1, SharedScale: 0.5, Scatter: 0.8);

        var luck = SharedLuck.After([(outlook, 1.4, 2.1), (outlook, 1.9, 2.1)]);

        // Of the variance gained, three tenths are given back: v + 0.3 (1 − v).
        var variance = 1 / (1 + (0.5 / 0.64));
        Assert.Equal(0.65 / 0.64 / (1 + (0.5 / 0.64)), luck.Middle, 1e-12);
        Assert.Equal(Math.Sqrt(variance + (0.3 * (1 - variance))), luck.Scale, 1e-12);
    }

    [Fact]
    public void OfOneBuild_NoPartYet_IsAsWideAsAnyNewBuildWithAThinHistory()
    {
        Assert.Equal(Math.Sqrt(0.04 + 0.09), new Maker([]).WithGuesses.SharedScale, 1e-12);
        Assert.Equal(Math.Sqrt(0.04 + 0.09), Maker.OfOneBuild([]).WithGuesses.SharedScale, 1e-12);
    }

    [Fact]
    public void Draws_TwoParts_TotalsAreTheSumsOverTheParts()
    {
        var maker = new Maker(Past);
        Outlook[] outlooks = [maker.OutlookOn(new("a", 10, [Boring])), maker.OutlookOn(new("b", null, [Turning]))];

        var draws = Draws.Of(outlooks, SharedLuck.Unknown, seed: 1, count: 2000);

        Assert.All(draws.Totals().Select((total, draw) => total - draws.Hours[0][draw] - draws.Hours[1][draw]), off => Assert.Equal(0, off, 1e-9));
        foreach (var (outlook, hours) in outlooks.Zip(draws.Hours))
        {
            // Each part alone is log-normal: its logarithms have the mean and variance of a log-normal part.
            double[] logs = [.. hours.Select(h => Math.Log(h))];
            var spread = Math.Sqrt(Math.Pow(outlook.SharedScale, 2) + Math.Pow(outlook.Scatter, 2));
            Assert.Equal(outlook.Middle, logs.Average(), 0.01);
            Assert.Equal(spread, MathNet.Numerics.Statistics.Statistics.StandardDeviation(logs), 0.03 * spread);
        }
    }
}
