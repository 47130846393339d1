using System.Runtime.InteropServices;
using System.Text;
using Journal.Core.Writing.Files;
using Microsoft.Win32.SafeHandles;

namespace Journal.Site.Output;

/// <summary>What the framework does not offer: hard links, swapping two folders in one step, reading a locked file.</summary>
internal static partial class FileSystemCalls
{
    private const int CurrentFolder = -100;
    private const uint Exchange = 2;
    private const int ReadOnly = 0;

    /// <summary>Gives a file a second name without copying it; copies where the file system cannot.</summary>
    public static void LinkOrCopy(string from, string to)
    {
        var linked = OperatingSystem.IsWindows() ? CreateHardLink(to, from, 0) : link(from, to) == 0;
        if (!linked)
        {
            DiskFile.Copy(from, to);
        }
    }

    /// <summary>Swaps two folders in one step where the system can; false where it cannot.</summary>
    public static bool TrySwap(string one, string other)
    {
        if (!OperatingSystem.IsLinux())
        {
            return false;
        }

        try
        {
            return renameat2(CurrentFolder, one, CurrentFolder, other, Exchange) == 0;
        }
        catch (EntryPointNotFoundException)
        {
            return false;
        }
    }

    /// <summary>
    /// The beginning of a file that another program may have locked, in ASCII; null where it cannot be read. The framework
    /// asks for a lock of its own even to read.
    /// </summary>
    public static string? ReadPastLock(string path, int length)
    {
        if (OperatingSystem.IsWindows() || open(path, ReadOnly) is not (>= 0 and var number))
        {
            return null;
        }

        try
        {
            using var file = new SafeFileHandle(number, ownsHandle: true);
            var bytes = new byte[length];
            return Encoding.ASCII.GetString(bytes, 0, RandomAccess.Read(file, bytes, fileOffset: 0));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

#pragma warning disable IDE1006, SYSLIB1096, CA5392 // The names are the system's own.
    [LibraryImport("libc", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int link(string from, string to);

    [LibraryImport("libc", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int open(string path, int flags);

    [LibraryImport("libc", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int renameat2(int oldFolder, string oldPath, int newFolder, string newPath, uint flags);

    [LibraryImport("kernel32", EntryPoint = "CreateHardLinkW", StringMarshalling = StringMarshalling.Utf16)]
    [return: MarshalAs(UnmanagedType.Bool)]
    private static partial bool CreateHardLink(string to, string from, nint reserved);
#pragma warning restore IDE1006, SYSLIB1096, CA5392
}
