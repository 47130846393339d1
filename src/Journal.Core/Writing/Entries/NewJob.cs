using Journal.Core.Writing.Yaml;

namespace Journal.Core.Writing.Entries;

/// <summary>Work done, as it is written into an entry.</summary>
/// <param name="Parts">The parts' ids, which share the time equally; <c>whole</c> for the build as a whole; none where it was not said.</param>
/// <param name="Operations">The operations' ids, which share the time equally; none where they were not said.</param>
/// <param name="Hours">How long it took, as the maker writes it; empty where it was not said.</param>
public sealed record NewJob(IReadOnlyList<string> Parts, IReadOnlyList<string> Operations, string Hours)
{
    /// <summary>A job on one part, or on none that was said.</summary>
    /// <param name="part">The part's id, <c>whole</c>, or null where it was not said.</param>
    /// <param name="operations">The operations' ids.</param>
    /// <param name="hours">How long it took.</param>
    public NewJob(string? part, IReadOnlyList<string> operations, string hours)
        : this(part is null ? [] : [part], operations, hours)
    {
    }

    /// <summary>The part, where it is one alone.</summary>
    public string? Part => Parts is [var one] ? one : null;

    /// <summary>How much of the time went into setting up, as the maker writes it; null where that was not said.</summary>
    public string? SetUp { get; init; }

    /// <summary>How the work was held; null where that was not said.</summary>
    public string? Held { get; init; }

    /// <summary>What everything was measured from; null where that was not said.</summary>
    public string? Datum { get; init; }

    /// <summary>Ids of the tools used.</summary>
    public IReadOnlyList<string> Tools { get; init; } = [];

    /// <summary>Tools, jigs and fixtures that it made.</summary>
    public IReadOnlyList<NewTool> Made { get; init; } = [];

    /// <summary>The id of an earlier mistake that it puts right; null for none.</summary>
    public string? Mends { get; init; }

    /// <summary>The keys of a job with their values as YAML, in the order in which they are written; null for one that is left out.</summary>
    internal IEnumerable<(string Key, string? Value)> Keys =>
    [
        ("part", YamlText.OneOrMore([.. Parts.Select(YamlText.Of)])),
        ("operation", YamlText.OneOrMore([.. Operations.Select(YamlText.Of)])),
        ("hours", Hours.Length == 0 ? null : YamlText.Of(Hours)),
        ("setup", SetUp),
        ("held", Held is null ? null : YamlText.Of(Held)),
        ("datum", Datum is null ? null : YamlText.Of(Datum)),
        ("tools", Tools.Count == 0 ? null : YamlText.List(Tools.Select(YamlText.Of))),
        ("made", YamlText.OneOrMore([.. Made.Select(tool => tool.ToYaml())])),
        ("mends", Mends),
    ];

    /// <summary>The job as an item of <c>jobs</c>, on one line.</summary>
    internal string ToYaml() => YamlText.Map([.. Keys]);
}

/// <summary>A tool, jig or fixture, as the job that made it defines it.</summary>
/// <param name="Id">Its id, new in the journal.</param>
/// <param name="Title">What it is.</param>
/// <param name="Kind">Its kind in the vocabulary; null where none fits.</param>
public sealed record NewTool(string Id, string Title, string? Kind)
{
    /// <summary>The tool as an item of <c>made</c>, on one line.</summary>
    internal string ToYaml() => YamlText.Map(("id", Id), ("title", YamlText.Of(Title)), ("kind", Kind));
}
