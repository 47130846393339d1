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
    /// <summary>The part's id; null for that of the job.</summary>
    public string? Part { get; init; }

    /// <summary>The number of the job that it belongs to, from 1; where a part is said, the part counts.</summary>
    public int Job { get; init; } = 1;

    /// <summary>The reading as an item of <c>readings</c>, on one line; without <c>job</c> where a part is given.</summary>
    internal string ToYaml() => YamlText.Map(
        ("feature", YamlText.Of(Feature)),
        ("required", Required is null ? null : YamlText.Of(Required)),
        ("actual", YamlText.Of(Actual)),
        ("with", With),
        ("part", Part),
        ("job", Part is null ? NewSetting.JobKey(Job) : null));
}

/// <summary>Speed, feed and depth, as they are written into an entry.</summary>
/// <param name="Keys">The keys with what was said.</param>
public sealed record NewSetting(IReadOnlyList<(string Key, string Value)> Keys)
{
    /// <summary>The number of the job that it belongs to, from 1.</summary>
    public int Job { get; init; } = 1;

    /// <summary>The setting as an item of <c>settings</c>, on one line, its keys in the order given.</summary>
    internal string ToYaml() => YamlText.Map([.. Keys.Select(pair => (pair.Key, (string?)YamlText.Of(pair.Value))), ("job", JobKey(Job))]);

    /// <summary>The value of <c>job</c>; null for the first job, which need not be named.</summary>
    internal static string? JobKey(int job) => job == 1 ? null : job.ToString(CultureInfo.InvariantCulture);
}

/// <summary>A run, as it is written into an entry.</summary>
/// <param name="On">What it ran on, such as <c>air</c>.</param>
/// <param name="Time">How long; null where that was not said.</param>
public sealed record NewTrial(string On, Minutes? Time)
{
    /// <summary>The run as an item of <c>trials</c>, on one line, its time in whole minutes.</summary>
    internal string ToYaml() => YamlText.Map(("on", YamlText.Of(On)), ("minutes", Time?.Count.ToString(CultureInfo.InvariantCulture)));
}

/// <summary>A purchase, as it is written into an entry.</summary>
/// <param name="What">What was bought.</param>
/// <param name="Cost">What it cost, in the journal's currency.</param>
public sealed record NewPurchase(string What, decimal Cost)
{
    /// <summary>What kind of spending it was, such as <c>stock</c>; null for a consumable.</summary>
    public string? Kind { get; init; }

    /// <summary>The id of the part or tool that it was for; null where that was not said.</summary>
    public string? For { get; init; }

    /// <summary>The purchase as an item of <c>bought</c>, on one line.</summary>
    internal string ToYaml() => YamlText.Map(("what", YamlText.Of(What)), ("cost", Cost.ToString(CultureInfo.InvariantCulture)), ("kind", Kind), ("for", For));
}

/// <summary>What to add to an existing entry, or to say in a new one beside its jobs and its text.</summary>
public sealed record Amendment
{
    /// <summary>What went wrong.</summary>
    public IReadOnlyList<NewMistake> Mistakes { get; init; } = [];

    /// <summary>Lessons learned without a mistake, a sentence each.</summary>
    public IReadOnlyList<string> Lessons { get; init; } = [];

    /// <summary>Ids of known lessons that were applied.</summary>
    public IReadOnlyList<string> Heeded { get; init; } = [];

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

    /// <summary>Runs.</summary>
    public IReadOnlyList<NewTrial> Trials { get; init; } = [];

    /// <summary>What was bought.</summary>
    public IReadOnlyList<NewPurchase> Bought { get; init; } = [];

    /// <summary>What to do next; null for nothing.</summary>
    public string? Next { get; init; }

    /// <summary>What pictures show, each by its file.</summary>
    public IReadOnlyList<NewPhoto> Captions { get; init; } = [];

    /// <summary>How many things are in it.</summary>
    public int Count => Lists.Sum(list => list.Items.Count) + Captions.Count + (Next is null ? 0 : 1);

    /// <summary>Whether there is nothing in it.</summary>
    public bool IsEmpty => Count == 0;

    /// <summary>The same of an entry where its job is not the first.</summary>
    /// <param name="job">The job's number, from 1.</param>
    public Amendment OfJob(int job) => this with
    {
        Mistakes = [.. Mistakes.Select(mistake => mistake with { Job = job })],
        Readings = [.. Readings.Select(reading => reading with { Job = job })],
        Settings = [.. Settings.Select(setting => setting with { Job = job })],
    };

    /// <summary>Both together; of two next steps the second.</summary>
    public Amendment With(Amendment other) => new()
    {
        Mistakes = [.. Mistakes, .. other.Mistakes],
        Lessons = [.. Lessons, .. other.Lessons],
        Heeded = [.. Heeded.Union(other.Heeded)],
        Readings = [.. Readings, .. other.Readings],
        Settings = [.. Settings, .. other.Settings],
        Finished = [.. Finished, .. other.Finished],
        Snags = [.. Snags, .. other.Snags],
        Cleared = [.. Cleared, .. other.Cleared],
        Trials = [.. Trials, .. other.Trials],
        Bought = [.. Bought, .. other.Bought],
        Next = other.Next ?? Next,
        Captions = [.. Captions, .. other.Captions],
    };

    /// <summary>The lists of an entry with what is added to each.</summary>
    internal IEnumerable<(string Key, IReadOnlyList<string> Items)> Lists =>
    [
        ("mistakes", [.. Mistakes.Select(mistake => mistake.ToYaml())]),
        ("lessons", [.. Lessons.Select(YamlText.Of)]),
        ("heeded", Heeded),
        ("finished", [.. Finished.Select(ToYaml)]),
        ("snags", [.. Snags.Select(YamlText.Of)]),
        ("cleared", [.. Cleared.Select(id => id.Value)]),
        ("trials", [.. Trials.Select(trial => trial.ToYaml())]),
        ("readings", [.. Readings.Select(reading => reading.ToYaml())]),
        ("settings", [.. Settings.Select(setting => setting.ToYaml())]),
        ("bought", [.. Bought.Select(item => item.ToYaml())]),
    ];

    private static string ToYaml(Finished finished) =>
        finished.Pieces is { } pieces ? YamlText.Map((finished.Part.Value, pieces.ToString(CultureInfo.InvariantCulture))) : finished.Part.Value;
}
