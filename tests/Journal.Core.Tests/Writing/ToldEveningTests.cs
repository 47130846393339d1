using Journal.Core.Model;
using Journal.Core.PlainWords;
using Journal.Core.Trade;
using Journal.Core.Writing.Entries;
using Journal.Core.Writing.Told;

namespace Journal.Core.Tests.Writing;

/// <summary>Proposals as they are written: jobs with their times, facts with their jobs, and what <c>check</c> would object to left out.</summary>
public class ToldEveningTests
{
    private static readonly DateOnly Evening = new(2025, 10, 3);

    private static readonly Build Drill = new()
    {
        Id = new("drill"),
        Title = "Drill",
        Folder = "drill",
        Parts = [new Part { Id = new("head"), Title = "Head" }, new Part { Id = new("quill"), Title = "Quill", Quantity = 2 }],
    };

    private static readonly MakerJournal Journal = new() { Title = "A", Id = Guid.Empty, Vocabulary = VocabularyLoader.Shared, Builds = [Drill], Tools = [new Tool { Id = new("drill-jig"), Title = "Drill jig" }] };

    [Fact]
    public void Settle_OneJobWithoutATime_GetsTheRest()
    {
        var settled = ToldTimes.Settle(new Proposal { Total = new Minutes(150), Jobs = [Job("head", "boring", 90), Job("quill", "turning", null)] });

        Assert.Equal([90, 60], settled.Jobs.Select(job => job.Time?.Count));
    }

    [Fact]
    public void Settle_SeveralJobsWithoutATime_GetTheRestTogether()
    {
        var settled = ToldTimes.Settle(new Proposal { Total = new Minutes(150), Jobs = [Job("quill", "turning", null), Job("head", "boring", 90), Job("head", "drilling", null)] });

        Assert.Equal(["quill,head turning,drilling 60", "head boring 90"], settled.Jobs.Select(job => $"{string.Join(',', job.Parts)} {string.Join(',', job.Operations)} {job.Time?.Count}"));
    }

    [Theory]
    [InlineData(null)]
    [InlineData(90)]
    [InlineData(60)]
    public void Settle_NothingIsLeft_NoTimeIsMadeUp(int? total)
    {
        var settled = ToldTimes.Settle(new Proposal { Total = total is { } minutes ? new Minutes(minutes) : null, Jobs = [Job("head", "boring", 90), Job("quill", "turning", null)] });

        Assert.Equal([90, null], settled.Jobs.Select(job => job.Time?.Count));
    }

    [Fact]
    public void Of_JobWithoutATime_IsLeftOutWithItsReason()
    {
        var told = Told(new Proposal { Jobs = [Job("head", "boring", 90), Job("quill", "turning", null)] });

        Assert.Equal("head", Assert.Single(told.Jobs).Part);
        Assert.Equal(new LeftOut("quill, turning", "no time was said for it", null), Assert.Single(told.LeftOut));
    }

    [Fact]
    public void Of_TotalOfMoreThanTheJobs_SaysWhatIsInNone()
    {
        var told = Told(new Proposal { Total = new Minutes(150), Jobs = [Job("head", "boring", 90)] });

        Assert.Equal(["1h of the 2h30"], told.LeftOut.Select(one => one.What));
    }

    [Fact]
    public void Of_NoPartSaid_IsWorkOnTheWhole() =>
        Assert.Equal("whole", Assert.Single(Told(new Proposal { Jobs = [new ProposedJob { Operations = [new("cleaning")], Time = new Minutes(20) }] }).Jobs).Part);

    [Fact]
    public void Of_Facts_BelongToTheJobSpokenOfLast()
    {
        var told = Told(new Proposal
        {
            Jobs = [Job("head", "boring", 90) with { Words = [new(0, 10)] }, Job("quill", "turning", 30) with { Words = [new(50, 60)] }],
            Mistakes = [new ProposedMistake("First", new(12, 20)), new ProposedMistake("Second", new(62, 70))],
            Settings = [new ProposedSetting(new(62, 70)) { Rpm = 320 }],
        });

        Assert.Equal([1, 2], told.Facts.Mistakes.Select(mistake => mistake.Job));
        Assert.Equal(2, Assert.Single(told.Facts.Settings).Job);
    }

    [Fact]
    public void Of_MadeThing_GoesToTheJobThatMakesFixtures_UnderANameOfItsOwn()
    {
        var told = Told(new Proposal
        {
            Jobs = [Job("head", "fixture-making", 90), Job("quill", "turning", 30) with { Words = [new(50, 60)] }],
            Made = [new ProposedTool("Drill jig", "jig", new(62, 70))],
        });

        Assert.Equal(new NewTool("drill-jig-2", "Drill jig", "jig"), Assert.Single(told.Jobs[0].Made));
    }

    [Fact]
    public void Of_NewToolAndPart_AreNamedByTheJobAndListedForTheirFiles()
    {
        var told = Told(new Proposal { Jobs = [Job("head", "boring", 90)], NewTools = [new ProposedText("wad punch", new(0, 1))], NewParts = [new ProposedText("Oil felt", new(0, 1)), new ProposedText("Head", new(0, 1))] });

        Assert.Equal(["wad-punch"], told.Jobs[0].Tools);
        Assert.Equal([new NewTool("wad-punch", "wad punch", null)], told.NewTools);
        Assert.Equal([("oil-felt", "Oil felt")], told.NewParts);
    }

    [Fact]
    public void Of_WhatCheckObjectsTo_IsLeftOut()
    {
        var told = Told(new Proposal
        {
            Jobs = [Job("head", "boring", 90), Job("quill", "turning", 23 * 60)],
            Finished = [new ProposedFinish(new("quill"), 3, default), new ProposedFinish(new("head"), null, default)],
            Cleared = [new Known<Snag>(new("gone"), default)],
            Bought = [new ProposedPurchase("oil", null, default), new ProposedPurchase("felt", 2.5m, default)],
            Readings = [new ProposedReading(new("head"), "bore", new Length(25.02m, LengthUnit.Millimetre), "twelve", default), new ProposedReading(new("head"), "face", new Length(30m, LengthUnit.Millimetre), "30 mm", default)],
        });

        Assert.Equal(["quill, turning, 23h", "reading bore 25.02 mm", "finished quill", "cleared gone", "bought oil"], told.LeftOut.Select(one => one.What));
        Assert.Equal("head", Assert.Single(told.Facts.Finished).Part.Value);
        Assert.Equal("felt", Assert.Single(told.Facts.Bought).What);
        Assert.Equal("face", Assert.Single(told.Facts.Readings).Feature);
    }

    [Fact]
    public void Of_VerdictThatFiguresDoNotUnderstand_IsANote()
    {
        var keys = Assert.Single(Told(new Proposal { Jobs = [Job("head", "boring", 90)], Settings = [new ProposedSetting(default) { Rpm = 320, Verdict = "purple" }] }).Facts.Settings).Keys;

        Assert.Equal([("rpm", "320"), ("note", "purple")], keys);
    }

    [Fact]
    public void Keys_CountsThoseOfJobsAndOneForEachFact() =>
        Assert.Equal(5, Told(new Proposal { Jobs = [Job("head", "boring", 90)], Lessons = [new ProposedText("Oil it", default)], Next = new ProposedText("Face it", default) }).Keys);

    private static ToldEvening Told(Proposal proposal) => ToldEvening.Of(proposal, Evening, new ToldLimits(Journal, Drill));

    private static ProposedJob Job(string part, string operation, int? minutes) => new() { Parts = [new(part)], Operations = [new(operation)], Time = minutes is { } time ? new Minutes(time) : null };
}
