using Journal.Core.Figures;
using Journal.Core.Model;

namespace Journal.Core.Tests.Figures;

/// <summary>Gaps that changing the program on purpose (mutation testing) has shown; figures worked by hand.</summary>
public class SmallSumsTests
{
    [Fact]
    public void Lesson_LearnedOnceAndForgottenOnce_LosesTheTimeOfBoth()
    {
        var learned = Sample.Entry("2025-10-03") with
        {
            Mistakes = [new Mistake { What = "Drilled off the line.", Lost = new Minutes(40), Lesson = new("punch-first") }],
            Lessons = [new Lesson { Id = new("punch-first"), Text = "Punch first.", Entry = Sample.Ref("drill", "2025-10-03") }],
        };
        var forgotten = Sample.Entry("2025-10-10") with { Mistakes = [new Mistake { What = "Off the line again.", Lost = new Minutes(25), Repeats = new("punch-first") }] };

        var lesson = Assert.Single(Lessons.Of(Sample.Journal(Sample.Build("drill", learned, forgotten))).All);

        Assert.Equal(new Minutes(65), lesson.MinutesLost);
    }

    [Fact]
    public void State_TwoBuildsUnderWayOfOneDay_IsAtTheLaterId()
    {
        var journal = Sample.Journal(Sample.Build("arbor", Sample.Entry("2025-10-03")), Sample.Build("drill", Sample.Entry("2025-10-03")));

        Assert.Equal("drill", State.Of(journal).Current?.Build.Value);
    }

    [Fact]
    public void State_BuildsWithoutEntries_IsAtTheFirst() =>
        Assert.Equal("arbor", State.Of(Sample.Journal(Sample.Build("arbor"), Sample.Build("drill"))).Current?.Build.Value);

    [Fact]
    public void Tool_BoughtInTwoPurchases_CostsBoth()
    {
        var bought = Sample.Entry("2025-10-03") with
        {
            Bought = [new Purchase { What = "bar", Cost = 8, ForTool = new("plug") }, new Purchase { What = "screws", Cost = 3, ForTool = new("plug") }],
        };
        var journal = Sample.Journal(Sample.Build("drill", bought)) with { Tools = [new Tool { Id = new("plug"), Title = "Plug" }] };

        var plug = Tooling.Of(journal).Tools.Single(tool => tool.Id.Value == "plug");

        Assert.Equal(11, plug.Cost);
        Assert.Null(plug.Got);
    }
}
