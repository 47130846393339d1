using CsCheck;
using Journal.Core.Figures;
using Journal.Core.Model;

namespace Journal.Core.Tests.Figures;

public sealed class TimelineTests
{
    [Theory]
    [InlineData("2025-09-20", 0)] // 13 idle days: the 7th to the 19th
    [InlineData("2025-09-21", 1)] // 14 idle days: the 7th to the 20th
    public void Idle_AroundTwoWeeks_CountsFromFourteenIdleDays(string next, int stretches)
    {
        var timeline = TimelineOf(Sample.Entry("2025-09-06"), Sample.Entry(next));

        Assert.Equal(stretches, timeline.Idle.Count);
    }

    [Fact]
    public void Idle_Stretch_BeginsAndEndsOnAnIdleDay()
    {
        var idle = Assert.Single(TimelineOf(Sample.Entry("2025-12-20"), Sample.Entry("2026-01-10")).Idle);

        Assert.Equal((Sample.Day("2025-12-21"), Sample.Day("2026-01-09"), 20), (idle.First, idle.Last, idle.Days));
    }

    [Fact]
    public void Parts_WorkedOnSeveralDays_TellFirstAndLastDayAndDaysWorked()
    {
        var build = Sample.Build(
            "drill",
            Sample.Entry("2025-09-06", Sample.Job(60, "turning", "quill") with { Held = "four-jaw" }, Sample.Job(30, "boring", "quill")),
            Sample.Entry("2025-09-08", Sample.Job(45, "drilling", "head")),
            Sample.Entry("2025-09-13", Sample.Job(20, "turning", "quill") with { Held = "collet" })) with { Parts = [Sample.Part("head"), Sample.Part("table"), Sample.Part("quill")] };

        var parts = Timeline.Of(Sample.Journal(build)).Builds[0].Parts;

        Assert.Equal(
            [
                new PartTimeline(new("head"), Sample.Day("2025-09-08"), Sample.Day("2025-09-08"), 1, 0, new(45)),
                new PartTimeline(new("quill"), Sample.Day("2025-09-06"), Sample.Day("2025-09-13"), 2, 2, new(110)),
            ],
            parts);
    }

    [Fact]
    public void Pace_IdleWeekBetween_CountsIt()
    {
        // 3 h in W36, none in W37, 1 h 30 in W38: 4.5 h over 3 weeks.
        var pace = TimelineOf(Sample.Entry("2025-09-06", Sample.Job(180)), Sample.Entry("2025-09-15", Sample.Job(90))).Pace!;

        Assert.Equal([("2025-W36", 180), ("2025-W37", 0), ("2025-W38", 90)], pace.Weeks.Select(week => (week.What.ToString(), week.Minutes.Count)));
        Assert.Equal(1.5, pace.HoursAWeek, 12);
        Assert.Equal(2, pace.WeeksWorked);
    }

    [Fact]
    public void Gathered_TwoEntriesOnADay_GathersByDay()
    {
        var second = Sample.Entry("2025-09-06", Sample.Job(15)) with { Id = new("2025-09-06-again") };

        var gathered = TimelineOf(Sample.Entry("2025-09-06", Sample.Job(60)), second, Sample.Entry("2025-09-07", Sample.Job(30))).Gathered;

        Assert.Equal([(75, 75), (30, 105)], gathered.Select(day => (day.Minutes.Count, day.Total.Count)));
    }

    [Fact]
    public void Milestones_AndTrials_NameTheirEntryAndDay()
    {
        var trial = new Trial { On = "power", Result = "Ran cool." };
        var timeline = TimelineOf(Sample.Entry("2025-09-06"), Sample.Entry("2025-09-07") with { Milestone = "First run", Trials = [trial] });

        Assert.Equal([new DatedMilestone(Sample.Day("2025-09-07"), "First run", Sample.Ref("drill", "2025-09-07"))], timeline.Milestones);
        Assert.Equal([new DatedTrial(Sample.Day("2025-09-07"), trial, Sample.Ref("drill", "2025-09-07"))], timeline.Trials);
    }

    [Fact]
    public void FirstAndLast_SeveralDays_AreTheDaysWorked()
    {
        var timeline = TimelineOf(Sample.Entry("2025-09-06"), Sample.Entry("2025-09-07"), Sample.Entry("2025-10-01"));

        Assert.Equal((Sample.Day("2025-09-06"), Sample.Day("2025-10-01"), 3), (timeline.First, timeline.Last, timeline.DaysWorked));
    }

    [Fact]
    public void Of_BuildWithoutEntries_HasNoDaysAndNoPace()
    {
        var timeline = TimelineOf();

        Assert.Null(timeline.First);
        Assert.Null(timeline.Last);
        Assert.Null(timeline.Pace);
    }

    [Fact]
    public void Of_AnyJournal_AgreesWithTheHours() => Generated.Journals.Sample(journal =>
    {
        foreach (var (hours, timeline) in Hours.Of(journal).Builds.Zip(Timeline.Of(journal).Builds))
        {
            Assert.Equal(hours.Minutes.Count - hours.General.Minutes.Count, timeline.Parts.Sum(part => part.Minutes.Count));
            Assert.Equal(hours.Minutes.Count, timeline.Pace?.Weeks.Sum(week => week.Minutes.Count) ?? 0);
            Assert.Equal(hours.Minutes, timeline.Gathered.Select(day => day.Total).LastOrDefault());
            Assert.All(timeline.Idle, stretch => Assert.DoesNotContain(hours.Calendar.Days, day => stretch.Contains(day.What)));
            Assert.All(timeline.Parts, part => Assert.InRange(part.DaysWorked, 1, part.Last.DayNumber - part.First.DayNumber + 1));
        }
    });

    private static BuildTimeline TimelineOf(params Entry[] entries) =>
        Timeline.Of(Sample.Journal(Sample.Build("drill", entries))).Builds[0];
}
