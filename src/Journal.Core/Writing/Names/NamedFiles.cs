using Journal.Core.Model;
using Journal.Core.Parsing.Files;
using Journal.Core.Parsing.Problems;
using Journal.Core.Writing.Files;

namespace Journal.Core.Writing.Names;

/// <summary>The files of a journal in which words stand, with the names in them.</summary>
/// <param name="root">The journal's folder.</param>
/// <param name="journal">The journal as read.</param>
internal sealed class NamedFiles(string root, MakerJournal journal)
{
    private const string Head = "journal.yaml";

    private readonly JournalFolder folder = JournalFolder.Survey(root, new ProblemLog());

    /// <summary>The files that hold any of some words, in order; or the first that holds one and cannot be read.</summary>
    /// <param name="words">The words.</param>
    /// <param name="besides">A file that is wanted whatever it holds; null for none.</param>
    public (IReadOnlyList<NamedFile> Files, string? Unreadable) Holding(IReadOnlyCollection<string> words, string? besides = null)
    {
        var kinds = Kinds().ToList();
        var found = new NamedFile?[kinds.Count];
        var unreadable = new string?[kinds.Count];
        Parallel.For(0, kinds.Count, i =>
        {
            var (file, read) = kinds[i];
            if (MakersFile.Read(folder.PathOf(file)) is not { } makers)
            {
                unreadable[i] = file;
            }
            else if (file == besides || words.Any(word => makers.Text.Contains(word, StringComparison.Ordinal)))
            {
                found[i] = read(makers);
                unreadable[i] = found[i] is null ? file : null;
            }
        });
        return ([.. found.OfType<NamedFile>()], unreadable.FirstOrDefault(file => file is not null));
    }

    private IEnumerable<(string File, Func<MakersFile, NamedFile?> Read)> Kinds()
    {
        yield return (Head, makers => NamedFile.OfYaml(Head, makers, new NamesInYaml(null, _ => false, 0).OfJournal));
        if (folder.HasTools)
        {
            yield return (Lines.Crib, makers => NamedFile.OfYaml(Lines.Crib, makers, new NamesInYaml(null, _ => false, 0).OfCrib));
        }

        foreach (var plan in folder.Plans)
        {
            yield return (plan, makers => NamedFile.OfYaml(plan, makers, new NamesInYaml(null, _ => false, 0).OfBuild));
        }

        foreach (var build in folder.Builds)
        {
            var file = $"{build}/build.yaml";
            yield return (file, makers => NamedFile.OfYaml(file, makers, new NamesInYaml(JournalFolder.NameOf(build), PartsOf(build), 0).OfBuild));
        }

        foreach (var (build, entry) in folder.Entries)
        {
            yield return (entry, makers => NamedFile.OfEntry(entry, makers, JournalFolder.NameOf(build), PartsOf(build)));
        }
    }

    private Func<string, bool> PartsOf(string build) =>
        journal.Builds.FirstOrDefault(one => one.Folder == build) is { } found ? part => found.HasPart(new(part)) : _ => false;
}
