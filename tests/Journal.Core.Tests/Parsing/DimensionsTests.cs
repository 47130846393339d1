using Journal.Core.Checking;
using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Parsing.Problems;

namespace Journal.Core.Tests.Parsing;

/// <summary>What cannot be understood in readings, settings, mates and tolerances has a place and a remedy when a journal is checked.</summary>
public sealed class DimensionsTests : IDisposable
{
    private readonly string root = Directory.CreateTempSubdirectory("journal-").FullName;

    public DimensionsTests()
    {
        Write("journal.yaml", "title: The Lean-to\n");
        Write("drill/build.yaml", "title: Bench drill\nparts:\n  - {id: head, material: cast-iron}\n  - {id: quill}\n");
    }

    public void Dispose() => Directory.Delete(root, recursive: true);

    [Theory]
    [InlineData("required: 12 H99, actual: 12", "H99", 1, "not-a-fit", "`99` is not a known tolerance grade", "4 to 13")]
    [InlineData("required: 12 Q7, actual: 12", "Q7", 0, "not-a-fit", "no fit with the letter `Q`", "Holes have D, E, F")]
    [InlineData("required: 1/0 in, actual: 1", "1/0", 2, "not-a-dimension", "“1/0 in” is not a valid `required`.", "")]
    [InlineData("required: 7/16, actual: 11", "7/16", 0, "unit-missing", "A fraction needs a unit", "`7/16 in`")]
    [InlineData("required: 12 H7, actual: 1/2", "1/2", 0, "unit-missing", "A fraction needs a unit", "`7/16 in`")]
    [InlineData("required: M6, actual: 5.9", "5.9", 0, "not-a-dimension", "judged by a gauge", "`actual: go`")]
    [InlineData("required: to suit spindle.nose, actual: 12", "spindle", 0, "not-a-dimension", "no part for `spindle.nose`", "`head`, `quill`")]
    [InlineData("required: 12 ±0, actual: 12", "±0", 0, "not-a-dimension", "two limits are the same", "±0.02")]
    [InlineData("required: \"12,5\", actual: 12.5", "12,5", 2, "not-a-dimension", "“12,5” is not a valid `required`.", "")]
    [InlineData("required: 12 H7, actual: 12 cm", "cm", 0, "not-a-dimension", "`cm` is not a known unit", "12.5 mm")]
    public void Reading_OfABadForm_IsAnErrorAtTheLetterWithARemedy(string keys, string at, int offset, string code, string message, string remedy)
    {
        var line = $"  - {{feature: bore, {keys}}}";
        var problem = Assert.Single(Check($"readings:\n{line}\n"));

        Assert.Equal((Severity.Error, code), (problem.Severity, problem.Kind.Code));
        Assert.Equal(("drill/2025-10-03.md", 6, line.IndexOf(at, StringComparison.Ordinal) + offset + 1), (problem.Place.File, problem.Place.Line, problem.Place.Column));
        Assert.Contains(message, problem.Message, StringComparison.Ordinal);
        Assert.Contains(remedy, problem.Remedy, StringComparison.Ordinal);
        Assert.NotEmpty(problem.Remedy);
    }

    [Theory]
    [InlineData("required: 12 H7, actual: 120.05", "120.05", "ten times the required one", "12.005")]
    [InlineData("required: 1.25 in, actual: 31.75 in", "31.75", "factor of 25.4", "31.75 mm")]
    public void Reading_TenTimesOrAUnitOff_IsAWarningOfALikelySlip(string keys, string at, string message, string remedy)
    {
        var line = $"  - {{feature: bore, {keys}}}";
        var problem = Assert.Single(Check($"readings:\n{line}\n"));

        Assert.Equal((Severity.Warning, "likely-slip"), (problem.Severity, problem.Kind.Code));
        Assert.Equal((6, line.IndexOf(at, StringComparison.Ordinal) + 1), (problem.Place.Line, problem.Place.Column));
        Assert.Contains(message, problem.Message, StringComparison.Ordinal);
        Assert.Contains(remedy, problem.Remedy, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("diameter: 30 ft", "ft", "not-a-dimension")]
    [InlineData("diameter: 0", "0", "not-a-dimension")]
    [InlineData("feed: 0 mm/turn", "0 mm", "not-a-dimension")]
    [InlineData("depth: 1/16", "1/16", "unit-missing")]
    [InlineData("width: wide", "wide", "not-a-dimension")]
    [InlineData("rpm: fast", "fast", "not-a-number")]
    [InlineData("teeth: 0", "0", "not-a-number")]
    public void Setting_OfABadForm_IsAnErrorInItsOwnValue(string key, string at, string code)
    {
        var line = $"  - {{{key}, verdict: worked}}";
        var problem = Assert.Single(Check($"settings:\n{line}\n"));

        var start = line.IndexOf(at, StringComparison.Ordinal) + 1;
        Assert.Equal((Severity.Error, code, 6), (problem.Severity, problem.Kind.Code, problem.Place.Line));
        Assert.InRange(problem.Place.Column, start, start + at.Length);
    }

    [Fact]
    public void Feed_ThatDoesNotSayPerWhat_IsAWarningOnly()
    {
        var problem = Assert.Single(Check("settings: {diameter: 30, rpm: 480, feed: 0.1 mm}\n"));

        Assert.Equal((Severity.Warning, "feed-per-what"), (problem.Severity, problem.Kind.Code));
        Assert.Contains("`0.1 mm/rev`", problem.Remedy, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("general-tolerance: fine", "not-a-dimension")]
    [InlineData("general-tolerance: 0", "not-a-dimension")]
    [InlineData("general-tolerance: -0.1", "not-a-dimension")]
    [InlineData("general-tolerance: 1/64", "unit-missing")]
    [InlineData("mates: {hole: head, shaft: quill.diameter}", "not-a-feature")]
    [InlineData("mates: {hole: haed.bore, shaft: quill.diameter}", "unknown-part")]
    [InlineData("mates: {hole: head.bore}", "missing")]
    public void Build_BadToleranceOrMate_IsAnErrorInItsFile(string line, string code)
    {
        Write("drill/build.yaml", $"title: Bench drill\nparts: [head, quill]\n{line}\n");

        var problem = Assert.Single(Check(""));

        Assert.Equal((Severity.Error, code, "drill/build.yaml", 3), (problem.Severity, problem.Kind.Code, problem.Place.File, problem.Place.Line));
        Assert.NotEmpty(problem.Remedy);
    }

    [Theory]
    [InlineData("0.01", "unit-missing")]
    [InlineData("fine", "not-a-dimension")]
    [InlineData("0 mm", "not-a-dimension")]
    public void Tool_BadResolution_IsAnErrorInTheCrib(string resolution, string code)
    {
        Write("tools.yaml", $"- {{id: gauge, resolution: {resolution}}}\n");

        var problem = Assert.Single(Check(""));

        Assert.Equal((code, "tools.yaml", 1, 27), (problem.Kind.Code, problem.Place.File, problem.Place.Line, problem.Place.Column));
    }

    [Fact]
    public void Tool_ResolutionAndTolerance_AreRead()
    {
        Write("tools.yaml", "- {id: gauge, resolution: 2 µm}\n");
        Write("drill/build.yaml", "title: Bench drill\nparts: [head, quill]\ngeneral-tolerance: ±0.1\n");

        var journal = Read("readings: {feature: bore, required: 12, actual: 12.05, with: gauge}\n").Journal!;

        Assert.Equal(new Length(0.002m, LengthUnit.Millimetre), journal.Tools[0].Resolution);
        var reading = Assert.Single(Readings.Of(journal).All);
        Assert.Equal((11.9m, 12.1m, 0.5m), (reading.Least!.Value.Value, reading.Greatest!.Value.Value, reading.Share));
        Assert.Empty(reading.Notes);
    }

    [Fact]
    public void Reading_Unreadable_LeavesTheFiguresOfTheOthers()
    {
        var reading = Read("readings:\n  - {feature: bore, required: 12 H99, actual: 12}\n  - {feature: length, required: 40 ±0.1, actual: 40.05}\n");

        Assert.True(reading.HasErrors);
        var figures = Readings.Of(reading.Journal!).All;
        Assert.Equal([null, true], figures.Select(figure => figure.Within));
        Assert.Equal(0.5m, figures[1].Share);
    }

    [Fact]
    public void Setting_OfAnEntryWithoutJobs_IsToldOfBesideThemAndDoesNotThrow()
    {
        Write("drill/2025-10-03.md", "---\njobs: []\nsettings: {diameter: 30 ft}\n---\n");

        var reading = JournalReader.Read(root, DateOnly.MaxValue);

        Assert.Equal([("no-jobs", 2), ("not-a-dimension", 3)], reading.Problems.Select(problem => (problem.Kind.Code, problem.Place.Line)));
    }

    private IReadOnlyList<Problem> Check(string frontMatter) => Read(frontMatter).Problems;

    private JournalReading Read(string frontMatter)
    {
        Write("drill/2025-10-03.md", $"---\npart: head\noperation: boring\nhours: 1h\n{frontMatter}---\n");
        return JournalReader.Read(root, DateOnly.MaxValue);
    }

    private void Write(string file, string text)
    {
        var path = Path.Combine(root, file);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
    }

    [Theory]
    [InlineData("required: 12\n      0.5 H7")]
    [InlineData("required: \"12\\x20\\x20 0.5 H7\"")]
    [InlineData("required: !a 12 0.5 H7")]
    public void Fault_InAValueThatIsNotWrittenAsItReads_IsAtItsBeginning(string required)
    {
        var problem = JournalOnDisk.ReadEntry($"part: head\noperation: boring\nhours: 1h\nreadings:\n  - {required}\n    actual: 12\n    feature: bore").Problems[0];

        Assert.Equal(("not-a-dimension", 6, 15), (problem.Kind.Code, problem.Place.Line, problem.Place.Column));
    }
}
