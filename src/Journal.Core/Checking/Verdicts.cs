using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Parsing.Problems;

namespace Journal.Core.Checking;

/// <summary>Finds settings whose verdict the figures do not understand: they count as tried, and neither as worked nor as failed.</summary>
internal static class Verdicts
{
    /// <summary>Warns of each such verdict; a setting without a verdict is in order.</summary>
    public static void Check(MakerJournal journal, ProblemLog log)
    {
        foreach (var setting in journal.Builds.SelectMany(build => build.Entries).SelectMany(entry => entry.Settings))
        {
            if (setting.Verdict is { } verdict && SettingVerdicts.Of(verdict) == SettingVerdict.Unclear)
            {
                log.Add(ProblemTable.VerdictUnclear, setting.Place, verdict);
            }
        }
    }
}
