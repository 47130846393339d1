using Journal.Core.Model;
using YamlDotNet.RepresentationModel;

namespace Journal.Core.Trade;

/// <summary>The cautions that the program carries: <c>shared/cautions.yaml</c>.</summary>
public static class CautionLoader
{
    private static readonly Lazy<IReadOnlyList<Caution>> Loaded = new(() => [.. SharedData.Load("cautions.yaml").Items().Select(From)]);

    private static readonly Lazy<CautionPhrases> LoadedWords = new(() => new CautionPhrases(Shared));

    /// <summary>All cautions, what maims first.</summary>
    public static IReadOnlyList<Caution> Shared => Loaded.Value;

    /// <summary>The words that call for them.</summary>
    public static CautionPhrases SharedWords => LoadedWords.Value;

    private static Caution From(YamlNode caution)
    {
        var source = caution.Get("source");
        return new Caution
        {
            Id = TextOf(caution, "id"),
            Title = TextOf(caution, "title"),
            Happens = TextOf(caution, "happens"),
            Done = TextOf(caution, "done"),
            Source = TextOf(source, "name"),
            IsLookedUp = TextOf(source, "checked") == "looked-up",
            Kind = EnumNames.TryFind<CautionKind>(TextOf(caution, "kind"), out var kind) ? kind : CautionKind.Other,
            Operations = [.. Texts(caution, "operations").Select(id => new Id<Operation>(id))],
            Materials = [.. Texts(caution, "materials").Select(id => new Id<MaterialFamily>(id))],
            Words = [.. Texts(caution, "words")],
        };
    }

    private static IEnumerable<string> Texts(YamlNode node, string key) => node.Find(key)?.Items().Select(item => item.Text().Trim()) ?? [];

    private static string TextOf(YamlNode node, string key) => node.Get(key).Text().Trim();
}
