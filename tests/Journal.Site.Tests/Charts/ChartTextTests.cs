using Journal.Core.Model;
using Journal.Site.Charts;

namespace Journal.Site.Tests.Charts;

public sealed class ChartTextTests
{
    [Theory]
    [InlineData(0, "0\u202fh")]
    [InlineData(5, "5\u202fmin")]
    [InlineData(60, "1\u202fh")]
    [InlineData(1865, "31\u202fh\u202f05")]
    public void Hours_WholeMinutes_AreWrittenAsReadersMeetThem(int minutes, string expected) => Assert.Equal(expected, ChartText.Hours(new Minutes(minutes)));

    [Theory]
    [InlineData(12.345, "12.35")]
    [InlineData(-0.001, "0")]
    [InlineData(100, "100")]
    [InlineData(0.1, "0.1")]
    public void Number_AnyValue_HasTwoDecimalsAtMostAndNoNegativeZero(double number, string expected) => Assert.Equal(expected, ChartText.Number(number));

    [Fact]
    public void Lines_WordLongerThanALine_IsCutWhereTheLineEnds()
    {
        var lines = Lettering.Lines(new string('n', 100), 70);

        Assert.Equal([new string('n', 10), new string('n', 8) + "…"], lines);
    }

    [Fact]
    public void Lines_CharacterOfSeveralCodeUnits_IsNotCutInHalf() =>
        Assert.All(Lettering.Lines(string.Concat(Enumerable.Repeat("👩‍🔧", 30)), 100), line => Assert.DoesNotContain('\ufffd', ChartText.Escape(line)));

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    public void Lines_NothingToWrite_IsOneLine(string text) => Assert.Single(Lettering.Lines(text, 100));
}
