using System.Globalization;
using Journal.Core.Model;
using Journal.Core.Trade;

namespace Journal.Site.Pages;

/// <summary>A measure in the unit of the drawing and in the other one.</summary>
/// <param name="Text">In the unit of the drawing, with its symbol.</param>
/// <param name="Other">In the other unit; empty for what has no unit, such as <c>hand</c>.</param>
public sealed record SizeView(string Text, string Other);

/// <summary>Lengths, speeds and feeds on pages, always in both units.</summary>
internal static class LengthFormat
{
    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    /// <summary>A length in its own unit and, in brackets, in the other.</summary>
    public static string Both(Length length) => $"{length.Shown} [{length.Beside}]";

    /// <summary>A size.</summary>
    public static SizeView Size(Length length) => new(length.Shown.ToString(), length.Beside.ToString());

    /// <summary>A size, where there is one.</summary>
    public static SizeView? Size(Length? length) => length is { } size ? Size(size) : null;

    /// <summary>A deviation or clearance, with its sign.</summary>
    public static SizeView Signed(Length length) => new(Sign(length.Shown), Sign(length.Beside));

    /// <summary>A surface speed.</summary>
    public static SizeView Speed(SurfaceSpeed speed, LengthUnit unit)
    {
        var (metric, imperial) = ($"{Rate(speed.MetresPerMinute)} m/min", $"{Rate(speed.FeetPerMinute)} ft/min");
        return unit == LengthUnit.Inch ? new(imperial, metric) : new(metric, imperial);
    }

    /// <summary>A rate of removal.</summary>
    public static SizeView Removal(RemovalRate rate, LengthUnit unit)
    {
        var (metric, imperial) = ($"{Fine(rate.CubicCentimetresPerMinute)} cm³/min", $"{Fine(rate.CubicInchesPerMinute)} in³/min");
        return unit == LengthUnit.Inch ? new(imperial, metric) : new(metric, imperial);
    }

    /// <summary>A feed.</summary>
    public static SizeView Feed(Feed feed) => feed.Per == FeedPer.Hand ? new("by hand", "") : Per(feed.Amount, feed.Per);

    /// <summary>A feed worked out from another; no more digits than it is worth.</summary>
    public static SizeView WorkedOut(Length amount, FeedPer per)
    {
        var most = (amount.Unit == LengthUnit.Inch ? 4 : 3) - (per == FeedPer.Minute ? 2 : 0);
        return Per(amount.Decimals > most ? amount.Rounded(most) : amount, per);
    }

    private static SizeView Per(Length amount, FeedPer per)
    {
        var word = per switch { FeedPer.Minute => "/min", FeedPer.Turn => "/turn", _ => "/tooth" };
        return new(amount.Shown + word, amount.Beside + word);
    }

    /// <summary>A minus sign as wide as the plus (U+2212); nothing before a nought.</summary>
    private static string Sign(Length length) =>
        length.Value < 0 ? $"\u2212{length with { Value = -length.Value }}" : length.Value > 0 ? $"+{length}" : length.ToString();

    /// <summary>Whole from 10 on, else with one decimal: nobody sets a speed finer.</summary>
    private static string Rate(decimal rate) => rate.ToString(rate < 10 ? "0.0" : "0", Plain);

    private static string Fine(decimal rate) => rate.ToString(rate < 1 ? "0.000" : "0.00", Plain);
}
