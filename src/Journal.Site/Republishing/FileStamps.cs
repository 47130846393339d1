using System.IO.Enumeration;
using Journal.Site.Output;

namespace Journal.Site.Republishing;

/// <summary>By which a file is known to be as it was: its size and when it was last written.</summary>
/// <param name="Length">Bytes.</param>
/// <param name="Modified">Ticks, UTC.</param>
internal readonly record struct FileStamp(long Length, long Modified);

/// <summary>The stamps of all files of a folder, by path from it with <c>/</c>.</summary>
internal static class FileStamps
{
    private static readonly FileStamp Link = new(-1, -1);
    private static readonly EnumerationOptions Everything = new() { RecurseSubdirectories = true, AttributesToSkip = 0, IgnoreInaccessible = false };

    /// <summary>
    /// What a journal is read from. Names that begin with a dot and published sites are no part of it. Null where the folder
    /// cannot be looked through, or holds links, whose ends would have to be looked at too.
    /// </summary>
    public static Dictionary<string, FileStamp>? OfJournal(string folder) => Of(
        folder,
        static (ref FileSystemEntry entry) => entry.FileName[0] != '.' && (entry.Attributes & FileAttributes.ReparsePoint) == 0 && !File.Exists(Path.Join(entry.ToFullPath(), Manifest.FileName)),
        static (ref FileSystemEntry entry) => entry.FileName[0] != '.' && (!entry.IsDirectory || (entry.Attributes & FileAttributes.ReparsePoint) != 0)) is { } found
        && found.Values.All(stamp => stamp != Link) ? found : null;

    /// <summary>Every file of a site.</summary>
    public static Dictionary<string, FileStamp>? OfSite(string folder) => Of(
        folder,
        static (ref FileSystemEntry entry) => (entry.Attributes & FileAttributes.ReparsePoint) == 0,
        static (ref FileSystemEntry entry) => !entry.IsDirectory);

    private static Dictionary<string, FileStamp>? Of(
        string folder,
        FileSystemEnumerable<(string Path, FileStamp Stamp)>.FindPredicate enters,
        FileSystemEnumerable<(string Path, FileStamp Stamp)>.FindPredicate takes)
    {
        var root = Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder)).Length + 1;
        try
        {
            var found = new FileSystemEnumerable<(string Path, FileStamp Stamp)>(
                folder,
                (ref FileSystemEntry entry) => (entry.ToFullPath()[root..], (entry.Attributes & FileAttributes.ReparsePoint) != 0 ? Link : new FileStamp(entry.Length, entry.LastWriteTimeUtc.UtcTicks)),
                Everything) { ShouldRecursePredicate = enters, ShouldIncludePredicate = takes };
            return found.ToDictionary(file => Path.DirectorySeparatorChar == '/' ? file.Path : file.Path.Replace(Path.DirectorySeparatorChar, '/'), file => file.Stamp, StringComparer.Ordinal);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }
}
