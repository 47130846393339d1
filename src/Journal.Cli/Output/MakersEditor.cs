using System.Diagnostics;

namespace Journal.Cli.Output;

/// <summary>The editor that the maker set: <c>VISUAL</c>, else <c>EDITOR</c>.</summary>
internal static class MakersEditor
{
    /// <summary>Opens a file in it and waits; null where neither is set.</summary>
    public static Action<string>? Find(Func<string, string?> variable) =>
        new[] { variable("VISUAL"), variable("EDITOR") }.FirstOrDefault(one => !string.IsNullOrWhiteSpace(one)) is { } editor ? path => Open(editor, path) : null;

    // The setting may hold words for the editor itself, so the shell reads it; the path goes beside it, unread.
    private static void Open(string editor, string path)
    {
        var start = OperatingSystem.IsWindows()
            ? new ProcessStartInfo("cmd.exe", $"/c {editor} \"{path}\"")
            : new ProcessStartInfo("/bin/sh", ["-c", $"{editor} \"$1\"", "journal", path]);
        using var process = Process.Start(start);
        process?.WaitForExit();
    }
}
