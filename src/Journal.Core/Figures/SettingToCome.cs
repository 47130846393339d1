using Journal.Core.Model;
using Journal.Core.Trade;

namespace Journal.Core.Figures;

/// <summary>A speed, feed and depth that no entry has yet.</summary>
public static class SettingToCome
{
    /// <summary>What is wrong with one, or a likely slip; null where nothing is.</summary>
    /// <param name="journal">The journal.</param>
    /// <param name="build">The build that it was used for.</param>
    /// <param name="job">What was done with it.</param>
    /// <param name="setting">The setting, as written.</param>
    public static Fault? FaultOf(MakerJournal journal, Build build, Job job, Setting setting)
    {
        var place = new Place("", 1, 1);
        var entry = new Entry { Id = new("tonight"), Build = build.Id, File = "", Title = "", Date = DateOnly.MaxValue, Jobs = [job], Body = Body.Empty, Settings = [setting with { Place = place }] };
        var changed = journal with { Builds = [build with { Entries = [entry] }] };
        return Settings.Of(changed).Findings.FirstOrDefault(finding => finding.Place == place)?.Fault;
    }
}
