using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Journal.Site.Search;

/// <summary>
/// Splits texts into words as a search compares them: small letters without accents, and numbers with their points.
/// <c>site-template/find/matcher.js</c> splits what the reader types by the same rules; the index carries the letters.
/// </summary>
internal static partial class FoldedWords
{
    // Written out, because the program runs without the system's tables of cultures, which could take letters apart.
    private static readonly (string Accented, char Plain)[] Families =
    [
        ("àáâãäåāăą", 'a'), ("çćĉċč", 'c'), ("ď", 'd'), ("èéêëēĕėęě", 'e'), ("ĝğġģ", 'g'), ("ĥ", 'h'), ("ìíîïĩīĭį", 'i'), ("ĵ", 'j'), ("ķ", 'k'), ("ĺļľ", 'l'),
        ("ñńņň", 'n'), ("òóôõöōŏő", 'o'), ("ŕŗř", 'r'), ("śŝşšș", 's'), ("ţťț", 't'), ("ùúûüũūŭůűų", 'u'), ("ŵ", 'w'), ("ýÿŷ", 'y'), ("źżž", 'z'),
        ("ά", 'α'), ("έ", 'ε'), ("ή", 'η'), ("ίϊΐ", 'ι'), ("ό", 'ο'), ("ύϋΰ", 'υ'), ("ώ", 'ω'), ("ё", 'е'),
    ];

    private static readonly Dictionary<char, char> PlainOf = Families.SelectMany(family => family.Accented, (family, letter) => (letter, family.Plain)).ToDictionary();

    /// <summary>Letters with accents.</summary>
    public static string Accented { get; } = string.Concat(Families.Select(family => family.Accented));

    /// <summary>What each of them is compared as, in the same order.</summary>
    public static string Plain { get; } = string.Concat(Families.Select(family => new string(family.Plain, family.Accented.Length)));

    public static IEnumerable<string> Of(string text) => Word().Matches(Fold(text)).Select(match => match.Value);

    private static string Fold(string text)
    {
        var folded = new StringBuilder(text.Length);
        foreach (var letter in text.Where(letter => CharUnicodeInfo.GetUnicodeCategory(letter) != UnicodeCategory.NonSpacingMark).Select(char.ToLowerInvariant))
        {
            folded.Append(PlainOf.GetValueOrDefault(letter, letter));
        }

        return folded.ToString();
    }

    [GeneratedRegex(@"\p{N}+(?:[./]\p{N}+)+|[\p{L}\p{N}]+")]
    private static partial Regex Word();
}
