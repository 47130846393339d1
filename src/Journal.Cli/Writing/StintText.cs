using Journal.Cli.Wording;
using Journal.Core.Model;
using Journal.Core.Wording;
using Journal.Core.Writing.Bench;

namespace Journal.Cli.Writing;

/// <summary>What is told of a stint that has not ended.</summary>
internal static class StintText
{
    /// <summary>Since when it has been running or paused, and for how long it was worked.</summary>
    public static string Of(Stint stint, MakerJournal journal, BenchClock clock, DateTimeOffset now)
    {
        var job = JobTitle.Of(new TitleBook(journal), stint);
        var began = $"{(stint.IsForgotten(clock, now) ? $"{Written.Date(DateOnly.FromDateTime(clock.Local(stint.Began)))} at " : "")}{clock.Time(stint.Began)}";
        return stint.IsPaused
            ? $"A stint on {job} began {began} and has been paused since {clock.Time(stint.Pauses[^1].From)}: {stint.TimeUntil(now)} at the bench."
            : $"A stint on {job} has been running since {began}: {stint.TimeUntil(now)} at the bench.";
    }
}
