namespace Journal.Core.Figures;

/// <summary>
/// The common stem of a word's forms, so that “bored”, “boring” and “bores” count as one: step 1 of M. F. Porter, <i>An algorithm
/// for suffix stripping</i>, Program 14 (1980) 130–137, from memory. Its later steps take words apart further than short
/// workshop sentences need.
/// </summary>
internal static class WordStem
{
    /// <summary>The stem of a word in lower case. Words of one or two letters are their own stem, as in Porter's program.</summary>
    public static string Of(string word) => word.Length < 3 ? word : LastY(PastAndPresent(Plural(word)));

    // Step 1a: SSES → SS, IES → I, SS → SS, S → nothing.
    private static string Plural(string word) =>
        word.EndsWith("sses", StringComparison.Ordinal) || word.EndsWith("ies", StringComparison.Ordinal) ? word[..^2]
        : word.EndsWith('s') && !word.EndsWith("ss", StringComparison.Ordinal) ? word[..^1]
        : word;

    // Step 1b: (m > 0) EED → EE; (*v*) ED → nothing; (*v*) ING → nothing.
    private static string PastAndPresent(string word)
    {
        if (word.EndsWith("eed", StringComparison.Ordinal))
        {
            return Measure(word.AsSpan(0, word.Length - 3)) > 0 ? word[..^1] : word;
        }

        var cut = word.EndsWith("ed", StringComparison.Ordinal) ? 2 : word.EndsWith("ing", StringComparison.Ordinal) ? 3 : 0;
        return cut > 0 && HasVowel(word.AsSpan(0, word.Length - cut)) ? Mended(word[..^cut]) : word;
    }

    // What step 1b leaves: AT → ATE, BL → BLE, IZ → IZE; a double consonant but L, S, Z loses one; (m = 1 and *o) gains an E.
    private static string Mended(string stem)
    {
        if (stem.EndsWith("at", StringComparison.Ordinal) || stem.EndsWith("bl", StringComparison.Ordinal) || stem.EndsWith("iz", StringComparison.Ordinal))
        {
            return stem + "e";
        }

        if (stem.Length > 1 && stem[^1] == stem[^2] && !IsVowel(stem, stem.Length - 1))
        {
            return stem[^1] is 'l' or 's' or 'z' ? stem : stem[..^1];
        }

        return Measure(stem) == 1 && EndsShort(stem) ? stem + "e" : stem;
    }

    // Step 1c: (*v*) Y → I.
    private static string LastY(string word) => word.EndsWith('y') && HasVowel(word.AsSpan(0, word.Length - 1)) ? word[..^1] + "i" : word;

    // m: how often a run of vowels is followed by a run of consonants.
    private static int Measure(ReadOnlySpan<char> stem)
    {
        var runs = 0;
        for (var i = 1; i < stem.Length; i++)
        {
            runs += IsVowel(stem, i - 1) && !IsVowel(stem, i) ? 1 : 0;
        }

        return runs;
    }

    private static bool HasVowel(ReadOnlySpan<char> stem)
    {
        for (var i = 0; i < stem.Length; i++)
        {
            if (IsVowel(stem, i))
            {
                return true;
            }
        }

        return false;
    }

    // *o: consonant, vowel, consonant, the last not W, X or Y.
    private static bool EndsShort(string stem) =>
        stem.Length > 2 && !IsVowel(stem, stem.Length - 3) && IsVowel(stem, stem.Length - 2) && !IsVowel(stem, stem.Length - 1)
        && stem[^1] is not ('w' or 'x' or 'y');

    private static bool IsVowel(ReadOnlySpan<char> word, int i) =>
        word[i] is 'a' or 'e' or 'i' or 'o' or 'u' || (word[i] == 'y' && i > 0 && !IsVowel(word, i - 1));
}
