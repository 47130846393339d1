using Journal.Core.Model;
using YamlDotNet.RepresentationModel;

namespace Journal.Core.Trade;

/// <summary>The vocabulary that the program carries: <c>shared/vocabulary.yaml</c>.</summary>
internal static class VocabularyLoader
{
    private static readonly Lazy<Vocabulary> Loaded = new(() => From(SharedData.Load("vocabulary.yaml")));

    /// <summary>The words that every journal knows.</summary>
    public static Vocabulary Shared => Loaded.Value;

    private static Vocabulary From(YamlNode lists) => new()
    {
        Operations = List<Operation>(lists.Get("operations"), (id, title, kind) => new Operation(id, title, kind)),
        Causes = List<Cause>(lists.Get("causes"), (id, title, _) => new Cause(id, title)),
        Materials = List<MaterialFamily>(lists.Get("materials"), (id, title, _) => new MaterialFamily(id, title)),
        StockForms = List<StockForm>(lists.Get("stock-forms"), (id, title, _) => new StockForm(id, title)),
        ToolKinds = List<ToolKind>(lists.Get("tool-kinds"), (id, title, _) => new ToolKind(id, title)),
    };

    private static WordList<T> List<T>(YamlNode list, Func<Id<T>, string, TimeKind, T> create)
        where T : class => WordList<T>.Of(list.Items().Select(word =>
        {
            var id = word.Get("id").Text();
            var title = word.Find("title")?.Text() ?? Titles.FromId(id);
            var kind = word.Find("kind") is { } named && EnumNames.TryFind<TimeKind>(named.Text(), out var found) ? found : TimeKind.Shop;
            IReadOnlyList<string> aliases = word.Find("also") is { } also ? [.. also.Items().Select(spelling => spelling.Text())] : [];
            return (new Id<T>(id), create(new Id<T>(id), title, kind), aliases);
        }));
}
