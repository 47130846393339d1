namespace Journal.Cli.Tests;

/// <summary>The program that tests start: the one built with them, or the one that JOURNAL_PROGRAM names (<c>native.sh</c>).</summary>
internal static class BuiltProgram
{
    /// <summary>The program and what comes before its arguments.</summary>
    public static IReadOnlyList<string> Words { get; } = Environment.GetEnvironmentVariable("JOURNAL_PROGRAM") is { Length: > 0 } other
        ? [other]
        : ["dotnet", Path.Combine(AppContext.BaseDirectory, "journal.dll")];

    /// <summary>What starts it.</summary>
    public static System.Diagnostics.ProcessStartInfo With(params string[] words) => new(Words[0], [.. Words.Skip(1), .. words]);
}
