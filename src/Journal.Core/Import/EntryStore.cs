using System.Globalization;
using Journal.Core.Writing.Files;

namespace Journal.Core.Import;

/// <summary>
/// Puts entries into a build: all of them into a folder out of sight, which then gets its name in one step. Nothing that
/// is there is written over, and nothing half-done can be seen.
/// </summary>
public static class EntryStore
{
    /// <summary>How the folders are named, where need be with a number behind.</summary>
    public const string Name = "taken-in";

    private const string Aside = ".being-taken-in";

    /// <summary>Puts the entries of a log into a build, and gives the name of the new folder in it.</summary>
    /// <exception cref="IOException">The disk is full; nothing was put.</exception>
    public static string Store(ImportedLog log, string buildFolder)
    {
        var aside = Path.Combine(buildFolder, Aside);
        if (Directory.Exists(aside))
        {
            // Left by a program that was stopped; nothing of it was ever seen.
            Directory.Delete(aside, recursive: true);
        }

        Directory.CreateDirectory(aside);
        try
        {
            foreach (var entry in log.Entries)
            {
                DiskFile.Write(Path.Combine(aside, entry.Name), entry.Contents.Span);
            }

            FlushToDisk.All(aside);
            var name = NewName(buildFolder);
            Directory.Move(aside, Path.Combine(buildFolder, name));
            FlushToDisk.Names(buildFolder);
            return name;
        }
        catch
        {
            Directory.Delete(aside, recursive: true);
            throw;
        }
    }

    private static string NewName(string folder)
    {
        var taken = Directory.EnumerateFileSystemEntries(folder).Select(Path.GetFileName).ToHashSet(StringComparer.OrdinalIgnoreCase);
        var name = Name;
        for (var number = 2; taken.Contains(name); number++)
        {
            name = string.Create(CultureInfo.InvariantCulture, $"{Name}-{number}");
        }

        return name;
    }
}
