using System.Globalization;

namespace Journal.Cli.Wording;

/// <summary>Amounts of data in the decimal units of IEC 80000-13.</summary>
internal static class Bytes
{
    /// <summary>“840 B”, “12 kB”, “3.4 MB”.</summary>
    public static string InWords(long count) => count switch
    {
        < 1000 => string.Create(CultureInfo.InvariantCulture, $"{count} B"),
        < 1_000_000 => string.Create(CultureInfo.InvariantCulture, $"{count / 1e3:0.#} kB"),
        < 1_000_000_000 => string.Create(CultureInfo.InvariantCulture, $"{count / 1e6:0.#} MB"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{count / 1e9:0.##} GB"),
    };
}
