using System.Text;

namespace Journal.Core.Writing.Texts;

/// <summary>
/// Gives a text that was typed in a browser the line ends of the file that it came from. Browsers know one kind of line end alone
/// (HTML, 4.10.11: a textarea's value has line feeds, and is sent with CR LF), files may have several.
/// </summary>
public static class LineEnds
{
    /// <summary>
    /// The typed text, each line that stayed with the end that it had. What was typed in between takes the ends of the lines whose
    /// place it has taken, else of the line above.
    /// </summary>
    /// <param name="before">The text as it was opened.</param>
    /// <param name="typed">The text as it was typed, with line ends of any kind.</param>
    public static string Kept(string before, string typed)
    {
        var (old, lines) = (Lines(before), Lines(typed));
        var usual = old.Select(line => line.End).FirstOrDefault(end => end.Length > 0) ?? "\n";
        var most = Math.Min(old.Count, lines.Count);
        var above = Enumerable.Range(0, most).TakeWhile(i => old[i].Text == lines[i].Text).Count();
        var below = Enumerable.Range(1, most - above).TakeWhile(i => old[^i].Text == lines[^i].Text).Count();
        var text = new StringBuilder(typed.Length + lines.Count);
        var last = usual;
        foreach (var (i, line) in lines.Index())
        {
            var same = i >= lines.Count - below ? i - lines.Count + old.Count : i < old.Count - below ? i : -1;
            last = same >= 0 && old[same].End is { Length: > 0 } end ? end : last;
            text.Append(line.Text).Append(i == lines.Count - 1 ? "" : last);
        }

        return text.ToString();
    }

    /// <summary>Whether two texts differ in nothing but their line ends.</summary>
    public static bool AreAlike(string one, string other) => Lines(one).Select(line => line.Text).SequenceEqual(Lines(other).Select(line => line.Text));

    // The last line has no end.
    private static List<(string Text, string End)> Lines(string text)
    {
        var lines = new List<(string, string)>();
        for (var start = 0; ;)
        {
            var length = text.AsSpan(start).IndexOfAny('\r', '\n');
            if (length < 0)
            {
                lines.Add((text[start..], ""));
                return lines;
            }

            var end = start + length;
            var next = text[end] == '\r' && end + 1 < text.Length && text[end + 1] == '\n' ? end + 2 : end + 1;
            lines.Add((text[start..end], text[end..next]));
            start = next;
        }
    }
}
