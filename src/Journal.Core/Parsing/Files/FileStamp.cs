namespace Journal.Core.Parsing.Files;

/// <summary>By which a file is known to be as it was.</summary>
/// <param name="Length">Bytes; negative for one that is not there.</param>
/// <param name="Modified">Ticks (UTC).</param>
/// <param name="IsSettled">Whether it was old enough when it was looked at that another change would give it another time.</param>
internal readonly record struct FileStamp(long Length, long Modified, bool IsSettled)
{
    private static readonly TimeSpan Doubtful = TimeSpan.FromSeconds(2);

    /// <summary>The stamp of a file that is being typed: nothing read of it is kept.</summary>
    public static FileStamp OfTyped => new(-2, 0, IsSettled: false);

    /// <summary>The stamp of a file, before it is read.</summary>
    public static FileStamp Of(string path) => new FileInfo(path) is { Exists: true } file
        ? new FileStamp(file.Length, file.LastWriteTimeUtc.Ticks, DateTime.UtcNow - file.LastWriteTimeUtc > Doubtful)
        : new FileStamp(-1, 0, IsSettled: true);

    /// <summary>The same size and time.</summary>
    public bool Equals(FileStamp other) => (Length, Modified) == (other.Length, other.Modified);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Length, Modified);
}

/// <summary>A look at the disk that the reading of a file followed from: whether a picture is there, and how large.</summary>
internal readonly record struct DiskLook(string Path, long Length)
{
    /// <summary>Looks.</summary>
    public static DiskLook At(string path) => new(path, LengthOf(path));

    /// <summary>Whether another look gives the same.</summary>
    public bool IsSame() => LengthOf(Path) == Length;

    private static long LengthOf(string path) => File.Exists(path) ? new FileInfo(path).Length : -1;
}
