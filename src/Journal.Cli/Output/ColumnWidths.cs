using Spectre.Console;

namespace Journal.Cli.Output;

/// <summary>
/// How wide the columns of a table are: figures whole, columns of words as wide as their longest word at least, so that no word is
/// broken in the middle.
/// </summary>
internal static class ColumnWidths
{
    /// <summary>Cells between two columns, and those that the library keeps for the edges that our tables do not have.</summary>
    public const int Between = 2;

    /// <summary>The widths; null where the words need more room than there is.</summary>
    /// <param name="columns">The columns.</param>
    /// <param name="rows">The cells, heading and totals among them.</param>
    /// <param name="width">How many cells a line has.</param>
    public static IReadOnlyList<int>? Of(IReadOnlyList<Column> columns, IReadOnlyList<IReadOnlyList<string>> rows, int width)
    {
        var room = width - (Between * columns.Count);
        var most = columns.Select((_, i) => Math.Max(1, rows.Max(row => row[i].GetCellWidth()))).ToArray();
        var least = columns.Select((column, i) => column.IsFigure ? most[i] : Math.Max(1, rows.Max(row => LongestWord(row[i])))).ToArray();
        if (least.Sum() > room)
        {
            return null;
        }

        // What is left goes to the columns that want more, a cell at a time to the one with least of what it wants.
        var widths = least;
        for (var left = room - widths.Sum(); left > 0 && Neediest(widths, most) is { } column; left--)
        {
            widths[column]++;
        }

        return widths;
    }

    private static int? Neediest(int[] widths, int[] most)
    {
        var wanting = Enumerable.Range(0, widths.Length).Where(i => widths[i] < most[i]).ToList();
        return wanting.Count == 0 ? null : wanting.MinBy(i => (double)widths[i] / most[i]);
    }

    private static int LongestWord(string text) => text.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries).Select(word => word.GetCellWidth()).DefaultIfEmpty(0).Max();
}
