using CsCheck;
using Journal.Core.Figures;
using Journal.Core.Model;

namespace Journal.Core.Tests.Figures;

public sealed class ToolingTests
{
    /// <summary>A block made with a second fixture in 91 minutes, then used on the quill; a square that nobody listed.</summary>
    private static MakerJournal Shop() => Sample.Journal(
        Sample.Build(
            "drill",
            Sample.Entry("2025-10-03", Sample.Job(91, "fixture-making", "quill") with { Tools = [new("lathe")], Made = [new("quill-block"), new("plug")] }),
            Sample.Entry("2025-10-05", Sample.Job(60, "boring measuring", "quill table") with { Tools = [new("quill-block"), new("lathe"), new("square"), new("lathe")] })),
        Sample.Build("vice", Sample.Entry("2025-11-02", Sample.Job(30, "turning", "jaw") with { Tools = [new("lathe"), new("packing")] }))) with
    {
        Tools =
        [
            Listed("lathe", "machine", Need.Essential) with { Got = Got.Had, Cost = 900 },
            Listed("quill-block", "fixture", Need.Handy),
            Listed("plug", "jig", Need.Workaround),
            Listed("packing", "gauge", Need.Workaround) with { Cost = 3.5m },
            Listed("shaper", "machine", Need.Handy),
        ],
    };

    [Fact]
    public void Tools_ToolUsedInTwoBuilds_GathersJobsOnceEachWithTheirWholeTime()
    {
        var lathe = Tool("lathe");

        Assert.Equal((3, 181, Sample.Day("2025-10-03")), (lathe.Jobs, lathe.Minutes.Count, lathe.FirstUsed!.Value));
        Assert.Equal(["drill", "vice"], lathe.Builds.Select(id => id.Value));
        Assert.Equal(["drill/quill", "drill/table", "vice/jaw"], lathe.Parts.Select(part => part.ToString()));
        Assert.Equal(["fixture-making", "boring", "measuring", "turning"], lathe.Operations.Select(id => id.Value));
        Assert.Equal([Sample.Ref("drill", "2025-10-03"), Sample.Ref("drill", "2025-10-05"), Sample.Ref("vice", "2025-11-02")], lathe.UsedIn);
    }

    [Fact]
    public void MinutesToMake_JobThatMadeTwo_SharesItsTimeExactly()
    {
        Assert.Equal((46, 45), (Tool("quill-block").MinutesToMake.Count, Tool("plug").MinutesToMake.Count));
        Assert.Equal(91, Tooling.Of(Shop()).MinutesToMake.Count);
        Assert.Equal(Got.Made, Tool("plug").Got);
        Assert.Equal([Sample.Ref("drill", "2025-10-03")], Tool("plug").MadeIn);
    }

    [Fact]
    public void FirstUsed_ToolMadeBeforeItsUse_IsTheDayItWasUsed()
    {
        Assert.Equal(Sample.Day("2025-10-05"), Tool("quill-block").FirstUsed);
        Assert.Null(Tool("plug").FirstUsed);
        Assert.Null(Tool("shaper").FirstUsed);
    }

    [Fact]
    public void Tools_MentionedButNotListed_ComeLastAndSaySo()
    {
        var tools = Tooling.Of(Shop()).Tools;

        Assert.Equal(["lathe", "quill-block", "plug", "packing", "shaper", "square"], tools.Select(tool => tool.Id.Value));
        Assert.False(tools[^1].Tool.IsListed);
        Assert.Equal("Square", tools[^1].Tool.Title);
    }

    [Fact]
    public void Builds_WhatYouNeed_NamesOnlyWhatWasUsedThere()
    {
        var (drill, vice) = (Tooling.Of(Shop()).Builds[0], Tooling.Of(Shop()).Builds[1]);

        Assert.Equal(("lathe", "square", ""), (Ids(drill.Essential), Ids(drill.Handy), Ids(drill.Workarounds)));
        Assert.Equal(("lathe", "", "packing"), (Ids(vice.Essential), Ids(vice.Handy), Ids(vice.Workarounds)));
        Assert.Empty(vice.Fixtures);
        Assert.Equal(
            [("quill-block", 46, "quill table"), ("plug", 45, "quill")],
            drill.Fixtures.Select(fixture => (fixture.Tool.Value, fixture.MinutesToMake.Count, string.Join(' ', fixture.Parts))));
    }

    [Fact]
    public void Cost_ToolWithoutAPrice_TakesWhatWasBoughtForIt()
    {
        var bought = Sample.Entry("2025-10-03") with { Bought = [new Purchase { What = "bar", Cost = 8, ForTool = new("plug") }, new Purchase { What = "oil", Cost = 5, ForTool = new("lathe") }] };
        var tooling = Tooling.Of(Sample.Journal(Sample.Build("drill", bought)) with { Tools = Shop().Tools });

        Assert.Equal([900, null, 8, 3.5m, null], tooling.Tools.Select(tool => tool.Cost));
        Assert.Equal(911.5m, tooling.Cost);
    }

    [Fact]
    public void MinutesToMake_AnyJournal_AddsUpToTheJobsThatMadeSomething() => Generated.Journals.Sample(journal =>
    {
        var jobs = journal.Entries.SelectMany(entry => entry.Jobs).ToList();
        var tooling = Tooling.Of(journal);

        Assert.Equal(jobs.Where(job => job.Made.Count > 0).Sum(job => job.Time.Count), tooling.MinutesToMake.Count);
        Assert.Equal(jobs.Sum(job => job.Tools.Distinct().Count()), tooling.Tools.Sum(tool => tool.Jobs));
        Assert.Equal(tooling.Tools.Count, tooling.Tools.Select(tool => tool.Id).Distinct().Count());
    });

    private static Tool Listed(string id, string kind, Need need) => new() { Id = new(id), Title = id, Kind = new(kind), Need = need };

    private static ToolFigure Tool(string id) => Tooling.Of(Shop()).Tools.Single(tool => tool.Id.Value == id);

    private static string Ids(IEnumerable<Id<Tool>> ids) => string.Join(' ', ids);
}
