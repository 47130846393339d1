namespace Journal.Site.Photos;

/// <summary>
/// A folder for what a program needs only while it is at work, in the user's cache. A locked file in it says that it is in
/// use. The system lets go of that file when the program ends, however it ends, and whoever needs such a folder next takes
/// away those that nobody holds.
/// </summary>
internal sealed class HeldFolder : IDisposable
{
    private const string AtWork = "at-work";
    private const string Mark = ".held";

    /// <summary>What has no lock yet may have been made this moment.</summary>
    private static readonly TimeSpan Making = TimeSpan.FromHours(1);

    /// <summary>Where locks tell nothing, as on some network drives, a folder is left when it is older than any work.</summary>
    private static readonly TimeSpan LongestWork = TimeSpan.FromDays(2);

    private readonly FileStream hold;

    private HeldFolder(string folder, FileStream hold) => (Folder, this.hold) = (folder, hold);

    /// <summary>The folder.</summary>
    public string Folder { get; }

    /// <summary>Makes a folder in a cache, and takes away those that programs which were killed have left there.</summary>
    /// <exception cref="IOException">There is no room for it.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be made.</exception>
    public static HeldFolder Make(string cache)
    {
        var above = Directory.CreateDirectory(Path.Combine(cache, AtWork));
        var folder = Directory.CreateDirectory(Path.Combine(above.FullName, Guid.NewGuid().ToString("N"))).FullName;
#pragma warning disable CA2000 // The held folder owns it.
        var made = new HeldFolder(folder, new FileStream(Path.Combine(folder, Mark), FileMode.CreateNew, FileAccess.ReadWrite, FileShare.None));
#pragma warning restore CA2000
        var canLock = !IsFree(Path.Combine(folder, Mark));
        foreach (var other in above.EnumerateDirectories().Where(other => other.LinkTarget is null && other.FullName != folder && IsLeft(other, canLock)))
        {
            Discard(other.FullName);
        }

        return made;
    }

    /// <summary>Makes a folder in the user's cache; among the system's temporary files where the cache cannot be written.</summary>
    /// <exception cref="IOException">There is no room for it there either.</exception>
    public static HeldFolder OfUser()
    {
        try
        {
            return Make(UserCache.OfUser().Folder);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return Make(Directory.CreateTempSubdirectory("journal-").FullName);
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        // Where the system allows, still held: nobody else shall begin to take it away.
        if (OperatingSystem.IsWindows())
        {
            hold.Dispose();
        }

        Discard(Folder);
        hold.Dispose();
    }

    private static bool IsLeft(DirectoryInfo folder, bool canLock)
    {
        var mark = new FileInfo(Path.Combine(folder.FullName, Mark));
        return !mark.Exists ? DateTime.UtcNow - folder.LastWriteTimeUtc > Making
            : canLock ? IsFree(mark.FullName)
            : DateTime.UtcNow - mark.LastWriteTimeUtc > LongestWork;
    }

    private static bool IsFree(string mark)
    {
        try
        {
            new FileStream(mark, FileMode.Open, FileAccess.ReadWrite, FileShare.None).Dispose();
            return true;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    // Nothing hangs on it: what stays is taken away another time. Windows keeps what is write-protected, as git makes it.
    private static void Discard(string folder)
    {
        try
        {
            if (OperatingSystem.IsWindows())
            {
                foreach (var file in new DirectoryInfo(folder).EnumerateFiles("*", SearchOption.AllDirectories).Where(file => file.IsReadOnly))
                {
                    file.IsReadOnly = false;
                }
            }

            Directory.Delete(folder, recursive: true);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return;
        }
    }
}
