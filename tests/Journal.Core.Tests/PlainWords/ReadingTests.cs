namespace Journal.Core.Tests.PlainWords;

/// <summary>Measured sizes and what was asked of them. How makers say sizes is common practice.</summary>
public sealed class ReadingTests
{
    [Theory]
    [InlineData("The bore of the head came out at 1.1253, the drawing says 1.125.", "head", "1.1253 in", "1.125 in")]
    [InlineData("Turned the spindle. Drawing asks for five eighths of an inch; my micrometer says 0.6248.", "spindle", "0.6248 in", "0.625 in")]
    [InlineData("turned the column print wants an inch and a quarter and i've got one point two four nine eight", "column", "1.2498 in", "1.25 in")]
    [InlineData("Bored the head. Bore 1.1252, dwg 1.125.", "head", "1.1252 in", "1.125 in")]
    [InlineData("Column turned, it mics at seven four nine seven where 0.750 is asked for.", "column", "0.7497 in", "0.750 in")]
    [InlineData("Reamed the table arm, the hole gauged at 0.5003, so 12.71, against half an inch.", "table-arm", "0.5003 in", "0.5 in")]
    [InlineData("Turned the spindle. The journal measures seven fifty minus three tenths.", "spindle", "0.7497 in", null)]
    [InlineData("Faced the table. Thickness came out at half an inch, two thou over.", "table", "0.502 in", null)]
    [InlineData("Turned the quill. Was 1.1262, now 1.1248.", "quill", "1.1248 in", null)]
    public void Size_Measured_StandsWithWhatWasAsked(string account, string part, string actual, string? required)
    {
        var reading = Assert.Single(Told.OfTheDrill(account).Readings);
        Assert.Equal((part, actual, required), (reading.Part?.Value, reading.Actual.ToString(), reading.Required));
    }

    [Theory]
    [InlineData("Turned the spindle. The mains want to be 0.750, plus nothing, minus five tenths. It mics at 0.7498.", "0.750 +0.0000/-0.0005 in")]
    [InlineData("Turned the spindle. Print says 0.750 to 0.752, and it measures 0.751.", "0.750 to 0.752 in")]
    [InlineData("Turned the spindle. Print says 0.750 plus or minus five tenths, and it measures 0.7503.", "0.750 ±0.0005 in")]
    public void RequiredSize_WithItsLimits_KeepsThem(string account, string required) =>
        Assert.Equal(required, Assert.Single(Told.OfTheDrill(account).Readings).Required);

    [Fact]
    public void Sizes_InAList_AreReadingsOfOneRequiredSize()
    {
        var readings = Told.OfTheDrill("Turned the spindle. The gauge made it 0.6252 forward, 0.6252 in the middle, and 0.6256 aft. The drawing says five eighths of an inch.").Readings;
        Assert.Equal(["0.6252 in", "0.6252 in", "0.6256 in"], readings.Select(reading => reading.Actual.ToString()));
        Assert.All(readings, reading => Assert.Equal("0.625 in", reading.Required));
    }

    [Theory]
    [InlineData("Bored the head, 210 rpm and 8 thou cuts.")]
    [InlineData("Drilled the table with a 0.250 drill.")]
    [InlineData("Turned the spindle. Sheet 3 says 0.625, not checked.")]
    [InlineData("My mate's spindle measured 0.6250.")]
    [InlineData("Turned the spindle. It should be 0.625.")]
    [InlineData("Opened the bore of the head from 1.0625.")]
    [InlineData("The tool was ground down to 0.125 and I turned the quill with it.")]
    public void Size_OfSomethingElse_IsNoReading(string account) => Assert.Empty(Told.OfTheDrill(account).Readings);

    [Fact]
    public void PointLeftOut_OnAMetricDrawing_StandsBeforeTheHundredths() =>
        Assert.Equal("25.01 mm", Assert.Single(Told.OfTheHead("Lapped the body. The drawing wants twenty-five there, and I have twenty-five oh one.").Readings).Actual.ToString());
}
