using Journal.Core.Import;

namespace Journal.Core.Tests.Import;

public sealed class DateFormTests
{
    [Theory]
    [InlineData("dd.mm.yyyy", "03.10.2025")]
    [InlineData("d.m.yyyy", "3.10.2025")]
    [InlineData("mm/dd/yyyy", "10/3/2025")]
    [InlineData("yyyy-mm-dd", " 2025-10-03 ")]
    [InlineData("yyyymmdd", "20251003")]
    [InlineData("d mmm yy", "3 October 25")]
    [InlineData("mmm d, yyyy", "Oct. 3, 2025")]
    public void Form_AsTold_IsRead(string form, string text)
    {
        Assert.True(DateForm.Of(form)!.TryRead(text, out var date));
        Assert.Equal(new DateOnly(2025, 10, 3), date);
    }

    [Theory]
    [InlineData("dd.mm.yyyy", "31.02.2025")]
    [InlineData("dd.mm.yyyy", "10/03/2025")]
    [InlineData("mm/dd/yyyy", "13/10/2025")]
    [InlineData("yyyy-mm-dd", "2025-10-03T20:15")]
    [InlineData("d mmm yyyy", "3 foo 2025")]
    public void Form_Otherwise_IsNoDate(string form, string text) => Assert.False(DateForm.Of(form)!.TryRead(text, out _));

    [Theory]
    [InlineData("dd.mm")]
    [InlineData("day.month.year")]
    [InlineData("")]
    [InlineData("dd.dd.yyyy")]
    public void Form_ThatIsNone_IsRefused(string form) => Assert.Null(DateForm.Of(form));
}
