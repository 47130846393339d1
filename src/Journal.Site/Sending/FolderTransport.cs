using System.Collections.Concurrent;
using System.IO.Enumeration;
using System.Runtime.CompilerServices;
using Journal.Core.Writing.Files;
using Journal.Site.Output;

namespace Journal.Site.Sending;

/// <summary>Brings files to a folder of this machine.</summary>
internal sealed class FolderTransport(string destination, string site, string journal, string draft) : ITransport
{
    // Where it really lies, and every folder in it that is known to be no link.
    private readonly string folder = Destination.RealPath(destination);
    private readonly ConcurrentDictionary<string, bool> plain = new(StringComparer.Ordinal);

    /// <inheritdoc/>
    public int AtOnce => 2;

    /// <inheritdoc/>
    public bool ArrivesAtOnce => false;

    /// <inheritdoc/>
    public string? Draft => draft;

    /// <inheritdoc/>
    public Task OpenAsync(CancellationToken cancellation)
    {
        var (real, home) = (Destination.RealPath(site), Destination.RealPath(journal));
        if (IsWithin(real, folder) || IsWithin(folder, real))
        {
            throw new SendingException($"{folder} and the site {site} are inside one another. Choose a separate folder as the destination.");
        }

        if (IsWithin(home, folder))
        {
            throw new SendingException($"{folder} holds the journal itself. Choose a separate folder as the destination.");
        }

        if (IsWithin(folder, home))
        {
            throw new SendingException($"{folder} is inside the journal, and would be read as part of it. Choose a folder outside as the destination.");
        }

        if (File.Exists(Path.Combine(folder, Manifest.FileName)))
        {
            throw new SendingException($"{folder} is a site that `journal publish` writes. Choose another folder as the destination.");
        }

        // No more than its last name is made: where a disk is not mounted, its folder is not there either.
        if (Path.GetDirectoryName(folder) is { } parent && !Directory.Exists(parent))
        {
            throw new SendingException($"There is no folder {parent}. Is the disk connected? If it is to be new, create it first.");
        }

        return Task.CompletedTask;
    }

    /// <inheritdoc/>
    public async Task<byte[]?> ReadAsync(string address, CancellationToken cancellation)
    {
        var path = PathOf(address);
        if (Directory.Exists(path))
        {
            throw new SendingException($"{path} is a folder where a file of that name is needed. Remove it, then send again.");
        }

        // Pipes have no length; opening one could wait for ever.
        var file = new FileInfo(path);
        return !file.Exists ? null : file.Length == 0 ? [] : await File.ReadAllBytesAsync(path, cancellation);
    }

    /// <inheritdoc/>
    public async IAsyncEnumerable<(string Address, long Length)> ListAsync([EnumeratorCancellation] CancellationToken cancellation)
    {
        await Task.CompletedTask;
        if (!Directory.Exists(folder))
        {
            yield break;
        }

        // A link is one thing, whatever it leads to; followed, it could lead round in a circle.
        var all = new FileSystemEnumerable<(string Path, long Length)>(
            folder,
            (ref found) => (found.ToFullPath(), found.Length),
            new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = 0, IgnoreInaccessible = true })
        {
            ShouldIncludePredicate = (ref found) => !found.IsDirectory || IsLink(found.Attributes),
            ShouldRecursePredicate = (ref found) => !IsLink(found.Attributes),
        };
        foreach (var (path, length) in all)
        {
            cancellation.ThrowIfCancellationRequested();
            yield return (Path.GetRelativePath(folder, path).Replace(Path.DirectorySeparatorChar, '/'), length);
        }
    }

    /// <inheritdoc/>
    public async Task PutAsync(OutgoingFile file, CancellationToken cancellation)
    {
        var path = PathOf(file.Address);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        try
        {
            // A link of that name would lead elsewhere.
            File.Delete(path + draft);
            await Task.Run(() => DiskFile.Write(path + draft, file.Contents), cancellation);
            File.Move(path + draft, path, overwrite: true);
        }
        catch
        {
            File.Delete(path + draft);
            throw;
        }
    }

    /// <inheritdoc/>
    public Task DeleteAsync(string address, CancellationToken cancellation)
    {
        try
        {
            File.Delete(PathOf(address));
        }
        catch (DirectoryNotFoundException)
        {
            // With its folder it is gone, which was the request.
        }

        return Task.CompletedTask;
    }

    /// <inheritdoc/>
    public Task RemoveEmptyFoldersAsync(IReadOnlyCollection<string> deleted, CancellationToken cancellation)
    {
        foreach (var path in SiteAddress.FoldersOf(deleted).Select(PathOf).Where(IsEmpty))
        {
            RemoveIfEmpty(path);
        }

        return Task.CompletedTask;
    }

    /// <inheritdoc/>
    public Task FinishAsync(CancellationToken cancellation) => Task.CompletedTask;

    /// <inheritdoc/>
    public bool MayPass(Exception failure) => false;

    /// <inheritdoc/>
    public string? Explain(Exception failure) => failure is UnauthorizedAccessException ? $"{failure.Message} Check the permissions of {folder}." : null;

    /// <inheritdoc/>
    public ValueTask DisposeAsync() => ValueTask.CompletedTask;

    private static bool IsLink(FileAttributes attributes) => (attributes & FileAttributes.ReparsePoint) != 0;

    // No folder on the way may be a link: what is written or taken away there would be somebody else's.
    private string PathOf(string address)
    {
        var path = SiteAddress.PathIn(folder, address);
        for (var above = Path.GetDirectoryName(path)!; above.Length > folder.Length && !plain.ContainsKey(above); above = Path.GetDirectoryName(above)!)
        {
            if (new DirectoryInfo(above).LinkTarget is not null)
            {
                throw new SendingException($"{above} is a link, so {address} would end up elsewhere. Remove the link, then send again.");
            }

            plain.TryAdd(above, true);
        }

        return path;
    }

    private static bool IsEmpty(string path) => new DirectoryInfo(path) is { Exists: true, LinkTarget: null } folder && !folder.EnumerateFileSystemInfos().Any();

    private static void RemoveIfEmpty(string path)
    {
        try
        {
            Directory.Delete(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // Somebody has put something into it since, or it is not ours to remove: it stays.
        }
    }

    private static bool IsWithin(string inner, string outer)
    {
        var comparison = OperatingSystem.IsLinux() ? StringComparison.Ordinal : StringComparison.OrdinalIgnoreCase;
        return inner.Equals(outer, comparison) || inner.StartsWith(Path.EndsInDirectorySeparator(outer) ? outer : outer + Path.DirectorySeparatorChar, comparison);
    }
}
