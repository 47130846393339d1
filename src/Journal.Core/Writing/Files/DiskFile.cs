namespace Journal.Core.Writing.Files;

/// <summary>Writes files, and tells of every trouble with the disk as of one.</summary>
public static class DiskFile
{
    /// <summary>The error number of Linux and macOS for a file larger than a limit or a quota allows (EFBIG), as an exception's <c>HResult</c>.</summary>
    public const int TooLarge = 27;

    /// <summary>Writes a file, in the place of one that may be there.</summary>
    /// <exception cref="IOException">The disk is full, or takes no file that large.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be written.</exception>
    public static void Write(string path, ReadOnlySpan<byte> bytes)
    {
        try
        {
            File.WriteAllBytes(path, bytes);
        }
        catch (ArgumentOutOfRangeException)
        {
            throw IsTooLarge(path);
        }
    }

    /// <summary>
    /// Writes a file where there is none. Many systems write a file that took another's place to the disk at once, in case of
    /// a power cut; where nothing is replaced there is nothing to lose, and a site has thousands.
    /// </summary>
    /// <exception cref="IOException">The disk is full, takes no file that large, or has a file of that name.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be written.</exception>
    public static void Create(string path, ReadOnlySpan<byte> bytes)
    {
        using var file = File.OpenHandle(path, FileMode.CreateNew, FileAccess.Write, FileShare.None);
        try
        {
            RandomAccess.Write(file, bytes, fileOffset: 0);
        }
        catch (ArgumentOutOfRangeException)
        {
            throw IsTooLarge(path);
        }
    }

    /// <summary>Writes a file where there is none, and forces it to the disk, so that it can be given its name when it is whole.</summary>
    /// <exception cref="IOException">The disk is full, takes no file that large, or has a file of that name.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be written.</exception>
    public static void CreateFlushed(string path, ReadOnlySpan<byte> bytes)
    {
        Create(path, bytes);
        using var file = File.OpenHandle(path, FileMode.Open, FileAccess.ReadWrite, FileShare.Read);
        RandomAccess.FlushToDisk(file);
    }

    /// <summary>Copies a file to where there is none.</summary>
    /// <exception cref="IOException">The disk is full, or takes no file that large.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be written.</exception>
    public static void Copy(string from, string to)
    {
        try
        {
            File.Copy(from, to);
        }
        catch (ArgumentOutOfRangeException)
        {
            throw IsTooLarge(to);
        }
    }

    // The library asks for room beforehand, and tells of a file that is too large as of a wrong argument.
    private static IOException IsTooLarge(string path) => new($"{path} would be larger than is allowed.", TooLarge);
}
