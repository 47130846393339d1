using System.Globalization;
using Journal.Core.Model;

namespace Journal.Cli.Output;

/// <summary>
/// Rows for a spreadsheet as RFC 4180 wants them: a header line, lines ending in CRLF (section 2, rule 1 and 3), fields
/// with a quote, comma or line end in double quotes (rule 6), quotes within them doubled (rule 7).
/// </summary>
/// <param name="Header">The names of the columns, the same as in JSON.</param>
/// <param name="Rows">A value for each column; null for none.</param>
internal sealed record CsvTable(IReadOnlyList<string> Header, IEnumerable<IReadOnlyList<object?>> Rows)
{
    private static readonly char[] NeedQuotes = ['"', ',', '\r', '\n'];

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
            _ => value.ToString() ?? "",
        };
        return text.AsSpan().ContainsAny(NeedQuotes) ? $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : text;
    }
}
