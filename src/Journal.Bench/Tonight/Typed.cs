using System.Globalization;
using System.Text.RegularExpressions;

namespace Journal.Bench.Tonight;

/// <summary>What is typed on a phone, as the journal writes it.</summary>
internal static partial class Typed
{
    /// <summary>A number or size: many keyboards have a comma where the journal wants a point.</summary>
    public static string? Number(string? text) => text is null ? null : CommaInNumber().Replace(text, "$1.$2");

    /// <summary>A text on one line: what is dictated comes with line ends.</summary>
    public static string? Line(string? text) => text is null ? null : string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    /// <summary>An amount of money, not below 0; null where it is none.</summary>
    public static decimal? Money(string? text) =>
        decimal.TryParse(Number(text), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var amount) && amount < 1_000_000_000 ? amount : null;

    [GeneratedRegex(@"(?<![0-9.,])([0-9]+),([0-9]+)(?![0-9.,])", RegexOptions.CultureInvariant)]
    private static partial Regex CommaInNumber();
}
