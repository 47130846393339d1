namespace Journal.Core.Model;

/// <summary>One list of the vocabulary: words in order, each with its aliases.</summary>
/// <typeparam name="T">What the words stand for.</typeparam>
public sealed class WordList<T>
    where T : class
{
    private readonly Dictionary<string, Id<T>> spellings;
    private readonly Dictionary<Id<T>, T> words;

    private WordList(IReadOnlyList<Id<T>> ids, Dictionary<Id<T>, T> words, Dictionary<string, Id<T>> spellings)
    {
        Ids = ids;
        this.words = words;
        this.spellings = spellings;
    }

    /// <summary>The ids in the order of the vocabulary, the maker's own last.</summary>
    public IReadOnlyList<Id<T>> Ids { get; }

    /// <summary>Every spelling that is understood: ids and aliases.</summary>
    public IReadOnlyCollection<string> Spellings => spellings.Keys;

    /// <summary>The word with an id that the list holds.</summary>
    /// <exception cref="KeyNotFoundException">The list has no such word.</exception>
    public T this[Id<T> id] => words[id];

    /// <summary>A list of words with their ids and aliases; where two share a spelling the first keeps it.</summary>
    public static WordList<T> Of(IEnumerable<(Id<T> Id, T Word, IReadOnlyList<string> Aliases)> entries)
    {
        var ids = new List<Id<T>>();
        var words = new Dictionary<Id<T>, T>();
        var spellings = new Dictionary<string, Id<T>>(StringComparer.Ordinal);
        foreach (var (id, word, aliases) in entries)
        {
            if (!words.TryAdd(id, word))
            {
                continue;
            }

            ids.Add(id);
            spellings.TryAdd(id.Value, id);
            foreach (var alias in aliases)
            {
                spellings.TryAdd(alias, id);
            }
        }

        return new WordList<T>(ids, words, spellings);
    }

    /// <summary>Finds the word that an id or alias stands for.</summary>
    public bool TryFind(string spelling, out Id<T> id) => spellings.TryGetValue(spelling, out id);

    /// <summary>Other spellings of a word, in their order; none for most.</summary>
    public IReadOnlyList<string> Also(Id<T> id) => [.. spellings.Where(pair => pair.Value == id && pair.Key != id.Value).Select(pair => pair.Key)];

    /// <summary>Whether the list has a word with this id.</summary>
    public bool Has(Id<T> id) => words.ContainsKey(id);

    /// <summary>The list with more words behind it.</summary>
    public WordList<T> With(IEnumerable<(Id<T> Id, T Word)> more)
    {
        var entries = Ids.Select(id => (id, words[id], (IReadOnlyList<string>)[.. spellings.Where(pair => pair.Value == id).Select(pair => pair.Key)]));
        return Of(entries.Concat(more.Select(entry => (entry.Id, entry.Word, (IReadOnlyList<string>)[]))));
    }
}
