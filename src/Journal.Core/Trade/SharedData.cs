using System.Globalization;
using YamlDotNet.RepresentationModel;

namespace Journal.Core.Trade;

/// <summary>
/// Our own reference data, built into the program from <c>shared/</c>. It is trusted and tested, so a mistake in it
/// throws; the maker's files are read elsewhere.
/// </summary>
internal static class SharedData
{
    /// <summary>The root of a file of <c>shared/</c>.</summary>
    public static YamlNode Load(string file)
    {
        using var stream = typeof(SharedData).Assembly.GetManifestResourceStream($"shared/{file}")
            ?? throw new InvalidOperationException($"shared/{file} is not built in.");
        using var reader = new StreamReader(stream);
        var yaml = new YamlStream();
        yaml.Load(reader);
        return yaml.Documents[0].RootNode;
    }

    /// <summary>The value of a key that must be there.</summary>
    public static YamlNode Get(this YamlNode node, string key) => node[key];

    /// <summary>The value of a key; null where it is left out.</summary>
    public static YamlNode? Find(this YamlNode node, string key) =>
        ((YamlMappingNode)node).Children.TryGetValue(key, out var value) ? value : null;

    /// <summary>The items of a list.</summary>
    public static IEnumerable<YamlNode> Items(this YamlNode node) => (YamlSequenceNode)node;

    /// <summary>The keys and values of a mapping.</summary>
    public static IEnumerable<(string Key, YamlNode Value)> Pairs(this YamlNode node) =>
        ((YamlMappingNode)node).Children.Select(pair => (pair.Key.Text(), pair.Value));

    /// <summary>A scalar as text.</summary>
    public static string Text(this YamlNode node) => ((YamlScalarNode)node).Value ?? "";

    /// <summary>A scalar as a number; null for <c>~</c>.</summary>
    public static decimal? Number(this YamlNode node) =>
        node.Text() is "~" or "" ? null : decimal.Parse(node.Text(), CultureInfo.InvariantCulture);

    /// <summary>A list of whole numbers.</summary>
    public static IReadOnlyList<int> Integers(this YamlNode node) =>
        [.. node.Items().Select(item => int.Parse(item.Text(), CultureInfo.InvariantCulture))];

    /// <summary>A list of numbers, null for <c>~</c>.</summary>
    public static IReadOnlyList<decimal?> Numbers(this YamlNode node) => [.. node.Items().Select(item => item.Number())];
}
