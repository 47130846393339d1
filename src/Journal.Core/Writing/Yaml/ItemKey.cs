using System.Buffers;

namespace Journal.Core.Writing.Yaml;

/// <summary>Puts a key into an item of a list, of which everything stays that stands there.</summary>
internal static class ItemKey
{
    private static readonly SearchValues<char> NotInBraces = SearchValues.Create(",[]{}#");

    /// <summary>What is to be put in; null where the item is written in a way that takes no key.</summary>
    /// <param name="yaml">The YAML.</param>
    /// <param name="item">The item: a map, or a single value that is the same as a map with one key.</param>
    /// <param name="single">The key that a single value stands for, such as <c>file</c> of a picture.</param>
    /// <param name="key">The key to put in, which the item has not.</param>
    /// <param name="value">Its value, fit to stand in braces.</param>
    public static IReadOnlyList<Splice>? Put(string yaml, SourceNode item, string single, string key, string value) => item switch
    {
        SourceText { IsPlain: true } text when text.Text.AsSpan().ContainsAny(NotInBraces) || text.Text.Contains(": ", StringComparison.Ordinal) => null,
        SourceText text => [Splice.At(text.Start, $"{{{single}: "), Splice.At(text.End, $", {key}: {value}}}")],
        SourceMap { IsInBraces: true, Pairs.Count: > 0 } map => [Splice.At(map.Pairs[^1].Value is { } last && last.End > last.Start ? last.End : map.Pairs[^1].Key.End, $", {key}: {value}")],
        SourceMap { IsInBraces: false } map => [BelowLine(yaml, EndOfFirst(map), Column(yaml, map.Start), $"{key}: {value}")],
        _ => null,
    };

    /// <summary>A line put in below the one that a place stands on.</summary>
    public static Splice BelowLine(string yaml, int place, int column, string line)
    {
        var next = yaml.IndexOf('\n', place);
        var lineEnd = next > 0 && yaml[next - 1] == '\r' ? "\r\n" : "\n";
        var indented = new string(' ', column) + line;
        return next < 0 ? Splice.At(yaml.Length, $"{(yaml.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n")}{indented}") : Splice.At(next + 1, indented + lineEnd);
    }

    /// <summary>How far a place stands from the start of its line.</summary>
    public static int Column(string yaml, int place) => place - (place == 0 ? 0 : yaml.LastIndexOf('\n', place - 1) + 1);

    // Below the first key, whose value may take lines of its own.
    private static int EndOfFirst(SourceMap map) => map.Pairs[0].Value.End > map.Pairs[0].Key.End ? map.Pairs[0].Value.End : map.Pairs[0].Key.End;
}
