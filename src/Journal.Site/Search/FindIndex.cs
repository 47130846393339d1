using System.Collections.Concurrent;
using System.Text;
using System.Text.Json;

namespace Journal.Site.Search;

/// <summary>
/// What the search in the browser loads, as classic scripts, because pages opened from the file system can neither
/// fetch nor load modules: one index of all words, and the texts for the words in context in pieces.
/// </summary>
internal sealed class FindIndex
{
    /// <summary>The index, from the root of the site; the pieces of text lie beside it.</summary>
    public const string Address = "find/index.js";

    /// <summary>Where there are at least so many things, a word that more than half of them hold is left out: it tells nothing.</summary>
    private const int EnoughToTell = 40;

    private readonly IReadOnlyList<Findable> things;
    private readonly ConcurrentDictionary<FindPiece, string> stamps = new();

    private FindIndex(IReadOnlyList<Findable> things) => (this.things, Pieces) = (things, [.. FindPiece.Cut(things)]);

    /// <summary>The pieces that the texts lie in.</summary>
    public IReadOnlyList<FindPiece> Pieces { get; }

    /// <summary>The index of what a search can find.</summary>
    public static FindIndex Of(IReadOnlyList<Findable> things) => new(things);

    /// <summary>The script of the texts of a piece.</summary>
    public ReadOnlySpan<byte> TextsOf(FindPiece piece) => FindScript.Write("journalFind.texts", json =>
    {
        json.WriteStartObject();
        json.WriteString("piece", piece.Name);
        json.WriteString("stamp", StampOf(piece));
        WriteStrings(json, "texts", In(piece));
        json.WriteEndObject();
    });

    /// <summary>The script of the index.</summary>
    public ReadOnlySpan<byte> Script()
    {
        // Titles and what stands beside them are in the index as they are, so their words need no postings.
        var words = HeldWords.Of(things.Select(thing => thing.Text));
        bool IsCommon(List<int> holders) => things.Count >= EnoughToTell && holders.Count * 2 > things.Count;
        var telling = words.Where(word => !IsCommon(word.Holders)).ToList();
        var postings = new Postings(things.Count);
        telling.ForEach(word => postings.Add(word.Holders));
        return FindScript.Write("journalFind.open", json =>
        {
            json.WriteStartObject();
            json.WriteString("accented", SearchTokens.Accented);
            json.WriteString("plain", SearchTokens.Plain);
            json.WriteString("kinds", string.Concat(things.Select(thing => (int)thing.Kind)));
            WriteStrings(json, "titles", things.Select(thing => thing.Title));
            WriteStrings(json, "addresses", things.Select(thing => thing.Address));
            WriteStrings(json, "abouts", things.Select(thing => thing.About));
            json.WriteStartArray("pieces");
            foreach (var piece in Pieces)
            {
                json.WriteStartArray();
                json.WriteStringValue(piece.Name);
                json.WriteNumberValue(piece.Count);
                json.WriteStringValue(StampOf(piece));
                json.WriteEndArray();
            }

            json.WriteEndArray();
            json.WriteString("common", string.Join(' ', words.Where(word => IsCommon(word.Holders)).Select(word => word.Word)));
            json.WriteString("words", FrontCoded(telling.Select(word => word.Word)));
            json.WriteString("postings", postings.ToString());
            json.WriteEndObject();
        });
    }

    private IReadOnlyList<string> In(FindPiece piece) => [.. Enumerable.Range(piece.First, piece.Count).Select(at => things[at].Text)];

    private string StampOf(FindPiece piece) => stamps.GetOrAdd(piece, one => FindPiece.StampOf(In(one)));

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
