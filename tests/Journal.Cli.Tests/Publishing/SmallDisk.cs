using System.Diagnostics;

namespace Journal.Cli.Tests.Publishing;

/// <summary>
/// A disk of a few megabytes, in memory, that a test can fill up. Where the system lets nobody make one, a quota takes
/// its place: nothing larger than a few bytes may be written.
/// </summary>
internal sealed class SmallDisk : IDisposable
{
    private const string Megabytes = "16m";
    private const int Chunk = 4096;
    private const int LargestFile = 2000;
    private readonly bool isDisk;
    private bool isFull;

    public SmallDisk(string folder)
    {
        Folder = folder;
        Directory.CreateDirectory(folder);
        isDisk = Do("mount", "-t", "tmpfs", "-o", $"size={Megabytes}", "journal-test", folder);
    }

    /// <summary>Where it is mounted.</summary>
    public string Folder { get; }

    /// <summary>How a complaint that it is full begins.</summary>
    public string Complaint => isDisk ? "The disk is full: " : "The file is too large for this disk";

    /// <summary>What a program must stand behind for the disk to be full to it.</summary>
    public IReadOnlyList<string> Prefix => isDisk || !isFull ? [] : Quota;

    /// <summary>What a program must stand behind for a quota.</summary>
    // W^X maps a file larger than any quota: with it the runtime would end before the program begins.
    public static IReadOnlyList<string> Quota { get; } = ["env", "DOTNET_EnableWriteXorExecute=0", "prlimit", $"--fsize={LargestFile}"];

    /// <summary>How many bytes it has left; a quota has no such number.</summary>
    public long Room => isDisk ? new DriveInfo(Folder).AvailableFreeSpace : 0;

    private string Filler => Path.Combine(Folder, "filler");

    /// <summary>Leaves so many bytes.</summary>
    public void Fill(int left)
    {
        isFull = true;
        if (isDisk)
        {
            using var filler = File.Create(Filler);
            while (Room > left + Chunk)
            {
                filler.Write(new byte[Chunk]);
                filler.Flush();
            }
        }
    }

    /// <summary>Makes room.</summary>
    public void Clear()
    {
        isFull = false;
        File.Delete(Filler);
    }

    /// <summary>What lies on it beside what fills it up.</summary>
    public IEnumerable<string> Names() => Directory.EnumerateFileSystemEntries(Folder).Select(path => Path.GetFileName(path)).Where(name => name != "filler").Order(StringComparer.Ordinal);

    /// <inheritdoc/>
    public void Dispose()
    {
        if (isDisk)
        {
            Assert.True(Do("umount", Folder));
        }
    }

    private static bool Do(string program, params string[] words)
    {
        using var process = Process.Start(new ProcessStartInfo(program, words) { RedirectStandardError = true })!;
        process.WaitForExit();
        return process.ExitCode == 0;
    }
}
