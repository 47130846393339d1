using System.IO.Enumeration;

namespace Journal.Core.Writing.Files;

/// <summary>Files as what they are behind links.</summary>
public static class BehindLinks
{
    /// <summary>What stands in a name for bytes that are no text. No file can be had by it; whoever tries can say so.</summary>
    private const char Unreadable = '\uFFFD';

    /// <summary>The file itself, which need not be there.</summary>
    /// <exception cref="IOException">Links lead round in a circle.</exception>
    public static FileInfo FileOf(string path) =>
        new FileInfo(path) is { LinkTarget: not null } link && link.ResolveLinkTarget(returnFinalTarget: true) is { } target ? new FileInfo(target.FullName) : new FileInfo(path);

    /// <summary>Whether a file has contents. Pipes and devices have no length, and opening one could wait for ever.</summary>
    public static bool HasContents(string path)
    {
        try
        {
            var file = FileOf(path);
            return file.Exists && file.Length > 0;
        }
        catch (IOException)
        {
            return false;
        }
    }

    /// <summary>
    /// The files in a folder and the folders below it that have contents, or names that are no text. Folders behind links are left
    /// out, for they may lead round in a circle.
    /// </summary>
    public static IEnumerable<string> FilesBelow(string folder)
    {
        var options = new EnumerationOptions { RecurseSubdirectories = true, IgnoreInaccessible = true };
        return new FileSystemEnumerable<string>(folder, (ref found) => found.ToSpecifiedFullPath(), options)
        {
            ShouldIncludePredicate = (ref found) => !found.IsDirectory,
            ShouldRecursePredicate = (ref found) => (found.Attributes & FileAttributes.ReparsePoint) == 0,
        }.Where(path => HasContents(path) || path.Contains(Unreadable, StringComparison.Ordinal));
    }
}
