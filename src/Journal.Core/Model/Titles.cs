namespace Journal.Core.Model;

/// <summary>Titles for what the maker gave none.</summary>
public static class Titles
{
    /// <summary>The words of an id with a capital first: <c>gib-screw</c> reads “Gib screw”.</summary>
    public static string FromId(string id)
    {
        var words = id.Replace('-', ' ');
        return words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];
    }
}
