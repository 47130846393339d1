using System.Runtime.InteropServices;
using Journal.Core.Statistics;
using static Journal.Core.Statistics.SameEverywhere;

namespace Journal.Core.Estimating.Method;

/// <summary>
/// Many possible builds (docs/estimating.md, Draws). Each normal number is drawn evenly: the n draws of a part take the n midpoints of
/// equal shares of probability, each once, in the part's own random order (Latin hypercube sampling: McKay, Beckman and
/// Conover, <i>Technometrics</i> 21, 1979). The build's luck is spread just as evenly over the draws that came out short and
/// those that came out long (after orthogonal arrays: B. Tang, <i>Journal of the American Statistical Association</i> 88,
/// 1993). The distribution is the same as with plain draws, and a new seed moves the quantiles far less.
/// </summary>
internal sealed class Draws
{
    private Draws(double[] shared, double[][] hours) => (Shared, Hours) = (shared, hours);

    /// <summary>The build's luck Z in each draw.</summary>
    public double[] Shared { get; }

    /// <summary>The hours of each part in each draw.</summary>
    public double[][] Hours { get; }

    /// <summary>The sum over the parts in each draw.</summary>
    public double[] Totals() => Sum(Hours, Shared.Length);

    /// <summary>Draws a build <paramref name="count"/> times; the same seed gives the same draws on every machine.</summary>
    public static Draws Of(IReadOnlyList<Outlook> outlooks, SharedLuck luck, int seed, int count)
    {
        var shares = Shares(count);
        double[] normals = [.. shares.Select(StandardNormal.Quantile)];
        int[][] orders = [.. outlooks.Select(outlook => Shuffled(Luck.For(seed, outlook.Name), count))];
        var powers = new PowerTables();
        double[][] hours = [.. outlooks.Select((outlook, j) => Own(outlook, powers.Of(outlook.ScatterLeft, normals), orders[j]))];

        var shared = Spread(Sum(hours, count), [.. normals.Select(z => luck.Middle + (luck.Scale * z))], Luck.For(seed, "the build's own luck"));
        for (var j = 0; j < hours.Length; j++)
        {
            Finish(hours[j], powers.Of(outlooks[j].SharedScale, shared), outlooks[j].Spent);
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
        Beyond(spent, middles, scatter, Shares(middles.Length), Shuffled(Luck.For(seed, name), middles.Length));

    // H = spent + exp(middle) · exp(s ε) · exp(σ Z): the powers come from tables, as parts share their scales.
    private static double[] Own(Outlook outlook, double[] powers, int[] order)
    {
        var middle = Exp(outlook.MiddleLeft);
        var hours = new double[order.Length];
        for (var draw = 0; draw < hours.Length; draw++)
        {
            hours[draw] = middle * powers[order[draw]];
        }

        return hours;
    }

    private static void Finish(double[] hours, double[] powers, double spent)
    {
        for (var draw = 0; draw < hours.Length; draw++)
        {
            hours[draw] = spent + (hours[draw] * powers[draw]);
        }
    }

    /// <summary>The sum of some of the parts in each of so many draws.</summary>
    public static double[] Sum(IReadOnlyList<double[]> hours, int count)
    {
        var totals = new double[count];
        foreach (var part in hours)
        {
            for (var draw = 0; draw < count; draw++)
            {
                totals[draw] += part[draw];
            }
        }

        return totals;
    }

    // Work on the whole that is begun takes more than was spent: ε is drawn from the normal distribution beyond the spent hours.
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

    // Draws are taken in the order of their totals and cut into blocks; the values of luck, in rising order, into as many bins
    // as a block has draws. Each block takes one value from each bin, in random order, and no value is taken twice.
    private static double[] Spread(double[] totals, double[] values, Luck luck)
    {
        int[] byTotal = [.. Enumerable.Range(0, totals.Length)];
        Array.Sort((double[])totals.Clone(), byTotal);
        var bins = Enumerable.Range(1, (int)Math.Sqrt(totals.Length)).Last(size => totals.Length % size == 0);
        var blocks = totals.Length / bins;
        int[][] valueForBlock = [.. Enumerable.Range(0, bins).Select(_ => Shuffled(luck, blocks))];
        var spread = new double[totals.Length];
        for (var block = 0; block < blocks; block++)
        {
            var binForDraw = Shuffled(luck, bins);
            for (var draw = 0; draw < bins; draw++)
            {
                var bin = binForDraw[draw];
                spread[byTotal[(block * bins) + draw]] = values[(bin * blocks) + valueForBlock[bin][block]];
            }
        }

        return spread;
    }

    private static int[] Shuffled(Luck luck, int count)
    {
        int[] items = [.. Enumerable.Range(0, count)];
        luck.Shuffle(items);
        return items;
    }

    // exp(scale · z) for each z, kept for the few scales that a plan has.
    private sealed class PowerTables
    {
        private readonly Dictionary<(double Scale, double[] Normals), double[]> kept = [];

        /// <summary>The powers for a scale, made once for each scale and array of numbers; the array is known by reference.</summary>
        public double[] Of(double scale, double[] normals)
        {
            ref var powers = ref CollectionsMarshal.GetValueRefOrAddDefault(kept, (scale, normals), out _);
            return powers ??= [.. normals.Select(z => Exp(scale * z))];
        }
    }
}
