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
    public static void Check(MakerJournal journal, IEnumerable<WrittenValue> values, ProblemLog log)
    {
        var places = values.ToDictionary(written => (written.Map, written.Key), written => written.Value);
        foreach (var finding in Readings.Of(journal).Findings.Concat(Settings.Of(journal).Findings))
        {
            // What has no value of its own is told by its own reader.
            if (places.TryGetValue((finding.Place, finding.Key), out var value))
            {
                DimensionFaults.Report(log, finding.Key, value, finding.Fault);
            }
        }
    }
}
