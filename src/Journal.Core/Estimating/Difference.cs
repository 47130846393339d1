using System.Globalization;

namespace Journal.Core.Estimating;

/// <summary>
/// What one change makes of an estimate: the answer under it less the plain answer, from the same draws (common random
/// numbers), so that chance plays no part (docs/estimating.md, What if). Negative is less, or sooner.
/// </summary>
/// <param name="Change">The change, in words that begin a sentence: <c>Without ram</c>.</param>
/// <param name="Hours">In hours of everything.</param>
/// <param name="Days">In days to the finish; null where nothing is known of the pace.</param>
public sealed record Difference(string Change, HourDifference Hours, DayDifference? Days)
{
    internal static Difference Of(string change, Estimate under, Estimate plain) => new(
        change,
        new(Less(under.Hours.P50, plain.Hours.P50), Less(under.Hours.P80, plain.Hours.P80), Less(under.Hours.P90, plain.Hours.P90)),
        under.Finish is not { } then || plain.Finish is not { } now ? null
            : new(Between(then.P50, now.P50), Between(then.P80, now.P80), Between(then.P90, now.P90)));

    // Adding nothing takes the sign from a zero.
    private static double Less(double then, double now) => Rounded.Hours(then - now) + 0.0;

    private static int? Between(DateOnly? then, DateOnly? now) => then?.DayNumber - now?.DayNumber;
}

/// <summary>A difference in the hours that suffice at even odds, eight and nine times in ten.</summary>
public sealed record HourDifference(double P50, double P80, double P90);

/// <summary>A difference in days likewise; null where a date lies more than a century off.</summary>
public sealed record DayDifference(int? P50, int? P80, int? P90);

/// <summary>One or more changes to what is estimated.</summary>
/// <param name="Words">The changes, in words that begin a sentence.</param>
/// <param name="Options">What is asked under them.</param>
internal sealed record Change(string Words, EstimateOptions Options)
{
    /// <summary>The question without any change.</summary>
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
