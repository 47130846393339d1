using Journal.Core.Figures;
using Journal.Core.Model;

namespace Journal.Core.Tests.Figures;

public sealed class LessonStoryTests
{
    // Which paragraph tells it was decided by reading the entry, not by running the measure.
    [Theory]
    [InlineData("cutter-on-centre", "Then I set the cutter over the middle by eye.")]
    [InlineData("deburr-before-measuring", "That is what the burr was")]
    [InlineData("quench-edge-on", "The second. I was holding it by the end wire")]
    [InlineData("clock-the-taper", "The top slide is marked in degrees")]
    public void Of_DemoLesson_TellsTheParagraphWithTheMistake(string lesson, string told)
    {
        var journal = Demo.Journal;
        var figure = Lessons.Of(journal).All.Single(one => one.Id.Value == lesson);
        var text = journal.Entries.Single(entry => entry.Ref == figure.Entry).Body.Text;

        var story = LessonStory.Among(Lessons.Of(journal).All).In(LessonStory.WordsOf(figure), journal.Entries.Single(entry => entry.Ref == figure.Entry).Body.Document);

        Assert.InRange(story.Count, 1, 2);
        Assert.Contains(told, string.Join('\n', story.Select(block => text[block.Span.Start..(block.Span.End + 1)])), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_EntryWithoutText_TellsNothing()
    {
        var journal = Sample.Journal(Sample.Build("drill", Sample.Entry("2025-10-03") with { Lessons = [new() { Id = new("a"), Text = "Lock the slides.", Entry = Sample.Ref("drill", "2025-10-03") }] }));

        Assert.Empty(LessonStory.Among(Lessons.Of(journal).All).In(LessonStory.WordsOf(Lessons.Of(journal).All[0]), []));
    }

    [Fact]
    public void In_OnlyLessonOfAJournal_IsToldAllTheSame()
    {
        var lesson = new Lesson { Id = new("square-first"), Text = "Square the first face before the second.", Entry = Sample.Ref("drill", "2025-10-03") };
        var journal = Sample.Journal(Sample.Build("drill", Sample.Entry("2025-10-03") with { Lessons = [lesson] }));
        var text = Markdig.Markdown.Parse("Tea first.\n\nThen the second face, and the first was not square.\n");

        var story = LessonStory.Among(Lessons.Of(journal).All).In(LessonStory.WordsOf(Lessons.Of(journal).All[0]), text);

        Assert.Equal(3, Assert.Single(story).Line + 1);
    }
}
