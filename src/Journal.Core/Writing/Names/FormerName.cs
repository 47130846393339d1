using Journal.Core.Writing.Yaml;

namespace Journal.Core.Writing.Names;

/// <summary>Writes under <c>formerly</c> what a thing was called, so that pages at its old addresses lead to the new ones.</summary>
internal static class FormerName
{
    private const string Key = "formerly";

    /// <summary>What is to be put into the file; null where the thing is written in a way that takes no key.</summary>
    /// <param name="yaml">The YAML.</param>
    /// <param name="thing">The thing: its keys, or its id alone.</param>
    /// <param name="names">The names that it had.</param>
    public static IReadOnlyList<Splice>? Put(string yaml, SourceNode thing, IReadOnlyList<string> names) => (thing as SourceMap)?[Key] switch
    {
        null => ItemKey.Put(yaml, thing, "id", Key, YamlText.OneOrMore(names)!),
        SourceList { IsInBrackets: true, Nodes: [.., var last] } => [Splice.At(last.End, $", {string.Join(", ", names)}")],
        SourceList { IsInBrackets: false, Nodes: [.., var last] } list =>
            [.. names.Select(name => ItemKey.BelowLine(yaml, last.End, ItemKey.Column(yaml, list.Start), $"- {name}"))],
        SourceText { Text.Length: > 0 } only => [Splice.At(only.Start, "["), Splice.At(only.End, $", {string.Join(", ", names)}]")],
        _ => null,
    };
}
