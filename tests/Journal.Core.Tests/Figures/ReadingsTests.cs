using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Trade;

namespace Journal.Core.Tests.Figures;

public sealed class ReadingsTests
{
    // 12 H7 is 12.000 to 12.018 mm (ISO 286-2); share is the distance from the middle, 12.009, over half the tolerance.
    [Theory]
    [InlineData("12.009", 0.009, true, 0)]
    [InlineData("12.018", 0.018, true, 1)]
    [InlineData("12.000", 0, true, 1)]
    [InlineData("12.0135", 0.0135, true, 0.5)]
    [InlineData("12.027", 0.027, false, 2)]
    [InlineData("11.991", -0.009, false, 2)]
    public void Of_FitCode_GivesDeviationVerdictAndShare(string actual, double deviation, bool within, double share)
    {
        var reading = Bench.Judge("12 H7", actual);
        Assert.Equal(Bench.Millimetres((decimal)deviation), reading.Deviation);
        Assert.Equal((within, (decimal)share), (reading.Within, reading.Share));
        Assert.Equal((Bench.Millimetres(12), Bench.Millimetres(12), Bench.Millimetres(12.018m)), (reading.Nominal, reading.Least, reading.Greatest));
    }

    [Theory]
    [InlineData("0.01", true, 0.5)]
    [InlineData("0.02", true, 1)]
    [InlineData("0.03", false, 1.5)]
    public void Of_RunOut_ComparesWithTheGreatestAlone(string actual, bool within, double share)
    {
        var reading = Bench.Judge("max 0.02", actual);
        Assert.Equal((within, (decimal)share, null), (reading.Within, reading.Share, reading.Deviation));
    }

    [Theory]
    [InlineData("go", true)]
    [InlineData(" Goes ", true)]
    [InlineData("no-go", false)]
    [InlineData("No Go", false)]
    [InlineData("nogo", false)]
    public void Of_Thread_IsJudgedByTheGauge(string actual, bool within) => Assert.Equal(within, Bench.Judge("M6x1-6H", actual).Within);

    [Fact]
    public void Of_ThreadWithASize_AsksForAGauge()
    {
        var findings = Readings.Of(Bench.Journal(Bench.Build(Bench.Entry("2025-10-03", Bench.Reading("head.bore", "M6", "5.9"))))).Findings;
        Assert.Equal(("actual", FaultCode.GaugeWanted), (Assert.Single(findings).Key, findings[0].Fault.Code));
        Assert.Equal("A thread is judged by a gauge or its mating part, not by a size.", findings[0].Fault.What);
        Assert.Equal("Write `actual: go` or `actual: no-go`.", findings[0].Fault.Remedy);
    }

    [Theory]
    [InlineData(true, "Before the point write one of `head`, `quill`.")]
    [InlineData(false, "List the part in build.yaml.")]
    public void Of_ToSuitAPartThatIsNotThere_NamesThoseThatAre(bool listed, string remedy)
    {
        var build = Bench.Build(Bench.Entry("2025-10-03", Bench.Reading("head.bore", "to suit quil.diameter", "12")));

        var fault = Assert.Single(Readings.Of(Bench.Journal(listed ? build : build with { Parts = [] })).Findings).Fault;

        Assert.Equal(("The build has no part for `quil.diameter`.", remedy, 8), (fault.What, fault.Remedy, fault.Offset));
    }

    [Fact]
    public void Of_InchRequirementInAMillimetreBuild_ReadsTheActualInInches()
    {
        var reading = Bench.Judge("0.4995 +0.0005/-0.0000 in", "0.4998");
        Assert.Equal((LengthUnit.Inch, true), (reading.Unit, reading.Within));
        Assert.Equal(Bench.Inches(0.0003m), reading.Deviation);
    }

    // H7 by ISO 286-2: +15/0 micrometres over 6 up to 10 mm, +18/0 over 10 up to 18, +21/0 over 18 up to 30. In inches none of
    // these limits comes out even.
    [Theory]
    [InlineData("1/4 H7", "6.365 mm", true)]
    [InlineData("3/8 H7", "9.540 mm", true)]
    [InlineData("1/2 H7", "12.718 mm", true)]
    [InlineData("1/2 H7", "12.7181 mm", false)]
    [InlineData("5/8 H7", "15.893 mm", true)]
    [InlineData("1-1/8 H7", "28.596 mm", true)]
    [InlineData("1-1/8 H7", "28.5961 mm", false)]
    public void Of_ActualInTheOtherUnit_IsConvertedExactlyAtTheLimit(string required, string actual, bool within)
    {
        var reading = Bench.Judge(required, actual, LengthUnit.Inch);
        Assert.Equal((LengthUnit.Inch, within), (reading.Unit, reading.Within));
    }

    [Fact]
    public void Of_NoRequirement_HasNoVerdict()
    {
        var reading = Bench.Judge(null, "12.01");
        Assert.Equal((null, null, Bench.Millimetres(12.01m)), (reading.Within, reading.Share, reading.Actual));
    }

    [Theory]
    [InlineData("12 H99", "12", "required", FaultCode.UnknownFitGrade)]
    [InlineData("12 Q7", "12", "required", FaultCode.UnknownFitLetter)]
    [InlineData("1/0 in", "12", "required", FaultCode.DividedByZero)]
    [InlineData("7/16", "11", "required", FaultCode.MissingUnit)]
    [InlineData("to suit quil.diameter", "12", "required", FaultCode.NotAFeature)]
    [InlineData("12 H7", "twelve", "actual", FaultCode.NotANumber)]
    [InlineData("12 H7", "120.1", "actual", FaultCode.LikelySlip)]
    [InlineData("12 H7", "1.201", "actual", FaultCode.LikelySlip)]
    [InlineData("12", "1200", "actual", FaultCode.LikelySlip)]
    [InlineData("12 H7", "0.4724", "actual", FaultCode.LikelySlip)]
    [InlineData("0.5 in", "12.7", "actual", FaultCode.LikelySlip)]
    public void Of_BadInput_IsAFindingWithItsPlace(string required, string actual, string key, FaultCode code)
    {
        var findings = Readings.Of(Bench.Journal(Bench.Build(Bench.Entry("2025-10-03", Bench.Reading("head.bore", required, actual))))).Findings;
        var finding = Assert.Single(findings);
        Assert.Equal((key, code, new Place("drill/entry.md", 7, 3)), (finding.Key, finding.Fault.Code, finding.Place));
    }

    [Theory]
    [InlineData("120.10", "is ten times the required one. The decimal point", "If it was 12.01, write that.")]
    [InlineData("1.201", "is a tenth of the required one. The decimal point", "If it was 12.01, write that.")]
    [InlineData("1201", "is a hundred times the required one. The decimal point", "If it was 12.01, write that.")]
    [InlineData("0.1201", "is a hundredth of the required one. The decimal point", "If it was 12.01, write that.")]
    [InlineData("0.4724", "is out by a factor of 25.4. The unit", "If it was measured in that unit, write `0.4724 in`.")]
    public void Of_LikelySlip_SaysWhichAndWhatMayHaveBeenMeant(string actual, string slip, string meant)
    {
        var findings = Readings.Of(Bench.Journal(Bench.Build(Bench.Entry("2025-10-03", Bench.Reading("head.bore", "12 H7", actual))))).Findings;
        var fault = Assert.Single(findings).Fault;
        Assert.Equal(($"The actual size {slip} is probably wrong.", meant), (fault.What, fault.Remedy));
    }

    // Within 2 % of ten times 12 mm: 117.6 to 122.4 mm.
    [Theory]
    [InlineData("117.5", false)]
    [InlineData("117.6", true)]
    [InlineData("122.4", true)]
    [InlineData("122.5", false)]
    public void Of_NearlyAMultiple_IsASlipWithinTwoPerCent(string actual, bool slip) =>
        Assert.Equal(slip, Readings.Of(Bench.Journal(Bench.Build(Bench.Entry("2025-10-03", Bench.Reading("head.bore", "12 H7", actual))))).Findings.Count == 1);

    [Fact]
    public void Of_SeveralFindings_FollowTheirPlaces()
    {
        var (late, early) = (Bench.Reading("head.bore", "12 H99", "12"), Bench.Reading("quill.diameter", "12 h6", "120"));
        var entry = Bench.Entry("2025-10-03", early with { Place = early.Place with { Line = 5 } }, late with { Place = late.Place with { Line = 9 } });

        Assert.Equal([5, 9], Readings.Of(Bench.Journal(Bench.Build(entry))).Findings.Select(finding => finding.Place.Line));
    }

    [Fact]
    public void Of_FeaturesOfOneNameOnTwoParts_AreApart()
    {
        var all = Readings.Of(Bench.Journal(Bench.Build(
            Bench.Entry("2025-10-03", Bench.Reading("head.bore", "12 H7", "12.01")),
            Bench.Entry("2025-10-04", Bench.Reading("quill.bore", null, "8"))))).All;

        Assert.Equal([("12 H7", true), (null, true)], all.Select(reading => (reading.RequiredText, reading.IsLatest)));
    }

    [Fact]
    public void Of_OtherRequirementLater_HoldsFromThenOn()
    {
        var all = Readings.Of(Bench.Journal(Bench.Build(
            Bench.Entry("2025-10-03", Bench.Reading("head.bore", "12 H7", "12.01")),
            Bench.Entry("2025-10-04", Bench.Reading("head.bore", "13 H7", "13.01")),
            Bench.Entry("2025-10-05", Bench.Reading("head.bore", null, "12.01"))))).All;

        Assert.Equal([("12 H7", true), ("13 H7", true), ("13 H7", false)], all.Select(reading => (reading.RequiredText, reading.Within)));
    }

    [Theory]
    [InlineData("12 H7", "12.01")]
    [InlineData("M6x1-6H", "go")]
    public void Of_LaterReadingWithoutAMeasure_LeavesTheMeasuredOneTheLatest(string required, string actual)
    {
        var all = Readings.Of(Bench.Journal(Bench.Build(
            Bench.Entry("2025-10-03", Bench.Reading("head.bore", required, actual)),
            Bench.Entry("2025-10-04", Bench.Reading("head.bore", null, null))))).All;

        Assert.Equal([true, false], all.Select(reading => reading.IsLatest));
    }

    [Theory]
    [InlineData("12 H7", "12.3")]
    [InlineData("max 0.02", "0.2")]
    [InlineData("12 H7", "-12")]
    public void Of_OutButNoMultiple_IsNoSlip(string required, string actual) =>
        Assert.Empty(Readings.Of(Bench.Journal(Bench.Build(Bench.Entry("2025-10-03", Bench.Reading("head.bore", required, actual))))).Findings);

    [Fact]
    public void Of_ReworkedFeature_KeepsWhatIsRequiredAndSaysWhenItWasRight()
    {
        var outOfLimits = Bench.Entry("2025-10-03", Bench.Reading("head.bore", "12 H7", "11.98")) with
        {
            Mistakes =
            [
                new() { What = "Unsure.", Job = 2, Outcome = Outcome.Scrap },
                new() { What = "Read the vernier wrong at first.", Job = 1 },
                new() { What = "Stopped too early.", Job = 1, Outcome = Outcome.Rework },
            ],
        };
        var all = Readings.Of(Bench.Journal(Bench.Build(outOfLimits, Bench.Entry("2025-10-05", Bench.Reading("head.Bore", null, "12.01"))))).All;
        Assert.Equal([false, true], all.Select(reading => reading.Within));
        Assert.Equal([false, true], all.Select(reading => reading.IsLatest));
        Assert.Equal((Outcome.Rework, "2025-10-05"), (all[0].Became, all[0].RightIn?.Value));
        Assert.Equal("12 H7", all[1].RequiredText);
    }

    [Fact]
    public void Of_MistakeFoundLater_TellsOfTheEntryWhereItWasMade()
    {
        var later = Bench.Entry("2025-10-05") with
        {
            Mistakes = [new() { What = "Bore too large.", MadeOn = new Id<Entry>("2025-10-03"), Outcome = Outcome.UsedAsIs }],
        };
        var reading = Assert.Single(Readings.Of(Bench.Journal(Bench.Build(
            Bench.Entry("2025-10-03", Bench.Reading("head.bore", "12 H7", "12.1")),
            later))).All);
        Assert.Equal((Outcome.UsedAsIs, null), (reading.Became, reading.RightIn));
    }

    [Fact]
    public void Of_ToSuitWithDeviations_TakesTheMateAsBuilt()
    {
        var all = Readings.Of(Bench.Journal(Bench.Build(
            Bench.Entry("2025-10-03", Bench.Reading("head.bore", "to suit quill.diameter +0.01/+0.03", "12.01")),
            Bench.Entry("2025-10-04", Bench.Reading("quill.diameter", "12 h6", "12.05")),
            Bench.Entry("2025-10-05", Bench.Reading("quill.diameter", null, "11.99"))))).All;
        var bore = all[0];
        Assert.Equal((Bench.Millimetres(11.99m), Bench.Millimetres(12.00m), Bench.Millimetres(12.02m)), (bore.Nominal, bore.Least, bore.Greatest));
        Assert.Equal((true, 0m, Bench.Millimetres(0.02m)), (bore.Within, bore.Share, bore.Deviation));
    }

    [Theory]
    [InlineData("11.995", true)]
    [InlineData("11.985", false)]
    public void Of_ToSuitAMate_AHoleMustGoOverItsShaft(string bore, bool within)
    {
        var build = Bench.Build(Bench.Entry(
            "2025-10-03",
            Bench.Reading("quill.diameter", "12 h6", "11.99"),
            Bench.Reading("head.bore", "to suit quill.diameter", bore))) with
        {
            Mates = [new(new(new("head"), "bore"), new(new("quill"), "diameter"))],
        };
        Assert.Equal(within, Readings.Of(Bench.Journal(build)).All[0].Within);
    }

    [Fact]
    public void Of_ToSuitWhatIsNotMeasured_SaysSo()
    {
        var reading = Bench.Judge("to suit quill.diameter", "12.01");
        Assert.Null(reading.Within);
        Assert.Contains("quill.diameter has not been measured yet", Assert.Single(reading.Notes), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("12 H7", "Digital caliper", true)]
    [InlineData("12 ±0.1", "Digital caliper", false)]
    [InlineData("12 ±0.1", "Steel rule", true)]
    [InlineData("12 H7", "Brass hammer", false)]
    public void Of_ToolTooCoarse_GetsANote(string required, string title, bool noted)
    {
        var tool = new Tool { Id = new("tool"), Title = title };
        var build = Bench.Build(Bench.Entry("2025-10-03", Bench.Reading("head.bore", required, "12", "tool")));
        Assert.Equal(noted, Assert.Single(Readings.Of(Bench.Journal(build, tool)).All).Notes.Count == 1);
    }

    [Theory]
    [InlineData(0.001, false)]
    [InlineData(0.002, true)]
    public void Of_ResolutionOfTheCrib_GoesBeforeTheTitle(double step, bool noted)
    {
        // A tenth of 12 H7, 0.018 mm, is 0.0018 mm.
        var tool = new Tool { Id = new("micrometer"), Title = "Micrometer", Resolution = Bench.Millimetres((decimal)step) };
        var build = Bench.Build(Bench.Entry("2025-10-03", Bench.Reading("head.bore", "12 H7", "12.01", "micrometer")));
        Assert.Equal(noted, Assert.Single(Readings.Of(Bench.Journal(build, tool)).All).Notes.Count == 1);
    }

    [Fact]
    public void Of_SeveralParts_FollowsThePartsListThenTheFeature()
    {
        var all = Readings.Of(Bench.Journal(Bench.Build(
            Bench.Entry(
                "2025-10-03",
                Bench.Reading("quill.diameter", "12 h6", "11.99"),
                Bench.Reading("whole.height", "300", "300.2") with { Part = null },
                Bench.Reading("head.bore", "12 H7", "12")),
            Bench.Entry("2025-10-04", Bench.Reading("head.face", "max 0.02", "0.01"), Bench.Reading("head.bore", null, "12.01"))))).All;
        Assert.Equal(["bore", "bore", "face", "diameter", "height"], all.Select(reading => reading.Feature));
    }
}
