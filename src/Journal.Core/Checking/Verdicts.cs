using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Parsing.Problems;

namespace Journal.Core.Checking;

/// <summary>Finds settings whose verdict says nothing that figures understand: they would count as tried, and never as worked or failed.</summary>
internal static class Verdicts
{
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
