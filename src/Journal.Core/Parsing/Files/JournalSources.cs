namespace Journal.Core.Parsing.Files;

/// <summary>When a journal's files were changed.</summary>
public static class JournalSources
{
    /// <summary>
    /// The file or folder of a journal that was changed last, with the moment (UTC); null in an empty one. Folders count
    /// because taking a file away, or copying one in with its old time, changes nothing else; the journal's own folder does
    /// not, for a site or a lock beside it changes it too. What begins with a dot and published sites are left out.
    /// </summary>
    public static (string Path, DateTime Changed)? Newest(string journal)
    {
        (string Path, DateTime Changed)? newest = null;
        Visit(new DirectoryInfo(journal), isTop: true, found =>
        {
            if (newest is null || found.LastWriteTimeUtc > newest.Value.Changed)
            {
                newest = (Path.GetRelativePath(journal, found.FullName).Replace(Path.DirectorySeparatorChar, '/'), found.LastWriteTimeUtc);
            }
        });
        return newest;
    }

    private static void Visit(DirectoryInfo folder, bool isTop, Action<FileSystemInfo> see)
    {
        if (!isTop && File.Exists(Path.Combine(folder.FullName, JournalFolder.SiteMark)))
        {
            return;
        }

        if (!isTop)
        {
            see(folder);
        }

        foreach (var found in folder.EnumerateFileSystemInfos().Where(found => found.Name[0] != '.' && found.LinkTarget is null))
        {
            if (found is DirectoryInfo inner)
            {
                Visit(inner, isTop: false, see);
            }
            else
            {
                see(found);
            }
        }
    }
}
