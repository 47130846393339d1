namespace Journal.Core.TakingIn;

/// <summary>
/// Puts entries into a build: all of them are written out of sight first and then moved, never over a file that is there.
/// On any failure those moved are taken back.
/// </summary>
public static class EntryStore
{
    private const string Aside = ".being-taken-in";

    /// <summary>Puts the entries of a harvest into a build's folder.</summary>
    /// <exception cref="IOException">The disk is full, or a file came to be there meanwhile; nothing was put.</exception>
    public static void Store(Harvest harvest, string buildFolder)
    {
        var aside = Path.Combine(buildFolder, Aside);
        if (Directory.Exists(aside))
        {
            // Left by a program that was stopped; nothing of it was ever seen.
            Directory.Delete(aside, recursive: true);
        }

        Directory.CreateDirectory(aside);
        var moved = new List<string>();
        try
        {
            foreach (var entry in harvest.Entries)
            {
                File.WriteAllBytes(Path.Combine(aside, entry.Name), entry.Contents.Span);
            }

            foreach (var entry in harvest.Entries)
            {
                var place = Path.Combine(buildFolder, entry.Name);
                File.Move(Path.Combine(aside, entry.Name), place, overwrite: false);
                moved.Add(place);
            }
        }
        catch
        {
            foreach (var place in moved)
            {
                File.Delete(place);
            }

            throw;
        }
        finally
        {
            Directory.Delete(aside, recursive: true);
        }
    }
}
