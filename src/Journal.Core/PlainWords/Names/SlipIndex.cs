namespace Journal.Core.PlainWords.Names;

/// <summary>
/// Finds the word that a slip was meant for: one letter too many or missing, or two swapped (edits as of Damerau 1964); in long words
/// also one wrong. A look-up takes the time of one word however many are known: each is filed under itself with one letter left out.
/// </summary>
internal sealed class SlipIndex
{
    public const int ShortestWord = 5;
    private const int LongWord = 8;
    private const int LongestWord = 24;
    private readonly Dictionary<string, List<string>> byRemains = new(StringComparer.Ordinal);

    public SlipIndex(IEnumerable<string> words)
    {
        foreach (var word in words.Distinct(StringComparer.Ordinal).Where(word => word.Length <= LongestWord))
        {
            foreach (var remains in Remains(word))
            {
                if (!byRemains.TryGetValue(remains, out var filed))
                {
                    byRemains[remains] = filed = [];
                }

                filed.Add(word);
            }
        }
    }

    /// <summary>The word meant; null where none is near or several are.</summary>
    public string? Nearest(string written)
    {
        if (written.Length is < ShortestWord - 1 or > LongestWord)
        {
            return null;
        }

        string? nearest = null;
        foreach (var remains in Remains(written))
        {
            foreach (var word in byRemains.GetValueOrDefault(remains) ?? [])
            {
                if (word == nearest || word[0] != written[0] || !IsSlip(written, word))
                {
                    continue;
                }

                if (nearest is not null)
                {
                    return null;
                }

                nearest = word;
            }
        }

        return nearest;
    }

    private static IEnumerable<string> Remains(string word)
    {
        yield return word;
        for (var i = 0; i < word.Length; i++)
        {
            yield return word.Remove(i, 1);
        }
    }

    private static bool IsSlip(string written, string word)
    {
        if (written.Length != word.Length)
        {
            return Math.Abs(written.Length - word.Length) == 1;
        }

        var first = written.AsSpan().CommonPrefixLength(word);
        if (first >= word.Length - 1)
        {
            return word.Length >= LongWord && first < word.Length;
        }

        var isSwapped = written[first] == word[first + 1] && written[first + 1] == word[first];
        var sameBehind = written.AsSpan(first + 2).SequenceEqual(word.AsSpan(first + 2));
        var isWrong = word.Length >= LongWord && written.AsSpan(first + 1).SequenceEqual(word.AsSpan(first + 1));
        return (isSwapped && sameBehind) || isWrong;
    }
}
