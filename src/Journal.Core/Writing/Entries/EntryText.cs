using Journal.Core.Parsing.Problems;
using Journal.Core.Parsing.Text;
using Journal.Core.Parsing.Yaml;
using Journal.Core.Writing.Yaml;

namespace Journal.Core.Writing.Entries;

/// <summary>The text of an entry's file, to be added to.</summary>
/// <param name="Text">The whole file without its byte-order mark.</param>
internal sealed record EntryText(string Text)
{
    private const string NoKeys = "The entry has no keys between two lines of `---`. See `journal check`.";

    /// <summary>Adds items to the list of a key.</summary>
    public Added Items(string key, IReadOnlyList<string> items) => Keys() is { } keys ? keys.Items(key, items) : Added.Refused(NoKeys);

    /// <summary>Adds keys that are not there yet.</summary>
    public Added Keys(IReadOnlyList<(string Key, string Value)> pairs) => Keys() is { } keys ? keys.Keys(pairs) : Added.Refused(NoKeys);

    /// <summary>Whether a key stands among the keys.</summary>
    public bool Has(string key) => Keys()?.Has(key) ?? false;

    /// <summary>Whether one key stands before another; null where not both are there.</summary>
    public bool? IsBefore(string key, string other)
    {
        var keys = Halves() is { } halves && Outline.Of(halves.Yaml) is { } outline ? outline.TopKeys.Select(one => one.Key).ToList() : [];
        return keys.Contains(key) && keys.Contains(other) ? keys.IndexOf(key) < keys.IndexOf(other) : null;
    }

    /// <summary>Says what a picture shows, which said nothing so far; one that stands in the text alone is listed for it.</summary>
    public Added Caption(NewPhoto photo) => Keys() is { } keys ? PhotoCaption.Add(keys, photo) : Added.Refused(NoKeys);

    /// <summary>Whether nothing is told below the keys.</summary>
    public bool IsWordless => string.IsNullOrWhiteSpace(Halves()?.Body);

    /// <summary>Adds lines at the end, a blank line before them where there is text already.</summary>
    public EntryText WithLines(IReadOnlyList<string> lines) => lines.Count == 0 ? this : new EntryText($"{Text}{Gap()}{string.Join(LineEnd, lines)}{LineEnd}");

    /// <summary>Adds an account at the end as it is, a blank line before it where there is text already.</summary>
    public EntryText WithAccount(string account) => account.Length == 0 ? this : new EntryText($"{Text}{Gap()}{account}{(account.EndsWith('\n') ? "" : LineEnd)}");

    private string LineEnd => Text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";

    private string Gap()
    {
        var open = Text.Length == 0 || Text.EndsWith('\n') ? "" : LineEnd;
        return open + (Halves()?.Body is { } body && string.IsNullOrWhiteSpace(body) && open.Length == 0 ? "" : LineEnd);
    }

    /// <summary>The jobs, as far as they can be told: the part of each where it has one, and its operations.</summary>
    public IReadOnlyList<NewJob> Jobs()
    {
        var keys = Halves() is { } halves ? YamlReader.Read(halves.Yaml, "", halves.YamlLine, new ProblemLog()) : null;
        var jobs = keys is null ? [] : ValueOf(keys, "jobs")?.Items.OfType<MapNode>().ToList() ?? [keys];
        return [.. jobs.Select(job => new NewJob(Texts(Of(job, "part")), Texts(Of(job, "operation")), (ValueOf(job, "hours") as TextNode)?.Text ?? ""))];

        // What a job does not say stands beside the list, for all of them.
        Node? Of(MapNode job, string key) => ValueOf(job, key) ?? ValueOf(keys!, key);
    }

    private static Node? ValueOf(MapNode map, string key) => map.Pairs.Where(pair => pair.Key.Text == key).Select(pair => pair.Value).FirstOrDefault();

    private static string[] Texts(Node? node) => [.. (node?.Items ?? []).OfType<TextNode>().Select(text => text.Text)];

    private Addition? Keys() => Halves() is { } halves ? new Addition(Text, Start(), Start() + halves.Yaml.Length) : null;

    private FrontMatter? Halves() => FrontMatter.Split(Text, "", new ProblemLog());

    private int Start() => Text.IndexOf('\n', StringComparison.Ordinal) + 1;
}
