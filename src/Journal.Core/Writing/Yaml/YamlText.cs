using System.Globalization;
using System.Text;

namespace Journal.Core.Writing.Yaml;

/// <summary>Values as YAML, on one line and fit to stand within a flow list.</summary>
internal static class YamlText
{
    /// <summary>A text: bare where that is safe, else in double quotes.</summary>
    public static string Of(string text) => IsSafeBare(text) ? text : Quoted(text);

    /// <summary>A map on one line; keys without a value are left out.</summary>
    public static string Map(params (string Key, string? Value)[] pairs) =>
        $"{{{string.Join(", ", pairs.Where(pair => pair.Value is not null).Select(pair => $"{pair.Key}: {pair.Value}"))}}}";

    /// <summary>A list on one line.</summary>
    public static string List(IEnumerable<string> items) => $"[{string.Join(", ", items)}]";

    /// <summary>One value as it is, several as a list; null for none.</summary>
    public static string? OneOrMore(IReadOnlyList<string> items) => items.Count switch
    {
        0 => null,
        1 => items[0],
        _ => List(items),
    };

    // Narrower than YAML 1.2.2, 7.3.3, allows: whatever could mean something else in some reader is quoted.
    private static bool IsSafeBare(string text) =>
        text.Length > 0
        && char.IsAsciiLetterOrDigit(text[0])
        && text[^1] is not (' ' or ':')
        && text.All(letter => char.IsLetterOrDigit(letter) || letter is ' ' or '-' or '_' or '.' or '/' or '(' or ')' or ';' or '+' or '\'' or '–' or '°')
        && text.ToUpperInvariant() is not ("NULL" or "TRUE" or "FALSE" or "YES" or "NO" or "ON" or "OFF" or "Y" or "N");

    private static string Quoted(string text)
    {
        var quoted = new StringBuilder("\"");
        foreach (var letter in text)
        {
            quoted.Append(letter switch
            {
                '"' => "\\\"",
                '\\' => "\\\\",
                '\n' => "\\n",
                '\r' => "\\r",
                '\t' => "\\t",
                _ when char.IsControl(letter) || letter is '\u2028' or '\u2029' or '\uFEFF' or '\uFFFE' or '\uFFFF' => $"\\u{((int)letter).ToString("X4", CultureInfo.InvariantCulture)}",
                _ => letter.ToString(),
            });
        }

        return quoted.Append('"').ToString();
    }
}
