namespace Journal.Core.PlainWords.Words;

/// <summary>Which form of a verb was said.</summary>
internal enum VerbForm
{
    /// <summary>bore</summary>
    Plain,

    /// <summary>bores</summary>
    Third,

    /// <summary>bored</summary>
    Past,

    /// <summary>boring</summary>
    Going,

    /// <summary>A noun or a fixed phrase, whole as it stands.</summary>
    Phrase,
}

/// <summary>The forms of an English verb by the common rules of spelling (from memory); those that keep no rule are listed.</summary>
internal static class VerbForms
{
    public static IEnumerable<(string Word, VerbForm Form)> Of(string verb, IReadOnlyDictionary<string, string[]> irregular)
    {
        // The past comes first: "set" and "cut" tell of what was done rather than of what is to do.
        var forms = irregular.GetValueOrDefault(verb) ?? [WithEnding(verb, "ed"), WithEnding(verb, "ed"), WithEnding(verb, "ing")];
        yield return (forms[0], VerbForm.Past);
        if (forms[1] != forms[0])
        {
            yield return (forms[1], VerbForm.Past);
        }

        yield return (forms[2], VerbForm.Going);
        yield return (verb, VerbForm.Plain);
        yield return (Third(verb), VerbForm.Third);
    }

    private static string Third(string verb) =>
        verb.EndsWith("ss", StringComparison.Ordinal) || verb.EndsWith("ch", StringComparison.Ordinal) || verb.EndsWith("sh", StringComparison.Ordinal) || verb.EndsWith('x') || verb.EndsWith('z') ? verb + "es"
        : verb.EndsWith('y') && !IsVowel(verb[^2]) ? verb[..^1] + "ies"
        : verb + "s";

    private static string WithEnding(string verb, string ending)
    {
        if (verb.EndsWith('e') && !verb.EndsWith("ee", StringComparison.Ordinal))
        {
            return verb[..^1] + ending;
        }

        if (verb.EndsWith('y') && !IsVowel(verb[^2]) && ending == "ed")
        {
            return verb[..^1] + "ied";
        }

        // One vowel before one consonant in a word of one syllable: the consonant is doubled.
        var doubles = verb.Length >= 3 && verb.Count(IsVowel) == 1 && IsVowel(verb[^2]) && !IsVowel(verb[^1]) && verb[^1] is not ('w' or 'x' or 'y');
        return doubles ? verb + verb[^1] + ending : verb + ending;
    }

    private static bool IsVowel(char letter) => letter is 'a' or 'e' or 'i' or 'o' or 'u';
}
