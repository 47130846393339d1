using Journal.Core.Model;
using Journal.Core.Parsing.Values;

namespace Journal.Core.Tests.Parsing;

public sealed class HoursTests
{
    [Theory]
    [InlineData("2.75", 165)]
    [InlineData("2h45", 165)]
    [InlineData("2h 45m", 165)]
    [InlineData("2 h 45 min", 165)]
    [InlineData("2 hours 45 minutes", 165)]
    [InlineData("45m", 45)]
    [InlineData("90m", 90)]
    [InlineData("2:45", 165)]
    [InlineData("0:05", 5)]
    [InlineData("PT2H45M", 165)]
    [InlineData("2h05", 125)]
    [InlineData("2h5", 125)]
    [InlineData("1.5h", 90)]
    [InlineData("3", 180)]
    [InlineData("010", 600)]
    [InlineData(".5", 30)]
    [InlineData("19:10-21:55", 165)]
    [InlineData("19:10 - 21:55", 165)]
    [InlineData("19:10–21:55", 165)]
    [InlineData("23:10-00:40", 90)]
    [InlineData("22:00-24:00", 120)]
    [InlineData("9:05-10:00", 55)]
    public void Hours_EveryForm_ReadToWholeMinutesQuotedOrNot(string written, int minutes)
    {
        foreach (var form in new[] { written, $"\"{written}\"", $"'{written}'", $"[{written}]", $"[\"{written}\"]", $"\n  - {written}", $"\n  - \"{written}\"" })
        {
            var (entry, problems) = JournalOnDisk.ReadEntry($"part: head\noperation: boring\nhours: {form}");

            Assert.Empty(JournalOnDisk.Lines(problems));
            Assert.Equal(minutes, entry!.Time.Count);
        }
    }

    [Theory]
    [InlineData("[1h, 45m, 19:10-19:40]", 135)]
    [InlineData("[0.25, \"2:45\", PT1H]", 240)]
    [InlineData("\n  - 19:10-20:00\n  - 20:30-21:00\n  - 0.5", 110)]
    [InlineData("[2:45, 1:15]", 240)]
    public void Hours_List_AddsUp(string written, int minutes)
    {
        var (entry, problems) = JournalOnDisk.ReadEntry($"part: head\noperation: boring\nhours: {written}");

        Assert.Empty(JournalOnDisk.Lines(problems));
        Assert.Equal(minutes, entry!.Time.Count);
    }

    [Theory]
    [InlineData("0.025", 2)]
    [InlineData("0.075", 5)]
    [InlineData("0.0249", 1)]
    [InlineData("0.125", 8)]
    [InlineData("1.3333", 80)]
    [InlineData("PT0.5M", 1)]
    [InlineData("PT1M29.9S", 1)]
    public void Hours_DecimalBetweenMinutes_RoundsHalfUp(string written, int minutes)
    {
        Assert.True(Duration.TryParse(written, out var time, out _));
        Assert.Equal(minutes, time.Count);
    }

    // The durations that ISO 8601-1 gives as examples, and forms that it allows, from memory; the standard is not free to read.
    // RFC 3339, appendix A, repeats the grammar: dur-time = "T" (dur-hour / dur-minute / dur-second).
    [Theory]
    [InlineData("PT36H", 2160)]
    [InlineData("P1DT12H", 2160)]
    [InlineData("PT1H30M", 90)]
    [InlineData("PT0.5H", 30)]
    [InlineData("PT0,5H", 30)]
    [InlineData("PT90M", 90)]
    [InlineData("P1D", 1440)]
    [InlineData("PT2H45M30S", 166)]
    public void Duration_Iso8601Example_IsRead(string written, int minutes)
    {
        Assert.True(Duration.TryParse(written, out var time, out _));
        Assert.Equal(minutes, time.Count);
    }

    [Theory]
    [InlineData("2:75")]
    [InlineData("2h75")]
    [InlineData("about two")]
    [InlineData("2,75")]
    [InlineData("1e3")]
    [InlineData("PT")]
    [InlineData("P")]
    [InlineData("PT1.5H30M")]
    [InlineData("P2H")]
    [InlineData("19:10-")]
    [InlineData("19:70-21:00")]
    [InlineData("25:10-26:00")]
    [InlineData("24:00-01:00")]
    [InlineData("99999999999999999999999999999")]
    [InlineData("2h45 and a bit")]
    public void Hours_NoForm_IsReportedWhereItStands(string written)
    {
        var (_, problems) = JournalOnDisk.ReadEntry($"part: head\noperation: boring\nhours: \"{written}\"");

        var problem = Assert.Single(problems);
        Assert.Equal("drill/2025-10-03.md:4:8 not-a-time", $"{problem.Place} {problem.Kind.Code}");
        Assert.Contains(written, problem.Message, StringComparison.Ordinal);
        Assert.Contains("`2h45`", problem.Remedy, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("0")]
    [InlineData("0.001")]
    [InlineData("0:00")]
    [InlineData("-2")]
    [InlineData("-2h45")]
    [InlineData("−1h")]
    [InlineData("19:10-19:10")]
    public void Hours_NothingOrLess_IsReportedWithWhatWasWritten(string written)
    {
        var (_, problems) = JournalOnDisk.ReadEntry($"part: head\noperation: boring\nhours: {written}");

        var problem = Assert.Single(problems);
        Assert.Equal("not-positive", problem.Kind.Code);
        Assert.Equal($"`hours` is {written}; the minimum is one minute.", problem.Message);
    }

    [Theory]
    [InlineData("hours: []")]
    [InlineData("hours:")]
    [InlineData("hours: ~")]
    [InlineData("hours: [~]")]
    [InlineData("title: Boring")]
    public void Hours_LeftOut_IsReported(string line)
    {
        var (_, problems) = JournalOnDisk.ReadEntry($"part: head\noperation: boring\n{line}");

        Assert.Equal(["drill/2025-10-03.md:2:1 hours-missing"], JournalOnDisk.Lines(problems));
    }

    [Fact]
    public void Hours_Exactly24OnADateOverBuilds_IsFine()
    {
        using var journal = JournalOnDisk.WithDrill();
        journal.Write("drill/2025-10-03.md", "---\npart: head\nhours: 12h\n---\n");
        journal.Write("vice/build.yaml", "title: Vice\n");
        journal.Write("vice/2025-10-03.md", "---\noperation: filing\nhours: 12h\n---\n");

        Assert.Empty(journal.Problems());
    }

    [Fact]
    public void Hours_Over24OnADateOverBuilds_ReportedOnceWhereItSpillsOver()
    {
        using var journal = JournalOnDisk.WithDrill();
        journal.Write("drill/2025-10-03.md", "---\npart: head\nhours: 12h\n---\n");
        journal.Write("vice/build.yaml", "title: Vice\n");
        journal.Write("vice/2025-10-03.md", "---\njobs:\n  - hours: 12h\n  - hours: 1m\n  - hours: 5h\n---\n");

        var problem = Assert.Single(journal.Read().Problems);
        Assert.Equal("vice/2025-10-03.md:4:12 day-too-long", $"{problem.Place} {problem.Kind.Code}");
        Assert.Equal("With this, 2025-10-03 has 24h01 of work, more than 24 hours.", problem.Message);
    }

    [Fact]
    public void Hours_ThousandsOfEndlessOnes_DoNotOverflow()
    {
        var (_, problems) = JournalOnDisk.ReadEntry($"part: head\nhours: [{string.Join(", ", Enumerable.Repeat("9000", 6000))}]");

        Assert.Equal(["drill/2025-10-03.md:3:8 day-too-long"], JournalOnDisk.Lines(problems));
    }

    [Fact]
    public void Overlap_TwoJobsOfOneEvening_NamesTheOther()
    {
        var (_, problems) = JournalOnDisk.ReadEntry("jobs:\n  - {part: head, hours: [18:00-18:30, \"19:10-20:40\"]}\n  - {part: quill, hours: [1h, 20:30-21:00]}");

        var problem = Assert.Single(problems);
        Assert.Equal("drill/2025-10-03.md:4:31 overlap", $"{problem.Place} {problem.Kind.Code}");
        Assert.Equal("20:30-21:00 overlaps 19:10-20:40 in drill/2025-10-03.md, line 3.", problem.Message);
    }

    [Fact]
    public void Overlap_TwoBuildsOnOneDate_IsReported()
    {
        using var journal = JournalOnDisk.WithDrill();
        journal.Write("drill/2025-10-03.md", "---\npart: head\nhours: 19:00-21:00\n---\n");
        journal.Write("vice/build.yaml", "title: Vice\n");
        journal.Write("vice/2025-10-03.md", "---\nhours: 20:59-22:00\n---\n");
        journal.Write("vice/2025-10-04.md", "---\nhours: 19:00-21:00\n---\n");

        Assert.Equal(["vice/2025-10-03.md:2:8 overlap"], journal.Problems());
    }

    [Fact]
    public void Overlap_PastMidnight_BelongsToTheEntrysDate()
    {
        using var journal = JournalOnDisk.WithDrill();
        journal.Write("drill/2025-10-03.md", "---\npart: head\nhours: [22:00-01:30, 23:50-00:10]\n---\n");
        journal.Write("drill/2025-10-04.md", "---\npart: head\nhours: 00:30-02:00\n---\n");

        var problem = Assert.Single(journal.Read().Problems);
        Assert.Equal("drill/2025-10-03.md:3:22 overlap", $"{problem.Place} {problem.Kind.Code}");
        Assert.Equal("23:50-00:10 overlaps 22:00-01:30 in drill/2025-10-03.md, line 3.", problem.Message);
    }

    [Fact]
    public void Overlap_OneEndsAsTheOtherBegins_IsNone()
    {
        var (_, problems) = JournalOnDisk.ReadEntry("part: head\nhours: [19:00-20:00, 20:00-21:00]");

        Assert.Empty(problems);
    }

    [Theory]
    [InlineData("1h10", 70)]
    [InlineData("half", 83)]
    [InlineData("most", 124)]
    [InlineData("0.5", 30)]
    [InlineData("2:45", 165)]
    [InlineData("0", 0)]
    public void SetUp_EveryForm_IsAPartOfTheHours(string written, int minutes)
    {
        var (entry, problems) = JournalOnDisk.ReadEntry($"part: head\noperation: boring\nhours: 2h45\nsetup: {written}");

        Assert.Empty(problems);
        Assert.Equal(new Minutes(minutes), entry!.Jobs[0].SetUp);
    }

    [Fact]
    public void SetUp_LongerThanItsJob_IsReported()
    {
        var (_, problems) = JournalOnDisk.ReadEntry("part: head\nhours: 1h\nsetup: 1h01");

        var problem = Assert.Single(problems);
        Assert.Equal("drill/2025-10-03.md:4:8 setup-too-long", $"{problem.Place} {problem.Kind.Code}");
        Assert.Equal("`setup` is 1h01, but the whole job took 1h.", problem.Message);
    }

    [Fact]
    public void SetUp_Beside_WrongHours_GivesOneProblemOnly()
    {
        var (_, problems) = JournalOnDisk.ReadEntry("part: head\nhours: long\nsetup: 1h");

        Assert.Equal(["drill/2025-10-03.md:3:8 not-a-time"], JournalOnDisk.Lines(problems));
    }
}
