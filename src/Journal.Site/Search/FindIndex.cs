using System.Security.Cryptography;
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

    /// <summary>Letters of text in a piece, about; a search shows words in context from a few pieces.</summary>
    private const int PieceLength = 24_000;

    /// <summary>From so many things on, a word that more than half of them hold tells nothing.</summary>
    private const int EnoughToTell = 40;

    private static readonly JsonWriterOptions Format = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private FindIndex(IReadOnlyList<(string Address, byte[] Script)> files) => Files = files;

    /// <summary>The scripts, by their address from the root of the site.</summary>
    public IReadOnlyList<(string Address, byte[] Script)> Files { get; }

    public static FindIndex Of(IReadOnlyList<Findable> things)
    {
        var pieces = PiecesOf(things);
        var stamp = StampOf(things);
        return new FindIndex([(Address, IndexScript(things, pieces, stamp)), .. pieces.Select((piece, i) => (TextAddress(i), TextScript(piece, i, stamp)))]);
    }

    public static string TextAddress(int piece) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"find/text-{piece}.js");

    private static byte[] IndexScript(IReadOnlyList<Findable> things, List<List<Findable>> pieces, string stamp)
    {
        var (holders, common) = WordsOf(things);
        var postings = new Postings(things.Count);
        foreach (var numbers in holders.Values)
        {
            postings.Add(numbers);
        }

        return Script("journalFind.open", json =>
        {
            json.WriteStartObject();
            json.WriteString("stamp", stamp);
            json.WriteString("accented", FoldedWords.Accented);
            json.WriteString("plain", FoldedWords.Plain);
            json.WriteString("kinds", string.Concat(things.Select(thing => (int)thing.Kind)));
            WriteStrings(json, "titles", things.Select(thing => thing.Title));
            WriteStrings(json, "addresses", things.Select(thing => thing.Address));
            WriteStrings(json, "abouts", things.Select(thing => thing.About));
            json.WriteStartArray("pieces");
            pieces.ForEach(piece => json.WriteNumberValue(piece.Count));
            json.WriteEndArray();
            json.WriteString("common", string.Join(' ', common));
            json.WriteString("words", FrontCoded(holders.Keys));
            json.WriteString("postings", postings.ToString());
            json.WriteEndObject();
        });
    }

    private static byte[] TextScript(List<Findable> piece, int number, string stamp) => Script("journalFind.texts", json =>
    {
        json.WriteStartObject();
        json.WriteString("stamp", stamp);
        json.WriteNumber("piece", number);
        WriteStrings(json, "texts", piece.Select(thing => thing.Text));
        json.WriteEndObject();
    });

    // Titles and what stands beside them are in the index as they are, so their words need no postings.
    private static (SortedDictionary<string, List<int>> Holders, List<string> Common) WordsOf(IReadOnlyList<Findable> things)
    {
        var holders = new SortedDictionary<string, List<int>>(StringComparer.Ordinal);
        for (var number = 0; number < things.Count; number++)
        {
            foreach (var word in FoldedWords.Of(things[number].Text).Distinct(StringComparer.Ordinal))
            {
                if (!holders.TryGetValue(word, out var numbers))
                {
                    holders.Add(word, numbers = []);
                }

                numbers.Add(number);
            }
        }

        var common = holders.Where(word => things.Count >= EnoughToTell && word.Value.Count * 2 > things.Count).Select(word => word.Key).ToList();
        common.ForEach(word => holders.Remove(word));
        return (holders, common);
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

    private static List<List<Findable>> PiecesOf(IReadOnlyList<Findable> things)
    {
        var pieces = new List<List<Findable>>();
        var room = 0;
        foreach (var thing in things)
        {
            if (room <= 0)
            {
                pieces.Add([]);
                room = PieceLength;
            }

            pieces[^1].Add(thing);
            room -= thing.Text.Length;
        }

        return pieces;
    }

    // A browser may hold an index and texts of two different publishes; the stamp keeps them apart.
    private static string StampOf(IReadOnlyList<Findable> things)
    {
        var all = string.Join('\n', things.Select(thing => $"{thing.Address}\t{thing.Title}\t{thing.About}\t{thing.Text}"));
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(all)))[..12];
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
