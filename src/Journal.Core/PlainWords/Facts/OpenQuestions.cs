using Journal.Core.Model;
using Journal.Core.PlainWords.Clauses;
using Journal.Core.PlainWords.Quantities;

namespace Journal.Core.PlainWords.Facts;

/// <summary>What is asked where the words are not sure enough.</summary>
internal static class OpenQuestions
{
    /// <summary>A time that no job was found for.</summary>
    public static Question OfTime(Account account, Quantity time) =>
        new($"What were the {new Minutes(time.Minutes)} for?", account.SpanOf(time.First, time.Next)) { Time = new Minutes(time.Minutes) };

    /// <summary>What is not read of an account that is too long.</summary>
    public static IEnumerable<Question> OfLength(string text, int longest) => text.Length <= longest
        ? []
        : [new(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"Only the first {longest:N0} characters were read. Is the rest of another evening?"), new(longest, text.Length))];
}
