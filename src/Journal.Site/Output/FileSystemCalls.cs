using System.Runtime.InteropServices;
using Journal.Core.Writing.Files;

namespace Journal.Site.Output;

/// <summary>What the framework does not offer: hard links, and swapping two folders in one step.</summary>
internal static partial class FileSystemCalls
{
    private const int CurrentFolder = -100;
    private const uint Exchange = 2;

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

#pragma warning disable IDE1006, SYSLIB1096, CA5392 // The names are the system's own.
    [LibraryImport("libc", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int link(string from, string to);

    [LibraryImport("libc", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int renameat2(int oldFolder, string oldPath, int newFolder, string newPath, uint flags);

    [LibraryImport("kernel32", EntryPoint = "CreateHardLinkW", StringMarshalling = StringMarshalling.Utf16)]
    [return: MarshalAs(UnmanagedType.Bool)]
    private static partial bool CreateHardLink(string to, string from, nint reserved);
#pragma warning restore IDE1006, SYSLIB1096, CA5392
}
