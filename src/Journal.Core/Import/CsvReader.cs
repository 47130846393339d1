using System.Text;

namespace Journal.Core.Import;

/// <summary>A record of a CSV file and the line on which it begins.</summary>
internal readonly record struct CsvRecord(int Line, IReadOnlyList<string> Fields)
{
    /// <summary>A line with nothing on it.</summary>
    public bool IsBlank => Fields.All(string.IsNullOrWhiteSpace);
}

/// <summary>
/// Reads records as RFC 4180 has them, section 2: fields parted by a separator (rule 4), in double quotes where they hold
/// separators, quotes or line ends (rule 6), quotes within doubled (rule 7). Beyond it: other separators, any line end,
/// and a quote in the midst of an unquoted field, which spreadsheets write for inches, stands for itself; where text follows
/// the closing quote, no quote meant that the field is quoted, and it stands as it is written.
/// </summary>
internal static class CsvReader
{
    private static readonly char[] Separators = [',', ';', '\t', '|'];

    /// <summary>The records of a text.</summary>
    /// <exception cref="ImportException">A quote is not closed.</exception>
    public static IEnumerable<CsvRecord> Read(string text, char separator)
    {
        var (at, line) = (0, 1);
        while (at < text.Length)
        {
            var (begun, fields) = (line, new List<string>());
            bool isMore;
            do
            {
                fields.Add(at < text.Length && text[at] == '"' ? Quoted(text, ref at, ref line, separator) : Bare(text, ref at, separator));
                isMore = at < text.Length && text[at] == separator;
                at += isMore ? 1 : 0;
            }
            while (isMore);

            SkipLineEnd(text, ref at, ref line);
            yield return new CsvRecord(begun, fields);
        }
    }

    /// <summary>The separator that parts the first line into most fields; a comma where none does.</summary>
    public static char SeparatorOf(string text)
    {
        var counts = new int[Separators.Length];
        var isQuoted = false;
        foreach (var letter in text)
        {
            if (letter == '"')
            {
                isQuoted = !isQuoted;
            }
            else if (!isQuoted && letter is '\r' or '\n')
            {
                break;
            }
            else if (!isQuoted && Array.IndexOf(Separators, letter) is >= 0 and var which)
            {
                counts[which]++;
            }
        }

        return Separators[Array.IndexOf(counts, counts.Max())];
    }

    private static string Bare(string text, ref int at, char separator)
    {
        var end = text.AsSpan(at).IndexOfAny(separator, '\r', '\n');
        var field = end < 0 ? text[at..] : text.Substring(at, end);
        at += field.Length;
        return field;
    }

    private static string Quoted(string text, ref int at, ref int line, char separator)
    {
        var (start, begun, field) = (at, line, new StringBuilder());
        at++;
        while (true)
        {
            var quote = text.IndexOf('"', at);
            if (quote < 0)
            {
                throw new ImportException(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"Line {begun}: a field starts with a double quote that is not closed. Close it, or write it twice if it means inches."));
            }

            field.Append(text, at, quote - at);
            line += LineEnds(text.AsSpan(at, quote - at));
            at = quote + 1;
            if (at >= text.Length || text[at] != '"')
            {
                var rest = Bare(text, ref at, separator);
                return string.IsNullOrWhiteSpace(rest) ? field.Append(rest).ToString() : text[start..at];
            }

            field.Append('"');
            at++;
        }
    }

    private static int LineEnds(ReadOnlySpan<char> text)
    {
        var count = 0;
        for (var i = 0; i < text.Length; i++)
        {
            count += text[i] == '\n' || (text[i] == '\r' && (i + 1 == text.Length || text[i + 1] != '\n')) ? 1 : 0;
        }

        return count;
    }

    private static void SkipLineEnd(string text, ref int at, ref int line)
    {
        if (at < text.Length)
        {
            at += text[at] == '\r' && at + 1 < text.Length && text[at + 1] == '\n' ? 2 : 1;
            line++;
        }
    }
}
