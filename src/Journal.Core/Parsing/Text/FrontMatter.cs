using Journal.Core.Model;
using Journal.Core.Parsing.Problems;

namespace Journal.Core.Parsing.Text;

/// <summary>An entry's file in its two halves: the YAML between the lines <c>---</c> and the Markdown behind them.</summary>
/// <param name="Yaml">The keys.</param>
/// <param name="YamlLine">The line that they begin on.</param>
/// <param name="Body">The text.</param>
/// <param name="BodyLine">The line that it begins on.</param>
internal sealed record FrontMatter(string Yaml, int YamlLine, string Body, int BodyLine)
{
    private const string Fence = "---";

    /// <summary>Splits a file; null, with a problem, where it has no front matter.</summary>
    public static FrontMatter? Split(string text, string file, ProblemLog log)
    {
        var lines = Lines(text).GetEnumerator();
        if (!lines.MoveNext() || !IsFence(text, lines.Current))
        {
            log.Add(ProblemTable.FrontMatterMissing, new Place(file, 1, 1));
            return null;
        }

        var (start, line) = (lines.Current.Next, 1);
        while (lines.MoveNext())
        {
            line++;
            if (IsFence(text, lines.Current))
            {
                var yaml = text[start..lines.Current.Start];
                if (string.IsNullOrWhiteSpace(yaml))
                {
                    log.Add(ProblemTable.FrontMatterEmpty, new Place(file, line, 1));
                    return null;
                }

                return new FrontMatter(yaml, 2, text[lines.Current.Next..], line + 1);
            }
        }

        log.Add(ProblemTable.FrontMatterNotClosed, new Place(file, 1, 1));
        return null;
    }

    private static bool IsFence(string text, (int Start, int End, int Next) line) =>
        text.AsSpan(line.Start, line.End - line.Start).TrimEnd().SequenceEqual(Fence);

    private static IEnumerable<(int Start, int End, int Next)> Lines(string text)
    {
        for (var start = 0; start < text.Length;)
        {
            var length = text.AsSpan(start).IndexOfAny('\r', '\n');
            var end = length < 0 ? text.Length : start + length;
            var next = end + 1 < text.Length && text[end] == '\r' && text[end + 1] == '\n' ? end + 2 : Math.Min(end + 1, text.Length);
            yield return (start, end, next);
            start = next;
        }
    }
}
