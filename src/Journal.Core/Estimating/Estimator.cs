using Journal.Core.Statistics;
using Journal.Core.Estimating.Method;
using Journal.Core.Model;

namespace Journal.Core.Estimating;

/// <summary>Makes the estimate of a plan or a build.</summary>
internal static class Estimator
{
    /// <summary>The whole way from what was asked to the figures.</summary>
    public static EstimateResult Run(EstimateSubject asked, MakerJournal journal, EstimateOptions options)
    {
        var history = History.Of(journal, options.Today);
        var faults = Faults.Of(asked, journal, history, options);
        if (faults.Count > 0)
        {
            return EstimateResult.Of(faults);
        }

        var undertaking = asked.Without(options.Without);
        var knowledge = Knowledge.Of(undertaking, history);
        var open = OpenPart.Of(undertaking, knowledge);
        var guesses = WholeToCome.Guesses(undertaking, knowledge);

        // Drawn together, since the build's luck is one and the same for its parts and its whole.
        var draws = Draws.Of([.. open.Select(part => part.Outlook), .. guesses], knowledge.Luck, options.Seed, options.Draws);
        var parts = PartsToCome.Of(undertaking, knowledge, open, draws.Hours[..open.Count], options);
        var whole = WholeToCome.Of(undertaking, knowledge, guesses, draws.Hours[open.Count..], parts, options);
        double[] totals = [.. parts.Totals.Zip(whole.Hours, (onParts, onWhole) => onParts + onWhole)];
        var finish = Finish.Of(undertaking, journal, totals, options);
        var sorted = Sorted(totals);
        return EstimateResult.Of(new Estimate
        {
            Plan = undertaking.Name,
            Title = undertaking.Title,
            Hours = Range(sorted, before: 0),
            Quantiles = [.. Steps.Select(share => new HourQuantile(share, At(sorted, share, before: 0)))],
            Finish = finish.Range,
            FinishQuantiles = finish.Quantiles,
            Parts = parts.Estimates,
            Whole = whole.Estimate,
            MostUncertain = Uncertainty.Most([.. parts.Open, ("whole", whole.Hours)], totals),
            History = new HistorySize(history.Parts.Count, history.Minutes.Count),
            Overrun = Overruns.Of(history),
            Backtest = Backtest.Of(history, options.Seed),
            MinutesSoFar = undertaking.Build is null ? null : undertaking.SpentInAll.Count,
            Left = undertaking.Build is null ? null : Range(sorted, undertaking.SpentInAll.InHours),
            HoursAWeek = finish.HoursAWeek,
            IsPaceSaid = (options.HoursAWeek ?? undertaking.HoursAWeek) is not null,
            Start = finish.Start,
            Remarks = [.. Remarks.On(undertaking, knowledge), .. finish.Remarks],
            Seed = options.Seed,
        });
    }

    /// <summary>The shares that curves are drawn from: 0.05 to 0.95 in steps of 0.05.</summary>
    public static IReadOnlyList<double> Steps { get; } = [.. Enumerable.Range(1, 19).Select(step => step / 20.0)];

    /// <summary>Values in rising order.</summary>
    public static double[] Sorted(IEnumerable<double> values) => [.. values.Order()];

    /// <summary>Hours that suffice with a chance, less those spent before.</summary>
    public static double At(double[] sorted, double share, double before) => Rounded.Hours(Math.Max(0, Quantiles.OfSorted(sorted, share) - before));

    private static HourRange Range(double[] sorted, double before) => new(
        At(sorted, 0.1, before),
        At(sorted, 0.25, before),
        At(sorted, 0.5, before),
        At(sorted, 0.75, before),
        At(sorted, 0.8, before),
        At(sorted, 0.9, before));
}
