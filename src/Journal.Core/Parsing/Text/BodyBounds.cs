namespace Journal.Core.Parsing.Text;

/// <summary>
/// How much Markdown is read. What the library would take many seconds or gigabytes for is refused before it sees it.
/// </summary>
/// <remarks>
/// Measured with Markdig 1.6 on two cores: at its bound each of these stays under a third of a second and 50 MB.
/// Brackets that stay open and runs of emphasis take time that grows with the square of their number; short rows
/// under a wide head are filled up with empty cells. Nesting deeper than 128 the library refuses by itself.
/// </remarks>
internal static class BodyBounds
{
    /// <summary>Characters: a very long evening.</summary>
    public const int LongestBody = 64 * 1024;

    /// <summary>The most columns of a table.</summary>
    public const int WidestTable = 64;

    /// <summary>The most cells of a table.</summary>
    public const int MostCells = 20_000;
    private const int MostBrackets = 4_000;
    private const int MostEmphasis = 12_000;
    private const int DeepestLine = 24;

    /// <summary>The line, from 0, on which there is too much to read; null where there is none.</summary>
    public static (int Line, bool IsTable)? Excess(LineStarts lines)
    {
        var (brackets, emphasis, columns, rows) = (0, 0, 0, 0);
        for (var line = 0; line < lines.Count; line++)
        {
            var row = lines.Row(line);
            (columns, rows) = row.IsWhiteSpace() ? (0, 0) : (Math.Max(columns, row.Count('|')), rows + 1);
            if (columns > WidestTable + 1 || columns * rows > MostCells)
            {
                return (line, true);
            }

            brackets += row.Count('[');
            emphasis += row.Count('*') + row.Count('_');
            if (brackets > MostBrackets || emphasis > MostEmphasis || MarksBefore(row) > DeepestLine)
            {
                return (line, false);
            }
        }

        return null;
    }

    /// <summary>The line, from 0, that opens most: the likeliest place of what the library found too deep.</summary>
    public static int DeepestLineOf(LineStarts lines)
    {
        var (deepest, most) = (0, -1);
        for (var line = 0; line < lines.Count; line++)
        {
            var row = lines.Row(line);
            var opened = row.Count('[') + row.Count('*') + row.Count('_') + row.Count('>') + (row.Length - row.TrimStart().Length) / 2;
            (deepest, most) = opened > most ? (line, opened) : (deepest, most);
        }

        return deepest;
    }

    // How many quotes and list items a line opens before its first word (CommonMark 0.31.2, 5.1 and 5.2).
    private static int MarksBefore(ReadOnlySpan<char> row)
    {
        var depth = 0;
        for (var rest = row.TrimStart(" \t"); rest.Length > 0; rest = rest.TrimStart(" \t"))
        {
            var digits = rest.IndexOfAnyExceptInRange('0', '9');
            var mark = digits is > 0 and <= 9 && rest[digits] is '.' or ')' ? digits + 1 : rest[0] is '-' or '+' or '*' ? 1 : 0;
            if (rest[0] == '>')
            {
                rest = rest[1..];
            }
            else if (mark > 0 && mark < rest.Length && rest[mark] is ' ' or '\t' && !IsThematicBreak(rest))
            {
                rest = rest[mark..];
            }
            else
            {
                break;
            }

            depth++;
        }

        return depth;
    }

    // CommonMark 0.31.2, 4.1: three or more of one sign, with spaces between.
    private static bool IsThematicBreak(ReadOnlySpan<char> rest) => rest[0] is '-' or '*' && rest.IndexOfAnyExcept(rest[0], ' ', '\t') < 0;
}
