using System.Globalization;
using System.Text;
using Journal.Core.Parsing.Files;

namespace Journal.Site.Output;

/// <summary>
/// The right to write a site: a locked file beside it that says who has it. The system unlocks it when a program ends,
/// however it ends, so a file that is left behind blocks nobody.
/// </summary>
internal sealed class PublishLock : IDisposable
{
    private const int LongestAccount = 100;
    private readonly FileStream file;

    private PublishLock(FileStream file) => this.file = file;

    /// <summary>Takes the lock.</summary>
    /// <param name="path">The file.</param>
    /// <param name="target">The site.</param>
    /// <exception cref="PublishingException">Another publish has it.</exception>
    public static PublishLock Take(string path, string target)
    {
        if (IsForeign(path))
        {
            throw NotOurs(path);
        }

        var mine = string.Create(CultureInfo.InvariantCulture, $"{Environment.ProcessId} {DateTime.UtcNow:yyyy-MM-dd'T'HH:mm:ss.fffffff'Z'} {Guid.NewGuid():N}");
        while (true)
        {
            try
            {
                var file = new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, 1, FileOptions.DeleteOnClose);
                try
                {
                    file.SetLength(0);
                    file.Write(Encoding.ASCII.GetBytes(mine));
                }
                catch
                {
                    file.Dispose();
                    throw;
                }

                // The publish before this one may have ended between our opening its file and locking it: then the file
                // is gone, and a third may have made another of its name.
                if (File.Exists(path) && (UnixFile.ReadPastLock(path, LongestAccount) ?? mine) == mine)
                {
                    return new PublishLock(file);
                }

                file.Dispose();
            }
            catch (IOException e) when (IsHeld(e))
            {
                throw new PublishingException($"Another publish is writing to {target}{Holder(path)}. Let it finish, then try again.", e);
            }
        }
    }

    // Any name may be taken already: what is no account of a publish is not written over, and no link is followed.
    private static bool IsForeign(string path) => Directory.Exists(path) || new FileInfo(path) switch
    {
        { LinkTarget: not null } => true,
        { Exists: false } => false,
        { Length: 0 } => IsPipe(path),
        { Length: > LongestAccount } => true,
        _ => UnixFile.ReadPastLock(path, LongestAccount) is { } text && Account(text) is null,
    };

    private static bool IsPipe(string path)
    {
        try
        {
            // Opened to read and write at once, which does not wait for another program at the other end.
            using var file = new FileStream(path, FileMode.Open, FileAccess.ReadWrite, FileShare.ReadWrite | FileShare.Delete, 0);
            return !file.CanSeek;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return false; // Held by another publish, or gone.
        }
    }

    private static PublishingException NotOurs(string path) =>
        new($"{path} is where a publish puts its lock, but no publish wrote it. Move or rename it. Nothing was changed.");

    /// <summary>Unlocks the file and deletes it.</summary>
    public void Dispose() => file.Dispose();

    // Who it says it is: ", process 4711, since 21:04:30"; nothing where that cannot be read.
    private static string Holder(string path) =>
        UnixFile.ReadPastLock(path, LongestAccount) is { } text && Account(text) is var (process, since)
            ? string.Create(CultureInfo.InvariantCulture, $": process {process}, since {since.ToLocalTime():HH:mm:ss}")
            : "";

    private static (int Process, DateTime Since)? Account(string text) =>
        text.Split(' ') is [var process, var since, _]
        && int.TryParse(process, NumberStyles.None, CultureInfo.InvariantCulture, out var id)
        && DateTime.TryParse(since, CultureInfo.InvariantCulture, DateTimeStyles.RoundtripKind, out var time)
            ? (id, time)
            : null;

    /// <summary>Whether opening a file failed because another program has it locked.</summary>
    // EWOULDBLOCK of Linux and of macOS, ERROR_SHARING_VIOLATION of Windows.
    public static bool IsHeld(IOException e) => e.HResult is 11 or 35 or unchecked((int)0x80070020);
}
