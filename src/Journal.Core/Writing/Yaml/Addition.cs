using Journal.Core.Parsing.Problems;
using Journal.Core.Parsing.Yaml;

namespace Journal.Core.Writing.Yaml;

/// <summary>The result of an addition: the longer text, or why nothing could be added.</summary>
/// <param name="Text">The text with the addition; null where nothing was added.</param>
/// <param name="WhyNot">For the maker: what stands in the way, and what to do.</param>
internal readonly record struct Added(string? Text, string WhyNot)
{
    /// <summary>The addition was made; <paramref name="text"/> is the whole file with it.</summary>
    public static Added As(string text) => new(text, "");

    /// <summary>Nothing was added; <paramref name="why"/> says what stands in the way and what to do, in whole sentences.</summary>
    public static Added Refused(string why) => new(null, why);
}

/// <summary>
/// Adds to a piece of YAML: whole lines, or items before the <c>]</c> of a flow list. Everything else stays as it is,
/// byte for byte. What was added is read back; where that does not give the old contents and the addition, nothing is
/// changed.
/// </summary>
/// <param name="text">The whole file.</param>
/// <param name="start">Where its YAML begins.</param>
/// <param name="end">Where its YAML ends: the closing fence of an entry, or the end of the file.</param>
internal sealed class Addition(string text, int start, int end)
{
    private const string Remedy = "Please add it by hand.";

    private readonly string yaml = text[start..end];

    /// <summary>An addition to a file that is YAML from end to end.</summary>
    public static Addition To(string text) => new(text, 0, text.Length);

    /// <summary>Whether a key stands at the top.</summary>
    public bool Has(string key) => Read(yaml) is MapNode map && map.Pairs.Any(pair => pair.Key.Text == key);

    /// <summary>Adds items to the list of a key, which is made where it is missing.</summary>
    /// <param name="key">A key at the top.</param>
    /// <param name="items">YAML on one line each, fit for a flow list.</param>
    public Added Items(string key, IReadOnlyList<string> items)
    {
        if (Read(yaml) is not { } old || Outline.Of(yaml) is not { } outline)
        {
            return Added.Refused($"The file cannot be read. {Remedy}");
        }

        var spans = outline.TopKeys.Where(one => one.Key == key).ToList();
        var added = spans switch
        {
            [] => NewKey(outline, key, items),
            [var only] => IntoValue(key, only.End, only.Start, only.Value, items),
            _ => Added.Refused($"`{key}` is there twice. Remove one, then try again."),
        };
        return added.Text is { } longer && !Keeps(old, longer, key, items) ? Added.Refused($"`{key}` is written in a way that cannot be changed safely. {Remedy}") : added;
    }

    /// <summary>Adds items to a file that is a list.</summary>
    public Added Items(IReadOnlyList<string> items)
    {
        if (Read(yaml) is not { } old || Outline.Of(yaml) is not { } outline)
        {
            return Added.Refused($"The file cannot be read. {Remedy}");
        }

        var added = outline.Top.Form switch
        {
            Form.Nothing => AtEnd(items.Select(item => $"- {item}")),
            Form.BlockList or Form.FlowList => IntoValue("the list", 0, 0, outline.Top, items),
            _ => Added.Refused($"The file is not a list. {Remedy}"),
        };
        return added.Text is { } longer && (Read(Yaml(longer)) is not { } read || !SameItems(old, read, Nodes(items)))
            ? Added.Refused($"The list is written in a way that cannot be changed safely. {Remedy}")
            : added;
    }

    /// <summary>Adds keys with values that are not there yet; one that is there is left as it is.</summary>
    public Added Keys(IReadOnlyList<(string Key, string Value)> pairs)
    {
        if (Read(yaml) is not MapNode old || Outline.Of(yaml) is not { } outline)
        {
            return Added.Refused($"The file cannot be read. {Remedy}");
        }

        var missing = pairs.Where(pair => outline.TopKeys.All(one => one.Key != pair.Key)).ToList();
        if (missing.Count == 0)
        {
            return Added.As(text);
        }

        if (outline.Top.Form != Form.BlockMap)
        {
            return Added.Refused($"The keys are in braces. {Remedy}");
        }

        var added = AtEnd(missing.Select(pair => $"{Indent(outline.TopKeys[0].Start)}{pair.Key}: {pair.Value}"));
        var isKept = Read(Yaml(added.Text!)) is MapNode read
            && read.Pairs.Count == old.Pairs.Count + missing.Count
            && old.Pairs.Zip(read.Pairs).All(pair => pair.First.Key.Text == pair.Second.Key.Text && Same(pair.First.Value, pair.Second.Value))
            && missing.Zip(read.Pairs.Skip(old.Pairs.Count)).All(pair => pair.First.Key == pair.Second.Key.Text && Same(Nodes([pair.First.Value])[0], pair.Second.Value));
        return isKept ? added : Added.Refused($"The keys are written in a way that cannot be changed safely. {Remedy}");
    }

    /// <summary>Adds a key to an item of a list that does not have it yet.</summary>
    /// <param name="list">The key of the list, at the top.</param>
    /// <param name="isMeant">The item by what it says: its text, or the value of the key that <paramref name="single"/> names.</param>
    /// <param name="single">The key that an item of one value stands for, such as <c>file</c>.</param>
    /// <param name="key">The key.</param>
    /// <param name="value">Its value, fit to stand in braces.</param>
    /// <returns>Null where the list has no such item.</returns>
    public Added? KeyOfItem(string list, Func<string, bool> isMeant, string single, string key, string value)
    {
        if (Read(yaml) is not MapNode old || SourceNode.Of(yaml) is not SourceMap map || map[list] is not { } found)
        {
            return null;
        }

        var at = found.Items.Index().Where(item => Says(item.Item, single) is { } said && isMeant(said)).Select(item => (int?)item.Index).FirstOrDefault();
        if (at is not { } index)
        {
            return null;
        }

        if (found.Items[index] is SourceMap item && item[key] is not null)
        {
            return Added.Refused($"`{Says(item, single)}` has its `{key}` already, which stays as it is. Change it in the editor.");
        }

        var longer = ItemKey.Put(yaml, found.Items[index], single, key, value) is { } splices ? Splice.Apply(text, splices.Select(splice => splice.Behind(start))) : null;
        return longer is not null && Read(Yaml(longer)) is MapNode read && KeepsBut(old, read, list, index, single, key, Nodes([value])[0])
            ? Added.As(longer)
            : Added.Refused($"`{Says(found.Items[index], single)}` is written in a way that this program does not dare to touch. {Remedy}");
    }

    private static string? Says(SourceNode item, string single) => (item as SourceText ?? (item as SourceMap)?[single] as SourceText)?.Text;

    // Everything as before, except that one item of one list has one more key.
    private static bool KeepsBut(MapNode old, MapNode read, string list, int index, string single, string key, Node value) =>
        old.Pairs.Count == read.Pairs.Count && old.Pairs.Zip(read.Pairs).All(pair => pair.First.Key.Text == pair.Second.Key.Text && (pair.First.Key.Text != list
            ? Same(pair.First.Value, pair.Second.Value)
            : ItemsOf(pair.First.Value).Count == ItemsOf(pair.Second.Value).Count && ItemsOf(pair.First.Value).Zip(ItemsOf(pair.Second.Value)).Index().All(items => items.Index == index
                ? HasOneMore(items.Item.First, items.Item.Second, single, key, value)
                : Same(items.Item.First, items.Item.Second))));

    private static IReadOnlyList<Node> ItemsOf(Node node) => node is ListNode list ? list.Nodes : [node];

    private static bool HasOneMore(Node before, Node after, string single, string key, Node value)
    {
        var pairs = before is MapNode map ? map.Pairs : [new(new TextNode(default, single, IsQuoted: false), before)];
        return after is MapNode longer && longer.Pairs.Count == pairs.Count + 1
            && longer.Pairs.Any(pair => pair.Key.Text == key && Same(pair.Value, value))
            && pairs.All(pair => longer.Pairs.Any(one => one.Key.Text == pair.Key.Text && Same(one.Value, pair.Value)));
    }

    private Added NewKey(Outline outline, string key, IReadOnlyList<string> items)
    {
        if (outline.Top.Form is not (Form.BlockMap or Form.Nothing))
        {
            return Added.Refused($"The keys are in braces. {Remedy}");
        }

        var indent = outline.TopKeys.Count == 0 ? "" : Indent(outline.TopKeys[0].Start);
        return AtEnd([$"{indent}{key}:", .. items.Select(item => $"{indent}  - {item}")]);
    }

    private Added IntoValue(string key, int keyEnd, int keyStart, Span value, IReadOnlyList<string> items)
    {
        switch (value.Form)
        {
            case Form.Nothing when IsEmptyBehind(keyEnd):
                return Lines(keyEnd, items.Select(item => $"{Indent(keyStart)}  - {item}"));
            case Form.FlowList:
                var at = value.Items == 0 ? value.Start + 1 : LastItemEnd(value);
                return Added.As(text.Insert(start + at, (value.Items == 0 ? "" : ", ") + string.Join(", ", items)));
            case Form.BlockList:
                return Lines(PastComments(value.End, Indent(value.Start).Length), items.Select(item => $"{Indent(value.Start)}- {item}"));
            case Form.Single or Form.FlowMap when value.Start > keyEnd && !IsInLines(value):
                // A single value becomes the first item of a list; its own text stays as it is.
                var indent = Indent(keyStart) + "  ";
                var below = Lines(value.End, items.Select(item => $"{indent}- {item}")).Text!;
                return Added.As(below.Insert(start + value.Start, $"{LineEndAbove(start + value.End)}{indent}- "));
            default:
                return Added.Refused($"`{key}` holds a single value. Write it as a list, `{key}: [one, another]`, then try again.");
        }
    }

    // `photos:` with nothing, or only a comment, after it on its line.
    private bool IsEmptyBehind(int keyEnd)
    {
        var rest = yaml.AsSpan(keyEnd, LineEnd(keyEnd) - keyEnd).TrimEnd("\r\n").TrimStart();
        return rest.StartsWith(":") && (rest[1..].TrimStart() is "" || rest[1..].TrimStart().StartsWith("#"));
    }

    private bool IsInLines(Span value) => yaml.AsSpan(value.Start, value.End - value.Start).Contains('\n');

    // Just after the last item, so that a comment or a comma after it stays where it is.
    private int LastItemEnd(Span list) => list.Start + (Outline.Of(yaml[list.Start..list.End])?.LastItemEnd ?? list.End - list.Start - 1);

    private Added AtEnd(IEnumerable<string> lines) => Lines(yaml.Length, lines, atEnd: true);

    // Whole lines below the line that a place stands on; the line end is that of the line above.
    private Added Lines(int place, IEnumerable<string> lines, bool atEnd = false)
    {
        var isAtLineStart = place > 0 && yaml[place - 1] == '\n';
        var at = start + (atEnd || isAtLineStart ? place : LineEnd(place));
        var lineEnd = LineEndAbove(at);
        var isOpen = at > 0 && text[at - 1] != '\n';
        var joined = string.Join(lineEnd, lines);
        return Added.As(text.Insert(at, isOpen ? lineEnd + joined : joined + lineEnd));
    }

    // Comments indented deeper than the dashes speak of the last item.
    private int PastComments(int place, int indent)
    {
        for (var at = place > 0 && yaml[place - 1] == '\n' ? place : LineEnd(place); at < yaml.Length; at = LineEnd(at))
        {
            var line = yaml.AsSpan(at, LineEnd(at) - at);
            if (line.TrimStart(" ") is not ['#', ..] || line.IndexOf('#') <= indent)
            {
                return at;
            }

            place = LineEnd(at);
        }

        return place;
    }

    private int LineEnd(int place) => yaml.IndexOf('\n', place) is >= 0 and var found ? found + 1 : yaml.Length;

    private string LineEndAbove(int at)
    {
        var above = text.LastIndexOf('\n', Math.Max(0, at - 1));
        above = above < 0 ? text.IndexOf('\n', StringComparison.Ordinal) : above;
        return above > 0 && text[above - 1] == '\r' ? "\r\n" : "\n";
    }

    // What stands before a place on its line: spaces only, for keys and dashes at the top.
    private string Indent(int place)
    {
        var lineStart = place == 0 ? 0 : yaml.LastIndexOf('\n', place - 1) + 1;
        return yaml[lineStart..place];
    }

    private string Yaml(string longer) => longer[start..(longer.Length - (text.Length - end))];

    private bool Keeps(Node old, string longer, string key, IReadOnlyList<string> items)
    {
        if (Read(Yaml(longer)) is not MapNode read)
        {
            return false;
        }

        var before = old is MapNode map ? map.Pairs : [];
        var isNew = before.All(pair => pair.Key.Text != key);
        return read.Pairs.Count == before.Count + (isNew ? 1 : 0)
            && read.Pairs.Index().All(one => one.Index >= before.Count
                ? one.Item.Key.Text == key && SameItems(new ListNode(default, []), one.Item.Value, Nodes(items))
                : one.Item.Key.Text == before[one.Index].Key.Text && (one.Item.Key.Text == key
                    ? SameItems(before[one.Index].Value, one.Item.Value, Nodes(items))
                    : Same(before[one.Index].Value, one.Item.Value)));
    }

    private static bool SameItems(Node before, Node after, IReadOnlyList<Node> added) =>
        after is ListNode list && SameAll([.. before.Items, .. added], list.Nodes);

    /// <summary>Whether two pieces of YAML say the same in the same way.</summary>
    internal static bool Same(Node one, Node other) => (one, other) switch
    {
        (TextNode a, TextNode b) => a.Text == b.Text && a.IsQuoted == b.IsQuoted,
        (ListNode a, ListNode b) => SameAll(a.Nodes, b.Nodes),
        (MapNode a, MapNode b) => a.Pairs.Count == b.Pairs.Count
            && a.Pairs.Zip(b.Pairs).All(pair => Same(pair.First.Key, pair.Second.Key) && Same(pair.First.Value, pair.Second.Value)),
        _ => false,
    };

    private static bool SameAll(IReadOnlyList<Node> some, IReadOnlyList<Node> others) =>
        some.Count == others.Count && some.Zip(others).All(pair => Same(pair.First, pair.Second));

    private static IReadOnlyList<Node> Nodes(IReadOnlyList<string> items) => Read($"[{string.Join(", ", items)}]")!.Items;

    /// <summary>The tree of YAML; null where it has an error.</summary>
    internal static Node? Read(string yaml)
    {
        var log = new ProblemLog();
        var node = YamlReader.ReadAny(yaml, log);
        return log.Problems.Any(problem => problem.Severity == Severity.Error) ? null : node;
    }
}
