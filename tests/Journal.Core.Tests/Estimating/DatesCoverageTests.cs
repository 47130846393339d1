using Journal.Core.Estimating;
using Journal.Core.Model;
using Journal.Core.Statistics;
using Xunit.Abstractions;
using static Journal.Core.Tests.Estimating.Shop;

namespace Journal.Core.Tests.Estimating;

/// <summary>
/// Whether the dates of a build under way hold what they promise, with the hours known, on makers invented with patterns of
/// idleness: asked at the end of a week at the bench, and asked at any time. The patterns are our own, after what workshops are
/// like. <c>JOURNAL_COVERAGE=4000</c> asks for more makers.
/// </summary>
public sealed class DatesCoverageTests(ITestOutputHelper output)
{
    private const int History = 60;
    private const int Horizon = 900;

    private static readonly DateOnly Monday = Day("2026-01-05");
    private static readonly int Makers = int.TryParse(Environment.GetEnvironmentVariable("JOURNAL_COVERAGE"), out var makers) ? makers : 120;

    public static TheoryData<string, double> Patterns => new()
    {
        { "most weeks", 0.72 },
        { "busy and idle spells", 0.7 },
        { "idle summers", 0.6 },
        { "long pauses", 0.6 },
        { "fading", 0.5 },
    };

    [Theory]
    [MemberData(nameof(Patterns))]
    public void Days_OfABuildUnderWay_HoldRoughly(string pattern, double least)
    {
        foreach (var afterWork in new[] { true, false })
        {
            List<double> places = [.. Enumerable.Range(0, Makers).Select(number => PlaceOf(pattern, number, afterWork)).OfType<double>()];
            var (held, early) = (places.Count(place => place is >= 0.1 and <= 0.9) / (double)places.Count, places.Average());
            output.WriteLine($"{pattern}, asked {(afterWork ? "after a week at the bench" : "at any time")}: {100 * held:0.0} % of {places.Count}, mean place {early:0.00}");

            Assert.InRange(held, least - 0.1, 0.98);
        }
    }

    // Where the true day fell among the draws, 0 to 1; null where there is no pace, or the work never ends.
    private static double? PlaceOf(string pattern, int number, bool afterWork)
    {
        var luck = Luck.For(number, pattern);
        double[] weeks = [.. Weeks(pattern, luck)];
        var now = History + luck.Below(26);
        while (afterWork && now < History + 200 && weeks[now - 1] == 0)
        {
            now++;
        }

        var work = 15 * Math.Exp(luck.Normal() + 0.7);
        if (Finished(weeks, now, work) is not { } day)
        {
            return null;
        }

        var days = Finish.Of(EstimateSubject.Of(Plan("shaper")), Bench(weeks, now), [.. Enumerable.Repeat(work, 400)], new EstimateOptions { Today = Monday }).Days;
        return days.Count == 0 ? null : (days.Count(drawn => drawn < day) + (0.5 * days.Count(drawn => drawn == day))) / days.Count;
    }

    // Hours of each week. Every half year has a pace of its own.
    private static IEnumerable<double> Weeks(string pattern, Luck luck)
    {
        var (isBusy, pauseLeft, pace) = (true, 0, 1.0);
        var summer = luck.Below(52);
        for (var week = 0; week < Horizon; week++)
        {
            pace = week % 26 == 0 ? Math.Exp(0.3 * luck.Normal()) : pace;
            isBusy = luck.Share() < (isBusy ? 0.85 : 0.3);
            pauseLeft = pauseLeft > 0 ? pauseLeft - 1 : luck.Share() < 0.04 ? 5 + luck.Below(6) : 0;
            var works = pattern switch
            {
                "busy and idle spells" => isBusy,
                "idle summers" => luck.Share() < ((week + summer) % 52 < 18 ? 0.25 : 0.85),
                "long pauses" => pauseLeft == 0 && luck.Share() < 0.85,
                _ => luck.Share() < 0.85,
            };
            var hours = 6 * pace * Math.Exp(0.5 * luck.Normal()) * (pattern == "fading" ? Math.Pow(0.5, (week - History) / 52.0) : 1);
            yield return works ? hours : 0;
        }
    }

    private static DateOnly? Finished(double[] weeks, int now, double work)
    {
        for (var week = now; week < weeks.Length; week++)
        {
            if (weeks[week] >= work)
            {
                return Monday.AddDays((7 * (week - now)) + (int)Math.Ceiling(7 * work / weeks[week]) - 1);
            }

            work -= weeks[week];
        }

        return null;
    }

    // The weeks before now, each worked on its Wednesday.
    private static MakerJournal Bench(double[] weeks, int now) => new Shop().With(
        "drill", BuildStatus.UnderWay, [Part("head")],
        [
            .. Enumerable.Range(1, 52).Where(back => now - back >= 0 && weeks[now - back] > 0).Reverse()
                .Select(back => ($"{Monday.AddDays(2 - (7 * back)):yyyy-MM-dd}", "head", "boring", Math.Min(weeks[now - back], 23), (string?)null)),
        ]).Journal();
}
