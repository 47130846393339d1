using Journal.Site.Html;

namespace Journal.Site.Charts;

/// <summary>The chance of being done within so many hours.</summary>
/// <param name="Share">The chance, 0 to 1.</param>
/// <param name="Hours">The hours, 0 or more.</param>
internal readonly record struct HoursChance(double Share, double Hours);

/// <summary>The chance of being done by a day.</summary>
/// <param name="Share">The chance, 0 to 1.</param>
/// <param name="Day">The day.</param>
internal readonly record struct DayChance(double Share, DateOnly Day);

/// <summary>The chance of being done within so many hours, or by a day, with the points at 50, 80 and 90 %.</summary>
internal static class CurveChart
{
    private const double Height = 220;
    private const double Top = 14;
    private const double Base = Top + Height;
    private const int MostSteps = 6;

    /// <summary>To the right of this, lettering stands to the left of its point, in per cent.</summary>
    private const double RoomForMark = 70;

    private static readonly double[] Marks = [0.5, 0.8, 0.9];

    /// <summary>Draws the chance by hours.</summary>
    /// <param name="id">The chart's id, unique on its page.</param>
    /// <param name="title">What the chart shows.</param>
    /// <param name="description">What a reader who cannot see it should know.</param>
    /// <param name="chances">The curve from the least chance to the greatest.</param>
    public static ChartView Draw(string id, string title, string description, IReadOnlyList<HoursChance> chances)
    {
        if (chances.Count == 0)
        {
            return Nothing(id, title, "Hours at most");
        }

        var scale = EvenScale.Between(chances[0].Hours, chances[^1].Hours, MostSteps);
        var picture = new Picture(id);
        DrawShares(picture);
        DrawAxis(picture, scale);
        DrawCurve(picture, [.. chances.Select(chance => (chance.Share, chance.Hours))], hours => 100 * scale.At(hours), hours => ChartText.Measure(Math.Round(hours), "h"));
        return new ChartView(
            id,
            title,
            picture.Finish(title, description, Base + 24),
            SafeHtml.Empty,
            Table("Hours at most", chances.Select(chance => (chance.Share, ChartText.Measure(Math.Round(chance.Hours, 1), "h")))));
    }

    /// <summary>Draws the chance by days.</summary>
    /// <param name="id">The chart's id, unique on its page.</param>
    /// <param name="title">What the chart shows.</param>
    /// <param name="description">What a reader who cannot see it should know.</param>
    /// <param name="chances">The curve from the least chance to the greatest.</param>
    public static ChartView DrawDays(string id, string title, string description, IReadOnlyList<DayChance> chances)
    {
        if (chances.Count == 0)
        {
            return Nothing(id, title, "Done by");
        }

        var calendar = new CalendarScale(chances[0].Day, chances[^1].Day);
        var picture = new Picture(id);
        calendar.Draw(picture, Top, Base + 6, Base + 19);
        DrawShares(picture);
        DrawCurve(picture, [.. chances.Select(chance => (chance.Share, (double)chance.Day.DayNumber))], number => calendar.At(Day(number)), number => ChartText.Date(Day(number)));
        return new ChartView(
            id,
            title,
            picture.Finish(title, description, Base + CalendarScale.AxisHeight + 8),
            SafeHtml.Empty,
            Table("Done by", chances.Select(chance => (chance.Share, ChartText.Date(chance.Day)))));
    }

    private static ChartView Nothing(string id, string title, string what) =>
        new(id, title, Picture.Instead("Too little history for a range yet."), SafeHtml.Empty, Table(what, []));

    /// <summary>A day is done only when it is over, so a place between two days counts for the later one.</summary>
    private static DateOnly Day(double number) => DateOnly.FromDayNumber((int)Math.Ceiling(number));

    private static void DrawShares(Picture picture)
    {
        foreach (var share in Marks.Append(1))
        {
            picture.Level("grid", 0, 100, Up(share));
            picture.Text("faint clear", 0, Up(share) - 4, ChartText.PerCent(share));
        }

        picture.Level("axis", 0, 100, Base);
    }

    private static void DrawAxis(Picture picture, EvenScale scale)
    {
        foreach (var tick in scale.Ticks)
        {
            var x = 100 * scale.At(tick);
            picture.Upright("axis", x, Base, Base + 5);
            picture.Text(x switch { 0 => "faint", 100 => "faint end", _ => "faint middle" }, x, Base + 18, ChartText.Measure(tick, "h"));
        }
    }

    private static void DrawCurve(Picture picture, IReadOnlyList<(double Share, double Value)> points, Func<double, double> across, Func<double, string> words)
    {
        if (points.Count > 1)
        {
            picture.Curve([.. points.Select(point => new CurvePlace(across(point.Value), point.Share))], Top, Height);
        }

        foreach (var share in Marks)
        {
            if (ValueAt(points, share) is { } value)
            {
                DrawMark(picture, share, across(value), words(value));
            }
        }
    }

    private static void DrawMark(Picture picture, double share, double x, string words)
    {
        picture.Upright("limit", x, Up(share), Base);
        picture.Dot("flag", x, Up(share), 4);
        if (x < RoomForMark)
        {
            picture.Text("clear limit-text", x, Up(share) + 16, words, 8);
        }
        else
        {
            picture.Text("clear limit-text end", x, Up(share) - 2, words, -8);
        }
    }

    /// <summary>What belongs to a chance, straight between the points on either side; null beyond the curve's ends.</summary>
    private static double? ValueAt(IReadOnlyList<(double Share, double Value)> points, double share)
    {
        // Shares made by adding up steps of 0.05 miss the mark by less than this.
        const double slip = 1e-9;
        var next = points.TakeWhile(point => point.Share < share - slip).Count();
        if (next == points.Count || (next == 0 && points[0].Share > share + slip))
        {
            return null;
        }

        var after = points[next];
        if (after.Share <= share + slip)
        {
            return after.Value;
        }

        var before = points[next - 1];
        return before.Value + ((after.Value - before.Value) * (share - before.Share) / (after.Share - before.Share));
    }

    private static double Up(double share) => Base - (Height * share);

    private static ChartTable Table(string what, IEnumerable<(double Share, string Words)> rows) =>
        new(["Chance", what], [.. rows.Select(row => new ChartRow(ChartText.PerCent(row.Share), [row.Words]))]);
}
