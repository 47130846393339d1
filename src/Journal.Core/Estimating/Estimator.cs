using Journal.Core.Model;
using Journal.Core.Statistics;

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

        // Where the plain question can be answered, its draws serve every change to it.
        var plain = Change.None(options);
        var changes = Change.In(options);
        var isComparable = changes.Count > 0 && Faults.Of(asked, journal, history, plain).Count == 0;
        var builds = PossibleBuilds.Of(isComparable ? asked : asked.Without(options.Without), history, options);
        Estimate Under(EstimateOptions some) => Answer(builds, asked, journal, some);

        var answer = Under(options);
        return EstimateResult.Of(answer with
        {
            Overrun = Overruns.Of(history),
            Guesses = GuessesOverTime.Of(history),
            Backtest = Backtest.Of(history, options.Seed),
            Offers = LikeOffer.For(asked.Without(options.Without).NotBegun, journal, history),
            Differences = isComparable && Under(plain) is var without ? [.. changes.Select(change => Difference.Of(change.Words, Under(change.Options), without))] : [],
        });
    }

    /// <summary>The shares that curves are drawn from: 0.05 to 0.95 in steps of 0.05.</summary>
    public static IReadOnlyList<double> Steps { get; } = [.. Enumerable.Range(1, 19).Select(step => step / 20.0)];

    /// <summary>Values in rising order.</summary>
    public static double[] Sorted(IEnumerable<double> values) => [.. values.Order()];

    /// <summary>Hours that suffice with a chance, less those spent before.</summary>
    public static double At(double[] sorted, double share, double before) => Rounded.Hours(Math.Max(0, Quantiles.OfSorted(sorted, share) - before));

    // What was drawn says under one set of options.
    private static Estimate Answer(PossibleBuilds builds, EstimateSubject asked, MakerJournal journal, EstimateOptions options)
    {
        var (undertaking, knowledge) = (asked.Without(options.Without), builds.Knowledge);
        var parts = PartsToCome.Of(undertaking, knowledge, builds.PartsUnder(options), options);
        var whole = WholeToCome.Of(undertaking, knowledge, builds.Guesses, builds.HoursOfGuesses, parts, options);
        double[] totals = [.. parts.Totals.Zip(whole.Hours, (onParts, onWhole) => onParts + onWhole)];
        var finish = Finish.Of(undertaking, journal, totals, options);
        var sorted = Sorted(totals);
        return new Estimate
        {
            Plan = undertaking.Name,
            Title = undertaking.Title,
            Hours = Range(sorted, before: 0),
            Quantiles = [.. Steps.Select(share => new HourQuantile(share, At(sorted, share, before: 0)))],
            Totals = sorted,
            Finish = finish.Range,
            FinishQuantiles = finish.Quantiles,
            Days = finish.Days,
            Parts = parts.Estimates,
            Whole = whole.Estimate,
            MostUncertain = Uncertainty.Most([.. parts.Open, ("whole", whole.Hours)], totals),
            History = new HistorySize(knowledge.History.Parts.Count, knowledge.History.Minutes.Count),
            MinutesSoFar = undertaking.Build is null ? null : undertaking.SpentInAll.Count,
            Left = undertaking.Build is null ? null : Range(sorted, undertaking.SpentInAll.InHours),
            HoursAWeek = finish.HoursAWeek,
            IsPaceSaid = (options.HoursAWeek ?? undertaking.HoursAWeek) is not null,
            Start = finish.Start,
            Remarks = [.. Remarks.On(undertaking, knowledge), .. finish.Remarks],
            Seed = options.Seed,
        };
    }

    private static HourRange Range(double[] sorted, double before) => new(
        At(sorted, 0.1, before),
        At(sorted, 0.25, before),
        At(sorted, 0.5, before),
        At(sorted, 0.75, before),
        At(sorted, 0.8, before),
        At(sorted, 0.9, before));
}
