using Journal.Core.Model;
using static Journal.Core.Statistics.SameEverywhere;

namespace Journal.Core.Estimating.Method;

/// <summary>
/// Recency and Operation times: what each operation typically takes on one piece, recent parts counting more,
/// and from it what a part's operations take together.
/// </summary>
internal sealed class OperationTimes
{
    private readonly IReadOnlyList<PastPart> past;
    private readonly LearningCurve curve;
    private readonly Dictionary<Id<Operation>, Sum> byOperation = [];
    private Sum all;
    private Sum parts;

    /// <summary>Sums over finished parts, which come in the order of finishing.</summary>
    public OperationTimes(IReadOnlyList<PastPart> past, LearningCurve curve)
    {
        (this.past, this.curve) = (past, curve);
        Recency = RecencyOf(past.Count);
        for (var i = 0; i < past.Count; i++)
        {
            parts = parts.With(Recency[i], LogOfOne(i, past[i].Hours));
            foreach (var work in past[i].Work)
            {
                var log = LogOfOne(i, work.Hours);
                byOperation[work.Operation] = byOperation.GetValueOrDefault(work.Operation).With(Recency[i], log);
                all = all.With(Recency[i], log);
            }
        }
    }

    /// <summary>Recency, the weights w_i in the order of finishing.</summary>
    public IReadOnlyList<double> Recency { get; }

    /// <summary>Recency: w_i = 2^(−(n−i)/40).</summary>
    public static double[] RecencyOf(int count) =>
        [.. Enumerable.Range(1, count).Select(i => Exp(-Ln(2) * (count - i) / MethodConstants.HalfLife))];

    /// <summary>t_o, an operation's usual log hours on one piece; all operations alike (0) before any part is finished.</summary>
    public double TypicalLogOf(Id<Operation> operation) =>
        past.Count == 0 ? 0 : Typical(byOperation.GetValueOrDefault(operation), all);

    /// <summary>
    /// Operation times, Q of a part to come: the sum of what its operations typically take, times its pieces on the learning curve.
    /// A part that names no operation takes what a part takes on average. Null without any finished part.
    /// </summary>
    public double? TypicalOf(IReadOnlyCollection<Id<Operation>> operations, int quantity)
    {
        if (past.Count == 0)
        {
            return null;
        }

        var one = operations.Count == 0
            ? Exp(parts.Mean)
            : operations.Sum(operation => Exp(TypicalLogOf(operation)));
        return one * curve.Total(quantity);
    }

    /// <summary>
    /// Operation times, Q of the finished part i, leaving its own hours out. The only finished part there is cannot leave itself out.
    /// </summary>
    public double TypicalOfPast(int i)
    {
        var part = past[i];
        if (part.Work.Count == 0 || past.Count == 1)
        {
            var others = past.Count == 1 ? parts : parts.Without(Recency[i], LogOfOne(i, part.Hours));
            return Exp(others.Mean) * curve.Total(part.Quantity);
        }

        var everything = part.Work.Aggregate(all, (sum, work) => sum.Without(Recency[i], LogOfOne(i, work.Hours)));
        var one = part.Work.Sum(work => Exp(Typical(byOperation[work.Operation].Without(Recency[i], LogOfOne(i, work.Hours)), everything)));
        return one * curve.Total(part.Quantity);
    }

    // Operation times: t_o = (Σ w ln h_io + 5 m) / (Σ w + 5), m the weighted mean over all operations of all parts.
    private static double Typical(Sum operation, Sum everything) =>
        (operation.Logs + (MethodConstants.OperationPrior * everything.Mean)) / (operation.Weight + MethodConstants.OperationPrior);

    private double LogOfOne(int i, double hours) => Ln(hours / curve.Total(past[i].Quantity));

    private readonly record struct Sum(double Weight, double Logs)
    {
        /// <summary>The weighted mean of the logs; not a number where the sum is empty.</summary>
        public double Mean => Logs / Weight;

        /// <summary>The sum with one more log.</summary>
        public Sum With(double weight, double log) => new(Weight + weight, Logs + (weight * log));

        /// <summary>The sum less a log that is in it.</summary>
        public Sum Without(double weight, double log) => new(Weight - weight, Logs - (weight * log));
    }
}
