using Journal.Core.Trade;

namespace Journal.Core.Tests.Trade;

public sealed class ThreadsTests
{
    // Sizes and pitches: shared/threads.yaml, which names its sources; M7, M36x3 and Tr 12x3 by the form of ISO 261 and ISO 2902.
    [Theory]
    [InlineData("M6", "M6", 1.0, null)]
    [InlineData("m6", "M6", 1.0, null)]
    [InlineData("M6x0.75", "M6x0.75", 0.75, null)]
    [InlineData("M6 × 0.75", "M6x0.75", 0.75, null)]
    [InlineData("M36x3", "M36x3", 3.0, null)]
    [InlineData("Tr 12x3", "Tr 12x3", 3.0, null)]
    [InlineData("1/4-20 UNC", "1/4-20 UNC", null, 20.0)]
    [InlineData("1/4–20 UNC", "1/4-20 UNC", null, 20.0)]
    [InlineData("1/4-20", "1/4-20 UNC", null, 20.0)]
    [InlineData("#10-32 UNF", "#10-32 UNF", null, 32.0)]
    [InlineData("2 BA", "2 BA", 0.81, null)]
    [InlineData("2BA", "2 BA", 0.81, null)]
    [InlineData("1/4 x 40 ME", "1/4 x 40 ME", null, 40.0)]
    [InlineData("1/4x40", "1/4 x 40 ME", null, 40.0)]
    [InlineData("1/4 BSF", "1/4 BSF", null, 26.0)]
    [InlineData("G1/8", "G1/8", null, 28.0)]
    [InlineData("3/4-10 UNC", "3/4-10 UNC", null, 10.0)]
    [InlineData("1/8 NPT", "1/8 NPT", null, null)]
    public void TryParse_AsDrawingsWriteIt_FindsTheThread(string text, string designation, double? pitch, double? threadsPerInch)
    {
        Assert.True(Threads.LooksLikeOne(text));
        Assert.True(Threads.TryParse(text, out var thread, out _));
        Assert.Equal(designation, thread.Designation);
        Assert.Equal((decimal?)pitch, thread.Pitch);
        Assert.Equal((decimal?)threadsPerInch, thread.ThreadsPerInch);
    }

    [Theory]
    [InlineData("M6x1-6H", "M6", "6H", false)]
    [InlineData("M6-6g", "M6", "6g", false)]
    [InlineData("1/4-20 UNC-2B", "1/4-20 UNC", "2B", false)]
    [InlineData("M10x1 LH", "M10x1", null, true)]
    [InlineData("M6x1-6H LH", "M6", "6H", true)]
    public void TryParse_ToleranceClassAndHand_AreTakenOff(string text, string designation, string? tolerance, bool isLeftHanded)
    {
        Assert.True(Threads.TryParse(text, out var thread, out _));
        Assert.Equal((designation, tolerance, isLeftHanded), (thread.Designation, thread.Tolerance, thread.IsLeftHanded));
    }

    [Theory]
    [InlineData("M7")]
    [InlineData("M6x9")]
    [InlineData("M6x")]
    [InlineData("22 BA")]
    [InlineData("1/4-28 UNC")]
    [InlineData("1/4 UNX")]
    [InlineData("")]
    public void TryParse_NoSuchThread_NamesTheFault(string text)
    {
        Assert.False(Threads.TryParse(text, out _, out var fault));
        Assert.Equal(FaultCode.UnknownThread, fault.Code);
        Assert.NotEmpty(fault.Remedy);
    }

    [Fact]
    public void TryParse_OtherCountOfThreads_NamesTheOneOfTheTable()
    {
        Assert.False(Threads.TryParse("1/4-28 UNC", out _, out var fault));
        Assert.Contains("1/4-20 UNC", fault.Remedy, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("12 H7")]
    [InlineData("12 m6")]
    [InlineData("1/2 in")]
    [InlineData("11.98-12.02")]
    [InlineData("1-1/8")]
    public void LooksLikeOne_Dimension_DoesNot(string text) => Assert.False(Threads.LooksLikeOne(text));
}
