using System.Text;

namespace Journal.Core.Writing.Files;

/// <summary>
/// Writes files so that an end at any moment, by a kill or a power cut, leaves the old file or the new one and never
/// a piece: a whole new file beside it, forced to the disk, then renamed.
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
    public static void Replace(string path, ReadOnlySpan<byte> bytes)
    {
        var file = BehindLinks.FileOf(path);
        if (file is { Exists: true, IsReadOnly: true })
        {
            throw new UnauthorizedAccessException($"{path} is write-protected.");
        }

        var beside = WriteBeside(file.FullName, bytes, file.Exists && !OperatingSystem.IsWindows() ? file.UnixFileMode : null);
        File.Move(beside, file.FullName, overwrite: true);
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
            return true;
        }
        catch (IOException) when (File.Exists(path))
        {
            File.Delete(beside);
            return false;
        }
    }

    private static string WriteBeside(string path, ReadOnlySpan<byte> bytes, UnixFileMode? mode = null)
    {
        var folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
        Directory.CreateDirectory(folder);
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
}
