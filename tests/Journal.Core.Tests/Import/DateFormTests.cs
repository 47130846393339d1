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

    // Read in one way only: by ISO 8601, by a month's name, or because no month is above 12.
    [Theory]
    [InlineData("2023-11-05")]
    [InlineData("20231105")]
    [InlineData("5 Nov 2023")]
    [InlineData("5. November 2023")]
    [InlineData("5th Nov 23")]
    [InlineData("5-Nov-2023")]
    [InlineData("November 5, 2023")]
    [InlineData("Nov 5th 2023")]
    [InlineData("5 novembre 2023")]
    [InlineData("2023/11/05")]
    public void Untold_OneWayOnly_IsRead(string text) => Assert.Equal(new DateOnly(2023, 11, 5), DateForms.Untold.Read(text).Date);

    [Theory]
    [InlineData("21/11/2023", "2023-11-21")]
    [InlineData("11/21/2023", "2023-11-21")]
    [InlineData("03.03.2024", "2024-03-03")]
    public void Untold_NumbersThatLeaveNoChoice_AreRead(string text, string date) => Assert.Equal(date, DateForms.Untold.Read(text).Date?.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));

    [Theory]
    [InlineData("12.11.23", "dd.mm.yy", "mm.dd.yy", "yy.mm.dd")]
    [InlineData("25.12.24", "dd.mm.yy", "yy.mm.dd")]
    [InlineData("03/04/2023", "dd/mm/yyyy", "mm/dd/yyyy")]
    public void Untold_NumbersThatLeaveAChoice_AreAskedAbout(string text, params string[] forms)
    {
        var reading = DateForms.Untold.Read(text);

        Assert.Null(reading.Date);
        Assert.Equal(forms, reading.Open!.CouldBe.Select(form => form.Written));
    }

    [Theory]
    [InlineData("12.11.23", "2023-11-12")]
    [InlineData("03/04/2023", "2023-04-03")]
    [InlineData("2023-11-05", "2023-11-05")]
    [InlineData("Oct. 3, 2025", "2025-10-03")]
    public void Told_SeveralForms_ReadsThemAllAndIso(string text, string date) =>
        Assert.Equal(date, DateForms.Of(["dd.mm.yy, dd/mm/yyyy,mmm d, yyyy"])!.Read(text).Date?.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));

    // Who says that the day comes first has written a wrong date here, and not one of the other form.
    [Fact]
    public void Told_AnotherDateOfThatShape_IsNone()
    {
        var reading = DateForms.Of(["dd/mm/yyyy"])!.Read("11/21/2023");

        Assert.Equal((null, null), (reading.Date, reading.Open));
    }

    [Theory]
    [InlineData("dd.mm.yyyy,nonsense")]
    [InlineData("dd.mm")]
    public void Told_WhatIsNoForm_IsRefused(string text) => Assert.Null(DateForms.Of([text]));

    [Theory]
    [InlineData("Boring on 5 Nov 2023, late", "2023-11-05")]
    [InlineData("head-21.11.2023-second", "2023-11-21")]
    [InlineData("M6 x 1.0, 12 off", null)]
    [InlineData("Thread 3/8-16", null)]
    [InlineData("5 boring 2023", null)]
    public void FindIn_ATitle_TakesDatesAndNothingElse(string text, string? date) =>
        Assert.Equal(date, DateForms.Untold.FindIn(text).Date?.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
}
