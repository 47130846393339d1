using System.Text;
using System.Text.Encodings.Web;
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

    private static readonly JsonWriterOptions Format = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private FindIndex(IReadOnlyList<(string Address, byte[] Script)> files) => Files = files;

    /// <summary>The scripts, by their address from the root of the site.</summary>
    public IReadOnlyList<(string Address, byte[] Script)> Files { get; }

    public static FindIndex Of(IReadOnlyList<Findable> things)
    {
        var pieces = FindPiece.Of(things);
        var scripts = pieces.Select(piece => (Address: piece.ScriptAddress, Script: TextScript(piece))).ToList();
        return new FindIndex([(Address, IndexScript(things, pieces)), .. scripts]);
    }

    private static byte[] IndexScript(IReadOnlyList<Findable> things, IReadOnlyList<FindPiece> pieces)
    {
        var words = HeldWords.Of(things.Select(thing => thing.Text), EnoughToTell);
        var postings = new Postings(things.Count);
        foreach (var numbers in words.Holders)
        {
            postings.Add(numbers);
        }

        return Script("journalFind.open", json =>
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
                json.WriteNumberValue(piece.Things.Count);
                json.WriteStringValue(piece.Stamp);
                json.WriteEndArray();
            }

            json.WriteEndArray();
            json.WriteString("common", string.Join(' ', words.Common));
            json.WriteString("words", FrontCoded(words.Words));
            json.WriteString("postings", postings.ToString());
            json.WriteEndObject();
        });
    }

    private static byte[] TextScript(FindPiece piece) => Script("journalFind.texts", json =>
    {
        json.WriteStartObject();
        json.WriteString("piece", piece.Name);
        json.WriteString("stamp", piece.Stamp);
        WriteStrings(json, "texts", piece.Things.Select(thing => thing.Text));
        json.WriteEndObject();
    });

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

    private static byte[] Script(string call, Action<Utf8JsonWriter> write)
    {
        using var bytes = new MemoryStream();
        bytes.Write(Encoding.UTF8.GetBytes(call + "("));
        using (var json = new Utf8JsonWriter(bytes, Format))
        {
            write(json);
        }

        bytes.Write(");\n"u8);
        return bytes.ToArray();
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
