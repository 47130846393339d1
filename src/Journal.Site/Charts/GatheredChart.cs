using Journal.Core.Model;
using Journal.Site.Html;

namespace Journal.Site.Charts;

/// <summary>The hours gathered up to and including a day of work.</summary>
internal sealed record GatheredHours(DateOnly Date, Minutes Total);

/// <summary>Hours gathered over the calendar, with numbered milestones.</summary>
internal static class GatheredChart
{
    private const double Height = 240;
    private const double FlagLift = 26;
    private const double LeastTop = 24;
    private const int MostLines = 5;

    /// <summary>A longer pause than this is drawn flat, in days; evenings closer together are joined.</summary>
    private const int LongestJoin = 7;

    /// <summary>Draws the curve.</summary>
    /// <param name="id">The chart's id, unique on its page.</param>
    /// <param name="title">What the chart shows.</param>
    /// <param name="description">What a reader who cannot see it should know.</param>
    /// <param name="days">The days of work in order, each with all hours up to it.</param>
    /// <param name="milestones">The milestones in order.</param>
    /// <param name="root">What leads from the page to the root of the site, such as <c>../</c>.</param>
    public static ChartView Draw(
        string id, string title, string description, IReadOnlyList<GatheredHours> days, IReadOnlyList<MilestoneMark> milestones, string root) => new(
        id,
        title,
        days.Count == 0 ? Picture.Instead("No hours yet.") : DrawCurve(id, title, description, days, milestones),
        days.Count == 0 ? SafeHtml.Empty : MilestoneMark.Key(milestones, root),
        Table(days));

    private static SafeHtml DrawCurve(string id, string title, string description, IReadOnlyList<GatheredHours> days, IReadOnlyList<MilestoneMark> milestones)
    {
        var calendar = Calendar(days, milestones);
        var hours = EvenScale.Between(0, days[^1].Total.InHours, MostLines);
        var stops = WithPauses(days);

        // Measured from the top of the curve; the room above it is what the highest balloon needs.
        var marks = milestones.Select(mark => (X: calendar.At(mark.Date), Y: Height * (1 - hours.At(GatheredBy(stops, mark.Date))))).ToList();
        var flags = FlagPlaces.Heights(marks.Select(mark => (mark.X, mark.Y - FlagLift)), -FlagPlaces.Pitch);
        var top = Math.Max(LeastTop, 12 - flags.DefaultIfEmpty(0).Min());

        var picture = new Picture(id);
        calendar.Draw(picture, top, top + Height + 6, top + Height + 19);
        DrawHours(picture, hours, top);
        picture.Hill([.. stops.Select(stop => new CurvePlace(calendar.At(stop.Date), hours.At(stop.Hours)))], top, Height);
        picture.Level("axis", 0, 100, top + Height);
        for (var i = 0; i < marks.Count; i++)
        {
            picture.Upright("span", marks[i].X, top + marks[i].Y, top + flags[i] + 9);
            picture.Dot("solid", marks[i].X, top + marks[i].Y, 2.5);
        }

        for (var i = 0; i < marks.Count; i++)
        {
            picture.Flag(i + 1, marks[i].X, top + flags[i]);
        }

        return picture.Finish(title, description, top + Height + CalendarScale.AxisHeight + 8);
    }

    private static CalendarScale Calendar(IReadOnlyList<GatheredHours> days, IReadOnlyList<MilestoneMark> milestones)
    {
        var dates = milestones.Select(mark => mark.Date).Append(days[^1].Date).Append(CalendarScale.Later(days[0].Date, -1)).ToList();
        return new CalendarScale(dates.Min(), dates.Max());
    }

    private static void DrawHours(Picture picture, EvenScale hours, double top)
    {
        foreach (var tick in hours.Ticks.Skip(1))
        {
            var y = top + (Height * (1 - hours.At(tick)));
            picture.Level("grid", 0, 100, y);
            picture.Text("faint clear", 0, y - 4, ChartText.Measure(tick, "h"));
        }
    }

    /// <summary>The days of work, and before each that follows a pause the last idle day.</summary>
    private static List<Stop> WithPauses(IReadOnlyList<GatheredHours> days)
    {
        var stops = new List<Stop> { new(CalendarScale.Later(days[0].Date, -1), 0) };
        foreach (var day in days)
        {
            if (day.Date.DayNumber - stops[^1].Date.DayNumber > LongestJoin)
            {
                stops.Add(stops[^1] with { Date = CalendarScale.Later(day.Date, -1) });
            }

            stops.Add(new Stop(day.Date, day.Total.InHours));
        }

        return stops;
    }

    /// <summary>What the curve shows on a day.</summary>
    private static double GatheredBy(IReadOnlyList<Stop> stops, DateOnly date)
    {
        var next = stops.TakeWhile(stop => stop.Date < date).Count();
        if (next == 0 || next == stops.Count)
        {
            return next == 0 ? 0 : stops[^1].Hours;
        }

        var (before, after) = (stops[next - 1], stops[next]);
        var way = (double)(date.DayNumber - before.Date.DayNumber) / (after.Date.DayNumber - before.Date.DayNumber);
        return before.Hours + ((after.Hours - before.Hours) * way);
    }

    private static ChartTable Table(IReadOnlyList<GatheredHours> days) => new(
        ["Date", "Hours", "Total so far"],
        [.. days.Select((day, i) => new ChartRow(
            ChartText.Date(day.Date),
            [ChartText.Hours(i == 0 ? day.Total : day.Total - days[i - 1].Total), ChartText.Hours(day.Total)]))]);

    /// <summary>A corner of the curve.</summary>
    private sealed record Stop(DateOnly Date, double Hours);
}
