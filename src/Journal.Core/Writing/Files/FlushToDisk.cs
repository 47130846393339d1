using System.Runtime.InteropServices;

namespace Journal.Core.Writing.Files;

/// <summary>
/// Forces names and files to the disk. A file that was flushed can still be lost in a power cut until the folder that
/// holds its name is flushed too (fsync(2): “Calling fsync() does not necessarily ensure that the entry in the directory
/// containing the file has also reached disk”). Windows writes names by its own journal and has no such call.
/// </summary>
internal static partial class FlushToDisk
{
    private const int ReadOnly = 0;
    private const int InputOutputError = 5;
    private const int NoSpace = 28;

    /// <summary>Forces the names in a folder to the disk: what was made, renamed or removed there.</summary>
    /// <exception cref="IOException">The disk does not take it.</exception>
    public static void Names(string folder) => OnFolder(folder, fsync);

    /// <summary>Forces a folder that was just filled to the disk, with all that is in it.</summary>
    /// <exception cref="IOException">The disk does not take it.</exception>
    public static void All(string folder)
    {
        if (OperatingSystem.IsLinux())
        {
            // One call for all files: a log of ten years is thousands of them, and each flush costs some milliseconds.
            OnFolder(folder, syncfs);
            return;
        }

        foreach (var file in Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories))
        {
            using var handle = File.OpenHandle(file, FileMode.Open, FileAccess.ReadWrite);
            RandomAccess.FlushToDisk(handle);
        }

        Names(folder);
    }

    private static void OnFolder(string folder, Func<int, int> call)
    {
        if (OperatingSystem.IsWindows() || open(folder, ReadOnly) is not (>= 0 and var number))
        {
            return;
        }

        try
        {
            // Some network folders cannot do it and say so; then there is nothing more to be had.
            if (call(number) != 0 && Marshal.GetLastPInvokeError() is InputOutputError or NoSpace)
            {
                throw new IOException($"{folder} cannot be forced to the disk: {Marshal.GetLastPInvokeErrorMessage()}.");
            }
        }
        finally
        {
            _ = close(number);
        }
    }

#pragma warning disable IDE1006, SYSLIB1096, CA5392 // The names are the system's own.
    [LibraryImport("libc", StringMarshalling = StringMarshalling.Utf8, SetLastError = true)]
    private static partial int open(string path, int flags);

    [LibraryImport("libc", SetLastError = true)]
    private static partial int fsync(int file);

    [LibraryImport("libc", SetLastError = true)]
    private static partial int syncfs(int file);

    [LibraryImport("libc")]
    private static partial int close(int file);
#pragma warning restore IDE1006, SYSLIB1096, CA5392
}
