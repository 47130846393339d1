using Journal.Core.Model;
using Journal.Site.Html;

namespace Journal.Site.Charts;

/// <summary>A bar of hours.</summary>
/// <param name="Label">What the hours went into.</param>
/// <param name="Time">The hours.</param>
/// <param name="Address">Its page, from the root of the site; null for none.</param>
internal sealed record Bar(string Label, Minutes Time, string? Address = null);

/// <summary>Hours by part, by operation or by kind, in the order given.</summary>
internal static class BarChart
{
    private const double RowHeight = 38;

    /// <summary>Draws the bars; beyond 24 the smaller ones become “everything else”.</summary>
    /// <param name="id">The chart's id, unique on its page.</param>
    /// <param name="title">What the chart shows.</param>
    /// <param name="description">What a reader who cannot see it should know.</param>
    /// <param name="bars">The bars.</param>
    /// <param name="what">What a bar is about: the heading of the table's first column.</param>
    public static ChartView Draw(string id, string title, string description, IReadOnlyList<Bar> bars, string what = "Part") => new(
        id,
        title,
        bars.Count == 0 ? Picture.Instead("No hours yet.") : DrawBars(id, title, description, bars),
        SafeHtml.Empty,
        Table(bars, what));

    private static SafeHtml DrawBars(string id, string title, string description, IReadOnlyList<Bar> bars)
    {
        var fold = Fold<Bar>.Greatest(bars, bar => bar.Time.Count);
        var greatest = Math.Max(fold.Shown.Max(bar => bar.Time.Count), 1);
        IReadOnlyList<Bar> drawn = fold.Rest.Count == 0 ? fold.Shown : [.. fold.Shown, EverythingElse(fold.Rest)];
        var rows = LabelRow.Stack(drawn, bar => bar.Label, bar => ChartText.Hours(bar.Time), _ => RowHeight);

        var picture = new Picture(id);
        foreach (var (bar, row) in drawn.Zip(rows))
        {
            row.Draw(picture);
            DrawBar(picture, 100.0 * bar.Time.Count / greatest, row.Baseline + 6);
        }

        return picture.Finish(title, description, rows[^1].Bottom);
    }

    /// <summary>A bar; one that is longer than there is room ends in a break, as long work does on a drawing.</summary>
    private static void DrawBar(Picture picture, double length, double top)
    {
        picture.Hatched("bar", Hatch.Work, 0, Math.Min(length, 100), top, 11);
        if (length > 100)
        {
            picture.Shape("class=\"clear\" fill=\"none\"", 92, top, "M-3 14 3-3");
        }
    }

    private static Bar EverythingElse(IReadOnlyList<Bar> rest) =>
        new($"Everything else ({ChartText.Count(rest.Count)})", rest.Sum(bar => bar.Time));

    private static ChartTable Table(IReadOnlyList<Bar> bars, string what) => new(
        [what, "Hours"],
        [.. bars.Select(bar => new ChartRow(bar.Label, [ChartText.Hours(bar.Time)], bar.Address))],
        bars.Count < 2 ? null : new ChartRow("Total", [ChartText.Hours(bars.Sum(bar => bar.Time))]));
}
