using System.Globalization;
using Journal.Core.Model;
using Journal.Core.Writing.Yaml;

namespace Journal.Core.Writing.Entries;

/// <summary>A measured size, as it is written into an entry.</summary>
/// <param name="Feature">What was measured, such as <c>bore</c>.</param>
/// <param name="Required">What the drawing asks for, as written; null to go on with what was required before.</param>
/// <param name="Actual">What was measured, as written.</param>
/// <param name="With">The tool it was measured with; null where it was not said.</param>
public sealed record NewReading(string Feature, string? Required, string Actual, string? With)
{
    internal string ToYaml() => YamlText.Map(
        ("feature", YamlText.Of(Feature)),
        ("required", Required is null ? null : YamlText.Of(Required)),
        ("actual", YamlText.Of(Actual)),
        ("with", With));
}

/// <summary>Speed, feed and depth, as they are written into an entry.</summary>
/// <param name="Keys">The keys with what was said.</param>
public sealed record NewSetting(IReadOnlyList<(string Key, string Value)> Keys)
{
    internal string ToYaml() => YamlText.Map([.. Keys.Select(pair => (pair.Key, (string?)YamlText.Of(pair.Value)))]);
}

/// <summary>What is to be added to an entry that stands already.</summary>
public sealed record Amendment
{
    /// <summary>What went wrong.</summary>
    public IReadOnlyList<NewMistake> Mistakes { get; init; } = [];

    /// <summary>Lessons learned without a mistake, a sentence each.</summary>
    public IReadOnlyList<string> Lessons { get; init; } = [];

    /// <summary>Sizes measured.</summary>
    public IReadOnlyList<NewReading> Readings { get; init; } = [];

    /// <summary>Speeds, feeds and depths.</summary>
    public IReadOnlyList<NewSetting> Settings { get; init; } = [];

    /// <summary>Parts finished, or pieces of them.</summary>
    public IReadOnlyList<Finished> Finished { get; init; } = [];

    /// <summary>Things still to put right, a sentence each.</summary>
    public IReadOnlyList<string> Snags { get; init; } = [];

    /// <summary>Snags put right.</summary>
    public IReadOnlyList<Id<Snag>> Cleared { get; init; } = [];

    /// <summary>What to do next; null for nothing.</summary>
    public string? Next { get; init; }

    /// <summary>What pictures show, each by its file.</summary>
    public IReadOnlyList<NewPhoto> Captions { get; init; } = [];

    /// <summary>Whether there is nothing in it.</summary>
    public bool IsEmpty => Next is null && Lists.All(list => list.Items.Count == 0) && Captions.Count == 0;

    /// <summary>The lists of an entry with what is added to each.</summary>
    internal IEnumerable<(string Key, IReadOnlyList<string> Items)> Lists =>
    [
        ("mistakes", [.. Mistakes.Select(mistake => mistake.ToYaml())]),
        ("lessons", [.. Lessons.Select(YamlText.Of)]),
        ("finished", [.. Finished.Select(ToYaml)]),
        ("snags", [.. Snags.Select(YamlText.Of)]),
        ("cleared", [.. Cleared.Select(id => id.Value)]),
        ("readings", [.. Readings.Select(reading => reading.ToYaml())]),
        ("settings", [.. Settings.Select(setting => setting.ToYaml())]),
    ];

    private static string ToYaml(Finished finished) =>
        finished.Pieces is { } pieces ? YamlText.Map((finished.Part.Value, pieces.ToString(CultureInfo.InvariantCulture))) : finished.Part.Value;
}
