using Journal.Core.Model;
using Journal.Site.Html;

namespace Journal.Site.Charts;

/// <summary>How long something may take.</summary>
/// <param name="Label">What it is.</param>
/// <param name="P10">Less than this once in ten times.</param>
/// <param name="P50">As likely over as under.</param>
/// <param name="P90">Less than this nine times in ten.</param>
/// <param name="Guess">The maker's own guess; null for none.</param>
/// <param name="Address">Its page, from the root of the site; null for none.</param>
internal sealed record HoursRange(string Label, Minutes P10, Minutes P50, Minutes P90, Minutes? Guess = null, string? Address = null);

/// <summary>Ranges of hours for the parts of an estimate, the maker's own guess beside them.</summary>
internal static class RangeChart
{
    private const double RowHeight = 46;

    /// <summary>Draws the ranges in the order given; the smaller ones beyond 24 are left to the table.</summary>
    public static ChartView Draw(string id, string title, string description, IReadOnlyList<HoursRange> ranges) => new(
        id,
        title,
        ranges.Count == 0 ? Picture.Instead("Nothing to estimate yet.") : DrawAll(id, title, description, ranges),
        ranges.Count == 0 ? SafeHtml.Empty : Key(ranges),
        Table(ranges));

    /// <summary>A range: a line from the tenth to the ninetieth in a hundred, a heavy stroke as likely over as under.</summary>
    internal static void DrawRange(Picture picture, double p10, double p50, double p90, double middle)
    {
        picture.Level("grid", 0, 100, middle);
        picture.Level("range", p10, p90, middle);
        picture.Upright("range", p10, middle - 6, middle + 6);
        picture.Upright("range", p90, middle - 6, middle + 6);
        picture.Upright("mid", p50, middle - 9, middle + 9);
    }

    private static SafeHtml DrawAll(string id, string title, string description, IReadOnlyList<HoursRange> ranges)
    {
        var fold = Fold<HoursRange>.Greatest(ranges, range => range.P50.Count);
        var greatest = 1.02 * Math.Max(fold.Shown.Max(range => Math.Max(range.P90.Count, range.Guess?.Count ?? 0)), 1);
        var rows = LabelRow.Stack(
            fold.Shown,
            range => range.Label,
            range => $"{ChartText.Hours(range.P10)} – {ChartText.Hours(range.P90)}",
            _ => RowHeight);

        var picture = new Picture(id);
        foreach (var (range, row) in fold.Shown.Zip(rows))
        {
            double At(Minutes time) => 100 * time.Count / greatest;
            var middle = row.Baseline + 16;
            row.Draw(picture, figureClasses: "end faint");
            DrawRange(picture, At(range.P10), At(range.P50), At(range.P90), middle);
            if (range.Guess is { } guess)
            {
                picture.Lozenge(At(guess), middle);
            }
        }

        return picture.Finish(title, description, rows[^1].Bottom + fold.DrawRest(picture, rows[^1].Bottom));
    }

    private static SafeHtml Key(IReadOnlyList<HoursRange> ranges) => new(
        "<p class=\"key\"><span>Line: 80 % range. Heavy stroke: the middle, as likely over as under." +
        (ranges.Any(range => range.Guess is not null) ? " Diamond: own guess." : "") + "</span></p>");

    private static ChartTable Table(IReadOnlyList<HoursRange> ranges) => new(
        ["Part", "Guess", "1 in 10 under", "Half under", "9 in 10 under"],
        [.. ranges.Select(range => new ChartRow(
            range.Label,
            [ChartText.Hours(range.Guess), ChartText.Hours(range.P10), ChartText.Hours(range.P50), ChartText.Hours(range.P90)],
            range.Address))]);
}
