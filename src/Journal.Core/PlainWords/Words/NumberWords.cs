using System.Globalization;
using Journal.Core.Trade;
using YamlDotNet.RepresentationModel;

namespace Journal.Core.PlainWords.Words;

/// <summary>The words for numbers.</summary>
internal sealed class NumberWords(YamlNode node)
{
    public IReadOnlyDictionary<string, int> Ones { get; } = Map(node.Get("ones"));

    public IReadOnlyDictionary<string, int> Teens { get; } = Map(node.Get("teens"));

    public IReadOnlyDictionary<string, int> Tens { get; } = Map(node.Get("tens"));

    public IReadOnlyDictionary<string, int> Scales { get; } = Map(node.Get("scales"));

    /// <summary>Denominators: half is 2.</summary>
    public IReadOnlyDictionary<string, int> Fractions { get; } = Map(node.Get("fractions"));

    public IEnumerable<string> Words => Ones.Keys.Concat(Teens.Keys).Concat(Tens.Keys).Concat(Scales.Keys).Concat(Fractions.Keys);

    private static Dictionary<string, int> Map(YamlNode node) =>
        node.Pairs().ToDictionary(pair => pair.Key, pair => int.Parse(pair.Value.Text(), CultureInfo.InvariantCulture), StringComparer.Ordinal);
}
