namespace Journal.Core.Tests.Estimating.Reference;

/// <summary>A column of the table in docs/estimating.md, What the constants rest on.</summary>
internal sealed record ReferenceConstants(
    double PowerOfSize, double SlopeAssumed, double Cap, double SlopeScale, double ScatterAssumed, double HabitScale, double Luck, double LuckThin, double LikePull)
{
    public static readonly ReferenceConstants WithGuess = new(0.5, 0, 2.1, 0.15, 0.65, 0.2, 0.2, 0.3, 0.5);
    public static readonly ReferenceConstants Without = new(0, -0.25, 3.0, 0.25, 1.3, 1.0, 0.5, 0.7, 0.7);
}

/// <summary>What a column of past parts teaches: docs/estimating.md from Weights to Habit, line by line.</summary>
internal sealed class ReferenceColumn
{
    /// <param name="constants">Those of the column.</param>
    /// <param name="w">Recency weights of the column's parts.</param>
    /// <param name="x">Their ln R.</param>
    /// <param name="hours">Their hours.</param>
    /// <param name="isLuckInHabit">Whether the build's own luck is in the habit already (Luck so far).</param>
    public ReferenceColumn(ReferenceConstants constants, double[] w, double[] x, double[] hours, bool isLuckInHabit)
    {
        Constants = constants;
        var n = x.Length;
        Tau = isLuckInHabit ? 0 : n < 5 ? constants.LuckThin : constants.Luck;
        var habitVariance = Square(constants.HabitScale) + (isLuckInHabit ? Square(constants.LuckThin) : 0);
        if (n == 0)
        {
            (V, ScatterSquared) = (habitVariance, 10 * Square(constants.ScatterAssumed) / 9);
            return;
        }

        // Weights
        var medianSize = Median([.. x.Select(Math.Exp)]);
        var v = new double[n];
        for (var i = 0; i < n; i++)
        {
            v[i] = w[i] * Math.Pow(Math.Clamp(Math.Exp(x[i]) / medianSize, 0.1, 10), constants.PowerOfSize);
        }

        Parts = Square(v.Sum()) / v.Sum(Square);
        var scale = Parts / v.Sum();
        for (var i = 0; i < n; i++)
        {
            v[i] *= scale;
        }

        Mean = WeightedSum(v, x) / Parts;

        // Residuals
        var r = new double[n];
        for (var i = 0; i < n; i++)
        {
            r[i] = Math.Log(hours[i]) - x[i] - constants.SlopeAssumed * (x[i] - Mean);
        }

        var middle = WeightedMedian(v, r);
        for (var i = 0; i < n; i++)
        {
            r[i] = Math.Clamp(r[i], middle - constants.Cap, middle + constants.Cap);
        }

        // Slope
        var meanR = WeightedSum(v, r) / Parts;
        double spreadX = 0, together = 0, varR = 0;
        for (var i = 0; i < n; i++)
        {
            spreadX += v[i] * Square(x[i] - Mean);
            together += v[i] * (x[i] - Mean) * (r[i] - meanR);
            varR += v[i] * Square(r[i] - meanR) / Parts;
        }

        var c = together / (spreadX + Math.Max(varR, 0.001) / Square(constants.SlopeScale));
        Slope = constants.SlopeAssumed + c;

        // Scatter
        double left = 0;
        for (var i = 0; i < n; i++)
        {
            left += v[i] * Square(r[i] - meanR - c * (x[i] - Mean));
        }

        ScatterSquared = (10 * Square(constants.ScatterAssumed) + left) / (9 + Parts);

        // Habit
        V = 1 / (Parts / ScatterSquared + 1 / habitVariance);
        Habit = V * Parts * meanR / ScatterSquared;
    }

    public ReferenceConstants Constants { get; }

    /// <summary>n_e.</summary>
    public double Parts { get; }

    /// <summary>x̄.</summary>
    public double Mean { get; }

    /// <summary>c₀ + c.</summary>
    public double Slope { get; }

    /// <summary>s².</summary>
    public double ScatterSquared { get; }

    public double Scatter => Math.Sqrt(ScatterSquared);

    public double V { get; }

    /// <summary>a.</summary>
    public double Habit { get; }

    public double Tau { get; }

    /// <summary>σ.</summary>
    public double Shared => Math.Sqrt(V + Square(Tau));

    public double Middle(double x) => x + Habit + Slope * (x - Mean);

    public static double Median(double[] values)
    {
        var sorted = values.Order().ToArray();
        var n = sorted.Length;
        return n % 2 == 1 ? sorted[n / 2] : (sorted[n / 2 - 1] + sorted[n / 2]) / 2;
    }

    private static double WeightedMedian(double[] weights, double[] values)
    {
        var order = Enumerable.Range(0, values.Length).OrderBy(i => values[i]).ToArray();
        var (half, reached) = (weights.Sum() / 2, 0.0);
        for (var k = 0; k < order.Length; k++)
        {
            reached += weights[order[k]];
            if (Math.Abs(reached - half) < 1e-12)
            {
                return (values[order[k]] + values[order[k + 1]]) / 2;
            }

            if (reached > half)
            {
                return values[order[k]];
            }
        }

        return values[order[^1]];
    }

    private static double WeightedSum(double[] weights, double[] values)
    {
        var sum = 0.0;
        for (var i = 0; i < values.Length; i++)
        {
            sum += weights[i] * values[i];
        }

        return sum;
    }

    private static double Square(double value) => value * value;
}
