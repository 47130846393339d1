using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using Journal.Core.Model;
using Journal.Core.Parsing.Files;
using Journal.Core.Parsing.Problems;
using Journal.Core.Parsing.Values;
using Journal.Core.Parsing.Yaml;

namespace Journal.Core.Parsing.KeyReaders;

/// <summary>
/// The keys of one map, read by name. Keys that are not known or stand twice are reported at once; a key with nothing
/// behind it counts as left out; a value of the wrong form is reported and counts as left out too.
/// </summary>
internal sealed class Fields
{
    private readonly FileScope scope;
    private readonly Dictionary<string, (TextNode Key, Node Value)> values = new(StringComparer.Ordinal);

    /// <summary>The keys of a map; one that is not known, or is there twice, is reported.</summary>
    public Fields(MapNode map, FileScope scope, params string[] known)
    {
        this.scope = scope;
        Place = map.Place;
        foreach (var (key, value) in map.Pairs)
        {
            if (!known.Contains(key.Text))
            {
                scope.Log.AddUnknown(ProblemTable.UnknownKey, key.Place, key.Text, known, "keys");
            }
            else if (!values.TryAdd(key.Text, (key, value)))
            {
                scope.Log.Add(ProblemTable.DuplicateKey, key.Place, key.Text, values[key.Text].Key.Place.Line);
            }
        }
    }

    /// <summary>Where the map starts.</summary>
    public Place Place { get; }

    /// <summary>The value of a key, unless left out or blank.</summary>
    public Node? this[string key] => values.TryGetValue(key, out var found) && !found.Value.IsBlank ? found.Value : null;

    /// <summary>Whether a key is there with a value.</summary>
    public bool Has(string key) => this[key] is not null;

    /// <summary>Where a key is written; where the map starts if it is not there.</summary>
    public Place PlaceOfKey(string key) => values.TryGetValue(key, out var found) ? found.Key.Place : Place;

    /// <summary>The items of a list; a single value counts as a list of one, a missing key as none.</summary>
    public IReadOnlyList<Node> Items(string key) => this[key]?.Items ?? [];

    /// <summary>A key that must be there; its absence is reported with an example.</summary>
    public bool Wants(string key, string remedy)
    {
        if (!Has(key))
        {
            scope.Log.Add(ProblemTable.Missing, Place, key, remedy);
        }

        return Has(key);
    }

    /// <summary>A text on one line; null where the key is missing or its value is reported as no text.</summary>
    public string? Text(string key) => this[key] is { } node ? TextOf(node, key) : null;

    /// <summary>The same of a value that is at hand.</summary>
    public string? TextOf(Node node, string key)
    {
        if (node is TextNode text)
        {
            return text.Text.Trim();
        }

        scope.Log.Add(ProblemTable.NotText, node.Place, key);
        return null;
    }

    /// <summary>A text that has the form of an id.</summary>
    public bool TryId(Node node, string key, [NotNullWhen(true)] out string? id)
    {
        id = TextOf(node, key);
        if (id is null)
        {
            return false;
        }

        if (!Id<object>.HasRightForm(id))
        {
            scope.Log.Add(ProblemTable.NotAnId, node.Place, id, Slug.Of(id));
            return false;
        }

        return true;
    }

    /// <summary>
    /// The id of something defined here, which will be part of an address. One that has not the form of an id is
    /// reported and mended by us, so that what points to the thing is not reported as well.
    /// </summary>
    public string? NewId(Node node, string key)
    {
        if (TextOf(node, key) is not { } id)
        {
            return null;
        }

        if (!Id<object>.HasRightForm(id))
        {
            var mended = Slug.Of(id);
            scope.Log.Add(ProblemTable.NotAnId, node.Place, id, mended);
            return mended;
        }

        if (FileNames.IsReserved(id))
        {
            scope.Log.Add(ProblemTable.ReservedName, node.Place, id);
        }

        return id;
    }

    /// <summary>The pairs of a map whose keys are names; one that stands twice is reported and counts once.</summary>
    public IReadOnlyList<KeyValuePair<TextNode, Node>> Pairs(MapNode map)
    {
        var (pairs, lines) = (new List<KeyValuePair<TextNode, Node>>(), new Dictionary<string, int>(StringComparer.Ordinal));
        foreach (var pair in map.Pairs)
        {
            if (lines.TryAdd(pair.Key.Text, pair.Key.Place.Line))
            {
                pairs.Add(pair);
            }
            else
            {
                scope.Log.Add(ProblemTable.DuplicateKey, pair.Key.Place, pair.Key.Text, lines[pair.Key.Text]);
            }
        }

        return pairs;
    }

    /// <summary>Ids that a thing had before, each once; its present one is none of them.</summary>
    public IReadOnlyList<string> FormerIds(string? now, IdKind kind, Id<Build>? build)
    {
        var former = new List<string>();
        foreach (var node in Items("formerly"))
        {
            if (TryId(node, "formerly", out var id) && id != now && !former.Contains(id))
            {
                former.Add(id);
                scope.FormerNames.Add(new Definition(kind, build, id, node.Place));
            }
        }

        return former;
    }

    /// <summary>Mentions an id of a kind, to be checked when all files are read; null where it has not the form of one.</summary>
    public Id<T>? Mention<T>(string key, IdKind kind, Id<Build>? build) => this[key] is { } node ? Mention<T>(node, key, kind, build) : null;

    /// <summary>The same of a value that is at hand.</summary>
    public Id<T>? Mention<T>(Node node, string key, IdKind kind, Id<Build>? build)
    {
        if (!TryId(node, key, out var id))
        {
            return null;
        }

        scope.Mentions.Add(new Mention(kind, build, id, node.Place));
        return new Id<T>(id);
    }

    /// <summary>Ids of a list, each to be found in a definition later; what cannot be an id is reported and left out.</summary>
    public IReadOnlyList<Id<T>> Mentions<T>(string key, IdKind kind, Id<Build>? build) =>
        [.. Items(key).Select(node => Mention<T>(node, key, kind, build)).OfType<Id<T>>().Distinct()];

    /// <summary>A date, ISO 8601; anything else is reported and null.</summary>
    public DateOnly? Date(string key)
    {
        if (Text(key) is not { } text)
        {
            return null;
        }

        if (Dates.TryParse(text, out var date))
        {
            return date;
        }

        scope.Log.Add(ProblemTable.NotADate, this[key]!.Place, text);
        return null;
    }

    /// <summary>A first and last day, both included; anything else is reported and null.</summary>
    public DateRange? Range(Node node, string key)
    {
        if (TextOf(node, key) is not { } text)
        {
            return null;
        }

        if (Dates.TryParseRange(text, out var range))
        {
            return range;
        }

        scope.Log.Add(ProblemTable.NotADateRange, node.Place, text);
        return null;
    }

    /// <summary>A time of a minute or more; anything else is reported and null.</summary>
    public Minutes? Duration(string key) => this[key] is { } node ? DurationOf(node, key) : null;

    /// <summary>The same of a value that is at hand.</summary>
    public Minutes? DurationOf(Node node, string key)
    {
        if (TextOf(node, key) is not { } text)
        {
            return null;
        }

        if (Values.Duration.TryParse(text, out var time, out var fault))
        {
            return time;
        }

        if (fault == TimeFault.Form)
        {
            scope.Log.Add(ProblemTable.NotATime, node.Place, text);
        }
        else
        {
            scope.Log.Add(ProblemTable.NotPositive, node.Place, key, text);
        }

        return null;
    }

    /// <summary>A time that may be none at all, such as what a mistake cost.</summary>
    public Minutes DurationOrZero(string key) =>
        this[key] is TextNode node && !Values.Duration.TryParse(node.Text, out _, out var fault) && fault == TimeFault.Zero ? Minutes.Zero : Duration(key) ?? Minutes.Zero;

    /// <summary>A number that may be zero, such as a cost.</summary>
    public decimal? Number(string key, decimal least, string remedy, decimal most = 1_000_000_000m)
    {
        if (Text(key) is not { } text)
        {
            return null;
        }

        if (decimal.TryParse(text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var value) && value >= least && value <= most)
        {
            return value;
        }

        scope.Log.Add(ProblemTable.NotANumber, this[key]!.Place, text, key, remedy);
        return null;
    }

    /// <summary>A whole number from 1 to 100,000; anything else is reported and null.</summary>
    public int? Count(string key) => this[key] is { } node ? CountOf(node, key) : null;

    /// <summary>The same of a value that is at hand.</summary>
    public int? CountOf(Node node, string key)
    {
        if (TextOf(node, key) is not { } text)
        {
            return null;
        }

        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var value) && value is >= 1 and <= 100_000)
        {
            return value;
        }

        scope.Log.Add(ProblemTable.NotANumber, node.Place, text, key, "Write a whole number from 1 to 100000.");
        return null;
    }

    /// <summary>An amount of 0 or more in the journal's currency; anything else is reported and null.</summary>
    public decimal? Cost(string key) => Number(key, 0, "Write only the amount, such as `12.50`; the currency is in journal.yaml.");

    /// <summary>One of the words of a fixed choice; anything else is reported, with the nearest word, and null.</summary>
    public T? Choice<T>(string key)
        where T : struct, Enum
    {
        if (Text(key) is not { } text)
        {
            return null;
        }

        if (EnumNames.TryFind<T>(text, out var value))
        {
            return value;
        }

        scope.Log.Add(ProblemTable.NotAChoice, this[key]!.Place, text, key, Suggestion.For(text, EnumNames.All<T>(), "values"));
        return null;
    }

    /// <summary>A web address, http or https; anything else is reported and null.</summary>
    public Uri? Address(string key)
    {
        if (Text(key) is not { } text)
        {
            return null;
        }

        if (Uri.TryCreate(text, UriKind.Absolute, out var address) && (address.Scheme == Uri.UriSchemeHttps || address.Scheme == Uri.UriSchemeHttp))
        {
            return address;
        }

        scope.Log.Add(ProblemTable.NotAnAddress, this[key]!.Place, text);
        return null;
    }

    /// <summary>When something may be shown: always where the key is missing. What cannot be read is reported, and counts as never.</summary>
    public Publication Publication(string key)
    {
        if (this[key] is null)
        {
            return default;
        }

        if (Text(key) is not { } text)
        {
            return Model.Publication.Never;
        }

        const string After = "after ";
        if (text == "never")
        {
            return Model.Publication.Never;
        }

        if (text.StartsWith(After, StringComparison.Ordinal) && Dates.TryParse(text[After.Length..], out var date))
        {
            return Model.Publication.After(date);
        }

        // Rather hide by mistake than show by mistake.
        scope.Log.Add(ProblemTable.NotAChoice, this[key]!.Place, text, key, "Write `never` or `after 2026-01-10`, or leave it out to publish now.");
        return Model.Publication.Never;
    }

    /// <summary>The maps of a list; what is no map is reported.</summary>
    public IEnumerable<Fields> Maps(string key, params string[] known)
    {
        foreach (var node in Items(key))
        {
            if (Map(node, known) is { } fields)
            {
                yield return fields;
            }
        }
    }

    /// <summary>A map with these keys; anything else is reported and null.</summary>
    public Fields? Map(Node node, params string[] known)
    {
        if (node is MapNode map)
        {
            return new Fields(map, scope, known);
        }

        scope.Log.Add(ProblemTable.NotKeys, node.Place);
        return null;
    }
}
