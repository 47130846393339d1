using System.Text;

namespace Journal.Core.Writing.Files;

/// <summary>
/// Writes files so that an end at any moment, by a kill or a power cut, leaves the old file or the new one and never
/// a piece: a whole new file beside it, forced to the disk, then renamed, and the new name forced to the disk as well.
/// When a call returns, what it wrote outlives a power cut.
/// </summary>
public static class SafeFile
{
    /// <summary>What is behind a file's name while it is being written. Such files begin with a dot, so no journal reads them.</summary>
    private const string Unfinished = ".being-written";

    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    /// <summary>Puts a text in the place of a file, or makes the file.</summary>
    public static void Replace(string path, string text) => Replace(path, Utf8.GetBytes(text));

    /// <summary>
    /// Puts bytes in the place of a file, or makes the file. Behind a link it is the file that the link leads to; who may
    /// read it stays as it was.
    /// </summary>
    /// <exception cref="UnauthorizedAccessException">The file is write-protected.</exception>
    public static void Replace(string path, ReadOnlySpan<byte> bytes) => Rename(Beside(path, bytes));

    /// <summary>
    /// Puts bytes in the place of a file that still holds what was read from it; false, with nothing touched, where someone
    /// saved it meanwhile. It is looked at once more when all is ready, just before the new file takes its name.
    /// </summary>
    /// <param name="path">The file.</param>
    /// <param name="read">What was read from it.</param>
    /// <param name="bytes">What shall stand in it.</param>
    /// <exception cref="UnauthorizedAccessException">The file is write-protected.</exception>
    public static bool TryReplace(string path, ReadOnlySpan<byte> read, ReadOnlySpan<byte> bytes)
    {
        var (beside, file) = Beside(path, bytes);
        if (Holds(file, read))
        {
            Rename((beside, file));
            return true;
        }

        File.Delete(beside);
        return false;
    }

    /// <summary>Makes a file that is not there yet; false, with nothing touched, where it is.</summary>
    public static bool TryCreate(string path, string text) => TryCreate(path, Utf8.GetBytes(text));

    /// <summary>Makes a file that is not there yet; false, with nothing touched, where it is.</summary>
    public static bool TryCreate(string path, ReadOnlySpan<byte> bytes)
    {
        if (File.Exists(path))
        {
            return false;
        }

        var beside = WriteBeside(path, bytes);
        try
        {
            // Without leave to overwrite, the system itself refuses a name that was taken in between.
            File.Move(beside, path, overwrite: false);
            FlushToDisk.Names(FolderOf(path));
            return true;
        }
        catch (IOException) when (File.Exists(path))
        {
            File.Delete(beside);
            return false;
        }
    }

    // The new file beside the one that it shall replace.
    private static (string Beside, string File) Beside(string path, ReadOnlySpan<byte> bytes)
    {
        var file = BehindLinks.FileOf(path);
        if (file is { Exists: true, IsReadOnly: true })
        {
            throw new UnauthorizedAccessException($"{path} is write-protected.");
        }

        return (WriteBeside(file.FullName, bytes, file.Exists && !OperatingSystem.IsWindows() ? file.UnixFileMode : null), file.FullName);
    }

    private static void Rename((string Beside, string File) ready)
    {
        File.Move(ready.Beside, ready.File, overwrite: true);
        FlushToDisk.Names(FolderOf(ready.File));
    }

    private static bool Holds(string path, ReadOnlySpan<byte> bytes)
    {
        try
        {
            return new FileInfo(path).Length == bytes.Length && File.ReadAllBytes(path).AsSpan().SequenceEqual(bytes);
        }
        catch (FileNotFoundException)
        {
            return false;
        }
    }

    private static string FolderOf(string path) => Path.GetDirectoryName(Path.GetFullPath(path))!;

    private static string WriteBeside(string path, ReadOnlySpan<byte> bytes, UnixFileMode? mode = null)
    {
        var folder = FolderOf(path);
        MakeFolder(folder);
        var beside = Path.Combine(folder, $".{Path.GetFileName(path)}{Unfinished}");
        try
        {
            using var stream = new FileStream(beside, FileMode.Create, FileAccess.Write, FileShare.None, bufferSize: 0);
            if (mode is { } same && !OperatingSystem.IsWindows())
            {
                File.SetUnixFileMode(stream.SafeFileHandle, same);
            }

            stream.Write(bytes);
            stream.Flush(flushToDisk: true);
            return beside;
        }
        catch (IOException)
        {
            // Half a file must not take the room that is short.
            File.Delete(beside);
            throw;
        }
    }

    /// <summary>Makes a folder and those above it where they are missing, and forces their names to the disk.</summary>
    public static void MakeFolder(string folder)
    {
        if (Directory.Exists(folder) || Path.GetDirectoryName(folder) is not { } parent)
        {
            return;
        }

        MakeFolder(parent);
        Directory.CreateDirectory(folder);
        FlushToDisk.Names(parent);
    }
}
