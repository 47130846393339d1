using Journal.Cli.Output;
using Journal.Core.Import;
using Journal.Core.Parsing.Files;
using Journal.Core.Writing.Files;

namespace Journal.Cli.Writing;

/// <summary>The text of an account, from a file or from standard input.</summary>
internal static class AccountText
{
    /// <summary>More than anyone tells of an evening, in bytes.</summary>
    private const int MostBytes = 8_000_000;

    /// <summary>Reads it.</summary>
    /// <param name="file">A file; <c>-</c> or null for standard input.</param>
    /// <param name="terminal">Where standard input comes from, and the folder that the file's name is relative to.</param>
    /// <exception cref="UsageException">It cannot be read, or nothing was given.</exception>
    public static string Read(string? file, Terminal terminal) => file is null or "-" ? FromStandardInput(file, terminal) : FromFile(file, terminal);

    private static string FromStandardInput(string? file, Terminal terminal)
    {
        if (terminal.CanAsk && file is null)
        {
            throw new UsageException("There is no account to read. Name a file, or send it in: `journal propose -`.");
        }

        if (terminal.CanAsk)
        {
            terminal.Complain($"Tell of the evening; end with {(OperatingSystem.IsWindows() ? "Ctrl-Z" : "Ctrl-D")} on a line of its own.");
        }

        var text = new char[MostBytes + 1];
        var length = terminal.In.ReadBlock(text);
        return length > MostBytes ? throw new UsageException(TooLong("What was sent in")) : Checked("What was sent in", new string(text, 0, length));
    }

    private static string FromFile(string file, Terminal terminal)
    {
        var path = Path.Combine(terminal.Folder, file);
        try
        {
            return UnixFile.IsPipe(path) ? throw new UsageException($"{file} is a pipe. Send in what comes from it, and name `-` instead.")
                : BehindLinks.FileOf(path).Length > MostBytes ? throw new UsageException(TooLong(file))
                : Checked(file, OlderText.Of(OlderText.BytesOf(path)) ?? throw new UsageException($"{file} is not text in UTF-8. Save it as plain text with the encoding UTF-8, then try again."));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new UsageException($"{file} cannot be read: {e.Message}", e);
        }
    }

    private static string Checked(string name, string text) =>
        text.Contains('\0', StringComparison.Ordinal) ? throw new UsageException($"{name} is not text. Give plain text in UTF-8.")
            : text.Contains('\uFFFD', StringComparison.Ordinal) ? throw new UsageException($"{name} contains bytes that are not UTF-8 (shown as “\uFFFD”). Save it, or send it, as UTF-8, then try again.")
            : text;

    private static string TooLong(string name) => $"{name} is too long for an account of an evening. Give the text of one evening.";
}
