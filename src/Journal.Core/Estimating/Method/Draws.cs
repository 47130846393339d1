using System.Runtime.InteropServices;
using Journal.Core.Estimating.Chance;
using static Journal.Core.Estimating.Chance.SameEverywhere;

namespace Journal.Core.Estimating.Method;

/// <summary>
/// Steps 9 and 10: many possible builds. Each normal number is drawn evenly: the n draws of a part take the n midpoints of
/// equal shares of probability, each once, in the part's own random order (Latin hypercube sampling: McKay, Beckman and
/// Conover, <i>Technometrics</i> 21, 1979). The distribution is the same as with plain draws and the seed moves the
/// quantiles far less.
/// </summary>
internal sealed class Draws
{
    private Draws(double[] shared, double[][] hours) => (Shared, Hours) = (shared, hours);

    /// <summary>The build's luck Z in each draw, in rising order.</summary>
    public double[] Shared { get; }

    /// <summary>The hours of each part in each draw.</summary>
    public double[][] Hours { get; }

    /// <summary>Step 10: the sum over the parts in each draw.</summary>
    public double[] Totals()
    {
        var totals = new double[Shared.Length];
        foreach (var hours in Hours)
        {
            for (var draw = 0; draw < totals.Length; draw++)
            {
                totals[draw] += hours[draw];
            }
        }

        return totals;
    }

    /// <summary>Draws a build so many times.</summary>
    public static Draws Of(IReadOnlyList<Outlook> outlooks, SharedLuck luck, int seed, int count)
    {
        var shares = Shares(count);
        double[] normals = [.. shares.Select(StandardNormal.Quantile)];
        double[] shared = [.. normals.Select(z => luck.Middle + (luck.Scale * z))];
        var powers = new Powers();
        var hours = new double[outlooks.Count][];
        for (var j = 0; j < hours.Length; j++)
        {
            var outlook = outlooks[j];
            var order = Order(seed, outlook.Name, count);
            hours[j] = outlook.Spent > 0
                ? Beyond(outlook.Spent, [.. shared.Select(z => outlook.Middle + (outlook.SharedScale * z))], outlook.Scatter, shares, order)
                : Product(outlook, powers.Of(outlook.SharedScale, shared), powers.Of(outlook.Scatter, normals), order);
        }

        return new Draws(shared, hours);
    }

    /// <summary>Draws hours that scatter about a middle of their own in each draw, and are more than was spent.</summary>
    /// <param name="name">Names the stream of chance.</param>
    /// <param name="middles">The middle of ln H in each draw.</param>
    /// <param name="scatter">The scatter about it.</param>
    /// <param name="spent">Hours already spent; 0 or more.</param>
    /// <param name="seed">The seed of chance.</param>
    public static double[] About(string name, double[] middles, double scatter, double spent, int seed) =>
        Beyond(spent, middles, scatter, Shares(middles.Length), Order(seed, name, middles.Length));

    // H = exp(middle) · exp(σ Z) · exp(s ε): the last two come from tables, as parts share their scales.
    private static double[] Product(Outlook outlook, double[] shared, double[] own, int[] order)
    {
        var middle = Exp(outlook.Middle);
        var hours = new double[order.Length];
        for (var draw = 0; draw < hours.Length; draw++)
        {
            hours[draw] = middle * shared[draw] * own[order[draw]];
        }

        return hours;
    }

    // What is begun takes more than was spent: ε is drawn from the normal distribution beyond the spent hours.
    private static double[] Beyond(double spent, double[] middles, double scatter, double[] shares, int[] order)
    {
        var hours = new double[order.Length];
        for (var draw = 0; draw < hours.Length; draw++)
        {
            var beyond = spent > 0 ? StandardNormal.Above((Ln(spent) - middles[draw]) / scatter) : 1;
            var epsilon = -StandardNormal.Quantile(Math.Clamp(beyond * (1 - shares[order[draw]]), 1e-300, 1 - 1e-16));
            hours[draw] = Math.Max(spent, Exp(middles[draw] + (scatter * epsilon)));
        }

        return hours;
    }

    private static double[] Shares(int count) => [.. Enumerable.Range(0, count).Select(k => (k + 0.5) / count)];

    private static int[] Order(int seed, string name, int count)
    {
        int[] order = [.. Enumerable.Range(0, count)];
        Luck.For(seed, name).Shuffle(order);
        return order;
    }

    // exp(scale · z) for each z, kept for the few scales that a plan has.
    private sealed class Powers
    {
        private readonly Dictionary<(double Scale, double[] Normals), double[]> kept = [];

        public double[] Of(double scale, double[] normals)
        {
            ref var powers = ref CollectionsMarshal.GetValueRefOrAddDefault(kept, (scale, normals), out _);
            return powers ??= [.. normals.Select(z => Exp(scale * z))];
        }
    }
}
