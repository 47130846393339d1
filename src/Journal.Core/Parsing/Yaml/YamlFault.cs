namespace Journal.Core.Parsing.Yaml;

/// <summary>Says in plain words what the YAML parser says in its own.</summary>
internal static class YamlFault
{
    /// <summary>What is said of a bracket that is not closed.</summary>
    public const string NotClosed = "the bracket or brace opened here is not closed, or a comma is missing inside it.";

    /// <summary>What is said of a tab that indents.</summary>
    public const string Tab = "there is a tab where only spaces are allowed.";

    private static readonly (string Parser, string Plain)[] Sayings =
    [
        ("found unexpected end of stream", "the quotation mark opened here is not closed."),
        ("invalid mapping", "there is a second `: ` in the value, or the line above is not finished."),
        ("did not find expected key", "`key: value` was expected here."),
        ("cannot start any token", "a value cannot start with this character."),
        ("a tab character", Tab),
        ("unknown escape character", "a backslash in double quotes is followed by a character that it cannot change."),
        ("block sequence entries are not allowed", "a list cannot start on the same line as its key."),
        ("expected '-' indicator", "this line is indented differently from the list above."),
        ("did not find expected node content", "a value was expected here."),
    ];

    /// <summary>Whether the parser waits for a bracket to close.</summary>
    public static bool IsNotClosed(string message) => message.Contains("expected ',' or", StringComparison.Ordinal);

    /// <summary>The parser's message in plain words; its first sentence where it is not known.</summary>
    public static string InPlainWords(string message)
    {
        var known = Array.FindIndex(Sayings, saying => message.Contains(saying.Parser, StringComparison.OrdinalIgnoreCase));
        return known >= 0 ? Sayings[known].Plain : FirstSentence(message);
    }

    private static string FirstSentence(string message)
    {
        var start = message.LastIndexOf("): ", StringComparison.Ordinal) is >= 0 and var at ? at + 3 : 0;
        var sentence = message[start..].Trim();
        return sentence.Length == 0 ? "it cannot be understood." : $"{char.ToLowerInvariant(sentence[0])}{sentence[1..].TrimEnd('.')}.";
    }
}
