using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Parsing.Problems;

namespace Journal.Core.Checking;

/// <summary>Finds links of texts that will be seen to what will not: on the site they are plain text.</summary>
internal static class HiddenTargets
{
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

        // What stands in a file that could not be read is told there, and is not hidden.
        bool IsRead(LinkTarget target) => target.Kind switch
        {
            LinkKind.Entry => read.Contains(new EntryRef(target.Build!.Value, new(target.Id))),
            LinkKind.Lesson => learned.Contains(new(target.Id)),
            _ => true,
        };
    }
}
