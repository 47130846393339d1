using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Reading.Problems;

namespace Journal.Core.Reading.Checks;

/// <summary>Finds links of texts that will be seen to what will not: on the site they are plain text.</summary>
internal static class HiddenTargets
{
    public static void Check(MakerJournal journal, DateOnly today, ProblemLog log)
    {
        var showing = new Showing(journal, today);
        var links = journal.Builds.SelectMany(build => build.Entries).Where(showing.Shows).SelectMany(entry => entry.Body.Links);
        foreach (var link in links.Where(link => link.Target is { } target && !showing.Shows(target)))
        {
            log.Add(ProblemTable.HiddenTarget, link.Place, link.Written);
        }
    }
}
