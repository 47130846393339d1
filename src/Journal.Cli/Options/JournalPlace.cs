using Journal.Core.Writing.Bench;
using Journal.Core.Writing.Names;

namespace Journal.Cli.Options;

/// <summary>Which folder holds the journal that the maker means.</summary>
internal static class JournalPlace
{
    private const string Head = "journal.yaml";
    private const string UsualName = "journal";

    /// <summary>The journal's folder; null where there is none. A change of names that a crash left half done is finished first.</summary>
    /// <param name="named">The folder that the maker named; null where none was.</param>
    /// <param name="from">The folder that the maker stands in.</param>
    /// <exception cref="IOException">It cannot be finished.</exception>
    public static string? Find(string? named, string from)
    {
        var folder = Look(named, from);
        if (folder is not null && UnfinishedChange.IsThere(folder))
        {
            SlateFile.Take(folder).Dispose();
        }

        return folder;
    }

    private static string? Look(string? named, string from)
    {
        if (named is not null)
        {
            return Holds(Path.Combine(from, named)) ? Path.GetFullPath(named, from) : null;
        }

        for (var folder = new DirectoryInfo(from); folder is not null; folder = folder.Parent)
        {
            if (Holds(folder.FullName))
            {
                return folder.FullName;
            }
        }

        var usual = Path.Combine(from, UsualName);
        return Holds(usual) ? usual : null;
    }

    /// <summary>Why no journal was found, and what to do.</summary>
    public static string WhyNot(string? named, string from)
    {
        if (named is null)
        {
            return $"There is no journal here: no {Head} in {from} or above it, nor in ./{UsualName}. Change to its folder, or give it with `--in <folder>`.";
        }

        var folder = Path.GetFullPath(named, from);
        return !Directory.Exists(folder) ? $"There is no folder {folder}. `--in` needs the folder that holds your {Head}."
            : Holds(Path.Combine(folder, UsualName)) ? $"There is no {Head} in {folder}. Did you mean `--in {Path.Combine(named, UsualName)}`?"
            : $"There is no {Head} in {folder}. `--in` needs the folder that holds it.";
    }

    private static bool Holds(string folder) => File.Exists(Path.Combine(folder, Head));
}
