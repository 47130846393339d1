using System.Runtime.CompilerServices;
using Journal.Core.Writing.Files;
using Journal.Site.Output;

namespace Journal.Site.Sending;

/// <summary>Brings files to a folder of this machine.</summary>
internal sealed class FolderCarrier(string folder, string site, string journal) : ICarrier
{
    private const string Draft = ".being-sent";

    /// <inheritdoc/>
    public int AtOnce => 2;

    /// <inheritdoc/>
    public bool ArrivesAtOnce => false;

    /// <inheritdoc/>
    public Task OpenAsync(CancellationToken cancellation)
    {
        if (IsWithin(site, folder) || IsWithin(folder, site))
        {
            throw new SendingException($"{folder} and the site {site} lie in each other. Name a folder of its own as the destination.");
        }

        if (IsWithin(journal, folder))
        {
            throw new SendingException($"{folder} holds the journal itself. Name a folder of its own as the destination.");
        }

        if (File.Exists(Path.Combine(folder, Manifest.FileName)))
        {
            throw new SendingException($"{folder} is a site that `journal publish` writes. Name another folder as the destination.");
        }

        // No more than its last name is made: where a disk is not mounted, its folder is not there either.
        if (Path.GetDirectoryName(folder) is { } parent && !Directory.Exists(parent))
        {
            throw new SendingException($"There is no folder {parent}. Is the disk connected? If it shall be new, make it first.");
        }

        return Task.CompletedTask;
    }

    /// <inheritdoc/>
    public async Task<byte[]?> ReadAsync(string address, CancellationToken cancellation)
    {
        var path = SiteAddress.PathIn(folder, address);
        return File.Exists(path) ? await File.ReadAllBytesAsync(path, cancellation) : null;
    }

    /// <inheritdoc/>
    public async IAsyncEnumerable<(string Address, long Length)> ListAsync([EnumeratorCancellation] CancellationToken cancellation)
    {
        await Task.CompletedTask;
        foreach (var file in Directory.Exists(folder) ? new DirectoryInfo(folder).EnumerateFiles("*", SearchOption.AllDirectories) : [])
        {
            cancellation.ThrowIfCancellationRequested();
            yield return (Path.GetRelativePath(folder, file.FullName).Replace(Path.DirectorySeparatorChar, '/'), file.Length);
        }
    }

    /// <inheritdoc/>
    public async Task PutAsync(Parcel parcel, CancellationToken cancellation)
    {
        var path = SiteAddress.PathIn(folder, parcel.Address);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        try
        {
            await Task.Run(() => DiskFile.Write(path + Draft, parcel.Contents), cancellation);
            File.Move(path + Draft, path, overwrite: true);
        }
        catch
        {
            File.Delete(path + Draft);
            throw;
        }
    }

    /// <inheritdoc/>
    public Task DeleteAsync(string address, CancellationToken cancellation)
    {
        var path = SiteAddress.PathIn(folder, address);
        if (File.Exists(path))
        {
            File.Delete(path);
        }

        for (var parent = Path.GetDirectoryName(path)!; parent.Length > folder.Length && IsEmpty(parent); parent = Path.GetDirectoryName(parent)!)
        {
            Directory.Delete(parent);
        }

        return Task.CompletedTask;
    }

    /// <inheritdoc/>
    public Task FinishAsync(CancellationToken cancellation) => Task.CompletedTask;

    /// <inheritdoc/>
    public bool MayPass(Exception failure) => false;

    /// <inheritdoc/>
    public string? Explain(Exception failure) => failure is UnauthorizedAccessException ? $"{failure.Message} Look at the permissions of {folder}." : null;

    /// <inheritdoc/>
    public ValueTask DisposeAsync() => ValueTask.CompletedTask;

    private static bool IsEmpty(string path) => Directory.Exists(path) && !Directory.EnumerateFileSystemEntries(path).Any();

    private static bool IsWithin(string inner, string outer)
    {
        var comparison = OperatingSystem.IsLinux() ? StringComparison.Ordinal : StringComparison.OrdinalIgnoreCase;
        return inner.Equals(outer, comparison) || inner.StartsWith(Path.TrimEndingDirectorySeparator(outer) + Path.DirectorySeparatorChar, comparison);
    }
}
