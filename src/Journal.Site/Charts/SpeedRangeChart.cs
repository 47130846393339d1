using Journal.Site.Html;

namespace Journal.Site.Charts;

/// <summary>The surface speeds, in metres a minute, at which a cutter worked in a material and at which it chattered.</summary>
/// <param name="Label">The material and the cutter.</param>
/// <param name="Worked">The speeds that worked.</param>
/// <param name="Chattered">The speeds that chattered or failed in another way.</param>
/// <param name="Address">Its page, from the root of the site; null for none.</param>
internal sealed record SpeedsTried(string Label, IReadOnlyList<double> Worked, IReadOnlyList<double> Chattered, string? Address = null);

/// <summary>Surface speeds that worked and that chattered, by material and cutter, in metres and in feet a minute.</summary>
internal static class SpeedRangeChart
{
    private const double RowHeight = 46;
    private const double AxisHeight = 40;
    private const double FeetInAMetre = 1 / 0.3048;
    private const int MostSteps = 5;

    /// <summary>Draws the speeds in the order given; those tried least beyond 24 are left to the table.</summary>
    public static ChartView Draw(string id, string title, string description, IReadOnlyList<SpeedsTried> speeds)
    {
        var tried = speeds.Where(row => row.Worked.Count + row.Chattered.Count > 0).ToList();
        return new ChartView(
            id,
            title,
            tried.Count == 0 ? Picture.Instead("No speeds recorded yet.") : DrawAll(id, title, description, tried),
            tried.Count == 0 ? SafeHtml.Empty : new SafeHtml("<p class=\"key\"><span>Dot: worked. Diamond: chattered or failed. Band: from the slowest to the fastest that worked.</span></p>"),
            Table(speeds));
    }

    private static SafeHtml DrawAll(string id, string title, string description, IReadOnlyList<SpeedsTried> speeds)
    {
        var fold = Fold<SpeedsTried>.Greatest(speeds, row => row.Worked.Count + row.Chattered.Count);
        var scale = EvenScale.Between(0, fold.Shown.SelectMany(row => row.Worked.Concat(row.Chattered)).Max(), MostSteps);
        var rows = LabelRow.Stack(fold.Shown, row => row.Label, Figure, _ => RowHeight);

        var picture = new Picture(id);
        var bottom = rows[^1].Bottom + fold.DrawRest(picture, rows[^1].Bottom);
        DrawAxis(picture, scale, bottom);
        foreach (var (speed, row) in fold.Shown.Zip(rows))
        {
            row.Draw(picture, "clear", "clear end faint");
            DrawSpeeds(picture, speed, scale, row.Baseline + 16);
        }

        return picture.Finish(title, description, bottom + AxisHeight);
    }

    private static void DrawSpeeds(Picture picture, SpeedsTried speeds, EvenScale scale, double middle)
    {
        double At(double speed) => 100 * scale.At(speed);
        picture.Level("grid", 0, 100, middle);
        if (speeds.Worked.Count > 1)
        {
            picture.Block("inner", At(speeds.Worked.Min()), At(speeds.Worked.Max()) - At(speeds.Worked.Min()), middle - 6, 12);
        }

        foreach (var speed in speeds.Worked)
        {
            picture.Dot("solid", At(speed), middle, 3.5);
        }

        foreach (var speed in speeds.Chattered)
        {
            picture.Lozenge(At(speed), middle);
        }
    }

    /// <summary>Both units, named where the nought would stand.</summary>
    private static void DrawAxis(Picture picture, EvenScale scale, double top)
    {
        picture.Level("axis", 0, 100, top);
        foreach (var tick in scale.Ticks)
        {
            var x = 100 * scale.At(tick);
            var classes = x switch { 0 => "faint", 100 => "faint end", _ => "faint middle" };
            picture.Upright("axis", x, top, top + 5);
            picture.Text(classes, x, top + 18, tick == 0 ? "m/min" : ChartText.Number(tick));
            picture.Text(classes, x, top + 33, tick == 0 ? "ft/min" : ChartText.Number(Feet(tick)));
        }
    }

    private static double Feet(double metres) => Math.Round(metres * FeetInAMetre);

    private static string Figure(SpeedsTried speeds) => speeds.Worked.Count == 0 ? "none worked" : $"{Span(speeds.Worked, Metres)}\u202fm/min";

    private static double Metres(double metres) => Math.Round(metres, metres < 10 ? 1 : 0);

    private static string Span(IReadOnlyList<double> speeds, Func<double, double> unit)
    {
        if (speeds.Count == 0)
        {
            return ChartText.None;
        }

        var (slowest, fastest) = (ChartText.Number(unit(speeds.Min())), ChartText.Number(unit(speeds.Max())));
        return slowest == fastest ? slowest : $"{slowest} – {fastest}";
    }

    private static ChartTable Table(IReadOnlyList<SpeedsTried> speeds) => new(
        ["Material and cutter", "Worked, m/min", "Worked, ft/min", "Chattered, m/min", "Chattered, ft/min"],
        [.. speeds.Select(row => new ChartRow(
            row.Label,
            [Span(row.Worked, Metres), Span(row.Worked, Feet), Span(row.Chattered, Metres), Span(row.Chattered, Feet)],
            row.Address))]);
}
