using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Parsing.Problems;

namespace Journal.Core.Checking;

/// <summary>Finds links from texts that are shown to things that are not: on the site such a link is plain text.</summary>
internal static class HiddenTargets
{
    /// <summary>Warns of each such link in an entry that is shown on a day.</summary>
    /// <param name="journal">The journal with all its entries, hidden ones too.</param>
    /// <param name="today">The day that <c>publish: after</c> is compared with.</param>
    /// <param name="log">Takes the warnings.</param>
    public static void Check(MakerJournal journal, DateOnly today, ProblemLog log)
    {
        var visibility = new Visibility(journal, today);
        var entries = journal.Builds.SelectMany(build => build.Entries).ToList();
        var (read, learned) = (entries.Select(entry => entry.Ref).ToHashSet(), entries.SelectMany(entry => entry.Lessons).Select(lesson => lesson.Id).ToHashSet());
        foreach (var link in entries.Where(visibility.Shows).SelectMany(entry => entry.Body.Links))
        {
            if (link.Target is { } target && IsRead(target) && !visibility.Shows(target))
            {
                log.Add(ProblemTable.HiddenTarget, link.Place, link.Written);
            }
        }

        // A target in a file that could not be read is not hidden: that file has a problem of its own.
        bool IsRead(LinkTarget target) => target.Kind switch
        {
            LinkKind.Entry => read.Contains(new EntryRef(target.Build!.Value, new(target.Id))),
            LinkKind.Lesson => learned.Contains(new(target.Id)),
            _ => true,
        };
    }
}
