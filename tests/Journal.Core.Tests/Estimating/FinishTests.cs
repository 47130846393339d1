using Journal.Core.Estimating;
using Journal.Core.Statistics;
using Journal.Core.Model;
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

    [Fact]
    public void Weeks_IdleOnes_CountInThePace()
    {
        var journal = new Shop().With(
            "drill", BuildStatus.UnderWay, [Part("head")],
            ("2025-09-01", "head", "boring", 6, null),
            ("2025-09-24", "head", "boring", 4, null)).Journal();

        var weeks = BenchWeeks.Of(journal, Monday, null)!;

        Assert.Equal([6, 0, 0, 4], weeks.Hours);
        Assert.Equal(2.5, weeks.HoursAWeek);
    }

    [Fact]
    public void Weeks_HoursAWeekGiven_KeepTheirUpsAndDowns()
    {
        var journal = new Shop().With(
            "drill", BuildStatus.UnderWay, [Part("head")],
            ("2025-09-01", "head", "boring", 6, null),
            ("2025-09-24", "head", "boring", 4, null)).Journal();

        Assert.Equal([12, 0, 0, 8], BenchWeeks.Of(journal, Monday, 5)!.Hours);
    }

    [Fact]
    public void Weeks_TheWeekOfToday_IsNotOverYetAndDoesNotCount()
    {
        var journal = new Shop().With(
            "drill", BuildStatus.UnderWay, [Part("head")],
            ("2025-12-23", "head", "boring", 6, null),
            ("2026-01-05", "head", "boring", 1, null)).Journal();

        Assert.Equal([6], BenchWeeks.Of(journal, Monday, null)!.Hours);
    }

    [Fact]
    public void Weeks_OlderThanTwoYears_DoNotCount()
    {
        // 103 weeks before the Monday of 2025-09-01 is 2023-09-11; the Monday before that is week 105.
        var journal = new Shop().With(
            "drill", BuildStatus.UnderWay, [Part("head")],
            ("2023-09-04", "head", "boring", 50, null),
            ("2023-09-11", "head", "boring", 46, null),
            ("2025-09-01", "head", "boring", 6, null)).Journal();

        var weeks = BenchWeeks.Of(journal, Monday, null)!;

        Assert.Equal((104, 104), (weeks.Taken, weeks.Hours.Count));
        Assert.Equal((46, 6, 52), (weeks.Hours[0], weeks.Hours[^1], weeks.Hours.Sum()));
        Assert.Equal(0.5, weeks.HoursAWeek);
    }

    [Fact]
    public void Weeks_OnlyTheOneOfToday_CountsAsItIs()
    {
        var journal = new Shop().With("drill", BuildStatus.UnderWay, [Part("head")], ("2026-01-05", "head", "boring", 3, null)).Journal();

        Assert.Equal([3], BenchWeeks.Of(journal, Monday, null)!.Hours);
    }

    [Fact]
    public void Weeks_FewerThanFour_DoNotShapeHoursAWeekGiven()
    {
        var journal = new Shop().With(
            "drill", BuildStatus.UnderWay, [Part("head")],
            ("2025-09-01", "head", "boring", 6, null),
            ("2025-09-17", "head", "boring", 4, null)).Journal();

        var weeks = BenchWeeks.Of(journal, Monday, 5)!;

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
        EstimateTests.Estimated(new Shop().WithDrill(10).Journal(), Plan("shaper", Part("ram", 12), Part("slide", 8)), options);

    private static BenchCalendar Calendar(double[] hours, DateOnly start, params DateRange[] away) => new(new BenchWeeks(hours, hours.Length), start, away);
}
