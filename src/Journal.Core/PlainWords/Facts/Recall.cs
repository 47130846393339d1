using Journal.Core.Figures;
using Journal.Core.PlainWords.Clauses;
using Journal.Core.PlainWords.Tokens;

namespace Journal.Core.PlainWords.Facts;

/// <summary>
/// Knows a lesson, mistake or snag again by its telling words: each word counts the more, the fewer of the known texts have it
/// (inverse document frequency: K. Spärck Jones, <i>Journal of Documentation</i> 28, 1972).
/// </summary>
internal sealed class Recall
{
    private readonly List<(string Id, Dictionary<string, double> Weights, double Total, HashSet<string> Gist)> known = [];

    private static readonly HashSet<string> Slight = ["the", "a", "of", "and", "to", "in", "on", "at", "it", "is", "for", "under", "over", "before", "after", "first", "with", "from", "by", "up", "out", "both", "one", "two", "three", "twice", "not", "no", "last", "not", "every", "each", "all"];

    public Recall(IEnumerable<(string Id, string Text)> texts)
    {
        var all = texts.Select(text => (text.Id, Stems: TextTokens.Stems($"{text.Id.Replace('-', ' ')} {text.Text}").Keys.Where(stem => stem.Length > 2).ToList())).ToList();
        var spread = all.SelectMany(text => text.Stems).GroupBy(stem => stem, StringComparer.Ordinal).ToDictionary(group => group.Key, group => group.Count(), StringComparer.Ordinal);
        foreach (var (id, stems) in all)
        {
            var weights = stems.ToDictionary(stem => stem, stem => Math.Log(1 + (double)(all.Count + 1) / spread[stem]), StringComparer.Ordinal);
            known.Add((id, weights, weights.Values.Sum(), [.. id.Split('-').Where(word => !Slight.Contains(word)).Select(WordStem.Of)]));
        }
    }

    // Irregular pasts as the lessons have them (from memory): "I wrote both down" is "write both …".
    private static readonly Dictionary<string, string> Plain = new(StringComparer.Ordinal)
    {
        ["wrote"] = "write", ["written"] = "write", ["kept"] = "keep", ["held"] = "hold", ["took"] = "take", ["taken"] = "take", ["ground"] = "grind", ["ran"] = "run", ["left"] = "leave", ["bent"] = "bend", ["broke"] = "break",
        ["went"] = "go", ["came"] = "come", ["stuck"] = "stick", ["spun"] = "spin", ["drew"] = "draw", ["wound"] = "wind", ["swept"] = "sweep", ["made"] = "make", ["read"] = "read", ["slid"] = "slide", ["gave"] = "give", ["stood"] = "stand", ["hung"] = "hang", ["lent"] = "lend", ["found"] = "find",
    };

    /// <summary>The known text that a piece of the account tells of, and how much of it: a share of its weight and how many of its words.</summary>
    public IReadOnlyList<Remembered> In(Account account, int first, int next)
    {
        if (known.Count == 0 || next <= first)
        {
            return [];
        }

        var said = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var at = first; at < next; at++)
        {
            if (account.Tokens[at].Kind == TokenKind.Word)
            {
                said.TryAdd(WordStem.Of(account.Word(at)), at);
                if (Plain.TryGetValue(account.Word(at), out var plain))
                {
                    said.TryAdd(WordStem.Of(plain), at);
                }
            }
        }

        var found = new List<Remembered>();
        foreach (var (id, weights, total, gist) in known)
        {
            var shared = weights.Where(pair => said.ContainsKey(pair.Key)).ToList();
            var ofGist = gist.Count(said.ContainsKey);
            if (shared.Count > 0)
            {
                // The id is what the maker himself boiled it down to.
                var ofText = shared.Sum(pair => pair.Value) / total;
                found.Add(new(id, Math.Max(ofText, gist.Count > 1 ? 0.9 * ofGist / gist.Count : 0), ofText, Math.Max(shared.Count, ofGist), shared.Min(pair => said[pair.Key])));
            }
        }

        found.Sort((one, other) => other.Share.CompareTo(one.Share));
        return found;
    }
}

/// <summary>A known text that a piece of an account tells of.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Share">How much of it, 0 to 1: of its words by their weight, or of its id, whichever is more.</param>
/// <param name="TextShare">How much of its words alone.</param>
/// <param name="Words">How many of its words.</param>
/// <param name="First">The token where they begin.</param>
internal sealed record Remembered(string Id, double Share, double TextShare, int Words, int First);
