using System.Globalization;
using System.Runtime.InteropServices;
using System.Text;
using Journal.Cli.Options;

namespace Journal.Cli;

/// <summary>
/// What whoever mends the program needs to know of a fault in it: the version, the command with the names of its options,
/// the system, and the place in the code. Nothing of the journal: no values of options, and no messages, which may quote.
/// </summary>
internal static class FaultReport
{
    /// <summary>Writes the report among the system's temporary files; null where that cannot be done.</summary>
    /// <param name="fault">What was thrown.</param>
    /// <param name="args">The command line.</param>
    /// <returns>The file.</returns>
    public static string? Write(Exception fault, IReadOnlyList<string> args)
    {
        var now = DateTime.UtcNow.ToString("yyyy-MM-dd'T'HHmmss", CultureInfo.InvariantCulture);
        var path = Path.Combine(Path.GetTempPath(), $"journal-fault-{now}-{Environment.ProcessId.ToString(CultureInfo.InvariantCulture)}.txt");
        try
        {
            File.WriteAllText(path, Text(fault, args));
            return path;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private static string Text(Exception fault, IReadOnlyList<string> args)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"journal {VersionLine.Version}\n");
        text.Append(CultureInfo.InvariantCulture, $"command: {Command(args)}\n");
        text.Append(CultureInfo.InvariantCulture, $"system: {RuntimeInformation.OSDescription}, {RuntimeInformation.RuntimeIdentifier}, {RuntimeInformation.FrameworkDescription}\n");
        for (var one = fault; one is not null; one = one.InnerException)
        {
            text.Append(CultureInfo.InvariantCulture, $"\n{one.GetType().FullName}\n{one.StackTrace}\n");
        }

        return text.ToString();
    }

    // `write --part head --hours 2h` becomes `write --part … --hours …`.
    private static string Command(IReadOnlyList<string> args) =>
        string.Join(' ', args.Select((arg, i) => i == 0 && arg.All(char.IsAsciiLetterLower) || IsNameOfOption(arg) ? arg.Split('=')[0] : "…"));

    private static bool IsNameOfOption(string arg) => arg.StartsWith("--", StringComparison.Ordinal) && arg.Split('=')[0].Skip(2).All(letter => char.IsAsciiLetterLower(letter) || letter == '-');
}
