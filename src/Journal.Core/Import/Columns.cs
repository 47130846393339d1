namespace Journal.Core.Import;

/// <summary>
/// Which column of a table holds what, as <c>date=A,part=C,hours=D,note=F</c>: by its letter in a spreadsheet or by its
/// heading.
/// </summary>
public sealed class Columns
{
    /// <summary>What can be taken in.</summary>
    public static readonly IReadOnlyList<string> Known = ["date", "part", "operation", "hours", "note"];

    private readonly Dictionary<string, string> named;

    private Columns(Dictionary<string, string> named) => this.named = named;

    /// <summary>Columns whose headings are our own words.</summary>
    public static Columns Usual { get; } = new(Known.ToDictionary(what => what, what => what, StringComparer.Ordinal));

    /// <summary>The columns that a text names.</summary>
    /// <exception cref="ImportException">It names none, or something that is not known.</exception>
    public static Columns Of(string text)
    {
        var named = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var pair in text.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            var (what, column) = pair.IndexOf('=', StringComparison.Ordinal) is > 0 and var sign ? (pair[..sign].Trim(), pair[(sign + 1)..].Trim()) : ("", "");
            if (column.Length == 0 || !Known.Contains(what))
            {
                throw new ImportException($"`{pair}` is not a column. Write what it holds and which column it is, such as `date=A`. What can be taken in: {string.Join(", ", Known)}.");
            }

            if (!named.TryAdd(what, column))
            {
                throw new ImportException($"`{what}` is given twice. Keep one.");
            }
        }

        return named.ContainsKey("date") && named.ContainsKey("hours") ? new Columns(named) : throw new ImportException("`date` and `hours` need a column each, such as `--columns date=A,hours=D`.");
    }

    /// <summary>Where each thing stands in a file's records, and whether the first one holds headings.</summary>
    /// <exception cref="ImportException">A column is not there.</exception>
    internal (IReadOnlyDictionary<string, int> Places, bool HasHeadings) In(CsvRecord first)
    {
        var places = new Dictionary<string, int>(StringComparer.Ordinal);
        var headings = first.Fields.Select(field => field.Trim()).ToList();
        var byHeading = named.Where(pair => headings.FindIndex(heading => heading.Equals(pair.Value, StringComparison.OrdinalIgnoreCase)) >= 0).Select(pair => pair.Key).ToHashSet(StringComparer.Ordinal);
        foreach (var (what, column) in named)
        {
            if (byHeading.Contains(what))
            {
                places[what] = headings.FindIndex(heading => heading.Equals(column, StringComparison.OrdinalIgnoreCase));
            }
            else if (Letter(column) is { } place)
            {
                places[what] = place;
            }
            else if (this != Usual || what is "date" or "hours")
            {
                throw new ImportException($"There is no column `{column}`. The first line has: {string.Join(", ", headings)}. Give the columns with `--columns date=A,part=C,hours=D,note=F`, by letter or by heading.");
            }
        }

        return (places, byHeading.Count > 0);
    }

    // A, B … Z, AA, AB …, as spreadsheets count; two letters will do.
    private static int? Letter(string column) => column.Length is 1 or 2 && column.All(char.IsAsciiLetterUpper)
        ? column.Aggregate(0, (sum, letter) => sum * 26 + letter - 'A' + 1) - 1
        : null;
}
