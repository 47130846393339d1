using Journal.Core.Model;
using Journal.Site.Html;

namespace Journal.Site.Charts;

/// <summary>A range forecast from what came before, and what then happened.</summary>
/// <param name="Label">The part or build.</param>
/// <param name="P10">Less than this once in ten times.</param>
/// <param name="P50">As likely over as under.</param>
/// <param name="P90">Less than this nine times in ten.</param>
/// <param name="Taken">The hours it took.</param>
/// <param name="Address">Its page, from the root of the site; null for none.</param>
internal sealed record ForecastAndTaken(string Label, Minutes P10, Minutes P50, Minutes P90, Minutes Taken, string? Address = null)
{
    /// <summary>Whether what happened fell in the range, its ends included.</summary>
    public bool Held => P10 <= Taken && Taken <= P90;
}

/// <summary>Forecast ranges with what happened: the method tried on the maker's own past.</summary>
internal static class BacktestChart
{
    private const double RowHeight = 46;

    /// <summary>Draws the forecasts in order of time; of more than 24 the latest.</summary>
    public static ChartView Draw(string id, string title, string description, IReadOnlyList<ForecastAndTaken> forecasts, string what = "Part") => new(
        id,
        title,
        forecasts.Count == 0 ? Picture.Instead("Too little finished work to test the method on.") : DrawAll(id, title, description, forecasts),
        forecasts.Count == 0 ? SafeHtml.Empty : Key(forecasts),
        Table(forecasts, what));

    private static SafeHtml DrawAll(string id, string title, string description, IReadOnlyList<ForecastAndTaken> forecasts)
    {
        var fold = Fold<ForecastAndTaken>.Latest(forecasts);
        var greatest = 1.02 * Math.Max(fold.Shown.Max(forecast => Math.Max(forecast.P90.Count, forecast.Taken.Count)), 1);
        var rows = LabelRow.Stack(fold.Shown, forecast => forecast.Label, forecast => ChartText.Hours(forecast.Taken), _ => RowHeight);

        var picture = new Picture(id);
        foreach (var (forecast, row) in fold.Shown.Zip(rows))
        {
            double At(Minutes time) => 100 * time.Count / greatest;
            var middle = row.Baseline + 16;
            row.Draw(picture);
            RangeChart.DrawRange(picture, At(forecast.P10), At(forecast.P50), At(forecast.P90), middle);
            DrawTaken(picture, forecast, At(forecast.Taken), middle);
        }

        return picture.Finish(title, description, rows[^1].Bottom + fold.DrawRest(picture, rows[^1].Bottom));
    }

    /// <summary>Within and outside differ in shape, not in colour alone (WCAG 2.2, 1.4.1).</summary>
    private static void DrawTaken(Picture picture, ForecastAndTaken forecast, double x, double middle)
    {
        if (forecast.Held)
        {
            picture.Dot("solid", x, middle, 5);
        }
        else
        {
            picture.Lozenge(x, middle);
        }
    }

    private static SafeHtml Key(IReadOnlyList<ForecastAndTaken> forecasts) => new(
        $"<p class=\"key\"><span>{ChartText.Count(forecasts.Count(forecast => forecast.Held))} of {ChartText.Count(forecasts.Count)} within their 80 % range. " +
        "Line: 80 % range. Heavy stroke: the middle, as likely over as under. Dot: hours taken, within the range. Diamond: outside it.</span></p>");

    private static ChartTable Table(IReadOnlyList<ForecastAndTaken> forecasts, string what) => new(
        [what, "1 in 10 under", "Half under", "9 in 10 under", "Taken", "In range"],
        [.. forecasts.Select(forecast => new ChartRow(
            forecast.Label,
            [
                ChartText.Hours(forecast.P10),
                ChartText.Hours(forecast.P50),
                ChartText.Hours(forecast.P90),
                ChartText.Hours(forecast.Taken),
                forecast.Held ? "yes" : "no",
            ],
            forecast.Address))]);
}
