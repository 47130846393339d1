using System.Collections.Concurrent;
using System.Security.Cryptography;
using System.Text;

namespace Journal.Site.Output;

/// <summary>
/// A site being written: a complete new folder beside the old one, swapped in when it is whole. Until then the old
/// site stands untouched, whatever happens. Files that did not change are the same files, under a second name.
/// </summary>
internal sealed class SiteFolder : IDisposable
{
    private readonly string target;
    private readonly string staging;
    private readonly string retired;
    private readonly FileStream hold;
    private readonly Manifest before;
    private readonly DateTime begun = DateTime.UtcNow;
    private readonly ConcurrentDictionary<string, string> written = new(StringComparer.Ordinal);

    private SiteFolder(string target, FileStream hold)
    {
        var (parent, name) = (Path.GetDirectoryName(target)!, Path.GetFileName(target));
        this.target = target;
        this.hold = hold;
        staging = Path.Combine(parent, $".{name}.being-written");
        retired = Path.Combine(parent, $".{name}.retired");
        Recover();
        before = Manifest.Of(target) ?? Manifest.None;
        Directory.CreateDirectory(staging);
    }

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
        try
        {
            // The system lets go of the file when a program ends, however it ends: no lock can be left behind.
            var hold = new FileStream(Path.Combine(parent, $".{name}.publishing"), FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, 1, FileOptions.DeleteOnClose);
            return new SiteFolder(target, hold);
        }
        catch (IOException e) when (e is not (DirectoryNotFoundException or PathTooLongException))
        {
            throw new PublishingException($"Another publish is writing to {target}. Let it finish, then try again.", e);
        }
    }

    /// <summary>Writes a text as UTF-8.</summary>
    public void Write(string address, string text) => Write(address, Encoding.UTF8.GetBytes(text));

    /// <summary>Writes a file; one that is as it was keeps its time stamp.</summary>
    public void Write(string address, ReadOnlySpan<byte> bytes)
    {
        var hash = Convert.ToHexStringLower(SHA256.HashData(bytes));
        var path = Prepare(address, hash);
        if (before.Files.TryGetValue(address, out var old) && old == hash && IsIntact(At(target, address), bytes.Length))
        {
            FileSystemCalls.LinkOrCopy(At(target, address), path);
            return;
        }

        File.WriteAllBytes(path, bytes);
        lock (written)
        {
            Changed++;
        }
    }

    /// <summary>Takes in a file whose contents are known by their hash; one that the old site has is not copied again.</summary>
    public void Take(string address, string from, string hash)
    {
        var path = Prepare(address, hash);
        if (before.Files.TryGetValue(address, out var old) && old == hash && IsIntact(At(target, address), (int)new FileInfo(from).Length))
        {
            FileSystemCalls.LinkOrCopy(At(target, address), path);
            return;
        }

        File.Copy(from, path);
        lock (written)
        {
            Changed++;
        }
    }

    /// <summary>Puts the new site in the place of the old one.</summary>
    public void Finish()
    {
        KeepForeignFiles();
        var manifest = Path.Combine(staging, Manifest.FileName);
        File.WriteAllBytes(manifest, new Manifest(written).ToBytes());

        // What the maker saves from here on is newer than the site, even while it is being made: `journal send` asks.
        File.SetLastWriteTimeUtc(manifest, begun);
        if (!Directory.Exists(target))
        {
            Directory.Move(staging, target);
            return;
        }

        if (FileSystemCalls.TrySwap(staging, target))
        {
            Directory.Delete(staging, recursive: true);
            return;
        }

        // Elsewhere two steps: for a moment there is no site, and Recover mends what a crash leaves between them.
        Directory.Move(target, retired);
        Directory.Move(staging, target);
        Directory.Delete(retired, recursive: true);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        try
        {
            if (Directory.Exists(staging))
            {
                Directory.Delete(staging, recursive: true);
            }
        }
        catch (IOException)
        {
            // The next publish clears it away.
        }
        finally
        {
            hold.Dispose();
        }
    }

    private static string At(string folder, string address) => Path.Combine(folder, address.Replace('/', Path.DirectorySeparatorChar));

    private static bool IsIntact(string path, int length) => new FileInfo(path) is { Exists: true } file && file.Length == length;

    private string Prepare(string address, string hash)
    {
        if (!written.TryAdd(address, hash))
        {
            throw new PublishingException($"Two pages want the address {address}. Please report this.");
        }

        var path = At(staging, address);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        return path;
    }

    // What someone else put into the site's folder stays; only what a publish wrote is ours to take away.
    private void KeepForeignFiles()
    {
        if (!Directory.Exists(target))
        {
            return;
        }

        foreach (var path in Directory.EnumerateFiles(target, "*", SearchOption.AllDirectories))
        {
            var address = Path.GetRelativePath(target, path).Replace(Path.DirectorySeparatorChar, '/');
            if (address == Manifest.FileName || before.Files.ContainsKey(address) || written.ContainsKey(address))
            {
                continue;
            }

            var kept = At(staging, address);
            Directory.CreateDirectory(Path.GetDirectoryName(kept)!);
            FileSystemCalls.LinkOrCopy(path, kept);
        }
    }

    private void Recover()
    {
        if (Directory.Exists(retired))
        {
            if (Directory.Exists(target))
            {
                Directory.Delete(retired, recursive: true);
            }
            else
            {
                Directory.Move(retired, target);
            }
        }

        if (Directory.Exists(staging))
        {
            Directory.Delete(staging, recursive: true);
        }
    }
}
