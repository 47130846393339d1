using Journal.Core.Model;

namespace Journal.Core.Parsing.Yaml;

/// <summary>A piece of YAML with the place where it stands.</summary>
internal abstract record Node(Place Place)
{
    /// <summary>Nothing behind a key or the hyphen of a list: as good as left out.</summary>
    public bool IsBlank => this is TextNode text && (string.IsNullOrWhiteSpace(text.Text) || (text is { Text: "~" or "null", IsQuoted: false }));

    /// <summary>The items of a list, blank ones left out, or the single value as the only one.</summary>
    public IReadOnlyList<Node> Items => this is ListNode list ? [.. list.Nodes.Where(node => !node.IsBlank)] : IsBlank ? [] : [this];
}

/// <summary>A single value; never typed by YAML, so that <c>010</c> and <c>2:45</c> stay what the maker wrote.</summary>
internal sealed record TextNode(Place Place, string Text, bool IsQuoted) : Node(Place)
{
    /// <summary>Whether the file says it letter by letter: no escapes, no line ends, nothing before it.</summary>
    public bool IsVerbatim { get; init; }
}

/// <summary>A list.</summary>
internal sealed record ListNode(Place Place, IReadOnlyList<Node> Nodes) : Node(Place);

/// <summary>Keys with values, in the order of the file; a key may stand twice.</summary>
internal sealed record MapNode(Place Place, IReadOnlyList<KeyValuePair<TextNode, Node>> Pairs) : Node(Place);
