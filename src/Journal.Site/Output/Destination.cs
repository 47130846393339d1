namespace Journal.Site.Output;

/// <summary>Where a site goes: a folder that is empty, missing, or was published before.</summary>
internal static class Destination
{
    /// <summary>The full path of a folder that may be written.</summary>
    /// <exception cref="PublishingException">The folder is not ours to write.</exception>
    public static string Check(string to, string journal)
    {
        var folder = Path.TrimEndingDirectorySeparator(Path.GetFullPath(to));
        var home = Path.TrimEndingDirectorySeparator(Path.GetFullPath(journal));
        if (Path.GetDirectoryName(folder) is null)
        {
            throw new PublishingException($"{folder} is the root of a disk. Name a folder of its own for the site, such as `--to site`.");
        }

        if (folder == Path.TrimEndingDirectorySeparator(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile)))
        {
            throw new PublishingException($"{folder} is your home folder. Name a folder of its own for the site, such as `--to site`.");
        }

        if (IsAtOrAbove(folder, home))
        {
            throw new PublishingException($"{folder} holds the journal itself. Name a folder of its own for the site, such as `--to site`.");
        }

        if (File.Exists(folder))
        {
            throw new PublishingException($"{folder} is a file. Name a folder for the site.");
        }

        if (Directory.Exists(folder) && Directory.EnumerateFileSystemEntries(folder).Any() && Manifest.Of(folder) is null)
        {
            throw new PublishingException($"{folder} holds files that no publish wrote. Name an empty or a new folder; nothing was touched.");
        }

        return folder;
    }

    private static bool IsAtOrAbove(string folder, string inner)
    {
        var comparison = OperatingSystem.IsLinux() ? StringComparison.Ordinal : StringComparison.OrdinalIgnoreCase;
        return inner.Equals(folder, comparison) || inner.StartsWith(folder + Path.DirectorySeparatorChar, comparison);
    }
}
