using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Site.Html;

namespace Journal.Site.Charts;

/// <summary>A cause and what went wrong by it.</summary>
/// <param name="Label">The cause.</param>
/// <param name="Mistakes">How many mistakes had it.</param>
/// <param name="Lost">What they cost in time.</param>
/// <param name="Address">Its page, from the root of the site; null for none.</param>
internal sealed record CauseBar(string Label, int Mistakes, Minutes Lost, string? Address = null);

/// <summary>
/// Causes from the greatest down, the line of what they come to together, and the mark at 80 % (Juran,
/// <i>Quality Control Handbook</i>, from memory). Bars and line share one axis: the share of the whole.
/// </summary>
internal static class ParetoChart
{
    private const double RowHeight = 38;
    private const double Top = 20;

    /// <summary>Draws causes by the time lost.</summary>
    public static ChartView Draw(string id, string title, string description, IReadOnlyList<CauseBar> causes) =>
        Draw(id, title, description, "No time lost to a mistake.", Measured(causes, cause => cause.Lost.Count, cause => ChartText.Hours(cause.Lost)));

    /// <summary>Draws causes by the number of mistakes.</summary>
    public static ChartView DrawByCount(string id, string title, string description, IReadOnlyList<CauseBar> causes) =>
        Draw(id, title, description, "No mistakes recorded.", Measured(causes, cause => cause.Mistakes, cause => cause.Mistakes == 1 ? "1 mistake" : $"{ChartText.Count(cause.Mistakes)} mistakes"));

    private static ChartView Draw(string id, string title, string description, string nothing, IReadOnlyList<Step> steps) => new(
        id,
        title,
        steps.Sum(step => step.Share) > 0 ? DrawSteps(id, title, description, Folded(steps)) : Picture.Instead(nothing),
        SafeHtml.Empty,
        Table(steps));

    private static IReadOnlyList<Step> Measured(IReadOnlyList<CauseBar> causes, Func<CauseBar, int> measure, Func<CauseBar, string> figure)
    {
        var total = Math.Max(causes.Sum(measure), 1);
        var (gathered, together) = (0, 0);
        List<CauseBar> ordered = [.. causes.OrderByDescending(measure).ThenByDescending(cause => cause.Lost).ThenByDescending(cause => cause.Mistakes)];
        return [.. ordered.Zip(WholePercents.Of([.. ordered.Select(measure)]), (cause, percent) =>
            new Step(cause, figure(cause), (double)measure(cause) / total, (double)(gathered += measure(cause)) / total, percent, together += percent))];
    }

    /// <summary>The steps that a picture has room for; the least become one.</summary>
    private static IReadOnlyList<Step> Folded(IReadOnlyList<Step> steps)
    {
        var fold = Fold<Step>.Greatest(steps, step => step.Share);
        if (fold.Rest.Count == 0)
        {
            return steps;
        }

        var rest = new CauseBar($"Everything else ({ChartText.Count(fold.Rest.Count)})", 0, Minutes.Zero);
        var (share, percent) = (1 - fold.Shown[^1].Cumulative, 100 - fold.Shown[^1].Together);
        return [.. fold.Shown, new Step(rest, PerCent(percent), share, 1, percent, 100)];
    }

    private static SafeHtml DrawSteps(string id, string title, string description, IReadOnlyList<Step> steps)
    {
        var rows = LabelRow.Stack(steps, step => $"{step.Cause.Label} · {step.Figure}", _ => "", _ => RowHeight, Top);
        var bottom = rows[^1].Bottom;

        var picture = new Picture(id);
        picture.Upright("axis", 0, Top, bottom);
        picture.Upright("limit", 80, Top - 2, bottom);
        picture.Text("limit-text middle", 80, 12, ChartText.PerCent(0.8));
        foreach (var (step, row) in steps.Zip(rows))
        {
            picture.Hatched("bar lost", Hatch.Lost, 0, 100 * step.Share, row.Baseline + 6, 11);
        }

        DrawCumulative(picture, [.. steps.Zip(rows, (step, row) => (100 * step.Cumulative, row.Baseline + 11.5))]);

        // Last, so that the line gives way to a label that it meets.
        foreach (var row in rows)
        {
            row.Draw(picture, "clear", indent: 6);
        }

        return picture.Finish(title, description, bottom);
    }

    private static void DrawCumulative(Picture picture, IReadOnlyList<(double X, double Y)> points)
    {
        var (first, last) = (points[0].Y, points[^1].Y);
        if (points.Count > 1)
        {
            picture.Curve([.. points.Select(point => new CurvePlace(point.X, 1 - ((point.Y - first) / (last - first))))], first, last - first);
        }

        foreach (var (x, y) in points)
        {
            picture.Dot("flag", x, y, 3.5);
        }
    }

    private static ChartTable Table(IReadOnlyList<Step> steps) => new(
        ["Cause", "Mistakes", "Lost", "Share", "Cumulative"],
        [.. steps.Select(step => new ChartRow(
            step.Cause.Label,
            [ChartText.Count(step.Cause.Mistakes), ChartText.Hours(step.Cause.Lost), PerCent(step.Percent), PerCent(step.Together)],
            step.Cause.Address))]);

    /// <summary>A cause measured: its share of the whole and what it comes to with those before it, 0 to 1.</summary>
    private static string PerCent(int percent) => ChartText.PerCent(percent / 100.0);

    private sealed record Step(CauseBar Cause, string Figure, double Share, double Cumulative, int Percent, int Together);
}
