using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Parsing.Problems;
using Journal.Core.Parsing.KeyReaders;

namespace Journal.Core.Checking;

/// <summary>
/// Judges what readings and settings say. Whether a size is a slip shows only beside what is required of it, which may
/// stand in an entry before; so this check asks the figures instead of working it out a second time.
/// </summary>
internal static class Dimensions
{
    /// <summary>Reports every finding of the figures on readings and settings at the value that it is about.</summary>
    /// <param name="journal">The whole journal: what is required may stand in an earlier entry.</param>
    /// <param name="values">Where each size, speed and feed is written, one for each key of a map.</param>
    /// <param name="log">Takes the problems.</param>
    public static void Check(MakerJournal journal, IEnumerable<WrittenValue> values, ProblemLog log)
    {
        var places = values.ToDictionary(written => (written.Map, written.Key), written => written.Value);
        foreach (var finding in Readings.Of(journal).Findings.Concat(Settings.Of(journal).Findings))
        {
            // A finding without a written value here was reported when its key was read.
            if (places.TryGetValue((finding.Place, finding.Key), out var value))
            {
                DimensionFaults.Report(log, finding.Key, value, finding.Fault);
            }
        }
    }
}
