using Journal.Core.Model;
using Journal.Core.Reading.Checks;
using Journal.Core.Reading.Files;
using Journal.Core.Reading.Problems;
using Journal.Core.Reading.Shapes;
using Journal.Core.Reading.Yaml;
using Journal.Core.Trade;

namespace Journal.Core.Reading;

/// <summary>What reading a journal gave: the journal, and every problem in the order of files and lines.</summary>
/// <param name="Journal">What could be read; null where there is no journal at all.</param>
/// <param name="Problems">All problems of all files.</param>
public sealed record JournalReading(MakerJournal? Journal, IReadOnlyList<Problem> Problems)
{
    /// <summary>Whether something stops publishing.</summary>
    public bool HasErrors => Journal is null || Problems.Any(problem => problem.Severity == Severity.Error);

    /// <summary>Whether something keeps the exit status from being 0.</summary>
    public bool IsFlawed => Journal is null || Problems.Any(problem => problem.Severity != Severity.Warning);
}

/// <summary>Reads a journal folder.</summary>
public static class JournalReader
{
    /// <summary>
    /// Reads everything that the maker wrote and holds the files against each other. Nothing written in them makes
    /// this throw: whatever is wrong comes back as a problem.
    /// </summary>
    /// <param name="root">The folder that holds <c>journal.yaml</c>.</param>
    /// <param name="today">The date after which an entry lies in the future.</param>
    public static JournalReading Read(string root, DateOnly today)
    {
        var log = new ProblemLog();
        if (!File.Exists(Path.Combine(root, "journal.yaml")))
        {
            log.Add(ProblemTable.NoJournal, new Place("journal.yaml", 1, 1));
            return new JournalReading(null, log.Problems);
        }

        var folder = JournalFolder.Survey(root, log);
        var scopes = new List<FileScope>();
        FileScope ScopeOf(string file, Vocabulary vocabulary)
        {
            var scope = new FileScope(file, vocabulary, today);
            scopes.Add(scope);
            return scope;
        }

        var head = new JournalFileReader(folder, ScopeOf("journal.yaml", VocabularyReader.Shared)).Read();
        if (head is null)
        {
            return new JournalReading(null, InOrder(scopes, log));
        }

        var crib = folder.HasTools ? ReadCrib(folder, ScopeOf("tools.yaml", head.Vocabulary)) : [];
        var builds = folder.Builds
            .Select(build => new BuildReader(folder, ScopeOf($"{build}/build.yaml", head.Vocabulary), head.Units).Read(build))
            .OfType<Build>()
            .ToArray();
        var drafts = ReadEntries(folder, builds, head.Vocabulary, today, scopes);
        var plans = folder.Plans.Select(plan => new PlanReader(folder, ScopeOf(plan, head.Vocabulary)).Read()).OfType<Plan>().ToArray();

        var ids = new Ids(scopes.SelectMany(scope => scope.Definitions).Concat(Addresses(drafts)), log);
        ids.Check(scopes.SelectMany(scope => scope.Mentions));
        Clock.Check(scopes.SelectMany(scope => scope.Clock), log);
        var complete = Complete(builds, drafts, ids, log);
        CheckFinished(complete, drafts, log);
        SnagsCleared(complete, log);

        var journal = head with
        {
            Tools = [.. crib.Concat(drafts.SelectMany(draft => draft.Draft.ToolsDefined)).DistinctBy(tool => tool.Id)],
            Builds = [.. complete.OrderBy(build => build.Id)],
            Plans = plans,
        };
        HiddenTargets.Check(journal, today, log);
        return new JournalReading(journal, InOrder(scopes, log));
    }

    private static IReadOnlyList<Tool> ReadCrib(JournalFolder folder, FileScope scope)
    {
        if (TextFile.Read(folder.PathOf(scope.File), scope.File, scope.Log) is not { } text)
        {
            return [];
        }

        return YamlReader.ReadList(text, scope.File, scope.Log) is { } crib ? ToolShape.ReadCrib(crib, scope) : [];
    }

    private static List<(EntryDraft Draft, FileScope Scope)> ReadEntries(
        JournalFolder folder, Build[] builds, Vocabulary vocabulary, DateOnly today, List<FileScope> scopes)
    {
        var byFolder = builds.ToDictionary(build => build.Folder);
        var files = folder.Entries.Where(entry => byFolder.ContainsKey(entry.Build)).ToArray();
        var read = new (EntryDraft? Draft, FileScope Scope)[files.Length];
        Parallel.For(0, files.Length, i =>
        {
            var scope = new FileScope(files[i].Entry, vocabulary, today);
            read[i] = (new EntryReader(folder, byFolder[files[i].Build], scope).Read(), scope);
        });
        scopes.AddRange(read.Select(one => one.Scope));
        return [.. read.Where(one => one.Draft is not null).Select(one => (one.Draft!, one.Scope)).OrderBy(one => one.Item1.Entry.Date).ThenBy(one => one.Item1.Entry.File, StringComparer.Ordinal)];
    }

    // Two entries of one name in different folders of a build would get one page.
    private static IEnumerable<Definition> Addresses(IEnumerable<(EntryDraft Draft, FileScope Scope)> drafts) =>
        drafts.Select(draft => new Definition(IdKind.Entry, draft.Draft.Entry.Build, draft.Draft.Entry.Id.Value, draft.Scope.Start));

    private static Build[] Complete(Build[] builds, List<(EntryDraft Draft, FileScope Scope)> drafts, Ids ids, ProblemLog log)
    {
        var byBuild = drafts.ToLookup(draft => draft.Draft.Entry.Build, draft => draft.Draft.Entry);
        var byDate = builds.DistinctBy(build => build.Id).ToDictionary(build => build.Id, build => byBuild[build.Id].ToLookup(entry => entry.Date, entry => entry.Id));
        var links = new Links(ids, byDate, log);
        foreach (var twin in builds.GroupBy(build => build.Id).SelectMany(same => same.Skip(1).Select(build => (build, first: same.First()))))
        {
            log.Add(ProblemTable.SameAddress, new Place($"{twin.build.Folder}/build.yaml", 1, 1), "build", twin.first.Folder);
        }

        return [.. builds.DistinctBy(build => build.Id).Select(build => build with
        {
            Entries = [.. byBuild[build.Id].DistinctBy(entry => entry.Id).Select(links.Resolve).OrderBy(entry => entry.Date).ThenBy(entry => entry.Id)],
        })];
    }

    private static void CheckFinished(Build[] builds, List<(EntryDraft Draft, FileScope Scope)> drafts, ProblemLog log)
    {
        var claims = drafts.ToLookup(draft => draft.Draft.Entry.Build, draft => draft.Scope.Finished);
        foreach (var build in builds)
        {
            FinishedParts.Check(build, claims[build.Id].SelectMany(claim => claim), log);
        }
    }

    private static void SnagsCleared(Build[] builds, ProblemLog log)
    {
        foreach (var build in builds)
        {
            var cleared = new Dictionary<Id<Snag>, Id<Entry>>();
            foreach (var (entry, snag) in build.Entries.SelectMany(entry => entry.Cleared.Select(snag => (entry, snag))))
            {
                if (!cleared.TryAdd(snag, entry.Id))
                {
                    log.Add(ProblemTable.ClearedTwice, new Place(entry.File, 1, 1), snag, cleared[snag]);
                }
            }
        }
    }

    private static Problem[] InOrder(List<FileScope> scopes, ProblemLog log) =>
        [.. scopes.SelectMany(scope => scope.Log.Problems).Concat(log.Problems).OrderBy(problem => problem.Place).ThenBy(problem => problem.Kind.Code, StringComparer.Ordinal)];
}
