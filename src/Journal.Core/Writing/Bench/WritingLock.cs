using System.Globalization;
using System.Text;
using Journal.Core.Parsing.Files;

namespace Journal.Core.Writing.Bench;

/// <summary>
/// The right to write to a journal: a locked file that says which process has it. The system lets go of it when a program
/// ends, however it ends, so a file that is left behind holds nobody up.
/// </summary>
internal static class WritingLock
{
#pragma warning disable CA2000 // The lock is handed to the caller, who holds it until what is written is written.
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(50);
    private static readonly TimeSpan Moment = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan Longest = TimeSpan.FromMinutes(1);

    /// <summary>Takes the lock, after others that came before.</summary>
    /// <param name="path">The file.</param>
    /// <param name="tell">Is told once for whom it waits.</param>
    /// <exception cref="IOException">Another command has had it for a minute.</exception>
    public static FileStream Take(string path, Action<string>? tell)
    {
        var begun = DateTime.UtcNow;
        while (true)
        {
            if (TryTake(path) is { } taken)
            {
                return taken;
            }

            var waited = DateTime.UtcNow - begun;
            if (waited > Longest)
            {
                throw new IOException($"Another command{Holder(path)} has been writing to the journal for a minute. Let it finish, then try again.");
            }

            if (waited > Moment && tell is not null)
            {
                tell($"Waiting for another command{Holder(path)}, which is writing to the journal.");
                tell = null;
            }

            Thread.Sleep(Pause);
        }
    }

    // Null where another has it.
    private static FileStream? TryTake(string path)
    {
        FileStream file;
        try
        {
            file = new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, bufferSize: 0);
        }
        catch (IOException) when (File.Exists(path))
        {
            return null;
        }

        try
        {
            file.SetLength(0);
            file.Write(Encoding.ASCII.GetBytes(Environment.ProcessId.ToString(CultureInfo.InvariantCulture)));
            return file;
        }
        catch (IOException)
        {
            // On a full disk it has no room for a name; the lock holds all the same.
            return file;
        }
    }
#pragma warning restore CA2000

    private static string Holder(string path) =>
        UnixFile.ReadPastLock(path, 20) is { Length: > 0 } text && text.All(char.IsAsciiDigit) ? $" (process {text})" : "";
}
