using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>What speed worked last time: every setting with what follows from it, gathered by operation, material and cutter.</summary>
public static class Settings
{
    /// <summary>Works out every setting of a journal.</summary>
    public static SettingFigures Of(MakerJournal journal)
    {
        var findings = new List<Finding>();
        var all = journal.Builds
            .SelectMany(build => build.Entries.Where(entry => entry.Jobs.Count > 0).SelectMany(entry => entry.Settings.Select(setting => SettingSums.Of(build, entry, setting, findings))))
            .ToList();
        return new(all, SettingGroup.Gather(all), [.. findings.OrderBy(finding => finding.Place)]);
    }
}
