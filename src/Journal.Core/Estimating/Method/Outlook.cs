using Journal.Core.Statistics;

namespace Journal.Core.Estimating.Method;

/// <summary>
/// The outlook on one part or one job on the whole (docs/estimating.md, Shared luck): ln H = middle + shared scale · Z +
/// scatter · ε, where the standard normal Z is the same for the whole build and ε is the part's own. Of a begun part, hours
/// are those spent and then a share of such an H whose ε scatters wider (Begun parts).
/// </summary>
/// <param name="Name">Names its stream of chance.</param>
/// <param name="Middle">The middle of ln H of the whole part, x + a + (c₀ + c)(x − x̄).</param>
/// <param name="SharedScale">√(V + τ²).</param>
/// <param name="Scatter">s.</param>
/// <param name="Spent">Hours already spent; 0 where it is not begun.</param>
/// <param name="ShareLeft">ρ, the share of the work that is left; 1 where it is not begun.</param>
internal sealed record Outlook(string Name, double Middle, double SharedScale, double Scatter, double Spent = 0, double ShareLeft = 1)
{
    /// <summary>The middle of the log hours still to come.</summary>
    public double MiddleLeft => Spent > 0 ? Middle + SameEverywhere.Ln(ShareLeft) : Middle;

    /// <summary>The scale of ε in the log hours still to come.</summary>
    public double ScatterLeft => Spent > 0 ? MethodConstants.BegunScatter * Scatter : Scatter;

    /// <summary>The hours in all below which a share of outcomes lies.</summary>
    public double Quantile(double share, SharedLuck shared)
    {
        var (middle, own) = (MiddleLeft + (SharedScale * shared.Middle), SharedScale * shared.Scale);
        return Spent + SameEverywhere.Exp(middle + (Math.Sqrt((own * own) + (ScatterLeft * ScatterLeft)) * StandardNormal.Quantile(share)));
    }
}
