using Journal.Core.Figures;

namespace Journal.Core.Tests.Figures;

public sealed class IsoWeekTests
{
    // ISO 8601's rule (Monday first, week 1 holds the first Thursday). The two first pairs stand in the issue; the others are
    // the well-known examples of days at the turn of the year, from memory.
    [Theory]
    [InlineData("2005-01-01", "2004-W53", DayOfWeek.Saturday)]
    [InlineData("2008-12-30", "2009-W01", DayOfWeek.Tuesday)]
    [InlineData("2005-01-02", "2004-W53", DayOfWeek.Sunday)]
    [InlineData("2005-12-31", "2005-W52", DayOfWeek.Saturday)]
    [InlineData("2006-01-01", "2005-W52", DayOfWeek.Sunday)]
    [InlineData("2006-01-02", "2006-W01", DayOfWeek.Monday)]
    [InlineData("2006-12-31", "2006-W52", DayOfWeek.Sunday)]
    [InlineData("2007-01-01", "2007-W01", DayOfWeek.Monday)]
    [InlineData("2007-12-30", "2007-W52", DayOfWeek.Sunday)]
    [InlineData("2007-12-31", "2008-W01", DayOfWeek.Monday)]
    [InlineData("2008-01-01", "2008-W01", DayOfWeek.Tuesday)]
    [InlineData("2008-12-28", "2008-W52", DayOfWeek.Sunday)]
    [InlineData("2008-12-29", "2009-W01", DayOfWeek.Monday)]
    [InlineData("2009-12-31", "2009-W53", DayOfWeek.Thursday)]
    [InlineData("2010-01-03", "2009-W53", DayOfWeek.Sunday)]
    [InlineData("2010-01-04", "2010-W01", DayOfWeek.Monday)]
    public void Of_DayAtTheTurnOfTheYear_GivesTheWeekOfItsThursday(string date, string week, DayOfWeek weekday)
    {
        var day = Sample.Day(date);

        Assert.Equal(week, IsoWeek.Of(day).ToString());
        Assert.Equal(weekday, day.DayOfWeek);
    }

    [Theory]
    [InlineData(2025, 53)]
    [InlineData(2026, 54)]
    [InlineData(2026, 0)]
    public void Construction_WeekThatTheYearLacks_Throws(int year, int number) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new IsoWeek(year, number));

    [Fact]
    public void Through_YearOf53Weeks_CountsTheLeapWeek()
    {
        var weeks = IsoWeek.Through(new IsoWeek(2020, 52), new IsoWeek(2021, 2)).Select(week => week.ToString());

        Assert.Equal(["2020-W52", "2020-W53", "2021-W01", "2021-W02"], weeks);
    }

    [Fact]
    public void Monday_FirstWeekThatBeginsInDecember_IsInTheYearBefore() =>
        Assert.Equal(Sample.Day("2008-12-29"), new IsoWeek(2009, 1).Monday);
}
