using System.Text;

namespace Journal.Core.Model;

/// <summary>The words of our fixed choices as makers write them: <c>Outcome.UsedAsIs</c> is <c>used-as-is</c>.</summary>
public static class EnumNames
{
    /// <summary>The word for a value.</summary>
    public static string ToWord<T>(this T value)
        where T : struct, Enum => Choice<T>.Words[Array.IndexOf(Choice<T>.Values, value)];

    /// <summary>All words, in the order of their values.</summary>
    public static IReadOnlyList<string> All<T>()
        where T : struct, Enum => Choice<T>.Words;

    /// <summary>The value that a word stands for.</summary>
    public static bool TryFind<T>(string word, out T value)
        where T : struct, Enum
    {
        var at = Array.IndexOf(Choice<T>.Words, word);
        value = at < 0 ? default : Choice<T>.Values[at];
        return at >= 0;
    }

    private static string Hyphenate(string name)
    {
        var word = new StringBuilder();
        foreach (var letter in name)
        {
            if (char.IsAsciiLetterUpper(letter) && word.Length > 0)
            {
                word.Append('-');
            }

            word.Append(char.ToLowerInvariant(letter));
        }

        return word.ToString();
    }

    private static class Choice<T>
        where T : struct, Enum
    {
        /// <summary>The values in the order of their numbers; <see cref="Words"/> has the word of each at the same place.</summary>
        public static readonly T[] Values = Enum.GetValues<T>();
        /// <summary>The words in small letters, with a hyphen before each capital letter of the name but the first.</summary>
        public static readonly string[] Words = [.. Enum.GetNames<T>().Select(Hyphenate)];
    }
}
