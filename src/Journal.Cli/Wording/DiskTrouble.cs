using Journal.Core.Writing.Files;

namespace Journal.Cli.Wording;

/// <summary>What kept the program from reading or writing, in a maker's words with a remedy.</summary>
internal static class DiskTrouble
{
    // ENOSPC; EDQUOT of Linux and of macOS; ERROR_DISK_FULL and ERROR_HANDLE_DISK_FULL of Windows.
    private static readonly int[] Full = [28, 122, 69, unchecked((int)0x80070070), unchecked((int)0x80070027)];

    /// <summary>The exception's own words, what they mean where the disk is full, and a remedy.</summary>
    public static string InWords(Exception e) => e switch
    {
        IOException { HResult: DiskFile.TooLarge } => $"The file is too large for this disk (a limit or a quota): {e.Message.TrimEnd('.')}. Raise the limit, then try again.",
        IOException when Full.Contains(e.HResult) => $"The disk is full: {e.Message.TrimEnd('.')}. Free some space, then try again.",
        UnauthorizedAccessException => $"{e.Message} Check its permissions, then try again.",
        _ => e.Message,
    };

    /// <summary>The same of standard output, where a closed one (EBADF) comes as a missing permission. Without a call to try again: what was to be written to files is.</summary>
    public static string OfOutput(Exception e) => e is UnauthorizedAccessException
        ? "Standard output is closed. Redirect it, such as with `> results.txt`."
        : $"{e.Message.TrimEnd('.')}. Redirect standard output elsewhere.";
}
