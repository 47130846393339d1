using Journal.Core.PlainWords.Tokens;

namespace Journal.Core.PlainWords.Words;

/// <summary>Phrases of one word or more, found by their first word; the longer before the shorter.</summary>
/// <typeparam name="T">What a phrase stands for.</typeparam>
internal sealed class PhraseTable<T>
{
    private readonly Dictionary<string, List<Phrase>> byFirst = new(StringComparer.Ordinal);

    /// <summary>Adds a phrase; the same phrase may stand for several things.</summary>
    public void Add(IReadOnlyList<string> words, T value)
    {
        if (words.Count == 0)
        {
            return;
        }

        if (!byFirst.TryGetValue(words[0], out var phrases))
        {
            byFirst[words[0]] = phrases = [];
        }

        var at = phrases.FindIndex(phrase => phrase.Words.Count < words.Count);
        phrases.Insert(at < 0 ? phrases.Count : at, new(words, value));
    }

    /// <summary>Adds a phrase as it is written in a list.</summary>
    public void Add(string phrase, T value) => Add(Split(phrase), value);

    /// <summary>Everything that stands at a token, the longest first.</summary>
    public IEnumerable<(T Value, int Length)> At(IReadOnlyList<Token> tokens, int at)
    {
        if (!byFirst.TryGetValue(tokens[at].Meant, out var phrases))
        {
            yield break;
        }

        foreach (var phrase in phrases)
        {
            if (phrase.StandsAt(tokens, at))
            {
                yield return (phrase.Value, phrase.Words.Count);
            }
        }
    }

    /// <summary>The longest phrase at a token.</summary>
    public bool TryLongest(IReadOnlyList<Token> tokens, int at, out T value, out int length)
    {
        foreach (var (found, words) in At(tokens, at))
        {
            (value, length) = (found, words);
            return true;
        }

        (value, length) = (default!, 0);
        return false;
    }

    /// <summary>All first words, and all others.</summary>
    public IEnumerable<string> Words => byFirst.Values.SelectMany(phrases => phrases).SelectMany(phrase => phrase.Words);

    /// <summary>A phrase as the tokens of an account would be.</summary>
    public static IReadOnlyList<string> Split(string phrase) => phrase == "'s" ? [phrase] : [.. Tokenizer.Tokens(phrase).Select(token => token.Text)];

    private sealed record Phrase(IReadOnlyList<string> Words, T Value)
    {
        public bool StandsAt(IReadOnlyList<Token> tokens, int at)
        {
            if (at + Words.Count > tokens.Count)
            {
                return false;
            }

            for (var i = 1; i < Words.Count; i++)
            {
                if (!string.Equals(tokens[at + i].Meant, Words[i], StringComparison.Ordinal))
                {
                    return false;
                }
            }

            return true;
        }
    }
}
