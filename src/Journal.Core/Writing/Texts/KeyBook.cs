using System.Text.Json;

namespace Journal.Core.Writing.Texts;

/// <summary>A key that a file can have.</summary>
/// <param name="Name">The key.</param>
/// <param name="Meaning">What it says, in a sentence.</param>
public sealed record KnownKey(string Name, string Meaning);

/// <summary>The keys of a kind of file, as its schema in <c>shared/schemas</c> names them.</summary>
public sealed class KeyBook
{
    private readonly JsonElement schema;
    private readonly Dictionary<string, IReadOnlyList<KnownKey>> keys = new(StringComparer.Ordinal);
    private readonly Dictionary<string, IReadOnlyList<string>> words = new(StringComparer.Ordinal);

    private KeyBook(JsonElement schema)
    {
        this.schema = schema;
        Add("", schema);
    }

    /// <summary>The keys by the key that they stand under; those at the top under an empty name.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<KnownKey>> Keys => keys;

    /// <summary>The words that a key allows, where these are fixed.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<string>> Words => words;

    /// <summary>The keys of a kind of file.</summary>
    public static KeyBook Of(JournalFileKind kind)
    {
        using var stream = typeof(KeyBook).Assembly.GetManifestResourceStream($"schemas/{NameOf(kind)}.schema.json")!;
        using var document = JsonDocument.Parse(stream);
        return new KeyBook(document.RootElement.Clone());
    }

    private static string NameOf(JournalFileKind kind) => kind switch
    {
        JournalFileKind.Journal => "journal",
        JournalFileKind.Tools => "tools",
        JournalFileKind.Plan => "plan",
        JournalFileKind.Build => "build",
        _ => "entry",
    };

    private void Add(string name, JsonElement form)
    {
        foreach (var one in Forms(form))
        {
            if (one.TryGetProperty("properties", out var properties) && keys.TryAdd(name, [.. properties.EnumerateObject().Select(KeyOf)]))
            {
                foreach (var property in properties.EnumerateObject())
                {
                    Add(property.Name, property.Value);
                }
            }

            if (one.TryGetProperty("enum", out var choices))
            {
                words.TryAdd(name, [.. choices.EnumerateArray().Where(word => word.ValueKind == JsonValueKind.String).Select(word => word.GetString()!)]);
            }
        }
    }

    // A value may have several forms, and be one thing or a list of them.
    private IEnumerable<JsonElement> Forms(JsonElement form)
    {
        if (form.ValueKind != JsonValueKind.Object)
        {
            return [];
        }

        if (form.TryGetProperty("$ref", out var reference))
        {
            return Forms(schema.GetProperty("$defs").GetProperty(reference.GetString()!["#/$defs/".Length..]));
        }

        var among = form.TryGetProperty("anyOf", out var any) || form.TryGetProperty("oneOf", out any) ? any.EnumerateArray().SelectMany(Forms) : [];
        var items = form.TryGetProperty("items", out var item) ? Forms(item) : [];
        return [form, .. among, .. items];
    }

    private static KnownKey KeyOf(JsonProperty property) =>
        new(property.Name, property.Value.TryGetProperty("description", out var meaning) ? meaning.GetString()! : "");
}
