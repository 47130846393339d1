namespace Journal.Site.Preview;

/// <summary>Says when files of a folder were saved, once for each burst of saves.</summary>
internal sealed class SaveWatch : IDisposable
{
    private static readonly TimeSpan Quiet = TimeSpan.FromMilliseconds(60);
    private static readonly TimeSpan LongestBurst = TimeSpan.FromSeconds(3);

    private readonly string folder;
    private readonly FileSystemWatcher watcher;
    private readonly SemaphoreSlim saved = new(0);

    /// <summary>Watches from now on.</summary>
    public SaveWatch(string folder)
    {
        this.folder = folder;
        watcher = new FileSystemWatcher(folder) { IncludeSubdirectories = true, NotifyFilter = NotifyFilters.FileName | NotifyFilters.DirectoryName | NotifyFilters.LastWrite | NotifyFilters.Size };
        watcher.Changed += (_, change) => Note(change.FullPath);
        watcher.Created += (_, change) => Note(change.FullPath);
        watcher.Deleted += (_, change) => Note(change.FullPath);
        watcher.Renamed += (_, change) => Note(change.FullPath);

        // Too many at once for the system to tell: whatever they were, something was saved.
        watcher.Error += (_, _) => saved.Release();
        watcher.EnableRaisingEvents = true;
    }

    /// <summary>Waits for a save, and then until no other has come for a moment.</summary>
    public async Task Next(CancellationToken cancellation)
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
        if (!Path.GetRelativePath(folder, path).Split(Path.DirectorySeparatorChar).Any(step => step.StartsWith('.')))
        {
            saved.Release();
        }
    }
}
