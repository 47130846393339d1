using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Trade;

namespace Journal.Core.Tests.Figures;

public sealed class SettingsTests
{
    private static readonly Setting Turning = new()
    {
        Job = 2,
        Diameter = "20",
        Rpm = 636.62m,
        Feed = "0.1 mm/rev",
        Depth = "0.5",
        Cutter = "HSS knife tool",
        Verdict = "worked well",
        Place = new("drill/entry.md", 9, 5),
    };

    // By hand: π × 20 mm × 636.62 rpm = 40.0 m/min = 131.2 ft/min; × 0.1 mm × 0.5 mm = 2.0 cm³/min.
    [Fact]
    public void Of_Turning_GivesSpeedFeedAndRemovalRate()
    {
        var setting = Single(Turning);
        Assert.Equal((40.0m, 131.2m), (decimal.Round(setting.Speed!.Value.MetresPerMinute, 1), decimal.Round(setting.Speed.Value.FeetPerMinute, 1)));
        Assert.Equal(Bench.Millimetres(63.662m), setting.FeedPerMinute);
        Assert.Equal(2.0m, decimal.Round(setting.Removal!.Value.CubicCentimetresPerMinute, 2));
        Assert.Equal(("quill", "turning", "mild-steel"), (setting.Part?.Value, setting.Operation.Value, setting.Material?.Family.Value));
    }

    [Fact]
    public void Of_TheSameInInches_Agrees()
    {
        var metric = Single(Turning with { Diameter = "25.4 mm", Feed = "0.0254 mm/rev", Depth = "0.254 mm" });
        var inch = Single(Turning with { Diameter = "1 in", Feed = "1 thou/rev", Depth = "10 thou" });
        Assert.Equal((metric.Speed, metric.Removal), (inch.Speed, inch.Removal));
    }

    // By hand: 4 teeth × 0.05 mm × 600 rpm = 120 mm/min; × 6 mm × 1.5 mm = 1.08 cm³/min.
    [Fact]
    public void Of_Milling_UsesTeethWidthAndDepth()
    {
        var setting = Single(Turning with { Job = 3, Diameter = "10", Rpm = 600, Feed = "0.05 mm/tooth", Teeth = 4, Width = "6", Depth = "1.5" });
        Assert.Equal(
            ("milling", Bench.Millimetres(120), Bench.Millimetres(0.2m)),
            (setting.Operation.Value, setting.FeedPerMinute!.Value, setting.FeedPerTurn!.Value));
        Assert.Equal(1.08m, setting.Removal!.Value.CubicCentimetresPerMinute);
    }

    // By hand: π/4 × (8 mm)² × 60 mm/min = 3.016 cm³/min.
    [Fact]
    public void Of_DrillingAmongOthers_UsesTheAreaOfTheHole()
    {
        var setting = Single(Turning with { Job = 4, Diameter = "8", Rpm = 600, Feed = "0.1 mm/rev" });
        Assert.Equal("drilling", setting.Operation.Value);
        Assert.Equal(3.016m, decimal.Round(setting.Removal!.Value.CubicCentimetresPerMinute, 3));
    }

    [Fact]
    public void Of_PartingOff_TakesTheWidthOfTheTool()
    {
        var setting = Single(Turning with { Job = 5, Depth = null, Width = "2" });
        Assert.Equal(8.0m, decimal.Round(setting.Removal!.Value.CubicCentimetresPerMinute, 2));
    }

    [Fact]
    public void Of_HandFeed_HasNoRate()
    {
        var setting = Single(Turning with { Feed = "hand" });
        Assert.Equal((FeedPer.Hand, null, null), (setting.Feed!.Value.Per, setting.FeedPerTurn, setting.Removal));
    }

    [Fact]
    public void Of_BadInput_IsFindingsAndTheRestStands()
    {
        var figures = Settings.Of(Journal(Turning with { Diameter = "1/0 in", Feed = "0.1", Rpm = -5, Depth = "1,5" }));
        Assert.Equal(
            [
                ("depth", FaultCode.CommaDecimal),
                ("diameter", FaultCode.DividedByZero),
                ("feed", FaultCode.FeedPerWhat),
                ("rpm", FaultCode.NotPositive),
            ],
            figures.Findings.Select(finding => (finding.Key, finding.Fault.Code)).OrderBy(finding => finding.Key, StringComparer.Ordinal));
        Assert.All(figures.Findings, finding => Assert.Equal(Turning.Place, finding.Place));
        Assert.Equal("HSS knife tool", Assert.Single(figures.All).Cutter);
    }

    [Theory]
    [InlineData("worked well", SettingVerdict.Worked)]
    [InlineData("no chatter at last", SettingVerdict.Worked)]
    [InlineData("not bad", SettingVerdict.Worked)]
    [InlineData("do-again", SettingVerdict.Worked)]
    [InlineData("Chattered badly", SettingVerdict.Chattered)]
    [InlineData("too fast, burned the drill", SettingVerdict.Failed)]
    [InlineData("did not work", SettingVerdict.Failed)]
    [InlineData("never-again", SettingVerdict.Failed)]
    [InlineData("smoked", SettingVerdict.Failed)]
    [InlineData("insert gone", SettingVerdict.Failed)]
    [InlineData("finish good", SettingVerdict.Worked)]
    [InlineData("hm", SettingVerdict.Unclear)]
    [InlineData(null, SettingVerdict.Unclear)]
    public void Of_TheMakersWord_IsSorted(string? word, SettingVerdict verdict) =>
        Assert.Equal(verdict, Single(Turning with { Verdict = word }).Verdict);

    [Fact]
    public void Of_SeveralSettings_GathersRangesByOperationMaterialAndCutter()
    {
        var groups = Settings.Of(Journal(
            Turning with { Rpm = 600 },
            Turning with { Rpm = 400, Cutter = "hss knife tool " },
            Turning with { Rpm = 900, Verdict = "chattered" },
            Turning with { Rpm = 950, Cutter = "Carbide" },
            Turning with { Job = 1, Rpm = 100 })).Groups;
        Assert.Equal(
            [("boring", "grey-iron", 1), ("turning", "mild-steel", 1), ("turning", "mild-steel", 3)],
            groups.Select(group => (group.Operation.Value, group.Material?.Value, group.Settings.Count)));
        var (worked, chattered) = (groups[2].Worked!, groups[2].Chattered!);
        Assert.Equal(
            (SurfaceSpeed.Of(Bench.Millimetres(20), 400), SurfaceSpeed.Of(Bench.Millimetres(20), 600), 2),
            (worked.Least, worked.Greatest, worked.Count));
        Assert.Equal((SurfaceSpeed.Of(Bench.Millimetres(20), 900), 1), (chattered.Least, chattered.Count));
        Assert.Null(groups[2].Failed);
    }

    private static SettingFigure Single(Setting setting) => Assert.Single(Settings.Of(Journal(setting)).All);

    private static MakerJournal Journal(params Setting[] settings)
    {
        var entry = Bench.Entry("2025-10-03");
        return Bench.Journal(Bench.Build(entry with
        {
            Jobs =
            [
                .. entry.Jobs,
                Bench.Job(3, "head", "milling"),
                Bench.Job(4, "head", "marking-out", "drilling", "reaming"),
                Bench.Job(5, "quill", "parting-off"),
            ],
            Settings = settings,
        }));
    }
}
