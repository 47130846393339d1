using Journal.Core.Model;
using Journal.Core.Parsing.KeyReaders;
using Journal.Core.Parsing.Problems;

namespace Journal.Core.Parsing.Checks;

/// <summary>Finds names that a thing had before and that another thing has now: links to the old name lead to the other one.</summary>
internal static class FormerNames
{
    /// <summary>Warns of each.</summary>
    /// <param name="former">The names of before.</param>
    /// <param name="isTaken">Whether a thing of the same kind has such a name now.</param>
    /// <param name="log">Takes the warnings.</param>
    public static void Check(IEnumerable<Definition> former, Func<Definition, bool> isTaken, ProblemLog log)
    {
        foreach (var name in former.Where(isTaken))
        {
            log.Add(ProblemTable.FormerNameTaken, name.Place, name.Id, name.Kind.ToWord());
        }
    }
}
