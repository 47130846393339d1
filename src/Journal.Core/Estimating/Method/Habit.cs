using Journal.Core.Model;
using Journal.Core.Statistics;
using static Journal.Core.Statistics.SameEverywhere;

namespace Journal.Core.Estimating.Method;

/// <summary>
/// Weights to Habit: how a maker's hours run against the references of finished parts. Recent and bigger parts count more,
/// freaks are capped, and what few parts cannot show is held towards what most makers show.
/// </summary>
internal sealed record Habit
{
    private Habit(MethodConstants constants, int parts) => (Constants, Parts) = (constants, parts);

    /// <summary>The column of constants it was found with.</summary>
    public MethodConstants Constants { get; }

    /// <summary>How many finished parts it rests on.</summary>
    public int Parts { get; }

    /// <summary>Weights, n_e: how many parts of equal weight that is worth.</summary>
    public double EffectiveParts { get; private init; }

    /// <summary>Weights, x̄: the weighted mean of the references' logarithms.</summary>
    public double Centre { get; private init; }

    /// <summary>Slope, c₀ + c: how hours grow with the reference, beyond in proportion.</summary>
    public double Slope { get; private init; }

    /// <summary>Scatter, s: the scatter of single parts.</summary>
    public double Scatter { get; private init; }

    /// <summary>Habit, a: how far hours run over references; exp(a) is the maker's ratio.</summary>
    public double Shift { get; private init; }

    /// <summary>Habit, V: how uncertain that is.</summary>
    public double ShiftVariance { get; private init; }

    /// <summary>Shared luck, τ: how far builds differ as wholes, wider while the history is thin.</summary>
    public double BuildScale => Parts < MethodConstants.EnoughParts ? Constants.ThinBuildScale : Constants.BuildScale;

    /// <summary>
    /// Shared luck: √(V + τ²), the scale of what all parts of one build share. The luck of the build and the doubt about
    /// the habit move every part alike, so √V·A + τ·K is one normal number with this scale.
    /// </summary>
    public double SharedScale => Math.Sqrt(ShiftVariance + (BuildScale * BuildScale));

    /// <summary>Middle of a part: the middle of ln H for a reference, x + a + (c₀ + c)(x − x̄).</summary>
    public double MiddleOf(double x) => x + Shift + (Parts == 0 ? 0 : Slope * (x - Centre));

    /// <summary>Finds the habit.</summary>
    /// <param name="x">ln R of each part, in the order of finishing.</param>
    /// <param name="logHours">ln h of each part.</param>
    /// <param name="recency">Recency, w of each part.</param>
    /// <param name="constants">With guesses or without.</param>
    public static Habit Of(double[] x, double[] logHours, double[] recency, MethodConstants constants)
    {
        if (x.Length == 0)
        {
            return BeforeAnyPart(constants);
        }

        var weights = Weights(x, recency, constants);
        var n = weights.Sum();
        var residuals = Residuals(x, logHours, weights, constants);
        var line = new WeightedLine(x, residuals, weights);

        // Slope: c = Σ v (x − x̄) r / (Σ v (x − x̄)² + max(var_v r, 0.001) / σ_c²).
        var slope = line.Slope(Math.Max(line.VarianceY, MethodConstants.LeastVariance) / Square(constants.SlopeScale));

        // Scatter: s² = (10 σ₀² + Σ v (r − r̄ − c (x − x̄))²) / (9 + n_e).
        var scatter = (PriorSquares(constants) + line.SquaresAbout(slope)) / (MethodConstants.ScatterPrior - 1 + n);

        // Habit: V = 1 / (n_e / s² + 1 / σ_a²) and a = V n_e r̄ / s².
        var variance = 1 / ((n / scatter) + (1 / Square(constants.HabitScale)));
        return new Habit(constants, x.Length)
        {
            EffectiveParts = n,
            Centre = line.MeanX,
            Slope = constants.FixedSlope + slope,
            Scatter = Math.Sqrt(scatter),
            Shift = variance * n * line.MeanY / scatter,
            ShiftVariance = variance,
        };
    }

    // Scatter and Habit with n_e = 0: nothing but what most makers show.
    private static Habit BeforeAnyPart(MethodConstants constants) => new(constants, 0)
    {
        Scatter = Math.Sqrt(PriorSquares(constants) / (MethodConstants.ScatterPrior - 1)),
        ShiftVariance = Square(constants.HabitScale),
    };

    // Weights: v = w · clip(R / median R, 0.1, 10)^(½ or 0), n_e = (Σv)² / Σv², rescaled so that Σv = n_e.
    private static double[] Weights(double[] x, double[] recency, MethodConstants constants)
    {
        double[] references = [.. x.Select(Exp)];
        var median = Quantiles.Median(references);
        double[] raw = [.. references.Select((reference, i) => recency[i]
            * Power(Math.Clamp(reference / median, MethodConstants.SmallestSize, MethodConstants.GreatestSize), constants.SizeExponent))];
        var scale = raw.Sum() / raw.Sum(Square);
        return [.. raw.Select(v => v * scale)];
    }

    // Residuals: r = ln h − x − c₀ (x − x̄), clamped to the weighted median ± 2.1 or 3.0.
    private static double[] Residuals(double[] x, double[] logHours, double[] weights, MethodConstants constants)
    {
        var centre = x.Zip(weights, (value, v) => value * v).Sum() / weights.Sum();
        double[] residuals = [.. x.Select((value, i) => logHours[i] - value - (constants.FixedSlope * (value - centre)))];
        var median = Quantiles.WeightedMedian(residuals, weights);
        return [.. residuals.Select(r => Math.Clamp(r, median - constants.ResidualLimit, median + constants.ResidualLimit))];
    }

    private static double PriorSquares(MethodConstants constants) => MethodConstants.ScatterPrior * Square(constants.Scatter);

    private static double Power(double value, double exponent) => exponent == 0 ? 1 : Exp(exponent * Ln(value));

    private static double Square(double value) => value * value;
}
