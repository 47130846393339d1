using System.Text;
using Journal.Cli.Output;

namespace Journal.Cli.Writing;

/// <summary>The text of an account, from a file or from standard input.</summary>
internal static class AccountText
{
    /// <summary>More than anyone tells of an evening, in bytes.</summary>
    private const long MostBytes = 8_000_000;

    /// <summary>Reads it.</summary>
    /// <param name="file">A file; <c>-</c> or null for standard input.</param>
    /// <param name="terminal">Where standard input comes from, and the folder that the file's name is relative to.</param>
    /// <exception cref="UsageException">It cannot be read, or nothing was given.</exception>
    public static string Read(string? file, Terminal terminal)
    {
        if (file is null or "-")
        {
            return file is null && terminal.CanAsk
                ? throw new UsageException("There is no account to read. Name a file, or send it in: `journal propose -`.")
                : terminal.In.ReadToEnd();
        }

        var path = Path.Combine(terminal.Folder, file);
        try
        {
            return new FileInfo(path).Length > MostBytes
                ? throw new UsageException($"{file} is too long for an account of an evening. Give the text of one evening.")
                : File.ReadAllText(path, Encoding.UTF8);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new UsageException($"{file} cannot be read: {e.Message}", e);
        }
    }
}
