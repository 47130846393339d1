using Journal.Core.Checking;
using Journal.Core.Figures;
using Journal.Core.Parsing.Problems;

namespace Journal.Core.Tests.Parsing;

/// <summary>The demonstration journal has readings, mates and settings enough to be worth looking at.</summary>
public class DemonstrationReadingsTests
{
    private static readonly JournalReading Demonstration = JournalReader.Read(Folder(), DateOnly.MaxValue);

    [Fact]
    public void Demonstration_ButForPicturesMissing_HasNoProblem() =>
        Assert.Empty(Demonstration.Problems.Where(problem => problem.Kind != ProblemTable.PictureMissing).Select(problem => $"{problem.Place} {problem.Message}"));

    [Fact]
    public void Demonstration_Readings_AreFortyOrMoreWithSomeOutAndWhatBecameOfThem()
    {
        var readings = Readings.Of(Demonstration.Journal!).All;

        Assert.InRange(readings.Count, 40, int.MaxValue);
        Assert.InRange(readings.Count(reading => reading.IsOut), 3, readings.Count / 4);
        Assert.Contains(readings, reading => reading is { IsOut: true, Became: not null });
        Assert.Contains(readings, reading => reading is { IsOut: true, Departure: not null });
        Assert.Contains(readings, reading => reading is { IsOut: true, RightIn: not null });
        Assert.Contains(readings, reading => reading.Notes.Count > 0);
    }

    [Fact]
    public void Demonstration_Mates_AreThreeOrMoreMeasuredAndRequired() =>
        Assert.InRange(Mates.Of(Demonstration.Journal!).Count(mate => mate is { AsBuilt: not null, Least: not null, Greatest: not null }), 3, int.MaxValue);

    [Fact]
    public void Demonstration_Settings_AreFifteenOrMoreWithSpeedsThatWorkedAndChattered()
    {
        var settings = Settings.Of(Demonstration.Journal!).All;

        Assert.InRange(settings.Count(setting => setting.Speed is not null), 15, int.MaxValue);
        Assert.Contains(settings, setting => setting.Verdict == SettingVerdict.Worked);
        Assert.Contains(settings, setting => setting.Verdict == SettingVerdict.Chattered);
        Assert.Contains(settings, setting => setting.Verdict == SettingVerdict.Failed);
    }

    private static string Folder()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder!.FullName, "Journal.sln")))
        {
            folder = folder.Parent;
        }

        return Path.Combine(folder.FullName, "journal");
    }
}
