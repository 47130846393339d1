namespace Journal.Core.PlainWords.Names;

/// <summary>What a name names.</summary>
internal enum NameKind
{
    Part,
    Tool,
}

/// <summary>A name that the journal knows.</summary>
/// <param name="Kind">A part or a tool.</param>
/// <param name="Ids">The one thing it names, or several that share a last word: “standard”.</param>
/// <param name="IsShort">Whether only the last word was said.</param>
internal sealed record Name(NameKind Kind, IReadOnlyList<string> Ids, bool IsShort);

/// <summary>A name in the account.</summary>
internal sealed record NameMention(Name Name, int First, int Next, bool IsPlural)
{
    public bool IsPart => Name.Kind == NameKind.Part;
}
