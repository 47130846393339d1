using Journal.Site.Search;

namespace Journal.Cli.Searching;

/// <summary>The words looked for. Small and capital letters are the same, accents do not count, and the beginning of a word is enough.</summary>
internal sealed class SearchWords
{
    private const int Around = 50;

    private readonly List<string> words = [];

    /// <summary>The words of what was said.</summary>
    public SearchWords(string said)
    {
        foreach (var word in new SearchTokens(said))
        {
            words.Add(word.ToString());
        }
    }

    /// <summary>Whether no word was said.</summary>
    public bool IsEmpty => words.Count == 0;

    /// <summary>Whether a thing says all of them, in one place or another.</summary>
    public bool AreIn(Thing thing)
    {
        var missing = words.ToList();
        foreach (var text in thing.Texts.Prepend(thing.Title))
        {
            if (missing.Count == 0)
            {
                break;
            }

            var folded = SearchTokens.Folding(text);
            missing.RemoveAll(word => At(folded, word) >= 0);
        }

        return missing.Count == 0;
    }

    /// <summary>The words with what stands around them, the places with the most of them first.</summary>
    /// <param name="thing">What was found.</param>
    /// <param name="most">How many places at most.</param>
    public IReadOnlyList<string> Passages(Thing thing, int most) =>
    [
        .. thing.Texts.Distinct()
            .Select(text => (Text: text, Folded: SearchTokens.Folding(text)))
            .Select(one => (one.Text, Places: words.Select(word => At(one.Folded, word)).Where(at => at >= 0).ToList()))
            .Where(one => one.Places.Count > 0)
            .OrderByDescending(one => one.Places.Count)
            .Take(most)
            .Select(one => Excerpt(one.Text, one.Places.Min(), one.Places.Max())),
    ];

    // Where a word of the text begins with the word looked for; -1 where none does.
    private static int At(string folded, string word)
    {
        for (var at = folded.IndexOf(word, StringComparison.Ordinal); at >= 0; at = folded.IndexOf(word, at + 1, StringComparison.Ordinal))
        {
            if (at == 0 || !char.IsLetterOrDigit(folded[at - 1]))
            {
                return at;
            }
        }

        return -1;
    }

    private static string Excerpt(string text, int first, int last)
    {
        var start = first <= Around ? 0 : text.IndexOf(' ', Math.Min(first, text.Length - 1) - Around) + 1;
        var stop = Math.Min(text.Length, Math.Max(Math.Min(last, first + (3 * Around)) + Around, start + (2 * Around)));
        stop = stop < text.Length && text.LastIndexOf(' ', stop) is var space && space > start ? space : stop;
        return $"{(start > 0 ? "… " : "")}{text[start..stop].Trim()}{(stop < text.Length ? " …" : "")}";
    }
}
