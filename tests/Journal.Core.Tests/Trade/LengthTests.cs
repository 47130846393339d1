using CsCheck;
using Journal.Core.Model;
using Journal.Core.Trade;

namespace Journal.Core.Tests.Trade;

public sealed class LengthTests
{
    private static readonly Gen<Length> AnyLength = Gen.Select(
        Gen.Long[-999_999_999_999, 999_999_999_999],
        Gen.Int[6, 12],
        Gen.Bool,
        (digits, decimals, isInch) => new Length(new decimal(digits) / Power(decimals), isInch ? LengthUnit.Inch : LengthUnit.Millimetre));

    [Theory]
    [InlineData("12", "12 mm")]
    [InlineData("12.5 mm", "12.5 mm")]
    [InlineData("12.50mm", "12.50 mm")]
    [InlineData(".5", "0.5 mm")]
    [InlineData("-0.02 mm", "-0.02 mm")]
    [InlineData("−0.02 mm", "-0.02 mm")]
    [InlineData("+0.02", "0.02 mm")]
    [InlineData("20 µm", "0.020 mm")]
    [InlineData("1/2 in", "0.5 in")]
    [InlineData("7/16 inch", "0.4375 in")]
    [InlineData("1-1/8 in", "1.125 in")]
    [InlineData("1 1/8 in", "1.125 in")]
    [InlineData("1½ in", "1.5 in")]
    [InlineData("½\"", "0.5 in")]
    [InlineData("7⁄16″", "0.4375 in")]
    [InlineData("0.4995 in", "0.4995 in")]
    [InlineData("12 thou", "0.012 in")]
    [InlineData("12 thousandths", "0.012 in")]
    [InlineData("0.5 thou", "0.0005 in")]
    public void TryParse_AsDrawingsWriteIt_KeepsValueUnitAndDigits(string text, string printed)
    {
        Assert.True(LengthText.TryParse(text, LengthUnit.Millimetre, out var length, out _));
        Assert.Equal(printed, length.ToString());
    }

    [Theory]
    [InlineData("7/16", 0.4375)]
    [InlineData("1-1/8", 1.125)]
    [InlineData("0.4995", 0.4995)]
    public void TryParse_BareInAnInchDrawing_IsInches(string text, double inches)
    {
        Assert.True(LengthText.TryParse(text, LengthUnit.Inch, out var length, out _));
        Assert.Equal(new Length((decimal)inches, LengthUnit.Inch), length);
    }

    [Theory]
    [InlineData("", FaultCode.Empty, 0)]
    [InlineData("   ", FaultCode.Empty, 0)]
    [InlineData("about 12", FaultCode.NotANumber, 0)]
    [InlineData("12,5", FaultCode.CommaDecimal, 2)]
    [InlineData("1,000.5", FaultCode.CommaDecimal, 1)]
    [InlineData("1/0 in", FaultCode.DividedByZero, 2)]
    [InlineData("1-1/0 in", FaultCode.DividedByZero, 4)]
    [InlineData("7/16", FaultCode.MissingUnit, 0)]
    [InlineData("7/16 mm", FaultCode.MixedUnits, 0)]
    [InlineData("1.2 cm", FaultCode.UnknownUnit, 4)]
    [InlineData("2 tenths", FaultCode.UnknownUnit, 2)]
    [InlineData("12 furlongs", FaultCode.LeftOver, 3)]
    [InlineData("12.5.5", FaultCode.LeftOver, 4)]
    [InlineData("12 mm 3", FaultCode.LeftOver, 6)]
    [InlineData("1000000", FaultCode.SizeOutOfRange, 0)]
    [InlineData("123456789012345678901234567890", FaultCode.TooLong, 0)]
    public void TryParse_BadInput_NamesTheFaultItsPlaceAndARemedy(string text, FaultCode code, int offset)
    {
        Assert.False(LengthText.TryParse(text, LengthUnit.Millimetre, out _, out var fault));
        Assert.Equal((code, offset), (fault.Code, fault.Offset));
        Assert.NotEmpty(fault.What);
        Assert.NotEmpty(fault.Remedy);
    }

    [Fact]
    public void ToString_ReadAgain_GivesTheSameLengthAndDigits() => AnyLength.Sample(length =>
    {
        Assert.True(LengthText.TryParse(length.ToString(), LengthUnit.Millimetre, out var again, out _));
        Assert.Equal(length, again);
        Assert.Equal(length.ToString(), again.ToString());
    });

    [Fact]
    public void TryParse_AnyFraction_PrintsAndReadsAgainTheSame() => Gen.Select(
        Gen.Int[0, 40],
        Gen.Int[1, 127],
        Gen.Int[1, 128]).Sample((whole, over, under) =>
    {
        Assert.True(LengthText.TryParse($"{whole}-{over}/{under} in", LengthUnit.Millimetre, out var length, out _));
        Assert.True(LengthText.TryParse(length.ToString(), LengthUnit.Millimetre, out var again, out _));
        Assert.Equal(length, again);
    });

    [Fact]
    public void TryParse_AnyText_NeverThrowsAndAlwaysExplains() =>
        Gen.String[Gen.Char["0123456789 ./,-+±øRHhmintou\"x½–MBAUC≤"], 0, 30].Sample(text =>
            Assert.True(
                LengthText.TryParse(text, LengthUnit.Inch, out _, out var fault)
                || (fault.Offset >= 0 && fault.Offset <= text.Length && fault.Remedy.Length > 0)));

    // The international inch: 25.4 mm exactly (agreed 1958, in force 1 July 1959).
    [Theory]
    [InlineData("1 in", "25.4 mm")]
    [InlineData("1/2 in", "12.7 mm")]
    [InlineData("1 thou", "0.0254 mm")]
    [InlineData("0.4995 in", "12.6873 mm")]
    public void In_InchAndMillimetre_AgreeExactly(string inch, string metric)
    {
        Assert.True(LengthText.TryParse(inch, LengthUnit.Millimetre, out var inches, out _));
        Assert.True(LengthText.TryParse(metric, LengthUnit.Millimetre, out var millimetres, out _));
        Assert.Equal(millimetres, inches.In(LengthUnit.Millimetre));
        Assert.Equal(inches, millimetres.In(LengthUnit.Inch));
    }

    [Fact]
    public void In_ThereAndBack_LosesNothingThatCanBeMeasured() => AnyLength.Sample(length =>
    {
        var other = length.Unit == LengthUnit.Inch ? LengthUnit.Millimetre : LengthUnit.Inch;
        Assert.True(Math.Abs(length.In(other).In(length.Unit).Value - length.Value) < 0.000_000_000_001m);
    });

    [Theory]
    [InlineData("12.00 mm", "12.00 mm (0.4724 in)")]
    [InlineData("12 mm", "12 mm (0.472 in)")]
    [InlineData("12.000 mm", "12.000 mm (0.47244 in)")]
    [InlineData("0.4995 in", "0.4995 in (12.687 mm)")]
    [InlineData("0.500 in", "0.500 in (12.70 mm)")]
    [InlineData("1/2 in", "0.5 in (12.70 mm)")]
    [InlineData("-0.02 mm", "-0.02 mm (-0.0008 in)")]
    [InlineData("1/64 in", "0.015625 in (0.397 mm)")]
    [InlineData("1/3 in", "0.333333 in (8.467 mm)")]
    public void ToStringInBoth_ByTheDigitsOfTheDrawing_RoundsTheOtherUnit(string text, string both)
    {
        Assert.True(LengthText.TryParse(text, LengthUnit.Millimetre, out var length, out _));
        Assert.Equal(both, length.ToStringInBoth());
    }

    private static decimal Power(int decimals) => Enumerable.Repeat(10m, decimals).Aggregate(1m, (product, ten) => product * ten);
}
