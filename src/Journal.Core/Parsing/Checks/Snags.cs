using Journal.Core.Model;
using Journal.Core.Parsing.Problems;
using Journal.Core.Parsing.KeyReaders;

namespace Journal.Core.Parsing.Checks;

/// <summary>Judges which snags are cleared: each once.</summary>
internal static class Snags
{
    /// <param name="entries">Where the entries clear what, in the order of their dates.</param>
    /// <param name="log">Where problems go.</param>
    public static void Check(IEnumerable<(Id<Entry> Entry, Mention Cleared)> entries, ProblemLog log)
    {
        var cleared = new Dictionary<(Id<Build>?, string), Id<Entry>>();
        foreach (var (entry, mention) in entries)
        {
            if (!cleared.TryAdd((mention.Build, mention.Id), entry))
            {
                log.Add(ProblemTable.ClearedTwice, mention.Place, mention.Id, cleared[(mention.Build, mention.Id)]);
            }
        }
    }
}
