using System.Globalization;
using Journal.Core.Model;

namespace Journal.Cli.Output;

/// <summary>
/// Rows for a spreadsheet as RFC 4180 wants them: a header line, lines ending in CRLF (section 2, rule 1 and 3), fields
/// with a quote, comma or line end in double quotes (rule 6), quotes within them doubled (rule 7). A text that a spreadsheet
/// would take for a formula gets an apostrophe in front (OWASP, <i>CSV Injection</i>), and control characters, which a
/// terminal obeys, become spaces.
/// </summary>
/// <param name="Header">The names of the columns, the same as in JSON.</param>
/// <param name="Rows">A value for each column; null for none.</param>
internal sealed record CsvTable(IReadOnlyList<string> Header, IEnumerable<IReadOnlyList<object?>> Rows)
{
    private static readonly char[] NeedQuotes = ['"', ',', '\r', '\n'];

    // OWASP, CSV Injection, names these beginnings; the last four are their full-width forms.
    private static readonly char[] BeginFormulas = ['=', '+', '-', '@', '\t', '\r', '＝', '＋', '－', '＠'];

    /// <summary>Writes all of it.</summary>
    public void WriteTo(TextWriter writer)
    {
        foreach (var row in Rows.Prepend(Header))
        {
            writer.Write(string.Join(',', row.Select(Field)));
            writer.Write("\r\n");
        }
    }

    private static string Field(object? value)
    {
        var text = value switch
        {
            null => "",
            Minutes minutes => minutes.Count.ToString(CultureInfo.InvariantCulture),
            DateOnly date => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            IFormattable number => number.ToString(null, CultureInfo.InvariantCulture),
            _ => Harmless(value.ToString() ?? ""),
        };
        return text.AsSpan().ContainsAny(NeedQuotes) ? $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : text;
    }

    private static string Harmless(string text)
    {
        var plain = text.Any(IsObeyed) ? string.Concat(text.Select(letter => IsObeyed(letter) ? ' ' : letter)) : text;
        var isFormula = plain.Length > 0 && BeginFormulas.Contains(plain[0]) && !decimal.TryParse(plain, NumberStyles.Float, CultureInfo.InvariantCulture, out _);
        return isFormula ? $"'{plain}" : plain;
    }

    // Line ends stand within quotes, as rule 6 has it.
    private static bool IsObeyed(char letter) => char.IsControl(letter) && letter is not ('\r' or '\n' or '\t');
}
