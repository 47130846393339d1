namespace Journal.Site.Output;

/// <summary>Where a site goes: a folder that is empty, missing, or was published before.</summary>
internal static class Destination
{
    /// <summary>As many as Linux follows (path_resolution(7)).</summary>
    private const int MostLinks = 40;

    private static readonly StringComparison Comparison = OperatingSystem.IsLinux() ? StringComparison.Ordinal : StringComparison.OrdinalIgnoreCase;

    /// <summary>The real path of a folder that may be written.</summary>
    /// <exception cref="PublishingException">The folder is not ours to write.</exception>
    public static string Check(string to, string journal)
    {
        var folder = RealPath(to);
        if (Path.GetDirectoryName(folder) is null)
        {
            throw new PublishingException($"{folder} is the root of a disk. Give a separate folder for the site, such as `--to site`.");
        }

        if (IsAtOrAbove(folder, RealPath(journal)))
        {
            throw new PublishingException($"{folder} holds the journal itself. Give a separate folder for the site, such as `--to site`.");
        }

        if (Environment.GetFolderPath(Environment.SpecialFolder.UserProfile) is { Length: > 0 } home && IsAtOrAbove(folder, RealPath(home)))
        {
            throw new PublishingException($"{folder} is or holds your home folder. Give a separate folder for the site, such as `--to site`.");
        }

        if (File.Exists(folder))
        {
            throw new PublishingException($"{folder} is a file. Give a folder for the site.");
        }

        if (FileOnTheWayTo(folder) is { } file)
        {
            throw new PublishingException($"{file} is a file, so nothing can be inside it. Give a folder for the site, such as `--to site`.");
        }

        if (Directory.Exists(folder) && Directory.EnumerateFileSystemEntries(folder).Any() && Manifest.Of(folder) is null)
        {
            throw new PublishingException($"{folder} holds files that were not published. Give an empty or new folder. Nothing was changed.");
        }

        return folder;
    }

    private static string? FileOnTheWayTo(string folder)
    {
        var above = Path.GetDirectoryName(folder);
        while (above is not null && !Directory.Exists(above) && !File.Exists(above))
        {
            above = Path.GetDirectoryName(above);
        }

        return File.Exists(above) ? above : null;
    }

    private static bool IsAtOrAbove(string folder, string inner) =>
        inner.Equals(folder, Comparison) || inner.StartsWith(folder + Path.DirectorySeparatorChar, Comparison);

    /// <summary>
    /// The full path with every link on the way followed, those that links lead to as well: so a site behind a link is
    /// replaced where it really is, and the journal is recognised under any name. Folders that do not exist are kept as written.
    /// </summary>
    /// <exception cref="PublishingException">The links go round in a circle.</exception>
    internal static string RealPath(string path)
    {
        var full = Path.GetFullPath(path);
        var real = Path.GetPathRoot(full)!;
        var ahead = new Stack<string>(Steps(full[real.Length..]));
        var links = 0;
        while (ahead.TryPop(out var step))
        {
            var here = step == ".." ? Path.GetDirectoryName(real) ?? real : Path.Combine(real, step);
            if (step == ".." || new DirectoryInfo(here).LinkTarget is not { } target)
            {
                real = here;
                continue;
            }

            if (++links > MostLinks)
            {
                throw new PublishingException($"{path} goes through links that lead round in a circle. Give the folder itself.");
            }

            var root = Path.GetPathRoot(target)!;
            real = root.Length > 0 ? root : real;
            foreach (var further in Steps(target[root.Length..]))
            {
                ahead.Push(further);
            }
        }

        return real;
    }

    // The last first, to be taken from a stack.
    private static IEnumerable<string> Steps(string path) => path
        .Split([Path.DirectorySeparatorChar, Path.AltDirectorySeparatorChar], StringSplitOptions.RemoveEmptyEntries)
        .Where(step => step != ".")
        .Reverse();
}
