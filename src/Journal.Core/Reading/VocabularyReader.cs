using Journal.Core.Model;
using Journal.Core.Reading.Problems;
using Journal.Core.Reading.Yaml;
using Journal.Core.Trade;

namespace Journal.Core.Reading;

/// <summary>Reads the vocabulary that the program carries: <c>shared/vocabulary.yaml</c>.</summary>
internal static class VocabularyReader
{
    private const string Resource = "shared/vocabulary.yaml";

    private static readonly Lazy<Vocabulary> Read = new(() => Parse(Embedded()));

    /// <summary>The words that every journal knows.</summary>
    public static Vocabulary Shared => Read.Value;

    private static string Embedded()
    {
        using var stream = typeof(VocabularyReader).Assembly.GetManifestResourceStream(Resource)!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    private static Vocabulary Parse(string text)
    {
        var lists = YamlReader.Read(text, Resource, 1, new ProblemLog())!.Pairs.ToDictionary(pair => pair.Key.Text, pair => pair.Value);
        return new Vocabulary
        {
            Operations = List<Operation>(lists["operations"], (id, title, kind) => new Operation(id, title, kind)),
            Causes = List<Cause>(lists["causes"], (id, title, _) => new Cause(id, title)),
            Materials = List<MaterialFamily>(lists["materials"], (id, title, _) => new MaterialFamily(id, title)),
            StockForms = List<StockForm>(lists["stock-forms"], (id, title, _) => new StockForm(id, title)),
            ToolKinds = List<ToolKind>(lists["tool-kinds"], (id, title, _) => new ToolKind(id, title)),
        };
    }

    private static WordList<T> List<T>(Node list, Func<Id<T>, string, TimeKind, T> create)
        where T : class => WordList<T>.Of(list.Items.OfType<MapNode>().Select(map =>
        {
            var keys = map.Pairs.ToDictionary(pair => pair.Key.Text, pair => pair.Value);
            var id = TextOf(keys["id"]);
            var title = keys.TryGetValue("title", out var given) ? TextOf(given) : Titles.FromId(id);
            var kind = keys.TryGetValue("kind", out var word) && Words.TryFind<TimeKind>(TextOf(word), out var found) ? found : TimeKind.Shop;
            IReadOnlyList<string> aliases = keys.TryGetValue("also", out var also) ? [.. also.Items.Select(TextOf)] : [];
            return (new Id<T>(id), create(new Id<T>(id), title, kind), aliases);
        }));

    private static string TextOf(Node node) => ((TextNode)node).Text;
}
