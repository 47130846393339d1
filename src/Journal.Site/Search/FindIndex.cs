using System.Text;
using System.Text.Json;

namespace Journal.Site.Search;

/// <summary>
/// What the search in the browser loads, as classic scripts, because pages opened from the file system can neither
/// fetch nor load modules: one index of all words, and the texts for the words in context in pieces.
/// </summary>
internal sealed class FindIndex
{
    public const string Address = "find/index.js";

    /// <summary>From so many things on, a word that more than half of them hold tells nothing.</summary>
    private const int EnoughToTell = 40;

    private readonly IReadOnlyList<Findable> things;
    private readonly IReadOnlyList<FindPiece> pieces;

    private FindIndex(IReadOnlyList<Findable> things, IReadOnlyList<FindPiece> pieces) => (this.things, this.pieces) = (things, pieces);

    /// <summary>The index of some things.</summary>
    /// <param name="things">What a search can find.</param>
    /// <param name="write">Is given the script of each piece that their texts lie in.</param>
    public static FindIndex Of(IReadOnlyList<Findable> things, TakeScript write)
    {
        var script = new FindScript();
        return new FindIndex(things, [.. FindPiece.Cut(things).Select(piece => WriteTexts(piece, [.. Enumerable.Range(piece.First, piece.Count).Select(at => things[at].Text)], script, write))]);
    }

    private static FindPiece WriteTexts(FindPiece cut, IReadOnlyList<string> texts, FindScript script, TakeScript write)
    {
        var piece = cut with { Stamp = FindPiece.StampOf(texts) };
        write(piece.Address, script.Write("journalFind.texts", json =>
        {
            json.WriteStartObject();
            json.WriteString("piece", piece.Name);
            json.WriteString("stamp", piece.Stamp);
            WriteStrings(json, "texts", texts);
            json.WriteEndObject();
        }));
        return piece;
    }

    /// <summary>The script of the index.</summary>
    public byte[] Script()
    {
        // Titles and what stands beside them are in the index as they are, so their words need no postings.
        var words = HeldWords.Of(things.Select(thing => thing.Text));
        bool IsCommon(List<int> holders) => things.Count >= EnoughToTell && holders.Count * 2 > things.Count;
        var telling = words.Where(word => !IsCommon(word.Holders)).ToList();
        var postings = new Postings(things.Count);
        telling.ForEach(word => postings.Add(word.Holders));
        return new FindScript().Write("journalFind.open", json =>
        {
            json.WriteStartObject();
            json.WriteString("accented", FoldedWords.Accented);
            json.WriteString("plain", FoldedWords.Plain);
            json.WriteString("kinds", string.Concat(things.Select(thing => (int)thing.Kind)));
            WriteStrings(json, "titles", things.Select(thing => thing.Title));
            WriteStrings(json, "addresses", things.Select(thing => thing.Address));
            WriteStrings(json, "abouts", things.Select(thing => thing.About));
            json.WriteStartArray("pieces");
            foreach (var piece in pieces)
            {
                json.WriteStartArray();
                json.WriteStringValue(piece.Name);
                json.WriteNumberValue(piece.Count);
                json.WriteStringValue(piece.Stamp);
                json.WriteEndArray();
            }

            json.WriteEndArray();
            json.WriteString("common", string.Join(' ', words.Where(word => IsCommon(word.Holders)).Select(word => word.Word)));
            json.WriteString("words", FrontCoded(telling.Select(word => word.Word)));
            json.WriteString("postings", postings.ToString());
            json.WriteEndObject();
        }).ToArray();
    }

    // Sorted words share their beginnings with the word before: its length as one digit, then the rest.
    private static string FrontCoded(IEnumerable<string> sorted)
    {
        const int Most = 35;
        const string Digits = "0123456789abcdefghijklmnopqrstuvwxyz";
        var text = new StringBuilder();
        var before = "";
        foreach (var word in sorted)
        {
            var shared = Math.Min(Most, before.AsSpan().CommonPrefixLength(word));
            text.Append(text.Length == 0 ? "" : " ").Append(Digits[shared]).Append(word.AsSpan(shared));
            before = word;
        }

        return text.ToString();
    }

    private static void WriteStrings(Utf8JsonWriter json, string name, IEnumerable<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts)
        {
            json.WriteStringValue(text);
        }

        json.WriteEndArray();
    }
}
