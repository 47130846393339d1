using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Site.Html;

namespace Journal.Site.Charts;

/// <summary>A part and the days on which it was worked on.</summary>
/// <param name="Label">The part.</param>
/// <param name="Days">The days of work on it in order, each once, with its share of the time; empty where it is not begun.</param>
/// <param name="SetUps">How many set-ups it took.</param>
/// <param name="Address">Its page, from the root of the site; null for none.</param>
internal sealed record PartDays(string Label, IReadOnlyList<TimeOf<DateOnly>> Days, int SetUps, string? Address = null);

/// <summary>
/// Parts over the weeks: a line from the first day of work on each to the last, a block for each week worked, the
/// higher the longer; stretches in which nothing was done are section-lined.
/// </summary>
internal static class PartsTimelineChart
{
    private const double RowHeight = 39;
    private const double HighestBlock = 13;
    private const double LowestBlock = 3;

    /// <summary>Narrower idle stretches than this are drawn and not named, in per cent.</summary>
    private const double RoomForIdle = 9;

    private static readonly double LineTop = CalendarScale.AxisHeight + 4;
    private static readonly double RowsTop = LineTop + 22;

    /// <summary>Draws the parts in the order given; the smaller ones beyond 24 are left to the table.</summary>
    /// <param name="id">The chart's id, unique on its page.</param>
    /// <param name="title">What the chart shows.</param>
    /// <param name="description">What a reader who cannot see it should know.</param>
    /// <param name="parts">The parts.</param>
    /// <param name="idle">Stretches in which nothing was done.</param>
    /// <param name="milestones">The milestones in order.</param>
    /// <param name="root">What leads from the page to the root of the site, such as <c>../</c>.</param>
    public static ChartView Draw(
        string id,
        string title,
        string description,
        IReadOnlyList<PartDays> parts,
        IReadOnlyList<DateRange> idle,
        IReadOnlyList<MilestoneMark> milestones,
        string root)
    {
        var isBegun = parts.Any(part => part.Days.Count > 0);
        return new ChartView(
            id,
            title,
            isBegun ? DrawParts(id, title, description, parts, idle, milestones) : Picture.Instead("No part has been started yet."),
            isBegun ? MilestoneMark.Key(milestones, root) : SafeHtml.Empty,
            Table(parts));
    }

    private static SafeHtml DrawParts(
        string id, string title, string description, IReadOnlyList<PartDays> parts, IReadOnlyList<DateRange> idle, IReadOnlyList<MilestoneMark> milestones)
    {
        var fold = Fold<PartDays>.Greatest(parts, part => Total(part).Count);
        var rows = LabelRow.Stack(fold.Shown, part => part.Label, Figure, _ => RowHeight, RowsTop);
        var calendar = Calendar(parts, idle, milestones);
        var longest = Math.Max(parts.SelectMany(Weeks).Max(week => week.Minutes.Count), 1);
        var picture = new Picture(id);
        var bottom = rows[^1].Bottom + fold.DrawRest(picture, rows[^1].Bottom);

        calendar.Draw(picture, LineTop, bottom, 12);
        DrawIdle(picture, calendar, idle, bottom);
        foreach (var mark in milestones)
        {
            picture.Upright("limit", calendar.At(mark.Date), LineTop, bottom + 4);
        }

        foreach (var (part, row) in fold.Shown.Zip(rows).Where(pair => pair.First.Days.Count > 0))
        {
            DrawWork(picture, calendar, part, row.Baseline + 15, longest);
        }

        foreach (var row in rows)
        {
            row.Draw(picture, "clear", "clear end faint");
        }

        picture.Level("axis", 0, 100, bottom);
        return picture.Finish(title, description, bottom + DrawFlags(picture, calendar, milestones, bottom) + 12);
    }

    private static void DrawIdle(Picture picture, CalendarScale calendar, IReadOnlyList<DateRange> idle, double bottom)
    {
        foreach (var stretch in idle)
        {
            var (from, to) = (calendar.At(stretch.First), calendar.At(CalendarScale.Later(stretch.Last, 1)));
            picture.Hatched("", Hatch.Idle, from, to - from, LineTop, bottom - LineTop);
            if (to - from >= RoomForIdle)
            {
                picture.Text("faint clear middle", (from + to) / 2, LineTop + 13, "idle");
            }
        }
    }

    private static void DrawWork(Picture picture, CalendarScale calendar, PartDays part, double foot, int longest)
    {
        picture.Level("span", calendar.At(part.Days[0].What), calendar.At(CalendarScale.Later(part.Days[^1].What, 1)), foot);
        foreach (var week in Weeks(part))
        {
            var height = Math.Max(LowestBlock, HighestBlock * week.Minutes.Count / longest);
            var width = calendar.At(CalendarScale.Later(week.What, 6)) - calendar.At(week.What);
            picture.Block("solid", calendar.At(week.What), width, foot - height, height);
        }
    }

    /// <summary>Draws the numbers under the axis; gives how far down the lowest stands.</summary>
    private static double DrawFlags(Picture picture, CalendarScale calendar, IReadOnlyList<MilestoneMark> milestones, double bottom)
    {
        var heights = FlagPlaces.Heights(milestones.Select(mark => (calendar.At(mark.Date), 14.0)), FlagPlaces.Pitch);
        for (var i = 0; i < milestones.Count; i++)
        {
            picture.Flag(i + 1, calendar.At(milestones[i].Date), bottom + heights[i]);
        }

        return heights.DefaultIfEmpty(0).Max();
    }

    /// <summary>From the Monday before everything to the Monday after it, so that a week's block is never cut.</summary>
    private static CalendarScale Calendar(IReadOnlyList<PartDays> parts, IReadOnlyList<DateRange> idle, IReadOnlyList<MilestoneMark> milestones)
    {
        var dates = parts.SelectMany(part => part.Days, (_, day) => day.What)
            .Concat(idle.SelectMany(stretch => new[] { stretch.First, stretch.Last }))
            .Concat(milestones.Select(mark => mark.Date))
            .ToList();
        return new CalendarScale(Monday(dates.Min()), CalendarScale.Later(Monday(dates.Max()), 7));
    }

    /// <summary>The time of each week worked, under its Monday.</summary>
    private static IEnumerable<TimeOf<DateOnly>> Weeks(PartDays part) =>
        part.Days.GroupBy(day => Monday(day.What), (monday, days) => new TimeOf<DateOnly>(monday, days.Sum(day => day.Minutes)));

    private static DateOnly Monday(DateOnly day) => CalendarScale.Later(day, -(((int)day.DayOfWeek + 6) % 7));

    private static Minutes Total(PartDays part) => part.Days.Sum(day => day.Minutes);

    private static string Figure(PartDays part) => part.Days.Count == 0 ? "not started" : ChartText.Hours(Total(part));

    private static ChartTable Table(IReadOnlyList<PartDays> parts) => new(
        ["Part", "First day", "Last day", "Days worked", "Set-ups", "Hours"],
        [.. parts.Select(part => new ChartRow(
            part.Label,
            [
                part.Days.Count == 0 ? ChartText.None : ChartText.Date(part.Days[0].What),
                part.Days.Count == 0 ? ChartText.None : ChartText.Date(part.Days[^1].What),
                ChartText.Count(part.Days.Count),
                ChartText.Count(part.SetUps),
                ChartText.Hours(Total(part)),
            ],
            part.Address))]);
}
