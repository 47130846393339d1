using CsCheck;
using Journal.Core.Model;
using Journal.Core.Trade;

namespace Journal.Core.Tests.Trade;

public sealed class RequirementTests
{
    [Theory]
    [InlineData("12 H7", "12.000 mm", "12.018 mm")]
    [InlineData("12H7", "12.000 mm", "12.018 mm")]
    [InlineData("ø12 h6", "11.989 mm", "12.000 mm")]
    [InlineData("Ø12 h6", "11.989 mm", "12.000 mm")]
    [InlineData("⌀ 12 g6", "11.983 mm", "11.994 mm")]
    [InlineData("12 m6", "12.007 mm", "12.018 mm")]
    [InlineData("12 Js7", "11.991 mm", "12.009 mm")]
    [InlineData("12 ±0.02", "11.98 mm", "12.02 mm")]
    [InlineData("12 +/-0.02 mm", "11.98 mm", "12.02 mm")]
    [InlineData("12±0.02", "11.98 mm", "12.02 mm")]
    [InlineData("12 +0.018/0", "12.000 mm", "12.018 mm")]
    [InlineData("12 +0.018 0", "12.000 mm", "12.018 mm")]
    [InlineData("12 0/-0.011", "11.989 mm", "12.000 mm")]
    [InlineData("12 -0.016/-0.034", "11.966 mm", "11.984 mm")]
    [InlineData("12 −0.016 −0.034", "11.966 mm", "11.984 mm")]
    [InlineData("12 -0.01/+0.02", "11.99 mm", "12.02 mm")]
    [InlineData("12 +1/0", "12 mm", "13 mm")]
    [InlineData("11.98-12.02", "11.98 mm", "12.02 mm")]
    [InlineData("11.98–12.02 mm", "11.98 mm", "12.02 mm")]
    [InlineData("11.98 to 12.02", "11.98 mm", "12.02 mm")]
    [InlineData("0.4995 +0.0005/-0.0000 in", "0.4995 in", "0.5000 in")]
    [InlineData("1/2 in ± 1/64", "0.484375 in", "0.515625 in")]
    [InlineData("0.5 in ± 2 thou", "0.498 in", "0.502 in")]
    [InlineData("1/2-9/16 in", "0.5 in", "0.5625 in")]
    [InlineData("R5 ±0.1", "4.9 mm", "5.1 mm")]
    [InlineData("dia 12 ±0.1", "11.9 mm", "12.1 mm")]
    public void TryParse_Limits_GivesLeastAndGreatest(string text, string least, string greatest)
    {
        var requirement = Parse(text);
        Assert.Equal(RequirementKind.Limits, requirement.Kind);
        Assert.Equal(Read(least), requirement.Least);
        Assert.Equal(Read(greatest), requirement.Greatest);
        Assert.Equal(requirement.Unit, requirement.Least!.Value.Unit);
    }

    // 1/2 in is 12.7 mm, in the range over 10 up to 18 mm, where H8 is +27/0 micrometres (ISO 286-2).
    [Fact]
    public void TryParse_FitOfAnInchSize_ResolvesInMillimetres()
    {
        var requirement = Parse("1/2 H8 in");
        Assert.Equal(LengthUnit.Inch, requirement.Unit);
        Assert.Equal(12.727m, decimal.Round(requirement.Greatest!.Value.Millimetres, 9));
    }

    [Fact]
    public void TryParse_FitOfAnInchSize_HasTheSameLimitsInBothUnits() => Gen.Select(Gen.Int[1, 1000], Gen.Int[4, 13]).Sample((sixtyFourths, grade) =>
    {
        var nominal = new Length(sixtyFourths / 64m, LengthUnit.Inch);
        Assert.True(Fits.TryResolve(nominal, new("H", grade), out var limits, out _));
        var greatest = new Length(nominal.Millimetres + (limits.Upper / 1000), LengthUnit.Millimetre);
        Assert.Equal(greatest.In(LengthUnit.Inch), Parse($"{sixtyFourths}/64 H{grade} in").Greatest);
    });

    [Fact]
    public void TryParse_BareNumberWithoutGeneralTolerance_HasNoLimits()
    {
        var requirement = Parse("12.5");
        Assert.Equal(RequirementKind.Size, requirement.Kind);
        Assert.Null(requirement.Tolerance);
        Assert.Equal(new Length(12.5m, LengthUnit.Millimetre), requirement.Nominal);
    }

    [Fact]
    public void TryParse_BareNumber_TakesTheGeneralTolerance()
    {
        Assert.True(Requirement.TryParse("7/16", LengthUnit.Inch, new Length(0.005m, LengthUnit.Inch), out var requirement, out _));
        Assert.Equal(new Length(0.4325m, LengthUnit.Inch), requirement.Least);
        Assert.Equal(new Length(0.4425m, LengthUnit.Inch), requirement.Greatest);
        Assert.True(requirement.IsByGeneralTolerance);
    }

    [Fact]
    public void TryParse_BareMillimetresInAnInchBuild_ConvertsTheGeneralTolerance()
    {
        Assert.True(Requirement.TryParse("12 mm", LengthUnit.Inch, new Length(0.005m, LengthUnit.Inch), out var requirement, out _));
        Assert.Equal(new Length(12.127m, LengthUnit.Millimetre), requirement.Greatest);
    }

    [Theory]
    [InlineData("max 0.02")]
    [InlineData("max. 0.02 mm")]
    [InlineData("0.02 max")]
    [InlineData("≤ 0.02")]
    public void TryParse_AtMost_HasAGreatestOnly(string text)
    {
        var requirement = Parse(text);
        Assert.Equal((RequirementKind.AtMost, null, Read("0.02")), (requirement.Kind, requirement.Least, requirement.Greatest!.Value));
        Assert.Equal(Read("0.02"), requirement.Tolerance);
    }

    [Fact]
    public void TryParse_Thousandths_AreOfAnInch() => Assert.Equal(new Length(0.002m, LengthUnit.Inch), Parse("max 2 thou").Greatest);

    [Fact]
    public void TryParse_ToSuit_NamesTheFeature() => Assert.Equal(
        ("quill.diameter", null),
        (Parse("to suit quill.diameter").Suits, Parse("to suit quill.diameter").LeastBeyond));

    [Fact]
    public void TryParse_ToSuitWithDeviations_KeepsThem()
    {
        var requirement = Parse("to suit quill.outer-diameter +0.01/+0.03");
        Assert.Equal(
            ("quill.outer-diameter", Read("0.01"), Read("0.03")),
            (requirement.Suits, requirement.LeastBeyond!.Value, requirement.GreatestBeyond!.Value));
    }

    [Theory]
    [InlineData("M6x1-6H", "M6")]
    [InlineData("1/4-20 UNC", "1/4-20 UNC")]
    [InlineData("2 BA", "2 BA")]
    [InlineData("1/4 x 40 ME", "1/4 x 40 ME")]
    [InlineData("1/4 BSF", "1/4 BSF")]
    public void TryParse_Thread_FindsIt(string text, string designation) => Assert.Equal(designation, Parse(text).Thread?.Designation);

    [Theory]
    [InlineData("12 H99", FaultCode.UnknownFitGrade, 4)]
    [InlineData("12 Q7", FaultCode.UnknownFitLetter, 3)]
    [InlineData("12 H7/g6", FaultCode.LeftOver, 5)]
    [InlineData("600 H7", FaultCode.SizeOutOfRange, 0)]
    [InlineData("12 j9", FaultCode.NoSuchFit, 0)]
    [InlineData("1/0 in", FaultCode.DividedByZero, 2)]
    [InlineData("7/16", FaultCode.MissingUnit, 0)]
    [InlineData("7/16 H7", FaultCode.MissingUnit, 0)]
    [InlineData("12 mm ±0.001 in", FaultCode.MixedUnits, 7)]
    [InlineData("12.7 mm ± 1 thou", FaultCode.MixedUnits, 10)]
    [InlineData("0.5 in H7 mm", FaultCode.MixedUnits, 10)]
    [InlineData("11.98 mm - 0.5 in", FaultCode.MixedUnits, 11)]
    [InlineData("12.02-11.98", FaultCode.LeastAboveGreatest, 6)]
    [InlineData("12-12", FaultCode.LeastAboveGreatest, 3)]
    [InlineData("12 ±0", FaultCode.LeastAboveGreatest, 3)]
    [InlineData("12 +0.01/+0.01", FaultCode.LeastAboveGreatest, 3)]
    [InlineData("12,5 H7", FaultCode.CommaDecimal, 2)]
    [InlineData("12 ±0,02", FaultCode.CommaDecimal, 5)]
    [InlineData("12 +0.02", FaultCode.BadTolerance, 8)]
    [InlineData("12 +0.02/0.01", FaultCode.BadTolerance, 9)]
    [InlineData("12 ±", FaultCode.NotANumber, 4)]
    [InlineData("max", FaultCode.NotANumber, 3)]
    [InlineData("12 furlongs", FaultCode.UnknownUnit, 3)]
    [InlineData("1.2 cm", FaultCode.UnknownUnit, 4)]
    [InlineData("about right", FaultCode.NotANumber, 0)]
    [InlineData("to suit quill", FaultCode.NotAFeature, 8)]
    [InlineData("to suit", FaultCode.NotAFeature, 7)]
    [InlineData("to suit quill.diameter nicely", FaultCode.LeftOver, 23)]
    [InlineData("1/4-28 UNC", FaultCode.UnknownThread, 0)]
    [InlineData("12 ±0.02 or so", FaultCode.LeftOver, 9)]
    [InlineData("", FaultCode.Empty, 0)]
    public void TryParse_BadInput_NamesTheFaultItsPlaceAndARemedy(string text, FaultCode code, int offset)
    {
        Assert.False(Requirement.TryParse(text, LengthUnit.Millimetre, null, out _, out var fault));
        Assert.Equal((code, offset), (fault.Code, fault.Offset));
        Assert.NotEmpty(fault.What);
        Assert.NotEmpty(fault.Remedy);
    }

    [Fact]
    public void TryParse_AnyText_NeverThrowsAndAlwaysExplains() =>
        Gen.OneOf(
            Gen.String[Gen.Char["0123456789 ./,-+±øRHhgmintou\"x½–MBAUC≤#"], 0, 24],
            Gen.OneOf(
                "12",
                "1/2",
                "H7",
                " ",
                "mm",
                "in",
                "±",
                "+",
                "-",
                "/",
                "0",
                "0.02",
                "to suit ",
                "a.b",
                "max ",
                "M6",
                "x",
                "UNC",
                "thou",
                ",",
                "1-1/8").Array[0, 7].Select(words => string.Concat(words)))
        .Sample(text =>
        {
            if (!Requirement.TryParse(text, LengthUnit.Millimetre, new Length(0.1m, LengthUnit.Millimetre), out var requirement, out var fault))
            {
                Assert.InRange(fault.Offset, 0, text.Length);
                Assert.NotEmpty(fault.Remedy);
                return;
            }

            Assert.True(requirement is not { Least: { } least, Greatest: { } greatest } || least.Value < greatest.Value);
            Assert.All(
                new[] { requirement.Nominal, requirement.Least, requirement.Greatest }.OfType<Length>(),
                length => Assert.Equal(requirement.Unit, length.Unit));
        });

    private static Requirement Parse(string text)
    {
        Assert.True(Requirement.TryParse(text, LengthUnit.Millimetre, null, out var requirement, out var fault), fault?.What);
        return requirement;
    }

    private static Length Read(string text)
    {
        Assert.True(LengthText.TryParse(text, LengthUnit.Millimetre, out var length, out _));
        return length;
    }
}
