namespace Journal.Core.Wording;

/// <summary>The first letter of a text, as its place in a sentence wants it.</summary>
public static class Casing
{
    /// <summary>A title within a sentence: the first letter small, unless the second is a capital too (<c>PTFE bush</c>).</summary>
    public static string Lower(string title) =>
        title.Length == 0 || (title.Length > 1 && char.IsUpper(title[1])) ? title : char.ToLowerInvariant(title[0]) + title[1..];

    /// <summary>The first letter as a capital.</summary>
    public static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
