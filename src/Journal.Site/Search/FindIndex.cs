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

    private readonly List<FindRow> rows;
    private readonly HeldWords words;

    /// <summary>An index as it was made before.</summary>
    public FindIndex(IEnumerable<FindRow> rows, IReadOnlyList<FindPiece> pieces, HeldWords words) => (this.rows, Pieces, this.words) = ([.. rows], pieces, words);

    /// <summary>The things, by number.</summary>
    public IReadOnlyList<FindRow> Rows => rows;

    /// <summary>The pieces that the texts lie in.</summary>
    public IReadOnlyList<FindPiece> Pieces { get; private set; }

    /// <summary>The words of the texts.</summary>
    public HeldWords Words => words;

    /// <summary>The index of some things.</summary>
    /// <param name="things">What a search can find.</param>
    /// <param name="write">Is given the script of each piece that their texts lie in.</param>
    public static FindIndex Of(IReadOnlyList<Findable> things, TakeScript write)
    {
        var script = new FindScript();
        List<FindRow> rows = [.. things.Select(thing => new FindRow(thing.Kind, thing.Title, thing.Address, thing.About, thing.Text.Length, thing.OwnWords))];
        var pieces = FindPiece.Cut(rows).Select(piece => WriteTexts(piece, [.. Enumerable.Range(piece.First, piece.Count).Select(at => things[at].Text)], script, write)).ToList();
        return new FindIndex(rows, pieces, HeldWords.Of(things.Select(thing => thing.Text)));
    }

    /// <summary>Takes other words for those of an entry's text.</summary>
    /// <param name="changed">The entries' addresses and the new words, on one line.</param>
    /// <param name="textsOf">The texts of a piece as they were, by its name.</param>
    /// <param name="write">Is given the script of each piece that is other than before.</param>
    /// <returns>The addresses of pieces that are no more.</returns>
    public IReadOnlyList<string> WithWords(IReadOnlyDictionary<string, string> changed, Func<string, IReadOnlyList<string>> textsOf, TakeScript write)
    {
        var (before, known) = (Pieces, new Dictionary<int, string>());
        string TextBefore(int number)
        {
            var piece = before.Last(one => one.First <= number);
            foreach (var (at, text) in textsOf(piece.Name).Index())
            {
                known.TryAdd(piece.First + at, text);
            }

            return known[number];
        }

        var touched = new HashSet<int>();
        foreach (var number in Enumerable.Range(0, rows.Count).Where(at => changed.ContainsKey(rows[at].Address)))
        {
            var old = TextBefore(number);
            var (text, ownWords) = Findable.TextOf(changed[rows[number].Address], old[rows[number].OwnWords..]);
            words.Replace(number, old, text);
            rows[number] = rows[number] with { Length = text.Length, OwnWords = ownWords };
            known[number] = text;
            touched.Add(number);
        }

        var same = before.ToDictionary(piece => (piece.First, piece.Count));
        var (pieces, script) = (new List<FindPiece>(), new FindScript());
        foreach (var cut in FindPiece.Cut(rows))
        {
            var numbers = Enumerable.Range(cut.First, cut.Count);
            pieces.Add(same.TryGetValue((cut.First, cut.Count), out var old) && !numbers.Any(touched.Contains)
                ? old
                : WriteTexts(cut, [.. numbers.Select(number => known.TryGetValue(number, out var text) ? text : TextBefore(number))], script, write));
        }

        Pieces = pieces;
        return [.. before.Select(piece => piece.Address).Except(pieces.Select(piece => piece.Address))];
    }

    /// <summary>The texts of a piece, from its script.</summary>
    public static IReadOnlyList<string> TextsIn(ReadOnlyMemory<byte> script)
    {
        var (start, end) = (script.Span.IndexOf((byte)'{'), script.Span.LastIndexOf((byte)'}'));
        using var json = JsonDocument.Parse(script[start..(end + 1)]);
        return [.. json.RootElement.GetProperty("texts").EnumerateArray().Select(text => text.GetString()!)];
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
        var inOrder = words.InOrder;
        bool IsCommon(List<int> holders) => rows.Count >= EnoughToTell && holders.Count * 2 > rows.Count;
        var telling = inOrder.Where(word => !IsCommon(word.Holders)).ToList();
        var postings = new Postings(rows.Count);
        telling.ForEach(word => postings.Add(word.Holders));
        return new FindScript().Write("journalFind.open", json =>
        {
            json.WriteStartObject();
            json.WriteString("accented", SearchTokens.Accented);
            json.WriteString("plain", SearchTokens.Plain);
            json.WriteString("kinds", string.Concat(rows.Select(row => (int)row.Kind)));
            WriteStrings(json, "titles", rows.Select(row => row.Title));
            WriteStrings(json, "addresses", rows.Select(row => row.Address));
            WriteStrings(json, "abouts", rows.Select(row => row.About));
            json.WriteStartArray("pieces");
            foreach (var piece in Pieces)
            {
                json.WriteStartArray();
                json.WriteStringValue(piece.Name);
                json.WriteNumberValue(piece.Count);
                json.WriteStringValue(piece.Stamp);
                json.WriteEndArray();
            }

            json.WriteEndArray();
            json.WriteString("common", string.Join(' ', inOrder.Where(word => IsCommon(word.Holders)).Select(word => word.Word)));
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
