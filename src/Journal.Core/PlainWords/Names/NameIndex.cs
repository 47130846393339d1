using Journal.Core.Model;
using Journal.Core.PlainWords.Tokens;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Names;

/// <summary>
/// The names of a build's parts and of the crib's tools, by the words that makers say: id, title, the last word alone where it is
/// enough, one of several and several of one, in one word or two. The longer name is found before the shorter.
/// </summary>
internal sealed class NameIndex
{
    /// <summary>Words behind a name that say what it is made from, not which it is.</summary>
    private static readonly HashSet<string> Stuff = ["casting", "castings", "blank", "forging", "assembly", "set", "chuck", "strip"];

    private static readonly string[] Seconds = ["shaft", "wheel", "head", "rod", "box", "case", "plate", "stock"];

    private readonly PhraseTable<Name> table = new();
    private readonly Dictionary<string, (Name Name, bool IsPlural)> byPhrase = new(StringComparer.Ordinal);

    public NameIndex(Build build, IReadOnlyList<Tool> tools)
    {
        var parts = build.Parts.Select(part => (Id: part.Id.Value, part.Title)).ToList();
        var crib = tools.Where(tool => tool.IsListed).Select(tool => (Id: tool.Id.Value, tool.Title)).ToList();
        AddWhole(NameKind.Part, parts);
        AddWhole(NameKind.Tool, crib);
        AddLastWords(NameKind.Part, parts);
        AddLastWords(NameKind.Tool, crib);
        foreach (var (phrase, (name, isPlural)) in byPhrase)
        {
            table.Add(phrase, name);
            if (isPlural)
            {
                Plurals.Add(phrase);
            }
        }

        Words = [.. byPhrase.Keys.SelectMany(phrase => phrase.Split(' '))];
        Slips = new SlipIndex(Words.Where(word => word.Length >= SlipIndex.ShortestWord));
    }

    /// <summary>Whether a word alone is a name.</summary>
    public bool IsWhole(string word) => byPhrase.ContainsKey(word);

    /// <summary>All words that stand in a name.</summary>
    public HashSet<string> Words { get; }

    /// <summary>Slips of those words.</summary>
    public SlipIndex Slips { get; }

    private HashSet<string> Plurals { get; } = new(StringComparer.Ordinal);

    /// <summary>The longest name at a token.</summary>
    public NameMention? At(IReadOnlyList<Token> tokens, int at)
    {
        if (!table.TryLongest(tokens, at, out var name, out var length))
        {
            return null;
        }

        var isPlural = Plurals.Contains(string.Join(' ', Enumerable.Range(at, length).Select(i => tokens[i].Meant)));
        return new(name, at, at + length, isPlural);
    }

    private static List<string> WordsOf(string text) => [.. Tokenizer.Tokens(text).Where(token => token.Kind != TokenKind.Mark).Select(token => NumberNames.InWords(token.Text))];

    // A title up to what explains it: "Gap-bed lathe, 100 mm centre height" is a gap-bed lathe.
    private static List<string> TitleWords(string title)
    {
        var end = title.AsSpan().IndexOfAny(",(;:");
        var words = WordsOf(end < 0 ? title : title[..end]);
        var cut = words.FindIndex(1, Math.Max(0, words.Count - 1), word => word is "on" or "with" or "for" or "from" or "in" or "of" or "and" or "to");
        // "Pair of vee blocks" are vee blocks.
        words = cut == 1 && words[0] is "pair" or "set" or "box" or "pack" && words.Count > 2 && words[1] == "of" ? words[2..] : cut > 0 ? words[..cut] : words;
        while (words.Count > 1 && (NumberNames.IsNumber(words[0]) && !(words.Count > 1 && words[1] == "jaw") || words[0] is "the" or "a" or "mm" or "in" or "inch" or "small" or "old" or "big" or "little" || char.IsAsciiDigit(words[0][0])))
        {
            words.RemoveAt(0);
        }

        return words;
    }

    private void AddWhole(NameKind kind, List<(string Id, string Title)> things)
    {
        foreach (var (id, title) in things)
        {
            var name = new Name(kind, [id], false);
            foreach (var words in new[] { WordsOf(id), TitleWords(title) })
            {
                AddForms(words, name);
                if (words.Count > 1 && Stuff.Contains(words[^1]))
                {
                    AddForms(words[..^1], name);
                }
            }

            foreach (var second in kind == NameKind.Tool ? PiecesOf(title) : [])
            {
                AddForms(second, name);
            }

            foreach (var alias in Compound(kind, id))
            {
                AddForms([alias], name);
            }

            foreach (var alias in ToolAliases.Of(kind, id, title))
            {
                AddForms(WordsOf(alias), name);
            }
        }
    }

    // "End mills and slot drills", "Lathe centres and carrier": each is a name of the whole.
    private static IEnumerable<List<string>> PiecesOf(string title)
    {
        var end = title.AsSpan().IndexOfAny(",(;:");
        var pieces = (end < 0 ? title : title[..end]).Split(" and ", StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        return pieces.Length < 2 ? [] : pieces.Select(WordsOf).Where(words => words.Count is 1 or 2 && words[^1].Length > 2);
    }

    // "the crank" for the crankshaft.
    private static IEnumerable<string> Compound(NameKind kind, string id) => kind == NameKind.Part
        ? Seconds.Where(second => id.Length - second.Length >= 4 && id.EndsWith(second, StringComparison.Ordinal) && !id.Contains('-', StringComparison.Ordinal) && id.Length - second.Length > 4 && id != "crosshead").Select(second => id[..^second.Length])
        : [];

    // "the cover" for the cylinder cover, where no part is called cover; "the standards" for the front and the rear one.
    private void AddLastWords(NameKind kind, List<(string Id, string Title)> things)
    {
        var byLast = new Dictionary<string, SortedSet<string>>(StringComparer.Ordinal);
        foreach (var (id, title) in things)
        {
            foreach (var words in new[] { WordsOf(id), TitleWords(title) })
            {
                var last = words.Count > 1 && Stuff.Contains(words[^1]) ? words[^2] : words[^1];
                if (words.Count > 1 && last.Length > 2 && !char.IsAsciiDigit(last[0]))
                {
                    var ids = byLast.TryGetValue(Singular(last), out var found) ? found : byLast[Singular(last)] = new(StringComparer.Ordinal);
                    ids.Add(id);
                }
            }
        }

        foreach (var (last, ids) in byLast)
        {
            if (kind == NameKind.Part || !TooCommon(last))
            {
                AddForms([last], new Name(kind, [.. ids], true));
            }
        }
    }

    private static bool TooCommon(string word) => word is "tool" or "plate" or "block" or "gauge" or "head" or "set" or "guide" or "bar" or "stone" or "table" or "indicator" or "file" or "files" or "mill" or "saw" or "drill" or "tap" or "die" or "stand" or "cutter" or "centre" or "machine" or "press" or "plug" or "blade" or "chuck" or "finder" or "shield" or "jaw" or "grinder" or "centre" or "steady" or "rule" or "square" or "bit";

    private void AddForms(List<string> words, Name name)
    {
        if (words.Count == 0 || (words.Count == 1 && (NumberNames.IsNumber(words[0]) || words[0].Length < 2)))
        {
            return;
        }

        var (one, many) = (Singular(words[^1]), Plural(Singular(words[^1])));
        foreach (var (last, isPlural) in new[] { (words[^1], words[^1] != one), (one, false), (many, true) })
        {
            Add([.. words.Take(words.Count - 1), last], name, isPlural);
        }
    }

    private void Add(string[] words, Name name, bool isPlural)
    {
        byPhrase.TryAdd(string.Join(' ', words), (name, isPlural));
        if (words.Length == 2)
        {
            byPhrase.TryAdd(words[0] + words[1], (name, isPlural));
        }

        // "fly wheel" for the flywheel.
        if (words.Length == 1 && words[0].Length >= 7 && !name.IsShort)
        {
            for (var cut = 3; cut <= words[0].Length - 4; cut++)
            {
                byPhrase.TryAdd($"{words[0][..cut]} {words[0][cut..]}", (name, isPlural));
            }
        }
    }

    private static string Singular(string word) =>
        word.Length > 4 && word.EndsWith("ies", StringComparison.Ordinal) ? word[..^3] + "y"
        : word.Length > 4 && (word.EndsWith("ches", StringComparison.Ordinal) || word.EndsWith("shes", StringComparison.Ordinal) || word.EndsWith("xes", StringComparison.Ordinal) || word.EndsWith("sses", StringComparison.Ordinal)) ? word[..^2]
        : word.Length > 3 && word.EndsWith('s') && !word.EndsWith("ss", StringComparison.Ordinal) && !word.EndsWith("us", StringComparison.Ordinal) ? word[..^1]
        : word;

    private static string Plural(string word) =>
        word.EndsWith("ch", StringComparison.Ordinal) || word.EndsWith("sh", StringComparison.Ordinal) || word.EndsWith('x') || word.EndsWith('s') ? word + "es"
        : word.EndsWith('y') && word.Length > 1 && word[^2] is not ('a' or 'e' or 'o' or 'u') ? word[..^1] + "ies"
        : word + "s";
}
