using Journal.Core.Wording;

namespace Journal.Core.Estimating;

/// <summary>What a change makes of an estimate, in words.</summary>
public static class DifferenceWords
{
    // Less than this is nothing as hours are told.
    private const double NoHours = 0.05;

    /// <summary>“Without ram: 14 h less at even odds, 19 h less at eight in ten; done 21 days sooner at even odds, 33 days sooner at eight in ten.”</summary>
    public static string Of(Difference difference) => $"{difference.Change}: {Hours(difference.Hours)}{Days(difference.Days)}.";

    private static string Hours(HourDifference hours) => Math.Abs(hours.P50) < NoHours && Math.Abs(hours.P80) < NoHours
        ? "the same hours"
        : $"{One(hours.P50)} at even odds, {One(hours.P80)} at eight in ten";

    private static string One(double hours) =>
        Math.Abs(hours) < NoHours ? "the same" : $"{EstimateWords.Hours(Math.Abs(hours))} {(hours < 0 ? "less" : "more")}";

    private static string Days(DayDifference? days) => days is not { P50: { } half, P80: { } eight } ? ""
        : half == 0 && eight == 0 ? "; the same days"
        : $"; done {One(half)} at even odds, {One(eight)} at eight in ten";

    private static string One(int days) => days == 0 ? "the same day" : $"{Count.Of(Math.Abs(days), "day")} {(days < 0 ? "sooner" : "later")}";
}
