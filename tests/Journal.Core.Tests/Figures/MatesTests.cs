using Journal.Core.Figures;
using Journal.Core.Model;

namespace Journal.Core.Tests.Figures;

public sealed class MatesTests
{
    private static readonly Mate BoreAndQuill = new(new(new("head"), "bore"), new(new("quill"), "diameter"));

    // By the limits of ISO 286-2 for 40 mm: H7 +25/0; g6 -9/-25, k6 +18/+2, p6 +42/+26. H7/g6 has a clearance of 0.009 to 0.050,
    // H7/k6 of -0.018 to 0.023, H7/p6 of -0.042 to -0.001 mm. h6 is 0/-16: a fit that may have no clearance at all is one of clearance
    // still (ISO 286-1, types of fit, from memory), and one that may just touch from the other side one of interference.
    [Theory]
    [InlineData("40 g6", 0.009, 0.050, FitKind.Clearance)]
    [InlineData("40 h6", 0, 0.041, FitKind.Clearance)]
    [InlineData("40 +0.041/+0.025", -0.041, 0, FitKind.Interference)]
    [InlineData("40 k6", -0.018, 0.023, FitKind.Transition)]
    [InlineData("40 p6", -0.042, -0.001, FitKind.Interference)]
    public void Of_FitCodes_GivesLeastAndGreatestClearance(string shaft, double least, double greatest, FitKind kind)
    {
        var mate = Mate(Bench.Reading("head.bore", "40 H7", null), Bench.Reading("quill.diameter", shaft, null));
        Assert.Equal((Bench.Millimetres((decimal)least), Bench.Millimetres((decimal)greatest)), (mate.Least, mate.Greatest));
        Assert.Equal((kind, null, null), (mate.Required, mate.AsBuilt, mate.Within));
    }

    [Theory]
    [InlineData("39.99", 0.02, true)]
    [InlineData("40.001", 0.009, true)]
    [InlineData("40.002", 0.008, false)]
    [InlineData("39.96", 0.05, true)]
    [InlineData("39.959", 0.051, false)]
    [InlineData("40.02", -0.01, false)]
    public void Of_BothMeasured_ComparesThemAsBuilt(string shaft, double clearance, bool within)
    {
        var mate = Mate(Bench.Reading("head.bore", "40 H7", "40.01"), Bench.Reading("quill.diameter", "40 g6", shaft));
        Assert.Equal((Bench.Millimetres((decimal)clearance), within), (mate.AsBuilt, mate.Within));
    }

    [Fact]
    public void Of_SeveralReadings_TheLatestCounts()
    {
        var mate = Mate(
            Bench.Reading("head.bore", "40 H7", "39.9"),
            Bench.Reading("quill.diameter", "40 g6", "39.98"),
            Bench.Reading("head.bore", null, "40.01"));
        Assert.Equal(Bench.Millimetres(0.03m), mate.AsBuilt);
    }

    [Theory]
    [InlineData("head.bore", "to suit quill.diameter +0.01/+0.03", "quill.diameter", "40 h6")]
    [InlineData("quill.diameter", "to suit head.bore -0.03/-0.01", "head.bore", "40 H7")]
    public void Of_OneToSuitTheOther_TakesItsDeviations(string suiting, string required, string other, string otherRequired)
    {
        var mate = Mate(Bench.Reading(other, otherRequired, "40"), Bench.Reading(suiting, required, null));
        Assert.Equal((Bench.Millimetres(0.01m), Bench.Millimetres(0.03m)), (mate.Least, mate.Greatest));
    }

    [Fact]
    public void Of_InchHoleAndMillimetreShaft_NeverMix()
    {
        var mate = Mate(Bench.Reading("head.bore", "0.5 in", "0.501"), Bench.Reading("quill.diameter", "12.7 ±0.01 mm", "12.6746"));
        Assert.Equal(LengthUnit.Inch, mate.Unit);
        Assert.Equal(Bench.Inches(0.002m), mate.AsBuilt);
    }

    [Fact]
    public void Of_NothingMeasured_IsAllUnknown()
    {
        var mate = Mate();
        Assert.Equal((null, null, null, null), (mate.Hole, mate.Least, mate.AsBuilt, mate.Required));
    }

    private static MateFigure Mate(params MeasuredReading[] readings) =>
        Assert.Single(Mates.Of(Bench.Build(Bench.Entry("2025-10-03", readings)) with { Mates = [BoreAndQuill] }));
}
