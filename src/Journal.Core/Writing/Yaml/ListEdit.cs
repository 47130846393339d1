using Journal.Core.Parsing.Problems;
using Journal.Core.Parsing.Text;
using Journal.Core.Parsing.Yaml;

namespace Journal.Core.Writing.Yaml;

/// <summary>
/// Changes a list at the top of a file: one value of an item, the order of the items, or one taken out. All else stays to the byte;
/// what was changed is read back, and where that does not give what was meant, nothing is changed.
/// </summary>
internal sealed class ListEdit
{
    private const string ByHand = "It is written in a way that cannot be changed safely. Please change it by hand.";

    private readonly string text;
    private readonly string yaml;
    private readonly int start;
    private readonly string list;
    private readonly string single;
    private readonly Func<string, string, bool> isMeant;
    private readonly SourceMap map;

    private ListEdit(string text, string yaml, int start, SourceMap map, (string List, string Single, Func<string, string, bool> IsMeant) of)
    {
        (this.text, this.yaml, this.start, this.map) = (text, yaml, start, map);
        (list, single, isMeant) = of;
    }

    private IReadOnlyList<SourceNode> Items => map[list]!.Items;

    /// <summary>The pictures of an entry; null where it lists none, or its keys cannot be read.</summary>
    /// <param name="text">The text of the entry.</param>
    public static ListEdit? OfPhotos(string text) => FrontMatter.Split(text, "", new ProblemLog()) is { } halves
        ? Of(text, halves.Yaml, text.IndexOf('\n', StringComparison.Ordinal) + 1, ("photos", "file", IsPhoto)) : null;

    /// <summary>The parts of a plan or a build; null where it lists none, or cannot be read.</summary>
    /// <param name="text">The text of the file.</param>
    public static ListEdit? OfParts(string text) => Of(text, text, 0, ("parts", "id", (name, written) => name == written));

    /// <summary>How the value of an item's key is written; null where it has none.</summary>
    /// <param name="name">The item.</param>
    /// <param name="key">The key.</param>
    public string? Written(string name, string key) =>
        Find(name) is { } index && (Items[index] as SourceMap)?[key] is { } value ? yaml[value.Start..value.End] : null;

    /// <summary>Gives an item another value under a key, or none.</summary>
    /// <param name="name">The item.</param>
    /// <param name="key">The key, such as <c>caption</c>.</param>
    /// <param name="value">Its value as YAML on one line, fit to stand in braces; null to take the key out.</param>
    /// <returns>Null where the list has no such item.</returns>
    public Added? Set(string name, string key, string? value)
    {
        if (Find(name) is not { } index)
        {
            return null;
        }

        if (Items[index] is not SourceMap item || item[key] is not { } there)
        {
            return value is null ? Added.As(text)
                : new Addition(text, start, start + yaml.Length).KeyOfItem(list, written => isMeant(name, written), single, key, value);
        }

        var splice = value is null ? Without(yaml, item, key) : new Splice(there.Start, there.End - there.Start, value);
        return With([splice], nodes => [.. nodes.Select((node, i) => i == index ? WithKey((MapNode)node, key, value) : node)]);
    }

    /// <summary>Puts the items into another order.</summary>
    /// <param name="order">The items in the new order; others stay behind them.</param>
    public Added Order(IReadOnlyList<string> order)
    {
        var named = order.Select(Find).OfType<int>().Distinct().ToList();
        List<int> places = [.. named, .. Enumerable.Range(0, Items.Count).Except(named)];
        var splices = places.Index().Where(one => one.Index != one.Item).Select(one => new Splice(Items[one.Index].Start, Items[one.Index].End - Items[one.Index].Start, yaml[Items[one.Item].Start..Items[one.Item].End]));
        return With([.. splices], nodes => [.. places.Select(place => nodes[place])]);
    }

    /// <summary>Takes an item out; the last one with its key.</summary>
    /// <param name="name">The item.</param>
    public Added Remove(string name) =>
        Find(name) is not { } index ? Added.Refused($"`{name}` is not in the list `{list}`.")
        : map[list] is not SourceList { Nodes.Count: > 1 } several ? WithoutKey()
        : With([several.IsInBrackets ? OutOfBrackets(several, index) : OutOfLines(yaml, several, index)], nodes => [.. nodes.Where((_, i) => i != index)]);

    private static ListEdit? Of(string text, string yaml, int start, (string List, string Single, Func<string, string, bool> IsMeant) of) =>
        Addition.Read(yaml) is MapNode && SourceNode.Of(yaml) is SourceMap map && map[of.List] is not null ? new ListEdit(text, yaml, start, map, of) : null;

    // An entry in a folder of its own may name a picture from there.
    private static bool IsPhoto(string photo, string written) => photo == written || photo.EndsWith($"/{written}", StringComparison.Ordinal);

    private int? Find(string name) =>
        Items.Index().Where(item => Says(item.Item) is { } written && isMeant(name, written)).Select(item => (int?)item.Index).FirstOrDefault();

    private string? Says(SourceNode item) => (item as SourceText ?? (item as SourceMap)?[single] as SourceText)?.Text;

    // The text with splices, where the list then says what is meant and all else what it said.
    private Added With(IReadOnlyList<Splice> splices, Func<IReadOnlyList<Node>, IReadOnlyList<Node>> meant)
    {
        var changed = Splice.Apply(yaml, splices);
        var isKept = Addition.Read(yaml) is MapNode old && Addition.Read(changed) is MapNode read
            && old.Pairs.Count == read.Pairs.Count
            && old.Pairs.Zip(read.Pairs).All(pair => pair.First.Key.Text == pair.Second.Key.Text && (pair.First.Key.Text != list
                ? Addition.Same(pair.First.Value, pair.Second.Value)
                : AreSame(meant(NodesOf(pair.First.Value)), NodesOf(pair.Second.Value))));
        return isKept ? Changed(changed) : Added.Refused(ByHand);
    }

    private Added WithoutKey()
    {
        var (key, value) = map.Pairs.First(pair => pair.Key.Text == list);
        var from = LineStart(yaml, key.Start);
        var changed = map.IsInBraces ? yaml : yaml.Remove(from, LineEnd(yaml, Math.Max(key.End, value.End)) - from);
        var isKept = Addition.Read(yaml) is MapNode old && Addition.Read(changed) is MapNode read
            && AreSame([.. old.Pairs.Where(pair => pair.Key.Text != list).Select(pair => pair.Value)], [.. read.Pairs.Select(pair => pair.Value)]);
        return isKept ? Changed(changed) : Added.Refused(ByHand);
    }

    private Added Changed(string changed) => Added.As(text[..start] + changed + text[(start + yaml.Length)..]);

    private static IReadOnlyList<Node> NodesOf(Node value) => value is ListNode several ? several.Nodes : [value];

    private static bool AreSame(IReadOnlyList<Node> some, IReadOnlyList<Node> others) => some.Count == others.Count && some.Zip(others).All(pair => Addition.Same(pair.First, pair.Second));

    private static Splice OutOfBrackets(SourceList list, int index) => index == 0
        ? new Splice(list.Nodes[0].Start, list.Nodes[1].Start - list.Nodes[0].Start, "")
        : new Splice(list.Nodes[index - 1].End, list.Nodes[index].End - list.Nodes[index - 1].End, "");

    private static Splice OutOfLines(string yaml, SourceList list, int index)
    {
        var (start, end) = (LineStart(yaml, list.Nodes[index].Start), LineEnd(yaml, list.Nodes[index].End));
        return new Splice(start, end - start, "");
    }

    private static Splice Without(string yaml, SourceMap map, string key)
    {
        var at = map.Pairs.Index().First(pair => pair.Item.Key.Text == key).Index;
        var (name, value) = map.Pairs[at];
        var end = Math.Max(name.End, value.End);
        if (!map.IsInBraces)
        {
            var start = at == 0 ? name.Start : LineStart(yaml, name.Start);
            return at == 0 ? new Splice(start, map.Pairs[1].Key.Start - start, "") : new Splice(start, LineEnd(yaml, end) - start, "");
        }

        var before = at == 0 ? 0 : Math.Max(map.Pairs[at - 1].Key.End, map.Pairs[at - 1].Value.End);
        return at == 0 ? new Splice(name.Start, map.Pairs[1].Key.Start - name.Start, "") : new Splice(before, end - before, "");
    }

    private static int LineStart(string yaml, int place) => place == 0 ? 0 : yaml.LastIndexOf('\n', place - 1) + 1;

    private static int LineEnd(string yaml, int place) => place > 0 && yaml[place - 1] == '\n' ? place : yaml.IndexOf('\n', place) is >= 0 and var found ? found + 1 : yaml.Length;

    private static MapNode WithKey(MapNode map, string key, string? value)
    {
        var node = value is null ? null : ((MapNode)Addition.Read($"{{{key}: {value}}}")!).Pairs[0].Value;
        return map with { Pairs = [.. map.Pairs.Where(pair => pair.Key.Text != key || node is not null).Select(pair => pair.Key.Text == key ? new(pair.Key, node!) : pair)] };
    }
}
