namespace Journal.Core.Parsing.Yaml;

/// <summary>Says in plain words what the YAML parser says in its own.</summary>
internal static class YamlFault
{
    public const string NotClosed = "the bracket or brace that opens here is not closed, or a comma is missing in it.";

    public const string Tab = "a tab stands where only spaces may.";

    private static readonly (string Parser, string Plain)[] Sayings =
    [
        ("found unexpected end of stream", "a quotation mark that opens here is not closed."),
        ("invalid mapping", "a second `: ` stands in the value, or the line above it is not finished."),
        ("did not find expected key", "`key: value` was expected here."),
        ("cannot start any token", "a value cannot begin with this sign."),
        ("a tab character", Tab),
        ("unknown escape character", "a backslash in double quotes stands before a sign that it cannot change."),
        ("block sequence entries are not allowed", "a list cannot begin on the line of its key."),
        ("expected '-' indicator", "this line is indented otherwise than the list above it."),
        ("did not find expected node content", "a value was expected here."),
    ];

    /// <summary>Whether the parser waits for a bracket to close.</summary>
    public static bool IsNotClosed(string message) => message.Contains("expected ',' or", StringComparison.Ordinal);

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
