using System.Globalization;
using Journal.Core.Model;
using Journal.Core.Parsing.Problems;
using Journal.Core.Parsing.KeyReaders;

namespace Journal.Core.Parsing.Checks;

/// <summary>Finds the price of a kit that stands with the build and with an evening too: costs would hold it twice.</summary>
internal static class KitCosts
{
    /// <summary>Reports a kit that is bought in an entry for what <c>cost</c> of the build says too.</summary>
    public static void Check(Build build, IEnumerable<KitClaim> claims, ProblemLog log)
    {
        foreach (var claim in claims.Where(claim => claim.Cost == build.Cost && claim.Cost > 0))
        {
            log.Add(ProblemTable.KitPaidTwice, claim.Place, claim.Cost.ToString(CultureInfo.InvariantCulture), $"{build.Folder}/build.yaml");
        }
    }
}
