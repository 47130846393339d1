using Journal.Core.Figures;
using Journal.Core.Model;

namespace Journal.Core.Tests.Figures;

public sealed class LessonsToReadTests
{
    [Fact]
    public void For_SameOperation_PutsTheDearerFirst()
    {
        var read = Of(Learned("cheap", "boring", lost: 5), Learned("dear", "boring", lost: 240), Learned("other", "painting", lost: 600));

        Assert.Equal(["dear", "cheap"], read.For(JobToCome.With(new("boring"))).Select(one => one.Lesson.Id.Value));
    }

    [Fact]
    public void For_OperationAndPart_PutsTheNearerBeforeTheDearer()
    {
        var read = Of(Learned("near", "boring", "head", lost: 10), Learned("dear", "boring", "cap", lost: 120), Learned("far", "painting", "base", lost: 600));

        var ranked = read.For(new JobToCome([new("boring")], [], [new("head")], []));

        Assert.Equal(["near", "dear"], ranked.Select(one => one.Lesson.Id.Value));
        Assert.Equal((1.0, "drill/head"), (ranked[0].Nearness, Assert.Single(ranked[0].Parts).ToString()));
        Assert.Empty(ranked[1].Parts);
        Assert.Equal("boring", Assert.Single(ranked[1].Operations).Value);
    }

    [Fact]
    public void For_ForgottenLesson_GoesBeforeOneAsDear()
    {
        var again = Sample.Entry("2025-11-01") with { Mistakes = [new Mistake { What = "Again.", Repeats = new("forgotten") }] };
        var read = Of(Learned("first", "boring", lost: 30), Learned("forgotten", "boring", lost: 30), again);

        Assert.Equal(["forgotten", "first"], read.For(JobToCome.With(new("boring"))).Select(one => one.Lesson.Id.Value));
    }

    // The whole point of the lesson is lost if it is not offered for the work on which it was forgotten.
    [Fact]
    public void For_OperationAndPartOnWhichItWasForgotten_ComesUp()
    {
        var turned = Sample.Entry("2025-11-01", Sample.Job(30, "turning", "spindle")) with { Mistakes = [new Mistake { What = "Again.", Repeats = new("forgotten") }] };
        var read = Of(Learned("forgotten", "boring", "head", lost: 30), Learned("other", "painting", lost: 5), turned);

        var one = Assert.Single(read.For(new JobToCome([new("turning")], [], [new("spindle")], [])));

        Assert.Equal(("forgotten", 0.5), (one.Lesson.Id.Value, one.Nearness));
        Assert.Empty(one.Named);
    }

    [Fact]
    public void For_OperationOfAnEveningThatHeededIt_ComesUp()
    {
        var heeded = Sample.Entry("2025-11-01", Sample.Job(30, "turning", "spindle"), Sample.Job(30, "fitting", "spindle")) with { Heeded = [new("known")] };
        var read = Of(Learned("known", "boring", "head", lost: 30), Learned("other", "painting", lost: 5), heeded);

        Assert.Equal("known", Assert.Single(read.For(JobToCome.With(new("fitting")))).Lesson.Id.Value);
    }

    [Fact]
    public void For_OperationThatOnlyTheWordsName_ComesUpAndSaysSo()
    {
        var read = Of(Learned("words", "turning", lost: 5, text: "A boring bar wants to be short."), Learned("other", "painting", lost: 5));

        var one = Assert.Single(read.For(JobToCome.With(new("boring"))));
        Assert.Equal((0.5, "boring"), (one.Nearness, Assert.Single(one.Named)));
        Assert.Empty(one.Operations);
    }

    [Fact]
    public void For_ATool_IsTheLessonsOfTheJobsThatUsedIt()
    {
        var with = Learned("with", "boring", lost: 5);
        var read = Of(with with { Jobs = [with.Jobs[0] with { Tools = [new("boring-head"), new("square")] }] }, Learned("without", "boring", lost: 600));

        Assert.Equal(["with"], read.For(new JobToCome([], [], [], [new("boring-head")])).Select(one => one.Lesson.Id.Value));
    }

    [Fact]
    public void For_NothingNear_IsEmpty()
    {
        var read = Of(Learned("a", "painting", lost: 600));

        Assert.Empty(read.For(JobToCome.With(new("boring"))));
        Assert.Empty(read.For(new JobToCome([], [], [], [])));
        Assert.Empty(LessonsToRead.Of([]).For(JobToCome.With(new("boring"))));
    }

    [Fact]
    public void For_PartThatNoLessonKnows_StillHasTheOperationsLessons()
    {
        var read = Of(Learned("bored", "boring", lost: 5), Learned("other", "painting", lost: 5));

        Assert.Equal("bored", Assert.Single(read.For(new JobToCome([new("boring")], [], [new("ram")], []))).Lesson.Id.Value);
    }

    [Fact]
    public void For_ManyNear_GivesAFew()
    {
        var read = Of([.. Enumerable.Range(0, 12).Select(i => Learned($"l-{i}", "boring", lost: i))]);

        Assert.Equal(LessonsToRead.Few, read.For(JobToCome.With(new("boring"))).Count);
        Assert.Equal(12, read.Ranked(JobToCome.With(new("boring"))).Count);
    }

    [Fact]
    public void Demo_HasTheLessonsThatTheIssueAsksFor()
    {
        var lessons = Lessons.Of(Demo.Journal).All;

        Assert.True(lessons.Count >= 25);
        Assert.Equal(3, lessons.Select(lesson => lesson.Entry.Build).Distinct().Count());
        Assert.True(lessons.Count(lesson => lesson.Repeated.Count > 0) >= 4);
        Assert.True(lessons.Count(lesson => lesson.Heeded.Count > 0) >= 6);
    }

    private static LessonsToRead Of(params Entry[] entries) =>
        LessonsToRead.Of(Lessons.Of(Sample.Journal(Sample.Build("drill", [.. entries.Index().Select(entry => Dated(entry.Item, entry.Index))]))).All);

    // Each on a day of its own, so that no two entries share an id.
    private static Entry Dated(Entry entry, int index) => entry with
    {
        Id = new($"entry-{index}"),
        Lessons = [.. entry.Lessons.Select(lesson => lesson with { Entry = Sample.Ref("drill", $"entry-{index}") })],
    };

    private static Entry Learned(string id, string operation, string part = "", int lost = 0, string text = "Mind how it goes.") =>
        Sample.Entry("2025-10-03", Sample.Job(60, operation, part)) with
        {
            Mistakes = [new Mistake { What = "It went wrong.", Lost = new(lost), Lesson = new(id) }],
            Lessons = [new Lesson { Id = new(id), Text = text, Entry = Sample.Ref("drill", "2025-10-03"), FromMistake = true }],
        };
}
