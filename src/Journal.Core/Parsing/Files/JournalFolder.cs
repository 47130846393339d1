using Journal.Core.Model;
using Journal.Core.Parsing.Problems;

namespace Journal.Core.Parsing.Files;

/// <summary>
/// The files of a journal by what they are. Folders that begin with a dot or hold a published site are not read,
/// links to other places on the disk are not followed.
/// </summary>
internal sealed class JournalFolder
{
    /// <summary>The file by which a published site says that it is one.</summary>
    public const string SiteMark = ".published-site.json";

    private const int DeepestFolder = 24;

    private static readonly HashSet<string> OfARepository = new(["README", "CONTRIBUTING", "LICENSE", "LICENCE"], StringComparer.OrdinalIgnoreCase);

    private readonly ProblemLog log;
    private readonly List<string> builds = [];
    private readonly List<(string Build, string Entry)> entries = [];
    private readonly List<string> plans = [];
    private readonly Dictionary<string, string> buildsByName = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> entriesByName = new(StringComparer.Ordinal);

    private readonly TypedFile? typed;

    private JournalFolder(string root, ProblemLog log, TypedFile? typed) => (Root, this.log, this.typed) = (root, log, typed);

    /// <summary>The journal's folder on disk.</summary>
    public string Root { get; }

    /// <summary>The folders of builds, relative, in ordinal order.</summary>
    public IReadOnlyList<string> Builds => builds;

    /// <summary>The entries, each with its build's folder, relative, in ordinal order.</summary>
    public IReadOnlyList<(string Build, string Entry)> Entries => entries;

    /// <summary>The plans, relative, in ordinal order.</summary>
    public IReadOnlyList<string> Plans => plans;

    /// <summary>Whether there is a tool crib.</summary>
    public bool HasTools { get; private set; }

    /// <summary>Whether it is a journal at all.</summary>
    public bool HasJournal { get; private set; }

    /// <summary>Looks through a folder.</summary>
    /// <param name="root">The folder.</param>
    /// <param name="log">Takes what cannot be read.</param>
    /// <param name="typed">A file that is being typed, which need not be there yet; null for none.</param>
    public static JournalFolder Survey(string root, ProblemLog log, TypedFile? typed = null)
    {
        var folder = new JournalFolder(Path.TrimEndingDirectorySeparator(Path.GetFullPath(root)), log, typed);
        folder.Visit("", build: null, depth: 0);
        return folder;
    }

    /// <summary>The text of a file, as it is being typed or as it was saved; null, with a problem, where it cannot be had.</summary>
    public string? Text(string file, ProblemLog log) => IsTyped(file) ? typed!.Text : TextFile.Read(PathOf(file), file, log);

    /// <summary>The stamp of a file; one that is being typed is like no other.</summary>
    public FileStamp StampOf(string file) => IsTyped(file) ? FileStamp.OfTyped : FileStamp.Of(PathOf(file));

    /// <summary>The last name of a path of the journal.</summary>
    public static string NameOf(string path) => path[(path.LastIndexOf('/') + 1)..];

    private static string FolderOf(string path) => path.LastIndexOf('/') is >= 0 and var slash ? path[..slash] : "";

    /// <summary>Where a file of the journal lies on disk.</summary>
    public string PathOf(string file) => Path.Combine(Root, file.Replace('/', Path.DirectorySeparatorChar));

    private bool IsTyped(string file) => typed?.File == file;

    private void Visit(string folder, string? build, int depth)
    {
        if (depth > DeepestFolder)
        {
            log.Add(ProblemTable.TooDeep, new Place(folder, 1, 1), DeepestFolder);
            return;
        }

        var (folders, files) = Contents(folder);
        if (folder.Length == 0)
        {
            (HasJournal, HasTools) = (files.Contains("journal.yaml"), files.Contains("tools.yaml"));
            if (!HasJournal)
            {
                return;
            }
        }
        else if (files.Contains(SiteMark))
        {
            return;
        }

        if (files.Contains("build.yaml"))
        {
            if (folder.Length == 0)
            {
                log.Add(ProblemTable.BuildAtTop, new Place("build.yaml", 1, 1));
            }
            else if (HasOwnAddress(buildsByName, NameOf(folder), $"{folder}/build.yaml", "build"))
            {
                build = folder;
                builds.Add(folder);
            }
            else
            {
                return;
            }
        }

        if (folder == "plans")
        {
            plans.AddRange(files.Where(name => name[0] != '.' && name.EndsWith(".yaml", StringComparison.Ordinal)).Select(name => Join(folder, name)));
        }

        if (build is not null)
        {
            entries.AddRange(files.Where(IsEntry).Select(name => Join(folder, name)).Where(file => HasOwnAddress(entriesByName, $"{build}/{Path.GetFileNameWithoutExtension(file)}", file, "entry")).Select(file => (build, file)));
        }

        foreach (var name in folders.Where(name => name[0] != '.' && !(build is not null && name == "photos")))
        {
            Visit(Join(folder, name), build, depth + 1);
        }
    }

    private (IReadOnlyList<string> Folders, IReadOnlyCollection<string> Files) Contents(string folder)
    {
        var folders = new List<string>();
        var files = new SortedSet<string>(StringComparer.Ordinal);
        try
        {
            foreach (var found in new DirectoryInfo(PathOf(folder)).EnumerateFileSystemInfos())
            {
                if (found.LinkTarget is not null && IsOfInterest(found))
                {
                    log.Add(ProblemTable.LinkNotFollowed, new Place(Join(folder, found.Name), 1, 1));
                }
                else if (found is DirectoryInfo)
                {
                    folders.Add(found.Name);
                }
                else
                {
                    files.Add(found.Name);
                }
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            log.Add(ProblemTable.NotReadable, new Place(folder.Length == 0 ? "." : folder, 1, 1), e.Message);
        }

        if (typed is not null && FolderOf(typed.File) == folder)
        {
            files.Add(NameOf(typed.File));
        }

        folders.Sort(StringComparer.Ordinal);
        return (folders, files);
    }

    // Two of one name would get one page; the second is not read, or everything in it would be reported twice.
    private bool HasOwnAddress(Dictionary<string, string> taken, string name, string file, string what)
    {
        if (taken.TryAdd(name, file))
        {
            return true;
        }

        log.Add(ProblemTable.SameAddress, new Place(file, 1, 1), what, taken[name]);
        return false;
    }

    // Files that begin with a dot are left behind by other systems' disks; some names are those of a repository's own pages.
    private static bool IsEntry(string name) => name[0] != '.' && name.EndsWith(".md", StringComparison.OrdinalIgnoreCase) && !OfARepository.Contains(name[..^3]);

    private static bool IsOfInterest(FileSystemInfo found) =>
        found.Name[0] != '.' && (found is DirectoryInfo || found.Name.EndsWith(".md", StringComparison.OrdinalIgnoreCase) || found.Name.EndsWith(".yaml", StringComparison.Ordinal));

    private static string Join(string folder, string name) => folder.Length == 0 ? name : $"{folder}/{name}";
}
