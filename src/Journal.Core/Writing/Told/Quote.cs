using Journal.Core.PlainWords;

namespace Journal.Core.Writing.Told;

/// <summary>Words of an account, quoted on one line.</summary>
public static class Quote
{
    private const int Long = 160;
    private const int Short = 32;

    /// <summary>The words, as many as say it all.</summary>
    public static string Of(string account, Span span) => Cut(account, span, Long);

    /// <summary>The first words, as a reason beside a question: <c>from: “bored it out to …”</c>.</summary>
    public static string AsReason(string account, Span span) => $"from: “{Cut(account, span, Short)}”";

    // At a word where there is one.
    private static string Cut(string account, Span span, int most)
    {
        var text = string.Join(' ', account[span.Start..span.End].Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        if (text.Length <= most)
        {
            return text;
        }

        var space = text.LastIndexOf(' ', most);
        var end = space > most / 2 ? space : char.IsHighSurrogate(text[most - 1]) ? most - 1 : most;
        return $"{text[..end]} …";
    }
}
