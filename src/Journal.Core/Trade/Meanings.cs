namespace Journal.Core.Trade;

/// <summary>What the words of the vocabulary and of our fixed choices mean, from <c>shared/meanings.yaml</c>.</summary>
public static class Meanings
{
    private static readonly Lazy<Dictionary<(string List, string Word), string>> Loaded = new(() =>
        SharedData.Load("meanings.yaml").Pairs().SelectMany(list => list.Value.Pairs(), (list, word) => (list.Key, Word: word.Key, Meaning: word.Value.Text()))
            .ToDictionary(one => (one.Key, one.Word), one => one.Meaning));

    /// <summary>The meaning of a word of a list; null for a word that the maker added.</summary>
    public static string? Of(string list, string word) => Loaded.Value.GetValueOrDefault((list, word));
}
