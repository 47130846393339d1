using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Journal.Core.Writing.Yaml;

/// <summary>A piece of YAML with the stretch of text that it takes, in UTF-16 units from the start of the YAML.</summary>
/// <param name="Start">Where it begins: of a list or a map its bracket, its first dash or its first key.</param>
/// <param name="End">Behind its last word, quotation mark or bracket.</param>
internal abstract record SourceNode(int Start, int End)
{
    /// <summary>
    /// The tree of YAML; null where it cannot be read. Only for what the journal's own reader has read before: this one
    /// has no limit on depth.
    /// </summary>
    public static SourceNode? Of(string yaml)
    {
        try
        {
            return new SourceTree(yaml).Read();
        }
        catch (Exception e) when (e is YamlException or InvalidOperationException or ArgumentException or IndexOutOfRangeException)
        {
            return null;
        }
    }

    /// <summary>The items of a list, or the value as the only one.</summary>
    public IReadOnlyList<SourceNode> Items => this is SourceList list ? list.Nodes : [this];
}

/// <summary>A single value.</summary>
/// <param name="Start">Where it begins, with its quotation mark.</param>
/// <param name="End">Behind it.</param>
/// <param name="Text">What it says.</param>
/// <param name="IsPlain">Whether it stands without quotation marks.</param>
internal sealed record SourceText(int Start, int End, string Text, bool IsPlain) : SourceNode(Start, End);

/// <summary>A list.</summary>
/// <param name="Start">Where it begins.</param>
/// <param name="End">Behind its last item or its bracket.</param>
/// <param name="IsInBrackets">Whether it stands in brackets.</param>
/// <param name="Nodes">Its items.</param>
internal sealed record SourceList(int Start, int End, bool IsInBrackets, IReadOnlyList<SourceNode> Nodes) : SourceNode(Start, End);

/// <summary>Keys with values.</summary>
/// <param name="Start">Where it begins.</param>
/// <param name="End">Behind its last value or its brace.</param>
/// <param name="IsInBraces">Whether it stands in braces.</param>
/// <param name="Pairs">Its keys with their values.</param>
internal sealed record SourceMap(int Start, int End, bool IsInBraces, IReadOnlyList<(SourceText Key, SourceNode Value)> Pairs) : SourceNode(Start, End)
{
    /// <summary>The value of a key; null where it is not there.</summary>
    public SourceNode? this[string key] => Pairs.FirstOrDefault(pair => pair.Key.Text == key).Value;
}

/// <summary>Reads the tree from the parser's events.</summary>
internal sealed class SourceTree(string yaml)
{
    private readonly Parser parser = new(new Scanner(new StringReader(yaml), skipComments: true));

    /// <summary>The tree of the first document; null where there is none. Reads once.</summary>
    /// <exception cref="YamlException">It is not YAML.</exception>
    /// <exception cref="InvalidOperationException">It holds an alias, a key that is not text, or a bracket that is not closed.</exception>
    public SourceNode? Read()
    {
        parser.MoveNext();
        if (!parser.MoveNext() || parser.Current is not DocumentStart)
        {
            return null;
        }

        parser.MoveNext();
        return Node();
    }

    // On entry the parser stands on the node's first event, on return on its last.
    private SourceNode Node() => parser.Current switch
    {
        Scalar text => new SourceText(At(text.Start), At(text.End), text.Value, text.Style == ScalarStyle.Plain),
        SequenceStart list => List(At(list.Start), list.Style == SequenceStyle.Flow),
        MappingStart map => Map(At(map.Start), map.Style == MappingStyle.Flow),
        _ => throw new InvalidOperationException("A value was expected."),
    };

    private SourceList List(int start, bool isInBrackets)
    {
        var nodes = new List<SourceNode>();
        for (parser.MoveNext(); parser.Current is not SequenceEnd; parser.MoveNext())
        {
            nodes.Add(Node());
        }

        return new SourceList(start, EndOf(nodes, start, isInBrackets ? ']' : null), isInBrackets, nodes);
    }

    private SourceMap Map(int start, bool isInBraces)
    {
        var (pairs, ends) = (new List<(SourceText, SourceNode)>(), new List<SourceNode>());
        for (parser.MoveNext(); parser.Current is not MappingEnd; parser.MoveNext())
        {
            var key = Node() as SourceText ?? throw new InvalidOperationException("A key was expected.");
            parser.MoveNext();
            var value = Node();
            pairs.Add((key, value));
            ends.AddRange([key, value]);
        }

        return new SourceMap(start, EndOf(ends, start, isInBraces ? '}' : null), isInBraces, pairs);
    }

    // The library says of a list in block style that it ends at the next token, beyond comments, and of one in brackets that
    // it ends before its bracket.
    private int EndOf(List<SourceNode> inside, int start, char? bracket)
    {
        var contents = inside.Where(node => node is not SourceText { Text: "" } empty || empty.End > empty.Start).Select(node => node.End).Append(start).Max();
        return bracket is { } sign && At(parser.Current!.End) is var at && at < yaml.Length && yaml[at] == sign ? at + 1 : contents;
    }

    private static int At(Mark mark) => (int)mark.Index;
}
