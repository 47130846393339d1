namespace Journal.Cli.Options;

/// <summary>Bytes that are not UTF-8: the runtime puts one sign in the place of each, and what they meant is lost.</summary>
internal static class ForeignBytes
{
    private const char InTheirPlace = '\uFFFD';

    /// <summary>What is wrong with a text that someone gave; null where nothing is.</summary>
    public static string? In(string text) => !text.Contains(InTheirPlace, StringComparison.Ordinal) ? null
        : $"“{text}” contains bytes that are not UTF-8 (shown as “{InTheirPlace}”). Set the terminal or the script to UTF-8, then try again.";
}
