using Journal.Core.Model;
using Journal.Core.Reading.Problems;
using Journal.Core.Reading.Yaml;
using Journal.Core.Trade;

namespace Journal.Core.Reading;

/// <summary>Reads the cautions that the program carries: <c>shared/cautions.yaml</c>.</summary>
public static class CautionReader
{
    private const string Resource = "shared/cautions.yaml";

    private static readonly Lazy<IReadOnlyList<Caution>> Read = new(Parse);

    private static readonly Lazy<CautionWords> ReadWords = new(() => new CautionWords(Shared));

    /// <summary>All cautions, what maims first.</summary>
    public static IReadOnlyList<Caution> Shared => Read.Value;

    /// <summary>The words that call for them.</summary>
    public static CautionWords SharedWords => ReadWords.Value;

    private static IReadOnlyList<Caution> Parse()
    {
        using var stream = typeof(CautionReader).Assembly.GetManifestResourceStream(Resource)!;
        using var reader = new StreamReader(stream);
        return [.. YamlReader.ReadList(reader.ReadToEnd(), Resource, new ProblemLog())!.Nodes.OfType<MapNode>().Select(Caution)];
    }

    private static Caution Caution(MapNode map)
    {
        var keys = map.Pairs.ToDictionary(pair => pair.Key.Text, pair => pair.Value);
        var source = ((MapNode)keys["source"]).Pairs.ToDictionary(pair => pair.Key.Text, pair => pair.Value);
        return new Caution
        {
            Id = Text(keys["id"]),
            Title = Text(keys["title"]),
            Happens = Text(keys["happens"]),
            Done = Text(keys["done"]),
            Source = Text(source["name"]),
            IsLookedUp = Text(source["checked"]) == "looked-up",
            Kind = Words.TryFind<CautionKind>(Text(keys["kind"]), out var kind) ? kind : CautionKind.Other,
            Operations = [.. Texts(keys, "operations").Select(id => new Id<Operation>(id))],
            Materials = [.. Texts(keys, "materials").Select(id => new Id<MaterialFamily>(id))],
            Words = [.. Texts(keys, "words")],
        };
    }

    private static IEnumerable<string> Texts(Dictionary<string, Node> keys, string key) => keys.TryGetValue(key, out var list) ? list.Items.Select(Text) : [];

    private static string Text(Node node) => ((TextNode)node).Text.Trim();
}
