using CsCheck;
using Journal.Core.Figures;
using Journal.Core.Model;

namespace Journal.Core.Tests.Figures;

public sealed class LessonsTests
{
    /// <summary>
    /// A bore off the boss, mended on another evening with a plug bought for it, and the same lesson not heeded on the
    /// next build; heeded once after that.
    /// </summary>
    private static MakerJournal Story()
    {
        var head = Sample.Job(165, "boring", "head cap") with { Tools = [new("boring-head")] };
        var drill = Sample.Build(
            "drill",
            Sample.Entry("2025-09-27", Sample.Job(60, "marking-out", "head")),
            Sample.Entry("2025-10-03", Sample.Job(30), head) with
            {
                Mistakes =
                [
                    new Mistake
                    {
                        What = "The bore came out off the boss.",
                        Id = new("bore-off"),
                        Cause = new("setting-up"),
                        Lost = new(75),
                        Outcome = Outcome.Rework,
                        Job = 2,
                        MadeOn = new("2025-09-27"),
                        Lesson = new("indicate-both-ends"),
                    },
                    new Mistake { What = "Dropped a jack.", Lost = new(5) },
                ],
                Lessons = [new Lesson { Id = new("indicate-both-ends"), Text = "Indicate both ends.", Entry = Sample.Ref("drill", "2025-10-03"), Job = 2, FromMistake = true }],
            },
            Sample.Entry("2025-10-05", Sample.Job(45, "boring", "head") with { Mends = new("bore-off"), SetUp = new(10) }) with
            {
                Bought = [new Purchase { What = "bronze for a plug", Cost = 12.40m, Because = new("bore-off") }],
            }) with { Parts = [Sample.Part("head", material: "grey-iron"), Sample.Part("cap", material: "grey-iron")] };
        var vice = Sample.Build(
            "vice",
            Sample.Entry("2025-11-02", Sample.Job(60)) with
            {
                Mistakes = [new Mistake { What = "Again.", Cause = new("haste"), Lost = new(20), Repeats = new("indicate-both-ends") }],
            },
            Sample.Entry("2025-11-09", Sample.Job(60)) with { Heeded = [new("indicate-both-ends"), new("indicate-both-ends")] });
        return Sample.Journal(drill, vice);
    }

    [Fact]
    public void MinutesLost_MendedAndRepeatedMistake_CountsEachOnce()
    {
        var lesson = Assert.Single(Lessons.Of(Story()).All);

        Assert.Equal(75 + 45 + 20, lesson.MinutesLost.Count);
        Assert.Equal(12.40m, lesson.Money);
        Assert.Equal(120, lesson.Own!.Minutes.Count);
    }

    [Fact]
    public void Money_RepeatThatCostMoneyToo_AddsUp()
    {
        var story = Story();
        var vice = story.Builds[1];
        var repeat = vice.Entries[0].Mistakes[0] with { Id = new("again") };
        Entry[] entries =
        [
            vice.Entries[0] with { Mistakes = [repeat] },
            vice.Entries[1] with { Bought = [new Purchase { What = "another plug", Cost = 3.10m, Because = new("again") }] },
        ];

        var lesson = Assert.Single(Lessons.Of(story with { Builds = [story.Builds[0], vice with { Entries = entries }] }).All);

        Assert.Equal(15.50m, lesson.Money);
    }

    [Fact]
    public void Of_LessonOfAMistake_TellsWhatItWasLearnedOn()
    {
        var lesson = Lessons.Of(Story()).All[0];

        Assert.Equal(["boring"], lesson.On.Operations.Select(id => id.Value));
        Assert.Equal(["drill/head", "drill/cap"], lesson.On.Parts.Select(part => part.ToString()));
        Assert.Equal(["grey-iron"], lesson.On.Materials.Select(material => material.Family.Value));
        Assert.Equal(["boring-head"], lesson.On.Tools.Select(id => id.Value));
        Assert.Equal((new Id<Cause>("setting-up"), Outcome.Rework), (lesson.Cause, lesson.Outcome));
        Assert.Equal((Sample.Ref("drill", "2025-09-27"), Sample.Ref("drill", "2025-10-03")), (lesson.MadeIn, lesson.Entry));
    }

    [Fact]
    public void Of_LessonRepeatedAndHeeded_TellsWhereAndWhen()
    {
        var lesson = Lessons.Of(Story()).All[0];

        // 3 October to 2 November: 28 days of October and 2 of November.
        Assert.Equal([new Repeat(Sample.Ref("vice", "2025-11-02"), Sample.Day("2025-11-02"), 30, new MistakeRef(Sample.Ref("vice", "2025-11-02"), 1))], lesson.Repeated.Select(repeat => repeat with { On = null }));
        Assert.Equal(Sample.Ref("vice", "2025-11-02"), lesson.Repeated[0].On?.Entry);
        Assert.Equal([(Sample.Ref("vice", "2025-11-09"), Sample.Day("2025-11-09"))], lesson.Heeded.Select(heeded => (heeded.Entry, heeded.Date)));
    }

    [Fact]
    public void Totals_OfTheStory_CountEveryMistakeOnce()
    {
        var totals = Lessons.Of(Story()).Totals;

        Assert.Equal(75 + 45 + 5 + 20, totals.MinutesLost.Count);
        Assert.Equal(12.40m, totals.MoneyLost);
        Assert.Equal((1, 1), (totals.Repeated, totals.Heeded));
        Assert.Equal([30], totals.DaysToRepeat);

        // 300 min on the drill, of which 35 put right (45 less 10 of setting up); 3 mistakes in 420 min, or 7 h.
        Assert.Equal([("drill", 35, 35 / 300.0), ("vice", 0, 0.0)], totals.PuttingRight.Select(build => (build.Build.Value, build.Minutes.Count, build.Share)));
        Assert.Equal(300 / 7.0, totals.MistakesPerHundredHours!.Value, 12);
    }

    [Fact]
    public void Totals_JournalWithoutHours_HasNoRate() => Assert.Null(Lessons.Of(Sample.Journal()).Totals.MistakesPerHundredHours);

    [Fact]
    public void Of_MistakeIdInTwoBuilds_MeansTheOneOfTheSameBuild()
    {
        static Entry Wrong(string date, int lost) =>
            Sample.Entry(date) with { Mistakes = [new Mistake { What = "Wrong hand.", Id = new("wrong-hand"), Lost = new(lost) }] };
        var mends = Sample.Entry("2025-10-02", Sample.Job(30) with { Mends = new("wrong-hand") });

        var mistakes = Lessons.Of(Sample.Journal(Sample.Build("drill", Wrong("2025-09-01", 10)), Sample.Build("vice", Wrong("2025-10-01", 20), mends))).Mistakes;

        Assert.Equal([10, 50], mistakes.Select(mistake => mistake.Minutes.Count));
    }

    [Fact]
    public void Of_MistakeIdOfOtherBuildsOnly_CountsForNone()
    {
        static Entry Wrong(string date) => Sample.Entry(date) with { Mistakes = [new Mistake { What = "Wrong hand.", Id = new("wrong-hand") }] };
        var mends = Sample.Entry("2025-12-02", Sample.Job(30) with { Mends = new("wrong-hand") });

        var mistakes = Lessons.Of(Sample.Journal(
            Sample.Build("drill", Wrong("2025-10-01")), Sample.Build("vice", Wrong("2025-09-01")), Sample.Build("yoke", mends))).Mistakes;

        Assert.Equal([("vice", 0), ("drill", 0)], mistakes.Select(mistake => (mistake.Ref.Entry.Build.Value, mistake.Minutes.Count)));
    }

    [Fact]
    public void Of_MistakeWithAJobThatTheEntryLacks_BelongsToTheFirst()
    {
        var entry = Sample.Entry("2025-10-01", Sample.Job(30, "drilling"), Sample.Job(30)) with { Mistakes = [new Mistake { What = "Wandered.", Job = 7 }] };

        Assert.Equal("drilling", Lessons.Of(Sample.Journal(Sample.Build("drill", entry))).Mistakes[0].On.Operations[0].Value);
    }

    [Fact]
    public void Of_AnyJournal_CountsEachMendingJobAndPurchaseOnce() => Generated.Journals.Sample(journal =>
    {
        var lessons = Lessons.Of(journal);
        var known = lessons.Mistakes.Select(mistake => (mistake.Ref.Entry.Build, mistake.Mistake.Id)).ToHashSet();
        var entries = journal.Entries.ToList();
        var lost = entries.SelectMany(entry => entry.Mistakes).Sum(mistake => mistake.Lost.Count);
        var mended = entries.SelectMany(entry => entry.Jobs.Where(job => job.Mends is { } id && known.Contains((entry.Build, id)))).Sum(job => job.Time.Count);
        var bought = entries.SelectMany(entry => entry.Bought.Where(purchase => purchase.Because is { } id && known.Contains((entry.Build, id)))).Sum(purchase => purchase.Cost);

        Assert.Equal(lost + mended, lessons.Totals.MinutesLost.Count);
        Assert.Equal(bought, lessons.Totals.MoneyLost);
        Assert.Equal(lost + mended, lessons.CausesByMinutes.Sum(cause => cause.MinutesLost.Count));
        Assert.All(lessons.All, lesson => Assert.True(lesson.MinutesLost <= lessons.Totals.MinutesLost));
    });
}
