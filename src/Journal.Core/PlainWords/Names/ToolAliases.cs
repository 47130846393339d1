using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Names;

/// <summary>What makers say for tools and parts whose titles are longer; the words stand in <c>shared/plain-words.yaml</c>.</summary>
internal static class ToolAliases
{
    /// <summary>What makers say for parts (common practice).</summary>
    private static readonly (string In, string[] Said)[] OfParts =
    [
        ("connecting-rod", ["con rod", "conrod"]),
        ("bedplate", ["bed plate"]),
        ("crankshaft", ["crankpin", "crank pin", "crank web", "crank journal"]),
    ];

    public static IEnumerable<string> Of(NameKind kind, string id, string title) => kind == NameKind.Part
        ? OfParts.Where(alias => id == alias.In).SelectMany(alias => alias.Said)
        : OfTools(id, title);

    private static IEnumerable<string> OfTools(string id, string title)
    {
        var words = $" {title.Replace('-', ' ')} | {id.Replace('-', ' ')} ";
        return Lexicon.Shared.ToolNames.Where(names => words.Contains(names.In.Replace('-', ' '), StringComparison.OrdinalIgnoreCase)).SelectMany(names => names.Said)
            .Concat(id == "mill" ? ["mill", "milling machine", "miller"] : []);
    }
}
