using System.Buffers.Binary;
using System.IO.Enumeration;
using System.Security.Cryptography;
using Journal.Site.Output;

namespace Journal.Site.Publishing;

/// <summary>By which a file is known to be as it was: its size, when it was last written, and of texts what they hold.</summary>
/// <param name="Length">Bytes.</param>
/// <param name="Modified">Ticks, UTC.</param>
/// <param name="Contents">The first half of the SHA-256 of a text of the journal; 0 for all other files.</param>
internal readonly record struct FileStamp(long Length, long Modified, UInt128 Contents = default);

/// <summary>The files of a journal.</summary>
/// <param name="Stamps">Their stamps.</param>
/// <param name="HoldsLinks">Whether there are links among them, whose ends were not looked at.</param>
internal sealed record JournalFiles(IReadOnlyDictionary<string, FileStamp> Stamps, bool HoldsLinks);

/// <summary>The stamps of all files of a folder, by path from it with <c>/</c>.</summary>
internal static class FileStamps
{
    // What is larger is not read for a journal either.
    private const long LargestText = 512 * 1024;

    private static readonly FileStamp Link = new(-1, -1);
    private static readonly EnumerationOptions Everything = new() { RecurseSubdirectories = true, AttributesToSkip = 0, IgnoreInaccessible = false };

    /// <summary>
    /// What a journal is read from. Names that begin with a dot and published sites are no part of it. Null where the folder
    /// cannot be looked through. Texts are read: a copy put back brings its older time with it, and a word that hides an
    /// entry may be as long as the one it takes the place of.
    /// </summary>
    public static JournalFiles? OfJournal(string folder)
    {
        if (OfFiles(folder) is not { } files)
        {
            return null;
        }

        try
        {
            var texts = files.Where(file => file.Value != Link && IsText(file.Key)).Select(file => file.Key).ToArray();
            var contents = new UInt128[texts.Length];
            Parallel.For(0, texts.Length, i => contents[i] = files[texts[i]].Length is > 0 and <= LargestText ? DigestOf(Path.Combine(folder, texts[i])) : default);
            foreach (var (text, digest) in texts.Zip(contents))
            {
                files[text] = files[text] with { Contents = digest };
            }

            return new JournalFiles(files, files.Values.Any(stamp => stamp == Link));
        }
        catch (AggregateException e) when (e.InnerExceptions.All(inner => inner is IOException or UnauthorizedAccessException))
        {
            return null;
        }
    }

    private static bool IsText(string file) => file.EndsWith(".md", StringComparison.OrdinalIgnoreCase) || file.EndsWith(".yaml", StringComparison.Ordinal);

    private static UInt128 DigestOf(string path) => BinaryPrimitives.ReadUInt128LittleEndian(SHA256.HashData(File.ReadAllBytes(path)));

    private static Dictionary<string, FileStamp>? OfFiles(string folder) => Of(
        folder,
        static (ref FileSystemEntry entry) => entry.FileName[0] != '.' && (entry.Attributes & FileAttributes.ReparsePoint) == 0 && !File.Exists(Path.Join(entry.ToFullPath(), Manifest.FileName)),
        static (ref FileSystemEntry entry) => entry.FileName[0] != '.' && (!entry.IsDirectory || (entry.Attributes & FileAttributes.ReparsePoint) != 0));

    /// <summary>The stamp of a file by size and time; null where it is not there.</summary>
    public static FileStamp? Of(string file) => new FileInfo(file) is { Exists: true } found ? new FileStamp(found.Length, found.LastWriteTimeUtc.Ticks) : null;

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
