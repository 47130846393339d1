using System.Globalization;

namespace Journal.Core.Estimating;

/// <summary>
/// How far one change moves an estimate: the answer with the change less the answer without it, from the same draws (common
/// random numbers), so that chance plays no part (docs/estimating.md, What if). Negative is less, or sooner.
/// </summary>
/// <param name="Change">The change, in words that begin a sentence: <c>Without ram</c>.</param>
/// <param name="Hours">The difference in hours, on parts and on the whole together.</param>
/// <param name="Days">The difference in days to the finish; null where the pace is not known.</param>
public sealed record Difference(string Change, HourDifference Hours, DayDifference? Days)
{
    /// <summary>What a change does to an estimate that was made with the same seed and number of draws.</summary>
    /// <param name="change">The change, in words that begin a sentence.</param>
    /// <param name="under">The estimate with the change.</param>
    /// <param name="plain">The estimate without it.</param>
    internal static Difference Of(string change, Estimate under, Estimate plain) => new(
        change,
        new(Less(under.Hours.P50, plain.Hours.P50), Less(under.Hours.P80, plain.Hours.P80), Less(under.Hours.P90, plain.Hours.P90)),
        under.Finish is not { } then || plain.Finish is not { } now ? null
            : new(Between(then.P50, now.P50), Between(then.P80, now.P80), Between(then.P90, now.P90)));

    // Adding nothing takes the sign from a zero.
    private static double Less(double then, double now) => Rounded.Hours(then - now) + 0.0;

    private static int? Between(DateOnly? then, DateOnly? now) => then?.DayNumber - now?.DayNumber;
}

/// <summary>A difference in hours, to a thousandth.</summary>
/// <param name="P50">In the hours that are enough at even odds.</param>
/// <param name="P80">In those that are enough eight times in ten.</param>
/// <param name="P90">In those that are enough nine times in ten.</param>
public sealed record HourDifference(double P50, double P80, double P90);

/// <summary>A difference in days to the finish; each is null where one of its two dates is more than a century away.</summary>
/// <param name="P50">In the day by which the work is done at even odds.</param>
/// <param name="P80">In that by which it is done eight times in ten.</param>
/// <param name="P90">In that by which it is done nine times in ten.</param>
public sealed record DayDifference(int? P50, int? P80, int? P90);

/// <summary>One or more changes to what is estimated.</summary>
/// <param name="Words">The changes, in words that begin a sentence.</param>
/// <param name="Options">The options with the changes, and with no others.</param>
internal sealed record Change(string Words, EstimateOptions Options)
{
    /// <summary>Options without any change: all parts once, at the usual pace, from the usual day.</summary>
    public static EstimateOptions None(EstimateOptions options) => options with { Without = [], Twice = [], HoursAWeek = null, Start = null };

    /// <summary>Each change asked for by itself, then all of them where they are several.</summary>
    public static IReadOnlyList<Change> In(EstimateOptions options)
    {
        var plain = None(options);
        List<Change> each =
        [
            .. options.Without.Select(part => new Change($"Without {part}", plain with { Without = [part] })),
            .. options.Twice.Select(part => new Change($"With {part} made twice", plain with { Twice = [part] })),
        ];
        if (options.HoursAWeek is { } hours)
        {
            each.Add(new(string.Create(CultureInfo.InvariantCulture, $"With {hours:0.##} h a week"), plain with { HoursAWeek = hours }));
        }

        if (options.Start is { } start)
        {
            each.Add(new($"Begun on {start:yyyy-MM-dd}", plain with { Start = start }));
        }

        return each.Count < 2 ? each : [.. each, new("All together", options)];
    }
}
