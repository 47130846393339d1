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
            .SelectMany(build => build.Entries.SelectMany(entry => entry.Settings.Select(setting => SettingSums.Of(build, entry, setting, findings))))
            .ToList();
        return new(all, Groups(all), [.. findings.OrderBy(finding => finding.Place)]);
    }

    private static List<SettingGroup> Groups(IEnumerable<SettingFigure> settings) =>
        [.. settings
            .GroupBy(setting => (setting.Operation, Material: setting.Material?.Family, Cutter: setting.Cutter?.Trim().ToUpperInvariant()))
            .OrderBy(group => group.Key.Operation)
            .ThenBy(group => group.Key.Material?.Value, StringComparer.Ordinal)
            .ThenBy(group => group.Key.Cutter, StringComparer.Ordinal)
            .Select(group => new SettingGroup(
                group.Key.Operation,
                group.Key.Material,
                group.First().Cutter?.Trim(),
                [.. group.OrderBy(setting => setting.Date)]))];
}
