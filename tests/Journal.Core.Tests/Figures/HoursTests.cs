using CsCheck;
using Journal.Core.Figures;
using Journal.Core.Model;

namespace Journal.Core.Tests.Figures;

public sealed class HoursTests
{
    [Fact]
    public void Of_JobOnTwoPartsWithTwoOperations_SharesOverPartsFirstThenOperations()
    {
        var build = Sample.Build("drill", Sample.Entry("2025-10-03", Sample.Job(101, "drilling boring", "head:2 cap:1")));

        var cells = Hours.Of(Sample.Journal(build)).Builds[0].Cells;

        // 101 by 2 : 1 is 67⅓ and 33⅔, so 67 and 34; 67 over two operations is 34 and 33.
        Assert.Equal(
            [("head", "drilling", 34), ("head", "boring", 33), ("cap", "drilling", 17), ("cap", "boring", 17)],
            cells.Select(cell => (cell.Part!.Value.Value, cell.Operation.Value, cell.Minutes.Count)));
    }

    [Fact]
    public void Of_JobWithSetUp_SplitsItsKindsOnce()
    {
        var job = Sample.Job(100, "boring measuring", "head") with { SetUp = new(41) };

        var kinds = Hours.Of(Sample.Journal(Sample.Build("drill", Sample.Entry("2025-10-03", job)))).Builds[0].Work.Kinds;

        Assert.Equal([(TimeKind.Cutting, 30), (TimeKind.SettingUp, 41), (TimeKind.Measuring, 29)], kinds.Select(kind => (kind.What, kind.Minutes.Count)));
    }

    [Fact]
    public void Of_JobThatMends_PutsAllButItsSetUpUnderPuttingRight()
    {
        var job = Sample.Job(100, "boring measuring", "head") with { SetUp = new(40), Mends = new("bore-off") };

        var kinds = Hours.Of(Sample.Journal(Sample.Build("drill", Sample.Entry("2025-10-03", job)))).Builds[0].Work.Kinds;

        Assert.Equal([(TimeKind.SettingUp, 40), (TimeKind.PuttingRight, 60)], kinds.Select(kind => (kind.What, kind.Minutes.Count)));
    }

    [Fact]
    public void Of_SetUpLongerThanItsJob_CountsNoMoreThanTheJob()
    {
        var job = Sample.Job(30) with { SetUp = new(45) };

        var hours = Hours.Of(Sample.Journal(Sample.Build("drill", Sample.Entry("2025-10-03", job))));

        Assert.Equal([(TimeKind.SettingUp, 30)], hours.Work.Kinds.Select(kind => (kind.What, kind.Minutes.Count)));
    }

    [Fact]
    public void Of_BuildWithGeneralWork_KeepsItApartFromTheParts()
    {
        var build = Sample.Build(
            "drill",
            Sample.Entry("2024-12-30", Sample.Job(90, "turning", "quill"), Sample.Job(30, "cleaning")),
            Sample.Entry("2025-01-05", Sample.Job(50, "painting")),
            Sample.Entry("2025-01-06", Sample.Job(20, "turning", "quill"))) with { Parts = [Sample.Part("head"), Sample.Part("quill")] };

        var hours = Hours.Of(Sample.Journal(build)).Builds[0];

        Assert.Equal(190, hours.Minutes.Count);
        Assert.Equal(80, hours.General.Minutes.Count);
        Assert.Equal([("head", 0), ("quill", 110)], hours.Parts.Select(part => (part.Part.Value, part.Minutes.Count)));
        Assert.Equal([("turning", 110), ("painting", 50), ("cleaning", 30)], hours.Work.Operations.Select(time => (time.What.Value, time.Minutes.Count)));
        Assert.Equal([("2025-W01", 170), ("2025-W02", 20)], hours.Calendar.Weeks.Select(week => (week.What.ToString(), week.Minutes.Count)));
        Assert.Equal([("2024-12", 120), ("2025-01", 70)], hours.Calendar.Months.Select(month => (month.What.ToString(), month.Minutes.Count)));
        Assert.Equal([120, 50, 20], hours.Entries.Select(entry => entry.Minutes.Count));
    }

    [Fact]
    public void Work_OperationsOfTheSameTime_FollowTheVocabulary()
    {
        var build = Sample.Build("drill", Sample.Entry("2025-10-03", Sample.Job(30, "drilling", "head"), Sample.Job(30, "boring", "head"), Sample.Job(30, "turning", "head"), Sample.Job(40, "painting", "head")));

        var work = Hours.Of(Sample.Journal(build)).Builds[0].Work;

        Assert.Equal([("painting", 40), ("turning", 30), ("boring", 30), ("drilling", 30)], work.Operations.Select(time => (time.What.Value, time.Minutes.Count)));
    }

    [Fact]
    public void Of_AnyJournal_AddsUpToWhatWasEntered() => Generated.Journals.Sample(journal =>
    {
        var hours = Hours.Of(journal);

        foreach (var (build, figures) in journal.Builds.Zip(hours.Builds))
        {
            var entered = build.Entries.SelectMany(entry => entry.Jobs).Sum(job => job.Time.Count);
            Assert.Equal(entered, figures.Minutes.Count);
            Assert.Equal(entered, figures.General.Minutes.Count + figures.Parts.Sum(part => part.Minutes.Count));
            Assert.Equal(entered, figures.Work.Operations.Sum(time => time.Minutes.Count));
            Assert.Equal(entered, figures.Work.Kinds.Sum(time => time.Minutes.Count));
            Assert.Equal(entered, figures.Calendar.Weeks.Sum(time => time.Minutes.Count));
            Assert.Equal(entered, figures.Calendar.Months.Sum(time => time.Minutes.Count));
            Assert.Equal(entered, figures.Calendar.Days.Sum(time => time.Minutes.Count));
            Assert.All(figures.Parts, part => Assert.Equal(part.Minutes.Count, part.Work.Kinds.Sum(time => time.Minutes.Count)));
            Assert.All(figures.Entries, entry => Assert.Equal(entry.Minutes.Count, entry.Work.Kinds.Sum(time => time.Minutes.Count)));
            Assert.Equal(build.Entries.Select(entry => entry.Time), figures.Entries.Select(entry => entry.Minutes));
        }

        Assert.Equal(hours.Minutes.Count, hours.Builds.Sum(build => build.Minutes.Count));
        Assert.Equal(hours.Minutes.Count, hours.Calendar.Days.Sum(day => day.Minutes.Count));
    });

    [Fact]
    public void Cells_AnyJournal_AddUpToTheirJob() => Generated.Journals.Sample(journal =>
    {
        foreach (var (build, figures) in journal.Builds.Zip(Hours.Of(journal).Builds))
        {
            var cells = figures.Cells.ToLookup(cell => (cell.Entry, cell.Job), cell => cell.Minutes);
            var kinds = figures.KindCells.ToLookup(cell => (cell.Entry, cell.Job));
            foreach (var (entry, job) in build.Entries.SelectMany(entry => entry.Jobs, (entry, job) => (entry.Ref, job)))
            {
                Assert.Equal(job.Time, cells[(entry, job.Number)].Sum());
                Assert.Equal(job.Time, kinds[(entry, job.Number)].Sum(cell => cell.Minutes));
                Assert.True(kinds[(entry, job.Number)].Where(cell => cell.Kind == TimeKind.SettingUp).Sum(cell => cell.Minutes) >= job.SetUp);
            }
        }
    });

    [Fact]
    public void Of_SameJournalTwice_GivesTheSameOrder() => Generated.Journals.Sample(journal =>
        Assert.Equal(
            Hours.Of(journal).Builds.SelectMany(build => build.Work.Operations),
            Hours.Of(journal).Builds.SelectMany(build => build.Work.Operations)));
}
