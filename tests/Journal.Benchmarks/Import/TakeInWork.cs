using System.Globalization;
using System.Text;

namespace Journal.Benchmarks.Import;

/// <summary>A table of hours, and the least that any program for taking it in must do.</summary>
internal static class TakeInWork
{
    private const int RowsOfADay = 100;
    private static readonly DateOnly First = new(2010, 1, 1);

    /// <summary>Writes a journal of one build with nothing in it, and beside its files a table.</summary>
    /// <returns>The table's path.</returns>
    public static string Write(string folder, int rows)
    {
        Directory.CreateDirectory(Path.Combine(folder, "drill"));
        File.WriteAllText(Path.Combine(folder, "journal.yaml"), "title: Invented\n");
        File.WriteAllText(Path.Combine(folder, "drill", "build.yaml"), "title: Drill\nparts:\n  - {id: head}\n");
        var table = Path.Combine(folder, "old.csv");
        File.WriteAllText(table, "date,part,operation,hours,note\r\n" + string.Concat(Enumerable.Range(0, rows).Select(Row)));
        return table;
    }

    /// <summary>Parts the lines at commas, reads the dates and writes a file a day.</summary>
    public static void Floor(string table, string to)
    {
        Directory.CreateDirectory(to);
        var rows = File.ReadLines(table).Skip(1).Select(line => line.Split(',', 5));
        foreach (var day in rows.GroupBy(fields => DateOnly.ParseExact(fields[0], "yyyy-MM-dd", CultureInfo.InvariantCulture)))
        {
            var text = new StringBuilder();
            foreach (var fields in day)
            {
                text.Append(CultureInfo.InvariantCulture, $"  - {{part: {fields[1]}, operation: {fields[2]}, hours: {fields[3]}}} {fields[4]}\n");
            }

            File.WriteAllText(Path.Combine(to, string.Create(CultureInfo.InvariantCulture, $"{day.Key:yyyy-MM-dd}.md")), text.ToString());
        }
    }

    private static string Row(int number) => string.Create(
        CultureInfo.InvariantCulture,
        $"{First.AddDays(number / RowsOfADay):yyyy-MM-dd},head,boring,0:1{number % 4},\"row {number}, as kept\"\r\n");
}
