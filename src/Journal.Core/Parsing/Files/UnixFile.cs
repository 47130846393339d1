using System.Runtime.InteropServices;
using System.Text;
using Microsoft.Win32.SafeHandles;

namespace Journal.Core.Parsing.Files;

/// <summary>Files opened without waiting for anyone: neither for a lock nor for the other end of a pipe.</summary>
public static partial class UnixFile
{
    // O_RDONLY | O_NONBLOCK; the second differs between Linux and macOS.
    private static readonly int ToReadAtOnce = OperatingSystem.IsLinux() ? 0x800 : 0x4;

    /// <summary>
    /// The beginning of a file in ASCII, locked by another program or not; null where it cannot be read. The framework asks
    /// for a lock of its own even to read.
    /// </summary>
    /// <param name="path">The file.</param>
    /// <param name="length">How many bytes at most.</param>
    public static string? ReadPastLock(string path, int length)
    {
        using var file = Open(path);
        if (file is null)
        {
            return null;
        }

        try
        {
            var bytes = new byte[length];
            return Encoding.ASCII.GetString(bytes, 0, RandomAccess.Read(file, bytes, fileOffset: 0));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            return null;
        }
    }

    /// <summary>Whether a name stands for a pipe or a socket: reading one could wait for ever.</summary>
    public static bool IsPipe(string path)
    {
        using var file = Open(path);
        if (file is null)
        {
            return false;
        }

        using var stream = new FileStream(file, FileAccess.Read, bufferSize: 0);
        return !stream.CanSeek;
    }

    // Null on Windows, where names of files stand for files, and where it cannot be opened.
    private static SafeFileHandle? Open(string path) =>
        !OperatingSystem.IsWindows() && open(path, ToReadAtOnce) is >= 0 and var number ? new SafeFileHandle(number, ownsHandle: true) : null;

#pragma warning disable IDE1006, SYSLIB1096, CA5392 // The names are the system's own.
    [LibraryImport("libc", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int open(string path, int flags);
#pragma warning restore IDE1006, SYSLIB1096, CA5392
}
