using System.Collections.Concurrent;
using System.Security.Cryptography;
using Journal.Core.Writing.Files;

namespace Journal.Site.Output;

/// <summary>
/// A site being written: a complete new folder beside the old one, swapped in when it is whole. Until then the old
/// site stands untouched, whatever happens. Files that did not change are the same files, under a second name.
/// </summary>
internal sealed class SiteFolder : IPictureShelf, IDisposable
{
    private readonly string staging;
    private readonly string retired;
    private readonly PublishLock hold;
    private readonly Manifest before;
    private readonly ConcurrentDictionary<string, string> written = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, bool> made = new(StringComparer.Ordinal);
    private readonly bool isFirst;

    private SiteFolder(string target, PublishLock hold)
    {
        var (parent, name) = (Path.GetDirectoryName(target)!, Path.GetFileName(target));
        Target = target;
        this.hold = hold;
        staging = Path.Combine(parent, $".{name}.being-written");
        retired = Path.Combine(parent, $".{name}.retired");
        HasRecovered = Recover();
        before = Manifest.Of(target) ?? Manifest.None;
        isFirst = !Directory.Exists(target);
        Directory.CreateDirectory(staging);

        try
        {
            // From the first moment on, so that what is left after a kill is known to be ours.
            DiskFile.Write(At(staging, Manifest.FileName), Manifest.ToBytes([]));
        }
        catch
        {
            Discard(staging);
            throw;
        }
    }

    /// <summary>The site's folder.</summary>
    public string Target { get; }

    /// <summary>Whether a publish before this one had been cut off, and what it left was cleared away.</summary>
    public bool HasRecovered { get; }

    /// <summary>How many files had to be written; the others were as they should be.</summary>
    public int Changed { get; private set; }

    /// <summary>How many files the site has.</summary>
    public int Count => written.Count;

    /// <summary>Begins a site.</summary>
    /// <exception cref="PublishingException">Another publish is at work there.</exception>
    public static SiteFolder Begin(string target)
    {
        var (parent, name) = (Path.GetDirectoryName(target)!, Path.GetFileName(target));
        Directory.CreateDirectory(parent);
        var hold = PublishLock.Take(Path.Combine(parent, $".{name}.publishing"), target);
        try
        {
            return new SiteFolder(target, hold);
        }
        catch
        {
            hold.Dispose();
            throw;
        }
    }

    /// <summary>Writes a file; one that is as it was keeps its time stamp.</summary>
    public void Write(string address, ReadOnlySpan<byte> bytes)
    {
        var hash = Convert.ToHexStringLower(SHA256.HashData(bytes));
        var path = Prepare(address, hash);
        if (before.Files.TryGetValue(address, out var old) && old == hash && IsIntact(At(Target, address), bytes))
        {
            FileSystemCalls.LinkOrCopy(At(Target, address), path);
            return;
        }

        DiskFile.Create(path, bytes);
        lock (written)
        {
            Changed++;
        }
    }

    /// <summary>Whether the old site has a file at an address, as a publish left it.</summary>
    /// <param name="address">The address.</param>
    /// <param name="hash">SHA-256 of its contents, in hexadecimal.</param>
    /// <param name="length">How many bytes it has.</param>
    public bool Has(string address, string hash, long length) =>
        before.Files.TryGetValue(address, out var old) && old == hash && IsUntouched(At(Target, address), length);

    /// <summary>Takes in a file whose contents are known by their hash; one that the old site has is not copied again.</summary>
    public void Take(string address, string from, string hash)
    {
        var path = Prepare(address, hash);
        if (before.Files.TryGetValue(address, out var old) && old == hash && IsUntouched(At(Target, address), new FileInfo(from).Length))
        {
            FileSystemCalls.LinkOrCopy(At(Target, address), path);
            return;
        }

        DiskFile.Copy(from, path);
        lock (written)
        {
            Changed++;
        }
    }

    /// <summary>Puts the new site in the place of the old one.</summary>
    public void Finish()
    {
        if (Directory.Exists(Target))
        {
            KeepForeignFiles(new DirectoryInfo(Target), "");
        }

        WriteManifest();
        if (!Directory.Exists(Target))
        {
            Directory.Move(staging, Target);
            return;
        }

        if (FileSystemCalls.TrySwap(staging, Target))
        {
            Discard(staging);
            return;
        }

        // Elsewhere two steps: for a moment there is no site, and Recover mends what a crash leaves between them.
        Directory.Move(Target, retired);
        try
        {
            Directory.Move(staging, Target);
        }
        catch (IOException)
        {
            Directory.Move(retired, Target);
            throw;
        }

        Discard(retired);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Discard(staging);
        hold.Dispose();
    }

    // The site stands by now, or never will: what is left beside it the next publish clears away.
    private static void Discard(string folder)
    {
        try
        {
            Delete(folder);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return;
        }
    }

    // It keeps its time too where nothing changed.
    private void WriteManifest()
    {
        var bytes = Manifest.ToBytes(written);
        var (old, path) = (Path.Combine(Target, Manifest.FileName), Path.Combine(staging, Manifest.FileName));
        if (Changed == 0 && File.Exists(old) && bytes.AsSpan().SequenceEqual(File.ReadAllBytes(old)))
        {
            File.Delete(path);
            FileSystemCalls.LinkOrCopy(old, path);
            return;
        }

        DiskFile.Write(path, bytes);
    }

    private static string At(string folder, string address) => Path.Combine(folder, address.Replace('/', Path.DirectorySeparatorChar));

    // Read, for times tell nothing: whoever puts an older file back gives it its older time too.
    private static bool IsIntact(string path, ReadOnlySpan<byte> bytes) =>
        new FileInfo(path) is { Exists: true, LinkTarget: null } file && file.Length == bytes.Length && bytes.SequenceEqual(File.ReadAllBytes(path));

    private bool IsUntouched(string path, long length) =>
        new FileInfo(path) is { Exists: true, LinkTarget: null } file && file.Length == length && file.LastWriteTimeUtc <= before.WrittenUtc;

    private string Prepare(string address, string hash)
    {
        if (!written.TryAdd(address, hash))
        {
            throw PublishingException.SameAddress(address);
        }

        if (!isFirst && InTheWay(address) is { } foreign)
        {
            throw new PublishingException($"{foreign} is where the site needs {address}, but no publish wrote it. Move it out of the site.");
        }

        var path = At(staging, address);
        if (Path.GetDirectoryName(path)! is var folder && !made.ContainsKey(folder))
        {
            // First made, then said to be: another thread may want it at once.
            Directory.CreateDirectory(folder);
            made.TryAdd(folder, true);
        }

        return path;
    }

    // What no publish wrote, at an address or on the way to it; null where there is nothing of the kind.
    private string? InTheWay(string address)
    {
        for (var slash = address.IndexOf('/', StringComparison.Ordinal); slash > 0; slash = address.IndexOf('/', slash + 1))
        {
            var folder = At(Target, address[..slash]);
            if (!made.ContainsKey(At(staging, address[..slash])) && IsForeign(address[..slash]) && !IsPlainFolder(folder))
            {
                return folder;
            }
        }

        var path = At(Target, address);
        return IsForeign(address) && !(IsPlainFolder(path) && HoldsOnlyOurs(new DirectoryInfo(path), address + "/")) ? path : null;
    }

    // A file of ours that became a link is ours still; a folder or a link to one never was.
    private bool IsForeign(string address) => At(Target, address) is var path
        && (Directory.Exists(path) || (!before.Files.ContainsKey(address) && (File.Exists(path) || new FileInfo(path).LinkTarget is not null)));

    private static bool IsPlainFolder(string path) => new DirectoryInfo(path) is { Exists: true, LinkTarget: null };

    private bool HoldsOnlyOurs(DirectoryInfo folder, string prefix) => folder.EnumerateFileSystemInfos().ToList() is { Count: > 0 } all
        && all.All(found => found is DirectoryInfo { LinkTarget: null } inner ? HoldsOnlyOurs(inner, $"{prefix}{found.Name}/") : before.Files.ContainsKey(prefix + found.Name));

    // What someone else put into the site's folder stays; only what a publish wrote is ours to take away.
    private void KeepForeignFiles(DirectoryInfo folder, string prefix)
    {
        var isEmpty = true;
        foreach (var found in folder.EnumerateFileSystemInfos())
        {
            isEmpty = false;
            var address = prefix + found.Name;
            if (found is DirectoryInfo inner && inner.LinkTarget is null)
            {
                KeepForeignFiles(inner, address + "/");
            }
            else if (address != Manifest.FileName && !before.Files.ContainsKey(address))
            {
                KeepForeign(found, At(staging, address));
            }
        }

        // A publish leaves no empty folder, so this one is not ours.
        var kept = At(staging, prefix);
        if (isEmpty)
        {
            Directory.CreateDirectory(kept);
        }

        if (!OperatingSystem.IsWindows() && Directory.Exists(kept))
        {
            // Who may look into a folder is its owner's choice, and stays.
            const UnixFileMode Ours = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;
            File.SetUnixFileMode(kept, folder.UnixFileMode | Ours);
        }
    }

    private static void KeepForeign(FileSystemInfo found, string kept)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(kept)!);
        switch (found)
        {
            case { LinkTarget: { } elsewhere } when found is DirectoryInfo:
                Directory.CreateSymbolicLink(kept, elsewhere);
                break;
            case { LinkTarget: { } elsewhere }:
                File.CreateSymbolicLink(kept, elsewhere);
                break;
            default:
                FileSystemCalls.LinkOrCopy(found.FullName, kept);
                break;
        }
    }

    private bool Recover()
    {
        foreach (var folder in (string[])[retired, staging])
        {
            if (!IsOurs(folder))
            {
                throw new PublishingException($"{folder} is where a publish does its work, but no publish made it. Move or rename it. Nothing was changed.");
            }
        }

        var wasCutOff = Directory.Exists(retired) || Directory.Exists(staging);
        if (Directory.Exists(retired) && !Directory.Exists(Target))
        {
            Directory.Move(retired, Target);
        }

        Delete(retired);
        Delete(staging);
        return wasCutOff;
    }

    // A site, begun or whole, or an empty folder; or nothing at all.
    private static bool IsOurs(string folder) => new DirectoryInfo(folder) switch
    {
        { LinkTarget: not null } => false,
        { Exists: true } there => !there.EnumerateFileSystemInfos().Any() || File.Exists(At(folder, Manifest.FileName)),
        _ => !File.Exists(folder),
    };

    // The manifest last: what is left when this is cut off is still known to be ours.
    private static void Delete(string folder)
    {
        if (!Directory.Exists(folder))
        {
            return;
        }

        foreach (var found in new DirectoryInfo(folder).EnumerateFileSystemInfos().Where(found => found.Name != Manifest.FileName))
        {
            if (found is DirectoryInfo { LinkTarget: null } inner)
            {
                inner.Delete(recursive: true);
            }
            else
            {
                found.Delete();
            }
        }

        Directory.Delete(folder, recursive: true);
    }
}
