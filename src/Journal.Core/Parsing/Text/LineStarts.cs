using Journal.Core.Model;

namespace Journal.Core.Parsing.Text;

/// <summary>Turns an offset in a text into line and column of the file that it is a piece of.</summary>
internal sealed class LineStarts
{
    private readonly List<int> starts = [0];
    private readonly string text;
    private readonly string file;
    private readonly int firstLine;

    /// <summary>Finds the starts of the lines of a text; <paramref name="firstLine"/> is the number of its first line in the file, from 1.</summary>
    public LineStarts(string text, string file, int firstLine)
    {
        (this.text, this.file, this.firstLine) = (text, file, firstLine);
        for (var i = 0; i < text.Length; i++)
        {
            // CR LF, LF and a lone CR end a line (CommonMark 0.31.2, 2.1); an editor counts them so too.
            if (text[i] == '\n' || (text[i] == '\r' && (i + 1 == text.Length || text[i + 1] != '\n')))
            {
                starts.Add(i + 1);
            }
        }
    }

    /// <summary>How many lines there are.</summary>
    public int Count => starts.Count;

    /// <summary>The text of a line, counted from 0 in the piece, without the signs that end it.</summary>
    public ReadOnlySpan<char> Row(int line) => text.AsSpan()[starts[line]..(line + 1 < starts.Count ? starts[line + 1] : text.Length)].TrimEnd("\r\n");

    /// <summary>The beginning of a line, counted from 0 in the piece.</summary>
    public Place AtLine(int line) => new(file, firstLine + line, 1);

    /// <summary>The place of a character, counted from 0 in UTF-16 units.</summary>
    public Place At(int offset)
    {
        var found = starts.BinarySearch(offset);
        var line = found >= 0 ? found : ~found - 1;
        return new Place(file, firstLine + line, offset - starts[line] + 1);
    }
}
