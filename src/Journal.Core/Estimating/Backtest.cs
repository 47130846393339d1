using Journal.Core.Statistics;
using Journal.Core.Estimating.Method;
using Journal.Core.Model;

namespace Journal.Core.Estimating;

/// <summary>
/// Each finished build, and each later part, forecast from what was finished before it: how often the ranges held.
/// It is shown and changes nothing.
/// </summary>
/// <param name="Kits">Builds forecast.</param>
/// <param name="Covered50">The share of them whose hours fell within the 50 % range; null without any.</param>
/// <param name="Covered80">Likewise within the 80 % range.</param>
/// <param name="Forecasts">Each build's range and what happened.</param>
/// <param name="Parts">Single parts forecast.</param>
/// <param name="PartsCovered50">The share of them within the 50 % range; null without any.</param>
/// <param name="PartsCovered80">Likewise within the 80 % range.</param>
/// <param name="PartForecasts">Each part's range and what happened, in the order of finishing.</param>
public sealed record Backtest(
    int Kits,
    double? Covered50,
    double? Covered80,
    IReadOnlyList<KitForecast> Forecasts,
    int Parts,
    double? PartsCovered50,
    double? PartsCovered80,
    IReadOnlyList<PartForecast> PartForecasts)
{
    // A thousand evenly drawn builds give a range to about 1 %, and keep the back-test cheap.
    private const int Draws = 1_000;

    // The latest parts show how the forecasts do now; more would cost time and change little.
    private const int LatestParts = 40;

    /// <summary>Of no history.</summary>
    internal static Backtest OfNothing { get; } = new(0, null, null, [], 0, null, null, []);

    /// <summary>Goes back over a history.</summary>
    internal static Backtest Of(History history, int seed)
    {
        List<KitForecast> kits =
        [
            .. history.Builds.Where(build => build.IsFinished)
                .OrderBy(build => build.First)
                .Select(build => Forecast(build, history, seed))
                .OfType<KitForecast>(),
        ];
        List<(double Share, PartForecast Forecast)> parts = [.. LaterParts(history)];
        return new Backtest(
            kits.Count,
            Share(kits, kit => kit.P25 <= kit.Hours && kit.Hours <= kit.P75),
            Share(kits, kit => kit.P10 <= kit.Hours && kit.Hours <= kit.P90),
            kits,
            parts.Count,
            Share(parts, part => part.Share is >= 0.25 and <= 0.75),
            Share(parts, part => part.Share is >= 0.1 and <= 0.9),
            [.. parts.Select(part => part.Forecast)]);
    }

    // The parts of a build from those finished before its first evening; null where none was.
    private static KitForecast? Forecast(HistoryBuild build, History history, int seed)
    {
        List<PastPart> before =
        [
            .. history.Parts.Where(part => part.Finished < build.First && part.Ref.Build != build.Build).Select(part => part.ForMethod()),
        ];
        List<HistoryPart> parts = [.. history.Parts.Where(part => part.Ref.Build == build.Build)];
        if (before.Count == 0 || parts.Count == 0)
        {
            return null;
        }

        var maker = new Maker(before);
        var totals = Method.Draws.Of([.. parts.Select(part => maker.OutlookOn(part.AsPlanned()))], SharedLuck.Unknown, seed, Draws).Totals();
        Array.Sort(totals);
        double At(double share) => Rounded.Hours(Quantiles.OfSorted(totals, share));
        var took = Rounded.Hours(parts.Sum(part => part.Minutes).InHours);
        return new KitForecast(build.Build.Value, build.Title, At(0.1), At(0.25), At(0.5), At(0.75), At(0.9), took);
    }

    // Where in its forecast each later part fell, 0 to 1. One part alone is log-normal: no draws are needed.
    private static IEnumerable<(double Share, PartForecast Forecast)> LaterParts(History history)
    {
        var past = history.ForMethod();
        for (var i = Math.Max(MethodConstants.EnoughParts, past.Count - LatestParts); i < past.Count; i++)
        {
            var outlook = new Maker([.. past.Take(i)]).OutlookOn(history.Parts[i].AsPlanned());
            var spread = Math.Sqrt((outlook.SharedScale * outlook.SharedScale) + (outlook.Scatter * outlook.Scatter));
            double At(double share) => Rounded.Hours(outlook.Quantile(share, SharedLuck.Unknown));
            yield return (
                StandardNormal.Below((SameEverywhere.Ln(past[i].Hours) - outlook.Middle) / spread),
                new PartForecast(history.Parts[i].Ref.ToString(), At(0.1), At(0.25), At(0.5), At(0.75), At(0.9), Rounded.Hours(past[i].Hours)));
        }
    }

    private static double? Share<T>(IReadOnlyCollection<T> items, Func<T, bool> holds) =>
        items.Count == 0 ? null : (double)items.Count(holds) / items.Count;
}

/// <summary>A finished build's parts as they would have been forecast before it began, and what they took.</summary>
/// <param name="Build">The build's id.</param>
/// <param name="Title">Its title.</param>
/// <param name="P10">Hours forecast to suffice once in ten times.</param>
/// <param name="P25">Once in four.</param>
/// <param name="P50">At even odds.</param>
/// <param name="P75">Three times in four.</param>
/// <param name="P90">Nine times in ten.</param>
/// <param name="Hours">What the parts took.</param>
public sealed record KitForecast(string Build, string Title, double P10, double P25, double P50, double P75, double P90, double Hours);

/// <summary>A finished part as it would have been forecast from the parts finished before it, and what it took.</summary>
/// <param name="Part">The part, as <c>build/part</c>.</param>
/// <param name="P10">Hours forecast to suffice once in ten times.</param>
/// <param name="P25">Once in four.</param>
/// <param name="P50">At even odds.</param>
/// <param name="P75">Three times in four.</param>
/// <param name="P90">Nine times in ten.</param>
/// <param name="Hours">What it took.</param>
public sealed record PartForecast(string Part, double P10, double P25, double P50, double P75, double P90, double Hours);
