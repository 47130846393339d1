using System.Text;
using Spectre.Console;

namespace Journal.Cli.Output;

/// <summary>Breaks a text into lines at its spaces.</summary>
internal static class Wrapping
{
    /// <summary>The lines of a text, none wider than the width unless a single word is.</summary>
    /// <param name="text">The text; runs of spaces count as one.</param>
    /// <param name="width">Cells, at least 1.</param>
    public static IEnumerable<string> Lines(string text, int width)
    {
        var line = new StringBuilder();
        var used = 0;
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var cells = word.GetCellWidth();
            if (used > 0 && used + 1 + cells > width)
            {
                yield return line.ToString();
                line.Clear();
                used = 0;
            }

            used += used > 0 ? cells + 1 : cells;
            line.Append(line.Length > 0 ? " " : "").Append(word);
        }

        if (line.Length > 0)
        {
            yield return line.ToString();
        }
    }
}
