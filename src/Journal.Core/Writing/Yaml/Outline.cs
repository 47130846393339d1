using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Journal.Core.Writing.Yaml;

/// <summary>What stands behind a key, or at the top of a file.</summary>
internal enum Form
{
    Nothing,
    Single,
    BlockList,
    FlowList,
    BlockMap,
    FlowMap,
}

/// <summary>A value and where it stands, in UTF-16 units from the start of the YAML.</summary>
/// <param name="Form">How it is written.</param>
/// <param name="Start">Where it begins: of a list its first dash or its bracket.</param>
/// <param name="End">
/// Behind its last word, quotation mark or bracket. The library says of a list in block style that it ends at the next
/// token, beyond comments; so the end of what it holds is taken instead.
/// </param>
/// <param name="Items">How many items a list has.</param>
internal sealed record Span(Form Form, int Start, int End, int Items);

/// <summary>Where the keys of a piece of YAML stand, so that something can be added without touching the rest.</summary>
internal sealed class Outline
{
    private readonly string yaml;
    private readonly Parser parser;
    private readonly List<(string Key, int Start, int End, Span Value)> keys = [];

    private Outline(string yaml)
    {
        this.yaml = yaml;
        parser = new Parser(new Scanner(new StringReader(yaml), skipComments: true));
        parser.MoveNext();
        if (!parser.MoveNext() || parser.Current is not DocumentStart)
        {
            Top = new Span(Form.Nothing, 0, 0, 0);
            return;
        }

        parser.MoveNext();
        Top = parser.Current is MappingStart { Style: not MappingStyle.Flow } map ? Keys(map) : Value();
    }

    /// <summary>The whole.</summary>
    public Span Top { get; }

    /// <summary>Where the last item of a list at the top ends.</summary>
    public int LastItemEnd { get; private set; }

    /// <summary>The keys at the top in their order.</summary>
    public IReadOnlyList<(string Key, int Start, int End, Span Value)> TopKeys => keys;

    /// <summary>
    /// The outline of YAML; null where it cannot be read. Only for what the journal's own reader has read before:
    /// this one knows no limit of depth.
    /// </summary>
    public static Outline? Of(string yaml)
    {
        try
        {
            return new Outline(yaml);
        }
        catch (Exception e) when (e is YamlException or InvalidOperationException or ArgumentException or IndexOutOfRangeException)
        {
            return null;
        }
    }

    private Span Keys(MappingStart map)
    {
        var end = At(map.Start);
        for (parser.MoveNext(); parser.Current is not MappingEnd; parser.MoveNext())
        {
            var (start, key) = (At(parser.Current!.Start), (parser.Current as Scalar)?.Value ?? "");
            var keyEnd = Value().End;
            parser.MoveNext();
            var value = Value();
            keys.Add((key, start, keyEnd, value));
            end = value.Form == Form.Nothing ? keyEnd : Math.Max(keyEnd, value.End);
        }

        return new Span(Form.BlockMap, At(map.Start), end, keys.Count);
    }

    // On entry the parser stands on the value's first event, on return on its last.
    private Span Value()
    {
        var first = parser.Current!;
        switch (first)
        {
            case Scalar scalar:
                var form = scalar.Style == ScalarStyle.Plain && scalar.Value is "" or "~" or "null" ? Form.Nothing : Form.Single;
                return new Span(form, At(scalar.Start), At(scalar.End), 1);
            case SequenceStart list:
                var (listEnd, items) = Inside<SequenceEnd>(At(list.Start));
                return list.Style == SequenceStyle.Flow
                    ? new Span(Form.FlowList, At(list.Start), Behind(']', listEnd), items)
                    : new Span(Form.BlockList, At(list.Start), listEnd, items);
            case MappingStart map:
                var (mapEnd, pairs) = Inside<MappingEnd>(At(map.Start));
                return map.Style == MappingStyle.Flow
                    ? new Span(Form.FlowMap, At(map.Start), Behind('}', mapEnd), pairs)
                    : new Span(Form.BlockMap, At(map.Start), mapEnd, pairs);
            default:
                throw new InvalidOperationException("A value was expected.");
        }
    }

    private (int End, int Items) Inside<TEnd>(int start)
    {
        var (end, items) = (start, 0);
        for (parser.MoveNext(); parser.Current is not TEnd; parser.MoveNext())
        {
            var value = Value();
            end = value.Form == Form.Nothing ? end : Math.Max(end, value.End);
            items++;
        }

        LastItemEnd = end;
        return (end, items);
    }

    // The library says that a list or map in brackets ends before its bracket; one without brackets (`[a: b]`) has none.
    private int Behind(char bracket, int contentsEnd) =>
        At(parser.Current!.End) is var at && at < yaml.Length && yaml[at] == bracket ? at + 1 : contentsEnd;

    private static int At(Mark mark) => (int)mark.Index;
}
