using Journal.Core.Statistics;

namespace Journal.Core.Estimating.Method;

/// <summary>
/// Step 9 for one part or one job on the whole: ln H = middle + shared scale · Z + scatter · ε, where the standard normal Z
/// is the same for the whole build and ε is the part's own.
/// </summary>
/// <param name="Name">Names its stream of chance.</param>
/// <param name="Middle">x + a + (c₀ + c)(x − x̄).</param>
/// <param name="SharedScale">√(V + τ²).</param>
/// <param name="Scatter">s.</param>
/// <param name="Spent">Hours already spent; H is larger than that.</param>
internal sealed record Outlook(string Name, double Middle, double SharedScale, double Scatter, double Spent)
{
    /// <summary>The hours below which a share of outcomes lies, before anything is spent.</summary>
    public double Quantile(double share, SharedLuck shared)
    {
        var (middle, own) = (Middle + (SharedScale * shared.Middle), SharedScale * shared.Scale);
        return SameEverywhere.Exp(middle + (Math.Sqrt((own * own) + (Scatter * Scatter)) * StandardNormal.Quantile(share)));
    }
}

/// <summary>
/// What is known of the build's luck Z: nothing before it is begun, more with each part finished since.
/// </summary>
/// <param name="Middle">Its mean; 0 at the start.</param>
/// <param name="Scale">Its standard deviation; 1 at the start.</param>
internal readonly record struct SharedLuck(double Middle, double Scale)
{
    /// <summary>A build not yet begun.</summary>
    public static SharedLuck Unknown => new(0, 1);

    /// <summary>
    /// What finished parts of the build show: ln h − middle = shared scale · Z + scatter · ε, Z standard normal before.
    /// The normal posterior has precision 1 + Σ σ²/s² and mean Σ σ d/s² over that. Freaks are capped as in step 5.
    /// </summary>
    public static SharedLuck After(IEnumerable<(Outlook Outlook, double LogHours, double Limit)> finished)
    {
        var (precision, sum) = (1.0, 0.0);
        foreach (var (outlook, logHours, limit) in finished)
        {
            var own = outlook.Scatter * outlook.Scatter;
            var off = Math.Clamp(logHours - outlook.Middle, -limit, limit);
            precision += outlook.SharedScale * outlook.SharedScale / own;
            sum += outlook.SharedScale * off / own;
        }

        return new(sum / precision, 1 / Math.Sqrt(precision));
    }
}
