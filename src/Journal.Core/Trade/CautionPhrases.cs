using System.Collections.Frozen;

namespace Journal.Core.Trade;

/// <summary>Finds the cautions that a text calls for by their words, in one walk through the text.</summary>
public sealed class CautionPhrases
{
    // Each phrase by the first run of letters and digits in it.
    private readonly FrozenDictionary<string, (string Phrase, Caution Caution)[]> phrases;
    private readonly FrozenDictionary<string, (string Phrase, Caution Caution)[]>.AlternateLookup<ReadOnlySpan<char>> lookup;

    // The lengths of the runs that begin with a small letter a to z, a bit each (the last for all beyond): most words of a text are none of them.
    private readonly ulong[] lengths = new ulong[128];

    /// <summary>The words of some cautions.</summary>
    public CautionPhrases(IEnumerable<Caution> cautions)
    {
        phrases = cautions
            .SelectMany(caution => caution.Words, (caution, phrase) => (Phrase: phrase, Caution: caution))
            .GroupBy(one => one.Phrase[..RunAt(one.Phrase, 0)], StringComparer.OrdinalIgnoreCase)
            .ToFrozenDictionary(group => group.Key, group => group.ToArray(), StringComparer.OrdinalIgnoreCase);
        lookup = phrases.GetAlternateLookup<ReadOnlySpan<char>>();
        foreach (var run in phrases.Keys.Where(run => char.IsAsciiLetter(run[0])))
        {
            lengths[run[0] | ' '] |= BitOf(run.Length);
        }
    }

    /// <summary>The cautions of which a word or phrase stands in one of these texts, whole and in letters of either case.</summary>
    public HashSet<Caution> In(params IEnumerable<string> texts)
    {
        var found = new HashSet<Caution>(ReferenceEqualityComparer.Instance);
        foreach (var text in texts)
        {
            Add(found, text);
        }

        return found;
    }

    private void Add(HashSet<Caution> found, string text)
    {
        for (var at = 0; at < text.Length;)
        {
            var end = RunAt(text, at);
            if (end == at)
            {
                at++;
                continue;
            }

            if (MayBegin(text[at], end - at) && lookup.TryGetValue(text.AsSpan(at, end - at), out var candidates))
            {
                foreach (var (phrase, caution) in candidates)
                {
                    if (StandsAt(text, at, phrase))
                    {
                        found.Add(caution);
                    }
                }
            }

            at = end;
        }
    }

    private bool MayBegin(char letter, int length) => !char.IsAsciiLetter(letter) || (lengths[letter | ' '] & BitOf(length)) != 0;

    private static ulong BitOf(int length) => 1UL << Math.Min(length, 63);

    private static bool StandsAt(string text, int at, string phrase)
    {
        var end = at + phrase.Length;
        return end <= text.Length
            && text.AsSpan(at, phrase.Length).Equals(phrase, StringComparison.OrdinalIgnoreCase)
            && (end == text.Length || !char.IsLetterOrDigit(text[end]));
    }

    private static int RunAt(string text, int at)
    {
        while (at < text.Length && char.IsLetterOrDigit(text[at]))
        {
            at++;
        }

        return at;
    }
}
