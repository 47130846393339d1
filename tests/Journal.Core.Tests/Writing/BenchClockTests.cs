using System.Globalization;
using Journal.Core.Writing.Bench;

namespace Journal.Core.Tests.Writing;

public class BenchClockTests
{
    // Dublin's clocks show what London's do (tz database: since 1971), though its law calls winter time the exception.
    [Theory]
    [InlineData("2026-03-28T23:00Z", "01:30", "2026-03-29T01:00Z")] // skipped: the moment of the change
    [InlineData("2026-03-29T00:30Z", "02:30", "2026-03-29T01:30Z")]
    [InlineData("2026-10-24T23:45Z", "01:30", "2026-10-25T00:30Z")] // shown twice: the first after it
    [InlineData("2026-10-25T00:45Z", "01:30", "2026-10-25T01:30Z")]
    [InlineData("2026-10-25T01:10Z", "01:30", "2026-10-25T01:30Z")]
    [InlineData("2026-07-01T20:00Z", "22:40", "2026-07-01T21:40Z")]
    [InlineData("2026-12-01T20:00Z", "22:40", "2026-12-01T22:40Z")]
    public void Next_AroundTheChangesOfTheClock_IsTheSameInDublinAndLondon(string after, string time, string expected)
    {
        foreach (var zone in new[] { "Europe/Dublin", "Europe/London" })
        {
            var next = new BenchClock(TimeZoneInfo.FindSystemTimeZoneById(zone)).Next(TimeOnly.Parse(time, CultureInfo.InvariantCulture), Instant(after));

            Assert.Equal((zone, Instant(expected)), (zone, next));
        }
    }

    [Theory]
    [InlineData("America/New_York", "2026-11-01T05:40Z", "01:30", "2026-11-01T06:30Z")]
    [InlineData("Australia/Lord_Howe", "2026-10-03T12:00Z", "02:15", "2026-10-03T15:30Z")] // half an hour is skipped
    public void Next_InOtherZones_IsThatOfTheTzDatabase(string zone, string after, string time, string expected) =>
        Assert.Equal(Instant(expected), new BenchClock(TimeZoneInfo.FindSystemTimeZoneById(zone)).Next(TimeOnly.Parse(time, CultureInfo.InvariantCulture), Instant(after)));

    private static DateTimeOffset Instant(string text) => DateTimeOffset.Parse(text, CultureInfo.InvariantCulture);
}
