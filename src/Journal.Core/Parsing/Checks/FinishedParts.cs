using Journal.Core.Model;
using Journal.Core.Parsing.Values;
using Journal.Core.Parsing.Problems;
using Journal.Core.Parsing.KeyReaders;

namespace Journal.Core.Parsing.Checks;

/// <summary>Judges what a build's entries say is finished: not before the first work, and not more pieces than there are.</summary>
internal static class FinishedParts
{
    /// <summary>Reports parts that are finished twice, before any work on them, or in more pieces than the build needs.</summary>
    public static void Check(Build build, IEnumerable<FinishedClaim> claims, ProblemLog log)
    {
        var firstWork = build.Entries
            .SelectMany(entry => entry.Jobs.SelectMany(job => job.Parts).Select(share => (share.Part, entry.Date)))
            .GroupBy(work => work.Part)
            .ToDictionary(work => work.Key, work => work.Min(one => one.Date));
        var quantities = build.Parts.ToDictionary(part => part.Id, part => part.Quantity);
        var finished = new Dictionary<Id<Part>, (int Pieces, Id<Entry> Entry)>();
        foreach (var claim in claims.OrderBy(claim => claim.Date).ThenBy(claim => claim.Place))
        {
            var (part, quantity) = (claim.Finished.Part, quantities[claim.Finished.Part]);
            var before = finished.GetValueOrDefault(part);
            var pieces = before.Pieces + (claim.Finished.Pieces ?? quantity - before.Pieces);
            if (firstWork.TryGetValue(part, out var first) && claim.Date < first)
            {
                log.Add(ProblemTable.FinishedBeforeWork, claim.Place, part, Dates.Write(claim.Date), Dates.Write(first));
            }

            if (pieces > quantity)
            {
                log.Add(ProblemTable.TooManyPieces, claim.Place, pieces, part, quantity);
            }
            else if (before.Pieces >= quantity)
            {
                log.Add(ProblemTable.FinishedTwice, claim.Place, part, before.Entry);
            }

            finished[part] = (Math.Min(pieces, quantity), claim.Entry);
        }
    }
}
