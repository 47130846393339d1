using System.Globalization;

namespace Journal.Site.Search;

/// <summary>
/// Splits texts into words as a search compares them: small letters without accents, and numbers with their points.
/// <c>site-template/find/matcher.js</c> splits what the reader types by the same rules; the index carries the letters.
/// </summary>
public ref struct SearchTokens
{
    private enum Sort : byte
    {
        Other,
        Letter,
        Number,
        Mark,
    }

    // Written out, because the program runs without the system's tables of cultures, which could take letters apart.
    private static readonly (string Accented, char Plain)[] Families =
    [
        ("àáâãäåāăą", 'a'), ("çćĉċč", 'c'), ("ď", 'd'), ("èéêëēĕėęě", 'e'), ("ĝğġģ", 'g'), ("ĥ", 'h'), ("ìíîïĩīĭį", 'i'), ("ĵ", 'j'), ("ķ", 'k'), ("ĺļľ", 'l'),
        ("ñńņň", 'n'), ("òóôõöōŏő", 'o'), ("ŕŗř", 'r'), ("śŝşšș", 's'), ("ţťț", 't'), ("ùúûüũūŭůűų", 'u'), ("ŵ", 'w'), ("ýÿŷ", 'y'), ("źżž", 'z'),
        ("ά", 'α'), ("έ", 'ε'), ("ή", 'η'), ("ίϊΐ", 'ι'), ("ό", 'ο'), ("ύϋΰ", 'υ'), ("ώ", 'ω'), ("ё", 'е'),
    ];

    private static readonly char[] Folded = new char[char.MaxValue + 1];
    private static readonly Sort[] Sorts = new Sort[char.MaxValue + 1];

    private readonly ReadOnlySpan<char> text;
    private int at;

#pragma warning disable CA1810 // One walk fills both tables.
    static SearchTokens()
    {
        for (var letter = 0; letter <= char.MaxValue; letter++)
        {
            Folded[letter] = char.ToLowerInvariant((char)letter);
            Sorts[letter] = char.GetUnicodeCategory((char)letter) switch
            {
                UnicodeCategory.NonSpacingMark => Sort.Mark,
                UnicodeCategory.DecimalDigitNumber or UnicodeCategory.LetterNumber or UnicodeCategory.OtherNumber => Sort.Number,
                <= UnicodeCategory.OtherLetter => Sort.Letter,
                _ => Sort.Other,
            };
        }

        foreach (var (accented, plain) in Families)
        {
            foreach (var letter in accented)
            {
                Folded[letter] = Folded[char.ToUpperInvariant(letter)] = plain;
            }
        }
    }
#pragma warning restore CA1810

    /// <summary>The words of a text, one after the other, with <c>foreach</c>.</summary>
    public SearchTokens(string text)
    {
        this.text = Fold(text);
    }

    /// <summary>A text in small letters without accents, as its words are compared; as long as it was but for marks of their own.</summary>
    public static string Folding(string text) => Fold(text).ToString();

    /// <summary>Letters with accents.</summary>
    public static string Accented { get; } = string.Concat(Families.Select(family => family.Accented));

    /// <summary>What each of them is compared as, in the same order.</summary>
    public static string Plain { get; } = string.Concat(Families.Select(family => new string(family.Plain, family.Accented.Length)));

    /// <summary>The word; good until the next.</summary>
    public ReadOnlySpan<char> Current { get; private set; }

    /// <summary>The words, for <c>foreach</c>.</summary>
    public readonly SearchTokens GetEnumerator() => this;

    /// <summary>Goes to the next word: a number with points or strokes inside, else letters and digits together.</summary>
    public bool MoveNext()
    {
        while (at < text.Length && Sorts[text[at]] is not (Sort.Letter or Sort.Number))
        {
            at++;
        }

        var start = at;
        at = EndOfNumber(start) is var end && end > start ? end : EndOfWord(start);
        Current = text[start..at];
        return at > start;
    }

    private readonly int EndOfWord(int start)
    {
        var end = start;
        while (end < text.Length && Sorts[text[end]] is Sort.Letter or Sort.Number)
        {
            end++;
        }

        return end;
    }

    // 0.005 and 1/2 are one word each; a number without anything inside is a word like others.
    private readonly int EndOfNumber(int start)
    {
        var (end, whole) = (EndOfDigits(start), start);
        while (end > start && end < text.Length - 1 && text[end] is '.' or '/' && EndOfDigits(end + 1) is var next && next > end + 1)
        {
            end = whole = next;
        }

        return whole;
    }

    private readonly int EndOfDigits(int start)
    {
        var end = start;
        while (end < text.Length && Sorts[text[end]] == Sort.Number)
        {
            end++;
        }

        return end;
    }

    private static ReadOnlySpan<char> Fold(string text)
    {
        var folded = new char[text.Length];
        var length = 0;
        foreach (var letter in text)
        {
            if (Sorts[letter] != Sort.Mark)
            {
                folded[length++] = Folded[letter];
            }
        }

        return folded.AsSpan(0, length);
    }
}
