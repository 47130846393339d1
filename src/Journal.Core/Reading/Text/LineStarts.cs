using Journal.Core.Model;

namespace Journal.Core.Reading.Text;

/// <summary>Turns an offset in a text into line and column of the file that it is a piece of.</summary>
internal sealed class LineStarts
{
    private readonly List<int> starts = [0];
    private readonly string file;
    private readonly int firstLine;

    public LineStarts(string text, string file, int firstLine)
    {
        (this.file, this.firstLine) = (file, firstLine);
        for (var i = 0; i < text.Length; i++)
        {
            // CR LF, LF and a lone CR end a line (CommonMark 0.31.2, 2.1); an editor counts them so too.
            if (text[i] == '\n' || (text[i] == '\r' && (i + 1 == text.Length || text[i + 1] != '\n')))
            {
                starts.Add(i + 1);
            }
        }
    }

    public Place At(int offset)
    {
        var found = starts.BinarySearch(offset);
        var line = found >= 0 ? found : ~found - 1;
        return new Place(file, firstLine + line, offset - starts[line] + 1);
    }
}
