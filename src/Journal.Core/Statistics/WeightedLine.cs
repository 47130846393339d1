using Journal.Core.Model;

namespace Journal.Core.Statistics;

/// <summary>
/// Means, variance and slope of weighted points (x, y), taken about their means so that large numbers
/// with small differences keep their digits.
/// </summary>
internal sealed class WeightedLine
{
    private readonly double[] x;
    private readonly double[] y;
    private readonly double[] weights;

    /// <summary>Takes the sums of at least one point.</summary>
    public WeightedLine(double[] x, double[] y, double[] weights)
    {
        (this.x, this.y, this.weights) = (x, y, weights);
        Total = weights.Sum();
        MeanX = Mean(x);
        MeanY = Mean(y);
        for (var i = 0; i < x.Length; i++)
        {
            var (dx, dy) = (x[i] - MeanX, y[i] - MeanY);
            SquaresX += weights[i] * dx * dx;
            SquaresY += weights[i] * dy * dy;
            Products += weights[i] * dx * dy;
        }
    }

    /// <summary>Σ v.</summary>
    public double Total { get; }

    /// <summary>The weighted mean of x.</summary>
    public double MeanX { get; }

    /// <summary>The weighted mean of y.</summary>
    public double MeanY { get; }

    /// <summary>Σ v (x − x̄)².</summary>
    public double SquaresX { get; }

    /// <summary>Σ v (y − ȳ)².</summary>
    public double SquaresY { get; }

    /// <summary>Σ v (x − x̄)(y − ȳ).</summary>
    public double Products { get; }

    /// <summary>The weighted variance of y, Σ v (y − ȳ)² / Σ v.</summary>
    public double VarianceY => SquaresY / Total;

    /// <summary>The slope of y on x, held towards 0 by a penalty added to Σ v (x − x̄)²; the least-squares slope for 0.</summary>
    public double Slope(double penalty) => Products / (SquaresX + penalty);

    /// <summary>Σ v (y − ȳ − slope (x − x̄))².</summary>
    public double SquaresAbout(double slope)
    {
        var sum = 0.0;
        for (var i = 0; i < x.Length; i++)
        {
            var left = y[i] - MeanY - (slope * (x[i] - MeanX));
            sum += weights[i] * left * left;
        }

        return sum;
    }

    // About the first value, and once more about the first mean: the rounding of one pass is gone after the second.
    private double Mean(double[] values)
    {
        var mean = values[0];
        for (var pass = 0; pass < 2; pass++)
        {
            var sum = 0.0;
            for (var i = 0; i < values.Length; i++)
            {
                sum += weights[i] * (values[i] - mean);
            }

            mean += sum / Total;
        }

        return mean;
    }
}
