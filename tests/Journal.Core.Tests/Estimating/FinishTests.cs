using Journal.Core.Estimating;
using Journal.Core.Model;
using Journal.Core.Statistics;
using static Journal.Core.Tests.Estimating.Shop;

namespace Journal.Core.Tests.Estimating;

/// <summary>Hours become dates.</summary>
public sealed class FinishTests
{
    private static readonly DateOnly Monday = Day("2026-01-05");

    [Theory]
    [InlineData(1, "2026-01-05")]
    [InlineData(7, "2026-01-11")]
    [InlineData(7.01, "2026-01-12")]
    [InlineData(70, "2026-03-15")]
    public void DayOf_SevenHoursEveryWeek_IsAnHourADay(double hours, string day) =>
        Assert.Equal(Day(day), Calendar([7], Monday).DayOf(hours, Luck.For(1, "weeks")));

    [Fact]
    public void DayOf_AStartOnASaturday_HasTwoDaysOfItsWeek()
    {
        var calendar = Calendar([7], Day("2026-01-10"));

        Assert.Equal(Day("2026-01-11"), calendar.DayOf(2, Luck.For(1, "weeks")));
        Assert.Equal(Day("2026-01-12"), calendar.DayOf(3, Luck.For(1, "weeks")));
    }

    [Fact]
    public void DayOf_DaysAway_AreSkippedToTheLast()
    {
        var calendar = Calendar([7], Monday, new DateRange(Day("2026-01-07"), Day("2026-01-18")));

        Assert.Equal(Day("2026-01-06"), calendar.DayOf(2, Luck.For(1, "weeks")));
        Assert.Equal(Day("2026-01-19"), calendar.DayOf(3, Luck.For(1, "weeks")));
    }

    [Fact]
    public void DayOf_MoreThanACentury_HasNoDay() =>
        Assert.Equal(DateOnly.MaxValue, Calendar([1], Monday).DayOf(6000, Luck.For(1, "weeks")));

    // The weeks before that of Monday 2026-01-05, counted back from 1: 1 is that of 2025-12-29, 13 that of 2025-10-06.
    public static TheoryData<string, (int WeeksBack, double Hours)[], double[]> Stretches => new()
    {
        { "three idle weeks up to today count", [(7, 6), (4, 4)], [6, 0, 0, 4, 0, 0, 0] },
        { "the week of today is not over", [(2, 6), (0, 1)], [6, 0] },
        { "the week of today counts where there is no other", [(0, 3)], [3] },
        { "a gap of thirteen weeks is part of the stretch", [(16, 5), (2, 6)], [5, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 6, 0] },
        { "a gap of fourteen weeks ends it", [(17, 5), (2, 6)], [6, 0] },
        { "an old log taken in changes nothing", [(110, 3), (108, 2), (105, 2), (102, 3), (101, 1), (3, 6), (1, 2)], [6, 0, 2] },
        { "thirteen idle weeks up to today", [(14, 6)], [6, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0] },
        { "a bench left for longer is begun anew this week", [(20, 6), (0, 2)], [2] },
        { "no further back than 26 weeks", [(30, 9), (27, 9), (20, 5), (8, 4)], [0, 0, 0, 0, 0, 0, 5, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 4, 0, 0, 0, 0, 0, 0, 0] },
        { "a week whose evenings took no time is idle", [(3, 6), (1, 0)], [6, 0, 0] },
    };

    [Theory]
    [MemberData(nameof(Stretches))]
    public void Weeks_ByTheRule_AreThoseOfRecentWork(string what, (int WeeksBack, double Hours)[] worked, double[] hours)
    {
        var weeks = BenchWeeks.Of(Bench(worked), Monday, null)!;

        Assert.True(hours.SequenceEqual(weeks.Hours), $"{what}: {string.Join(", ", weeks.Hours)}");
        Assert.Equal(hours.Length, weeks.Taken);
        Assert.Equal(hours.Average(), weeks.HoursAWeek, 1e-12);
    }

    [Fact]
    public void Weeks_LastWorkLongAgo_AreNotKnown()
    {
        var journal = Bench((15, 6), (16, 4));

        Assert.Null(BenchWeeks.Of(journal, Monday, null));
        Assert.Equal([5], BenchWeeks.Of(journal, Monday, 5)!.Hours);
    }

    [Fact]
    public void Weeks_AskedForOnASunday_LeaveItsWeekOut() =>
        Assert.Equal([4, 0], BenchWeeks.Of(Bench((2, 4), (0, 9)), Monday.AddDays(6), null)!.Hours);

    [Fact]
    public void Weeks_HoursAWeekGiven_KeepTheirUpsAndDowns() =>
        Assert.Equal([12, 0, 0, 8], BenchWeeks.Of(Bench((4, 6), (1, 4)), Monday, 5)!.Hours);

    [Fact]
    public void Weeks_FewerThanFour_DoNotShapeHoursAWeekGiven()
    {
        var weeks = BenchWeeks.Of(Bench((3, 6), (1, 4)), Monday, 5)!;

        Assert.Equal([5], weeks.Hours);
        Assert.Equal(3, weeks.Taken);
    }

    [Fact]
    public void Weeks_NoneWorked_AreKnownOnlyWhereGiven()
    {
        var journal = new Shop().Journal();

        Assert.Null(BenchWeeks.Of(journal, Monday, null));
        Assert.Equal([5], BenchWeeks.Of(journal, Monday, 5)!.Hours);
        Assert.Equal(0, BenchWeeks.Of(journal, Monday, 5)!.Taken);
    }

    [Fact]
    public void DayOf_NothingToDo_IsTheFirstOpenDay()
    {
        Assert.Equal(Monday, Calendar([7], Monday).DayOf(0, Luck.For(1, "weeks")));
        Assert.Equal(Day("2026-01-12"), Calendar([7], Monday, new DateRange(Monday, Day("2026-01-11"))).DayOf(0, Luck.For(1, "weeks")));
    }

    [Fact]
    public void DayOf_WeeksOfAJournal_FollowEachOtherInRunsOfFour()
    {
        // Five weeks of different hours. Whichever comes first, the three after it follow in their order, and the last
        // is followed by the first.
        double[] hours = [7, 14, 28, 56, 112];
        foreach (var seed in Enumerable.Range(1, 20))
        {
            var weeks = Enumerable.Range(0, 4).Select(week => DoneIn(week, seed)).ToList();
            var first = Array.IndexOf(hours, weeks[0]);

            Assert.Equal(Enumerable.Range(first, 4).Select(at => hours[at % 5]), weeks);
        }

        // What is done by a week's end is the most for which its Sunday is late enough.
        double DoneIn(int week, int seed)
        {
            var (before, through) = (MostBy(week - 1, seed), MostBy(week, seed));
            return through - before;
        }

        double MostBy(int week, int seed) => week < 0 ? 0
            : Enumerable.Range(1, 70).Select(sevens => 7.0 * sevens).Last(work => Calendar(hours, Monday).DayOf(work, Luck.For(seed, "weeks")) < Monday.AddDays(7 * (week + 1)));
    }

    // docs/estimating.md, Worked example: five weeks of 4, 0, 6, 2 and 0 hours, 9 h to come from a Monday on, the third week
    // drawn first. 6, 2 and 0 leave 1 h; of the 4 h that follow round the circle it is a quarter, and of seven days the second.
    [Fact]
    public void DayOf_FiveWeeksOfHistory_IsAsByHand()
    {
        var seed = Enumerable.Range(0, 100).First(seed => Luck.Of((ulong)seed).Below(3) == 1);

        Assert.Equal(Monday.AddDays((3 * 7) + 1), Calendar([4, 0, 6, 2, 0], Monday).DayOf(9, Luck.Of((ulong)seed)));
    }

    [Fact]
    public void DayOf_IdleWeeksAmongThem_BeginsInAWeekAtTheBench()
    {
        var calendar = Calendar([0, 0, 0, 0, 7, 0, 0], Monday);

        Assert.All(Enumerable.Range(0, 50), seed => Assert.Equal(Monday, calendar.DayOf(1, Luck.Of((ulong)seed))));
    }

    // Every week alike, 7 h: the day is the number of hours, divided by exp(0.3 · normal). Φ⁻¹(0.8) = 0.8416, Φ⁻¹(0.9) = 1.2816.
    [Fact]
    public void Of_HoursKnownAndWeeksAlike_SpreadByThePaceOfTheSeason()
    {
        const double Hours = 700;
        var finish = Core.Estimating.Finish.Of(EstimateSubject.Of(Plan("shaper")), new Shop().Journal(), [.. Enumerable.Repeat(Hours, 10_000)], new EstimateOptions { Today = Monday, HoursAWeek = 7 }).Range!;

        Assert.InRange(Days(finish.P50), 700 * 0.985, 700 * 1.015);
        Assert.InRange(Days(finish.P80), 700 * Math.Exp(0.3 * 0.8416) * 0.985, 700 * Math.Exp(0.3 * 0.8416) * 1.015);
        Assert.InRange(Days(finish.P90), 700 * Math.Exp(0.3 * 1.2816) * 0.985, 700 * Math.Exp(0.3 * 1.2816) * 1.015);
        static int Days(DateOnly? day) => day!.Value.DayNumber - Monday.DayNumber + 1;
    }

    [Fact]
    public void Of_AnOldLogTakenIn_MovesNoDate()
    {
        var shop = new Shop().WithDrill(10, from: "2025-10-27");
        var (before, after) = (Estimated(shop), Estimated(shop.With("old", BuildStatus.UnderWay, [Part("base")], ("2023-11-01", "base", "turning", 2, null), ("2023-12-06", "base", "turning", 1, null))));

        Assert.Equal(before.FinishQuantiles, after.FinishQuantiles);
        static Estimate Estimated(Shop shop) => EstimateTests.Estimated(shop.Journal(), Plan("shaper", Part("ram", 12)), new EstimateOptions { Today = Monday });
    }

    [Fact]
    public void Of_MoreHoursAWeek_IsDoneSooner()
    {
        var slow = Finish(new EstimateOptions { Today = Monday, HoursAWeek = 3 });
        var fast = Finish(new EstimateOptions { Today = Monday, HoursAWeek = 12 });

        Assert.True(fast.Finish!.P50 < slow.Finish!.P50);
        Assert.True(slow.Finish.P50 < slow.Finish.P80 && slow.Finish.P80 < slow.Finish.P90);
        Assert.Equal(12, fast.HoursAWeek);
    }

    [Fact]
    public void Of_AStartInThePast_IsReckonedFromTodayAndSaidSo()
    {
        var estimate = Finish(new EstimateOptions { Today = Monday, Start = Day("2025-11-01") });

        Assert.Equal(Monday, estimate.Start);
        Assert.Contains("The start of 2025-11-01 is past; the dates count from 2026-01-05.", estimate.Remarks);
    }

    [Fact]
    public void Of_ALaterStart_MovesEveryDate()
    {
        var now = Finish(new EstimateOptions { Today = Monday });
        var later = Finish(new EstimateOptions { Today = Monday, Start = Monday.AddDays(70) });

        Assert.Equal(now.FinishQuantiles.Select(q => q.Date?.AddDays(70)), later.FinishQuantiles.Select(q => q.Date));
    }

    private static Estimate Finish(EstimateOptions options) =>
        EstimateTests.Estimated(new Shop().WithDrill(10, from: "2025-10-27").Journal(), Plan("shaper", Part("ram", 12), Part("slide", 8)), options);

    // A bench that was worked so many hours on the Wednesday of so many weeks before that of the Monday; 0 is its own Monday.
    private static MakerJournal Bench(params (int WeeksBack, double Hours)[] weeks) => new Shop().With(
        "drill", BuildStatus.UnderWay, [Part("head")],
        [.. weeks.Select(week => ($"{(week.WeeksBack == 0 ? Monday : Monday.AddDays(2 - (7 * week.WeeksBack))):yyyy-MM-dd}", "head", "boring", week.Hours, (string?)null))]).Journal();

    private static BenchCalendar Calendar(double[] hours, DateOnly start, params DateRange[] away) => new(new BenchWeeks(hours, hours.Length), start, away);
}
