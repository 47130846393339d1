namespace Journal.Site.Preview;

/// <summary>Says which files of a folder were saved, once for each burst of saves.</summary>
internal sealed class SaveWatch : IDisposable
{
    private static readonly TimeSpan Quiet = TimeSpan.FromMilliseconds(40);
    private static readonly TimeSpan LongestBurst = TimeSpan.FromSeconds(3);

    private readonly string folder;
    private readonly FileSystemWatcher watcher;
    private readonly SemaphoreSlim saved = new(0);
    private readonly Lock guard = new();
    private HashSet<string>? names = new(StringComparer.Ordinal);

    /// <summary>Watches from now on.</summary>
    public SaveWatch(string folder)
    {
        this.folder = folder;
        watcher = new FileSystemWatcher(folder) { IncludeSubdirectories = true, NotifyFilter = NotifyFilters.FileName | NotifyFilters.DirectoryName | NotifyFilters.LastWrite | NotifyFilters.Size };
        watcher.Changed += (_, change) => Note(change.FullPath);
        watcher.Created += (_, change) => Note(change.FullPath);
        watcher.Deleted += (_, change) => Note(change.FullPath);
        watcher.Renamed += (_, change) =>
        {
            Note(change.OldFullPath);
            Note(change.FullPath);
        };
        watcher.Error += (_, _) => NoteAny();
        watcher.EnableRaisingEvents = true;
    }

    /// <summary>Waits for a save, and then until no other has come for a moment.</summary>
    /// <returns>The files and folders that were touched, from the folder, with <c>/</c>; null where they were too many for the system to tell.</returns>
    public async Task<IReadOnlyCollection<string>?> Next(CancellationToken cancellation)
    {
        await saved.WaitAsync(cancellation);
        var last = DateTime.UtcNow + LongestBurst;
        while (DateTime.UtcNow < last && await saved.WaitAsync(Quiet, cancellation))
        {
            while (saved.CurrentCount > 0)
            {
                await saved.WaitAsync(cancellation);
            }
        }

        lock (guard)
        {
            var touched = names;
            names = new(StringComparer.Ordinal);
            return touched;
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        watcher.Dispose();
        saved.Dispose();
    }

    // What begins with a dot is no part of the journal: our own slate, and files that are still being written.
    private void Note(string path)
    {
        var name = Path.GetRelativePath(folder, path).Replace(Path.DirectorySeparatorChar, '/');
        if (!name.Split('/').Any(step => step.StartsWith('.')))
        {
            lock (guard)
            {
                names?.Add(name);
            }

            saved.Release();
        }
    }

    // Whatever they were, something was saved.
    private void NoteAny()
    {
        lock (guard)
        {
            names = null;
        }

        saved.Release();
    }
}
