using Journal.Core.Model;
using Journal.Core.Parsing.Checks;
using Journal.Core.Parsing.Files;
using Journal.Core.Parsing.KeyReaders;
using Journal.Core.Parsing.Problems;
using Journal.Core.Parsing.Yaml;
using Journal.Core.Trade;

namespace Journal.Core.Parsing;

/// <summary>What the files of a journal say, before it is checked against the figures.</summary>
/// <param name="Journal">What could be read; null where <c>journal.yaml</c> is not there or cannot be read.</param>
/// <param name="Values">Where sizes, speeds and feeds are written.</param>
/// <param name="Log">Takes problems of more than one file.</param>
/// <param name="Scopes">The files with their own problems.</param>
internal sealed record ParsedJournal(MakerJournal? Journal, IEnumerable<WrittenValue> Values, ProblemLog Log, IReadOnlyList<FileScope> Scopes)
{
    /// <summary>All problems found so far, in the order of files and lines.</summary>
    public IReadOnlyList<Problem> Problems()
    {
        var cut = new HashSet<string>(StringComparer.Ordinal);
        return
        [
            .. Scopes.SelectMany(scope => scope.Log.Problems).Concat(Log.Problems)
                .OrderBy(problem => problem.Place)
                .ThenBy(problem => problem.Kind.Code, StringComparer.Ordinal)
                .Where(problem => problem.Kind != ProblemTable.TooManyProblems || cut.Add(problem.Place.File)),
        ];
    }
}

/// <summary>What journal.yaml says, and whether it could be read.</summary>
internal sealed class JournalHead(MakerJournal journal, bool isWhole)
{
    /// <summary>
    /// The title, settings and vocabulary, without builds, tools and plans; the built-in vocabulary alone where
    /// <see cref="IsWhole"/> is false.
    /// </summary>
    public MakerJournal Journal { get; } = journal;

    /// <summary>Whether journal.yaml could be read; without it nothing is published, and the other files are only checked.</summary>
    public bool IsWhole { get; } = isWhole;
}

/// <summary>A build before its entries are known.</summary>
/// <param name="Build">The build; only its id and folder where its file cannot be read.</param>
/// <param name="Parts">The parts that its files can name.</param>
/// <param name="IsWhole">Whether build.yaml could be read; if not, the build's entries are still checked.</param>
internal sealed record BuildDraft(Build Build, PartsList Parts, bool IsWhole);

/// <summary>Reads the files of a journal folder and compares them with each other.</summary>
internal sealed class JournalParser
{
    private readonly DateOnly today;
    private readonly FilesRead? kept;
    private readonly ProblemLog log = new();
    private readonly List<FileScope> scopes = [];
    private readonly LostIds lost = new();
    private readonly JournalFolder folder;
    private JournalHead head = new(new() { Title = "Journal", Id = Guid.Empty, Vocabulary = VocabularyLoader.Shared }, isWhole: false);

    private JournalParser(string root, DateOnly today, FilesRead? kept, TypedFile? typed) => (this.today, this.kept, folder) = (today, kept, JournalFolder.Survey(root, log, typed));

    /// <summary>Reads everything that the maker wrote; whatever is wrong comes back as a problem.</summary>
    /// <param name="root">The folder that holds <c>journal.yaml</c>.</param>
    /// <param name="today">The date after which an entry lies in the future.</param>
    /// <param name="kept">What was read before, and is to be kept for the next time; null to keep nothing.</param>
    /// <param name="typed">A file that is being typed and counts instead of the saved one; null for none.</param>
    public static ParsedJournal Parse(string root, DateOnly today, FilesRead? kept, TypedFile? typed = null)
    {
        var parsed = new JournalParser(root, today, kept, typed).Parse();
        kept?.Finish();
        return parsed;
    }

    private ParsedJournal Parse()
    {
        if (!folder.HasJournal)
        {
            log.Add(ProblemTable.NoJournal, new Place("journal.yaml", 1, 1));
            return new ParsedJournal(null, [], log.Of("journal.yaml"), []);
        }

        ReadHead();
        var crib = folder.HasTools ? ReadCrib() : [];
        var builds = folder.Builds.Select(ReadBuild).ToArray();
        var drafts = ReadEntries(builds.ToDictionary(build => build.Build.Folder));
        var plans = folder.Plans.Select(plan => new PlanReader(folder, ScopeOf(plan)).Read()).OfType<Plan>().ToArray();

        var ids = new Ids(scopes.SelectMany(scope => scope.Definitions), lost, log);
        ids.Check(scopes.SelectMany(scope => scope.Mentions));
        FormerNames.Check(scopes.SelectMany(scope => scope.FormerNames), former => former.Kind switch
        {
            IdKind.Build => builds.Any(build => build.Build.Id.Value == former.Id),
            IdKind.Operation => head.Journal.Vocabulary.Operations.Ids.Contains(new(former.Id)),
            _ => ids.Has(former.Kind, former.Build, former.Id),
        }, log);
        Clock.Check(scopes.SelectMany(scope => scope.Clock), log);
        SameWork.Check(drafts.Select(draft => (draft.Draft.Entry, draft.Scope)), log);
        Snags.Check(drafts.SelectMany(draft => draft.Scope.Mentions.Where(mention => mention.Kind == IdKind.Snag).Select(mention => (draft.Draft.Entry.Id, mention))), log);
        var complete = Complete([.. builds.Select(build => build.Build)], drafts, ids);
        var whole = complete.Where(build => builds.Any(one => one.Build.Id == build.Id && one.IsWhole)).ToArray();
        CheckClaims(whole, drafts);

        var journal = head.Journal with
        {
            Tools = [.. crib.Concat(drafts.SelectMany(draft => draft.Draft.ToolsDefined)).DistinctBy(tool => tool.Id)],
            Builds = [.. whole.OrderBy(build => build.Id)],
            Plans = plans,
        };
        return new ParsedJournal(head.IsWhole ? journal : null, scopes.SelectMany(scope => scope.Values), log, scopes);
    }

    private FileScope ScopeOf(string file)
    {
        var scope = NewScope(file);
        scopes.Add(scope);
        return scope;
    }

    private FileScope NewScope(string file) => new(file, head.Journal.Vocabulary, today) { IsVocabularyWhole = head.IsWhole };

    // Not needed where nothing is kept.
    private FileStamp StampOf(string file) => kept is null ? default : folder.StampOf(file);

    private void ReadHead()
    {
        const string File = "journal.yaml";
        var (stamp, basis) = (StampOf(File), new ReadingBasis(today));
        if (kept?.Find(File, stamp, basis) is { Value: JournalHead before } same)
        {
            kept?.Keep(File, same);
            scopes.Add(same.Scope);
            head = before;
            return;
        }

        // The journal's own words are not known yet; this file uses none of them.
        var scope = new FileScope(File, head.Journal.Vocabulary, today);
        scopes.Add(scope);
        if (new JournalFileReader(folder, scope).Read() is { } read)
        {
            head = new JournalHead(read, isWhole: true);
            kept?.Keep(File, new KeptFile(stamp, basis, head, scope));
        }
    }

    private IReadOnlyList<Tool> ReadCrib()
    {
        var scope = ScopeOf("tools.yaml");
        if (folder.Text(scope.File, scope.Log) is { } text && YamlReader.ReadList(text, scope.File, scope.Log) is { } crib)
        {
            return ToolKeyReader.ReadCrib(crib, scope);
        }

        lost.AddCrib();
        return [];
    }

    private BuildDraft ReadBuild(string place)
    {
        var file = $"{place}/build.yaml";
        var (stamp, basis) = (StampOf(file), new ReadingBasis(today, head));
        if (kept?.Find(file, stamp, basis) is { Value: BuildDraft before } same)
        {
            kept?.Keep(file, same);
            scopes.Add(same.Scope);
            return before;
        }

        var scope = ScopeOf(file);
        if (new BuildReader(folder, scope, head.Journal.Units).Read(place) is { } build)
        {
            var draft = new BuildDraft(build, PartsList.Of(build.Parts), IsWhole: true);
            kept?.Keep(file, new KeptFile(stamp, basis, draft, scope));
            return draft;
        }

        var name = new Id<Build>(JournalFolder.NameOf(place));
        lost.Add(name);
        return new BuildDraft(new Build { Id = name, Title = name.Value, Folder = place }, PartsList.Lost, IsWhole: false);
    }

    private List<(EntryDraft Draft, FileScope Scope)> ReadEntries(Dictionary<string, BuildDraft> builds)
    {
        var files = folder.Entries;
        var read = new (EntryDraft? Draft, FileScope Scope)[files.Count];
        var keep = new KeptFile?[files.Count];
        Parallel.For(0, files.Count, i => (read[i], keep[i]) = ReadEntry(builds[files[i].Build], files[i].Entry));
        foreach (var (((draft, scope), file), one) in read.Zip(files).Zip(keep))
        {
            scopes.Add(scope);
            if (one is not null)
            {
                kept?.Keep(file.Entry, one);
            }

            if (draft is null)
            {
                lost.Add(builds[file.Build].Build.Id, Path.GetFileNameWithoutExtension(file.Entry), scope.Text);
            }
        }

        return [.. read.Where(one => one.Draft is not null).Select(one => (one.Draft!, one.Scope)).OrderBy(one => one.Item1.Entry.Date).ThenBy(one => one.Item1.Entry.File, StringComparer.Ordinal)];
    }

    private ((EntryDraft?, FileScope), KeptFile?) ReadEntry(BuildDraft build, string file)
    {
        var (stamp, basis) = (StampOf(file), new ReadingBasis(today, head, build.Parts));
        if (kept?.Find(file, stamp, basis) is { Value: EntryDraft before } same)
        {
            return ((before, same.Scope), same);
        }

        var scope = NewScope(file);
        if (new EntryReader(folder, build.Build.Id, build.Parts, scope).Read() is not { } draft)
        {
            return ((null, scope), null);
        }

        scope.Text = null; // Needed only for a lost entry, and ten years of texts take much memory.
        return ((draft, scope), new KeptFile(stamp, basis, draft, scope));
    }

    private Build[] Complete(Build[] builds, List<(EntryDraft Draft, FileScope Scope)> drafts, Ids ids)
    {
        var byBuild = drafts.ToLookup(draft => draft.Draft.Entry.Build, draft => draft.Draft.Entry);
        var links = new Links(ids, builds.ToDictionary(build => build.Id, build => byBuild[build.Id].ToLookup(entry => entry.Date, entry => entry.Id)), lost, log);
        return [.. builds.Select(build => build with
        {
            Entries = [.. byBuild[build.Id].Select(links.Resolve).OrderBy(entry => entry.Date).ThenBy(entry => entry.Id)],
        })];
    }

    // What entries say of their build as a whole.
    private void CheckClaims(Build[] builds, List<(EntryDraft Draft, FileScope Scope)> drafts)
    {
        var claims = drafts.ToLookup(draft => draft.Draft.Entry.Build, draft => draft.Scope);
        foreach (var build in builds)
        {
            FinishedParts.Check(build, claims[build.Id].SelectMany(scope => scope.Finished), log);
            KitCosts.Check(build, claims[build.Id].SelectMany(scope => scope.Kits), log);
        }
    }
}
