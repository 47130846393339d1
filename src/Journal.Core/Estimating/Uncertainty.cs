using Journal.Core.Model;

namespace Journal.Core.Estimating;

/// <summary>Where the uncertainty of a total comes from.</summary>
internal static class Uncertainty
{
    private const int AtMost = 5;

    /// <summary>
    /// The items that together make up half of the variance of their sum, the greatest first, five at most. An item's share
    /// is its covariance with the total, so the shares of all add up to 1 and what they have in common is counted with each.
    /// </summary>
    public static IReadOnlyList<UncertainPart> Most(IReadOnlyList<(string Name, double[] Hours)> items, double[] totals)
    {
        var mean = totals.Average();
        double[] off = [.. totals.Select(total => total - mean)];
        var variance = off.Sum(d => d * d);
        if (variance <= 0)
        {
            return [];
        }

        var most = new List<UncertainPart>();
        var shares = items.Select(item => (item.Name, Share: Covariance(item.Hours, off) / variance));
        foreach (var (name, share) in shares.OrderByDescending(item => item.Share))
        {
            if (most.Count == AtMost || most.Sum(part => part.Share) >= 0.5)
            {
                break;
            }

            most.Add(new UncertainPart(name, Rounded.Share(share)));
        }

        return most;
    }

    private static double Covariance(double[] hours, double[] off)
    {
        var sum = 0.0;
        for (var draw = 0; draw < off.Length; draw++)
        {
            sum += hours[draw] * off[draw];
        }

        return sum;
    }
}
