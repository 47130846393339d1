using System.Text.RegularExpressions;

namespace Journal.Core.Parsing.Text;

/// <summary>Counts the tags of raw HTML that are open: to clean thousands of them, each in the one before, takes many seconds.</summary>
internal sealed partial class OpenTags
{
    private const int Most = 500;

    // HTML, 13.1.2: void elements have no end.
    private static readonly HashSet<string> Void = ["area", "base", "br", "col", "embed", "hr", "img", "input", "link", "meta", "source", "track", "wbr"];

    private readonly Dictionary<string, int> open = new(StringComparer.Ordinal);
    private int count;

    /// <summary>Takes a piece of HTML; whether too many tags are open then.</summary>
    public bool AreTooManyAfter(string html)
    {
        foreach (var name in Tag().EnumerateMatches(html))
        {
            var tag = html.AsSpan(name.Index + 1, name.Length - 1);
            var (ends, word) = (tag[0] == '/', tag.TrimStart('/').ToString().ToLowerInvariant());
            var before = open.GetValueOrDefault(word);
            if (Void.Contains(word) || (ends && before == 0))
            {
                continue;
            }

            open[word] = before + (ends ? -1 : 1);
            count += ends ? -1 : 1;
            if (count > Most)
            {
                return true;
            }
        }

        return false;
    }

    [GeneratedRegex("</?[A-Za-z][A-Za-z0-9-]*")]
    private static partial Regex Tag();
}
