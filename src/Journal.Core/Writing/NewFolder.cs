using System.Text;
using Journal.Core.Writing.Files;

namespace Journal.Core.Writing;

/// <summary>A new folder of the journal, there whole or not at all.</summary>
internal static class NewFolder
{
    /// <summary>
    /// Writes one file into a folder that begins with a dot, which no reader looks into, and then gives the folder its name
    /// in one step. What an earlier, interrupted attempt left is cleared away.
    /// </summary>
    /// <exception cref="IOException">The folder is there already, or the disk does not take it.</exception>
    /// <exception cref="UnauthorizedAccessException">The journal may not be written to.</exception>
    public static void Write(string parent, string name, string file, string text)
    {
        var unfinished = Path.Combine(parent, $".begin-{name}");
        if (Directory.Exists(unfinished))
        {
            Directory.Delete(unfinished, recursive: true);
        }

        Directory.CreateDirectory(unfinished);
        try
        {
            using (var stream = new FileStream(Path.Combine(unfinished, file), FileMode.CreateNew))
            {
                stream.Write(new UTF8Encoding(encoderShouldEmitUTF8Identifier: false).GetBytes(text));
                stream.Flush(flushToDisk: true);
            }

            FlushToDisk.Names(unfinished);
            Directory.Move(unfinished, Path.Combine(parent, name));
            FlushToDisk.Names(parent);
        }
        catch
        {
            Directory.Delete(unfinished, recursive: true);
            throw;
        }
    }
}
