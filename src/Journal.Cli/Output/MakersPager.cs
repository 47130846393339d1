using System.ComponentModel;
using System.Diagnostics;
using System.Text;

namespace Journal.Cli.Output;

/// <summary>The program by which a maker reads long texts: <c>PAGER</c>, else <c>less</c> where it is there.</summary>
internal static class MakersPager
{
    private const string Usual = "less";

    /// <summary>How <c>less</c> behaves unless the maker says otherwise: it ends by itself on a short text, keeps colours, and leaves the text on the screen.</summary>
    private const string UsualWays = "FRX";

    /// <summary>Shows a text in it and waits; null where there is none, or where the maker wants none (<c>PAGER=cat</c>, or empty).</summary>
    public static Action<string>? Find(Func<string, string?> variable) => variable("PAGER") switch
    {
        null => IsOnPath(Usual, variable("PATH")) ? text => Show(Usual, text, variable) : null,
        var named when string.IsNullOrWhiteSpace(named) || named.Trim() == "cat" => null,
        var named => text => Show(named, text, variable),
    };

    private static bool IsOnPath(string program, string? path) =>
        !OperatingSystem.IsWindows() && (path ?? "").Split(':', StringSplitOptions.RemoveEmptyEntries).Any(folder => File.Exists(Path.Combine(folder, program)));

    // The setting may hold words for the pager itself, so the shell reads it.
    private static void Show(string pager, string text, Func<string, string?> variable)
    {
        var start = OperatingSystem.IsWindows() ? new ProcessStartInfo("cmd.exe", $"/c {pager}") : new ProcessStartInfo("/bin/sh", ["-c", pager]);
        start.RedirectStandardInput = true;
        start.StandardInputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        if (variable("LESS") is null)
        {
            start.Environment["LESS"] = UsualWays;
        }

        try
        {
            using var process = Process.Start(start);
            Feed(process!, text);
            process!.WaitForExit();
        }
        catch (Win32Exception)
        {
            Console.Out.Write(text);
        }
    }

    // Whoever has read enough closes it, and the rest has nowhere to go.
    private static void Feed(Process process, string text)
    {
        try
        {
            process.StandardInput.Write(text);
            process.StandardInput.Close();
        }
        catch (IOException)
        {
            return;
        }
    }
}
