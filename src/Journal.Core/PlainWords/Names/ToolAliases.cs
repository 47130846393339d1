namespace Journal.Core.PlainWords.Names;

/// <summary>What makers say for tools whose titles are longer (common practice).</summary>
internal static class ToolAliases
{
    private static readonly (string In, string[] Said)[] All =
    [
        ("micrometer", ["mic", "mike", "micrometer"]),
        ("caliper", ["caliper", "vernier", "verniers", "calliper", "digital caliper"]),
        ("dial indicator", ["dial gauge", "dti", "dial test indicator", "dial indicator", "clock gauge"]),
        ("dial test indicator", ["dial gauge", "dti", "dial indicator"]),
        ("dial-indicator", ["dial gauge", "dti", "dial test indicator"]),
        ("fixed steady", ["steady", "fixed steady"]),
        ("face plate", ["faceplate", "face plate"]),
        ("v-block", ["v block", "vee block"]),
        ("vee-block", ["v block", "vee block"]),
        ("three-jaw", ["three jaw", "three jaw chuck"]),
        ("four-jaw", ["four jaw", "four jaw chuck"]),
        ("milling vice", ["machine vice", "mill vice", "milling vice"]),
        ("mill-vice", ["machine vice", "mill vice", "milling vice"]),
        ("machine vice", ["machine vice", "mill vice", "milling vice"]),
        ("milling machine", ["mill", "milling machine", "miller"]),
        ("mill", ["milling machine", "miller"]),
        ("telescop", ["telescopic gauge", "telescoping gauge"]),
        ("tailstock chuck", ["tailstock chuck"]),
        ("silver solder", ["silver soldering torch"]),
        ("reamer", ["reamer"]),
        ("rotary table", ["rotary table"]),
        ("dividing head", ["dividing head"]),
        ("height gauge", ["height gauge"]),
        ("surface plate", ["surface plate"]),
        ("boring head", ["boring head"]),
        ("boring bar", ["boring bar"]),
    ];

    /// <summary>What makers say for parts (common practice).</summary>
    private static readonly (string In, string[] Said)[] OfParts =
    [
        ("connecting-rod", ["con rod", "conrod"]),
        ("bedplate", ["bed plate"]),
    ];

    public static IEnumerable<string> Of(NameKind kind, string id, string title) => kind == NameKind.Part
        ? OfParts.Where(alias => id == alias.In).SelectMany(alias => alias.Said)
        : OfTools(id, title);

    private static IEnumerable<string> OfTools(string id, string title) =>
        All.Where(alias => title.Contains(alias.In, StringComparison.OrdinalIgnoreCase) || id.Contains(alias.In, StringComparison.Ordinal) || id.Contains(alias.In.Replace(' ', '-'), StringComparison.Ordinal))
            .Where(alias => alias.In != "mill" || id == "mill").SelectMany(alias => alias.Said);
}
