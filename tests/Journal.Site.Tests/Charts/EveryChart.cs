using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Site.Charts;

namespace Journal.Site.Tests.Charts;

/// <summary>Every chart with a number of items whose labels are given, so that what holds for all is tested on all.</summary>
internal static class EveryChart
{
    public static readonly DateOnly FirstDay = new(2025, 9, 6);

    public static IReadOnlyList<ChartView> Of(int count, string label = "Part", string id = "c", string title = "A chart", string description = "What it shows.")
    {
        var (n, days) = (Enumerable.Range(1, count).ToList(), Days(count));
        MilestoneMark[] milestones = [new(FirstDay, label, "build/entry/first.html"), new(FirstDay.AddDays(1), label)];
        return
        [
            BarChart.Draw(id, title, description, [.. n.Select(i => new Bar($"{label} {i}", new Minutes(i), "part.html"))]),
            GuessChart.Draw(id, title, description, [.. n.Select(i => new TakenAndGuess($"{label} {i}", new Minutes(90 * i), i % 3 == 0 ? null : new Minutes(60 * i)))]),
            GatheredChart.Draw(id, title, description, [.. days.Select((day, i) => new GatheredHours(day, new Minutes(95 * (i + 1))))], milestones, "../"),
            PartsTimelineChart.Draw(
                id,
                title,
                description,
                [.. n.Select(i => new PartDays($"{label} {i}", [new TimeOf<DateOnly>(days[i - 1], new Minutes(100 + i))], 2))],
                [new DateRange(FirstDay.AddDays(20), FirstDay.AddDays(40))],
                milestones,
                "../"),
            ParetoChart.Draw(id, title, description, [.. n.Select(i => new CauseBar($"{label} {i}", 1, new Minutes(7 * i)))]),
            ParetoChart.DrawByCount(id, title, description, [.. n.Select(i => new CauseBar($"{label} {i}", i, Minutes.Zero))]),
            RangeChart.Draw(id, title, description, [.. n.Select(i => new HoursRange($"{label} {i}", new Minutes(50 * i), new Minutes(77 * i), new Minutes(130 * i), new Minutes(60 * i)))]),
            BacktestChart.Draw(id, title, description, [.. n.Select(i => new ForecastAndTaken($"{label} {i}", new Minutes(50 * i), new Minutes(77 * i), new Minutes(130 * i), new Minutes(49 * i)))]),
            RatioChart.Draw(id, title, description, [.. n.Select(i => new GuessAndHours($"{label} {i}", FirstDay.AddDays(i), 4, 3 + (i % 7), "part.html"))], new(1.2, 1.1, 1.4)),
            CurveChart.Draw(id, title, description, [.. n.Select(i => new HoursChance(i / (count + 1.0), 40.3 + (i / 7.0)))]),
            CurveChart.DrawDays(id, title, description, [.. n.Select(i => new DayChance(i / (count + 1.0), FirstDay.AddDays(3 * i)))]),
            SpeedRangeChart.Draw(id, title, description, [.. n.Select(i => new SpeedsTried($"{label} {i}", [12.25 + i, 18.5 + i], [30 + i]))]),
        ];
    }

    private static IReadOnlyList<DateOnly> Days(int count) => [.. Enumerable.Range(0, count).Select(i => FirstDay.AddDays(3 * i))];
}
