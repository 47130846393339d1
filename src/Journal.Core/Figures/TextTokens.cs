using System.Collections.Concurrent;
using System.Collections.Frozen;
using System.Runtime.InteropServices;

namespace Journal.Core.Figures;

/// <summary>The words of a text that say what it is about.</summary>
internal static class TextTokens
{
    /// <summary>Words that stand in any sentence and tell nothing of the work.</summary>
    private static readonly FrozenSet<string> Silent = new[]
    {
        "a", "about", "after", "again", "all", "also", "am", "an", "and", "another", "any", "are", "as", "at", "away", "back", "be", "because", "been", "before",
        "being", "between", "both", "but", "by", "came", "can", "come", "could", "did", "do", "does", "done", "down", "each", "every", "for", "from", "get", "go",
        "goes", "had", "has", "have", "he", "her", "him", "his", "how", "i", "if", "in", "into", "is", "it", "its", "itself", "just", "let", "like", "made",
        "make", "many", "may", "me", "more", "most", "much", "must", "my", "never", "no", "not", "nothing", "now", "of", "off", "on", "once", "one", "only",
        "or", "other", "our", "out", "over", "own", "put", "same", "she", "should", "so", "some", "such", "take", "than", "that", "the", "their", "them", "then",
        "there", "these", "they", "thing", "this", "those", "though", "through", "to", "too", "two", "under", "until", "up", "us", "very", "was", "way", "we",
        "well", "went", "were", "what", "when", "where", "which", "while", "who", "will", "with", "without", "would", "you", "your",
    }.ToFrozenSet(StringComparer.Ordinal);

    /// <summary>More than anyone writes: what comes then is not kept.</summary>
    private const int MostMet = 100_000;

    // Words met so far: a maker writes the same few thousand over and over.
    private static readonly ConcurrentDictionary<string, Word> Met = new(StringComparer.Ordinal);
    private static readonly ConcurrentDictionary<string, Word>.AlternateLookup<ReadOnlySpan<char>> MetBySpan = Met.GetAlternateLookup<ReadOnlySpan<char>>();

    /// <summary>The words in lower case and in reading order; numbers and the silent words are left out.</summary>
    public static IEnumerable<string> Of(string text) => In(text).Select(word => word.Text);

    /// <summary>How often each stem stands in a text.</summary>
    public static Dictionary<string, int> Stems(string text)
    {
        const int LettersOfAWord = 12; // A word that tells, with those between.
        var counts = new Dictionary<string, int>(text.Length / LettersOfAWord, StringComparer.Ordinal);
        foreach (var word in In(text))
        {
            CollectionsMarshal.GetValueRefOrAddDefault(counts, word.Stem, out _)++;
        }

        return counts;
    }

    private static IEnumerable<Word> In(string text)
    {
        for (var (start, i) = (0, 0); i <= text.Length; i++)
        {
            if (i < text.Length && char.IsLetterOrDigit(text[i]))
            {
                continue;
            }

            if (i - start > 1 && text.AsSpan(start, i - start).ContainsAnyExceptInRange('0', '9') && WordOf(text.AsSpan(start, i - start)) is { IsSilent: false } word)
            {
                yield return word;
            }

            start = i + 1;
        }
    }

    private static Word WordOf(ReadOnlySpan<char> written)
    {
        const int Usual = 64;
        var letters = written.Length <= Usual ? stackalloc char[Usual] : new char[written.Length];
        written.ToLowerInvariant(letters);
        letters = letters[..written.Length];
        if (!MetBySpan.TryGetValue(letters, out var word))
        {
            var text = letters.ToString();
            word = new Word(text, WordStem.Of(text), Silent.Contains(text));
            if (Met.Count < MostMet)
            {
                Met.TryAdd(text, word);
            }
        }

        return word;
    }

    private sealed record Word(string Text, string Stem, bool IsSilent);
}
