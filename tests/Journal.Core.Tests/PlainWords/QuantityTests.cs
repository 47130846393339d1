using Journal.Core.Model;
using Journal.Core.PlainWords.Quantities;
using Journal.Core.PlainWords.Tokens;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.Tests.PlainWords;

/// <summary>
/// Times, lengths, speeds and sums. Units by ISO 80000-1 and NIST SP 811, the international inch of 1959, durations by ISO 8601-1;
/// thou, tenth and “half nine” are common practice.
/// </summary>
public sealed class QuantityTests
{
    [Theory]
    [InlineData("an hour", 60)]
    [InlineData("a good hour and a half", 90)]
    [InlineData("two and a half hours", 150)]
    [InlineData("three quarters of an hour", 45)]
    [InlineData("half an hour", 30)]
    [InlineData("quarter of an hour", 15)]
    [InlineData("an hour twenty", 80)]
    [InlineData("an hour and five", 65)]
    [InlineData("two hours ten minutes", 130)]
    [InlineData("1h15", 75)]
    [InlineData("2 hrs 20", 140)]
    [InlineData("1.5h", 90)]
    [InlineData("1,5 h", 90)]
    [InlineData("45min", 45)]
    [InlineData("2:40", 160)]
    [InlineData("PT2H45M", 165)]
    [InlineData("pt45m", 45)]
    [InlineData("from half six to nine", 150)]
    [InlineData("from quarter to seven until ten past nine", 145)]
    [InlineData("between four and half past five", 90)]
    [InlineData("19:20-20:50", 90)]
    [InlineData("7.15-9.45", 150)]
    [InlineData("9am to 12.30", 210)]
    [InlineData("23:30 to 00:45", 75)]
    public void Time_AsMakersSayIt_IsInMinutes(string words, int minutes) => Assert.Equal(minutes, Only(words, UnitKind.Time)?.Minutes);

    [Theory]
    [InlineData("an hour, no, an hour and a half", 90)]
    [InlineData("two hours no two hours ten", 130)]
    [InlineData("forty minutes no sorry fifty", 50)]
    [InlineData("1h, no, 1h20", 80)]
    [InlineData("twenty, no, thirty-five minutes", 35)]
    public void Time_Corrected_IsTheLast(string words, int minutes) => Assert.Equal(minutes, Only(words, UnitKind.Time)?.Minutes);

    [Theory]
    [InlineData("a couple of hours")]
    [InlineData("an hour or two")]
    [InlineData("two or three hours")]
    public void Time_LeftOpen_IsVague(string words) => Assert.True(Only(words, UnitKind.Time)?.IsVague);

    [Theory]
    [InlineData("three thou", "0.003 in")]
    [InlineData("half a thou", "0.0005 in")]
    [InlineData("five tenths", "0.0005 in")]
    [InlineData("an inch and a quarter", "1.25 in")]
    [InlineData("3/16 in", "0.1875 in")]
    [InlineData("four inches, four thou over", "4.004 in")]
    [InlineData("three thou under an inch and a quarter", "1.247 in")]
    [InlineData("half an inch and two tenths", "0.5002 in")]
    [InlineData("0.020in", "0.020 in")]
    [InlineData("25.4 mm", "25.4 mm")]
    [InlineData("20 µm", "0.020 mm")]
    public void Length_OnAnInchDrawing_HasItsUnit(string words, string length) => Assert.Equal(Parsed(length), Only(words, UnitKind.Length)?.Length);

    [Theory]
    [InlineData("five tenths", "0.5 mm")]
    [InlineData("two hundredths", "0.02 mm")]
    [InlineData("a tenth of a millimetre", "0.1 mm")]
    [InlineData("three thou", "0.003 in")]
    [InlineData("an inch", "1 in")]
    [InlineData("1.5 cm", "15 mm")]
    public void Length_OnAMetricDrawing_HasItsUnit(string words, string length) => Assert.Equal(Parsed(length), Only(words, UnitKind.Length, LengthUnit.Millimetre)?.Length);

    [Theory]
    [InlineData("three thou under")]
    [InlineData("2 thou undersize")]
    public void Length_OverOrUnderWhatWasNotSaid_IsADeviation(string words) => Assert.True(Only(words, UnitKind.Length)?.IsDeviation);

    [Fact]
    public void Inch_InMillimetres_IsTheInternationalOne() =>
        Assert.Equal(25.4m, Only("an inch", UnitKind.Length)!.Length.In(LengthUnit.Millimetre).Value);

    [Theory]
    [InlineData("320 rpm", 320)]
    [InlineData("three twenty revs", 320)]
    [InlineData("three hundred and twenty revs a minute", 320)]
    [InlineData("fourteen hundred rpm", 1400)]
    public void Speed_AsMakersSayIt_IsInTurnsAMinute(string words, int rpm) => Assert.Equal(rpm, Only(words, UnitKind.Speed)?.Value);

    [Theory]
    [InlineData("£18.50", 18.50)]
    [InlineData("eighteen pounds fifty", 18.50)]
    [InlineData("three euro twenty", 3.20)]
    [InlineData("nine dollars and sixty cents", 9.60)]
    [InlineData("12 €", 12)]
    public void Money_AsMakersSayIt_IsTheSum(string words, double sum) => Assert.Equal((decimal)sum, Only(words, UnitKind.Money)?.Value);

    [Theory]
    [InlineData("from half six to nine")]
    public void HalfSix_WhereItMayBeHalfPastFive_IsLeftOut(string words) =>
        Assert.DoesNotContain(Read(words, LengthUnit.Millimetre, HalfHour.Unsure), quantity => quantity.Kind == UnitKind.Time);

    [Theory]
    [InlineData("M14 by one")]
    [InlineData("drilled 3 in the flange")]
    [InlineData("from two to three thou")]
    public void Numbers_ThatCountNoTime_AreNone(string words) => Assert.DoesNotContain(Read(words), quantity => quantity.Kind == UnitKind.Time);

    private static Length Parsed(string text)
    {
        Assert.True(Journal.Core.Trade.LengthText.TryParse(text, out var length, out _));
        return length;
    }

    private static Quantity? Only(string words, UnitKind kind, LengthUnit drawing = LengthUnit.Inch) => Read(words, drawing).Where(quantity => quantity.Kind == kind).ToList() is [var only] ? only : null;

    private static List<Quantity> Read(string words, LengthUnit drawing = LengthUnit.Inch, HalfHour half = HalfHour.Past) =>
        QuantityReader.Read(new QuantityGrammar(Tokenizer.Tokens(words), drawing, half), _ => false);
}
