using Journal.Core.Model;
using Journal.Core.Writing.Yaml;

namespace Journal.Core.Writing.Entries;

/// <summary>A picture as it is written into an entry.</summary>
/// <param name="File">From the build's folder.</param>
/// <param name="Caption">What it shows; null where that was not said.</param>
public sealed record NewPhoto(string File, string? Caption)
{
    /// <summary>The picture as an item of <c>photos</c>, on one line: its file alone where there is no caption.</summary>
    internal string ToYaml() => Caption is null ? YamlText.Of(File) : YamlText.Map(("file", YamlText.Of(File)), ("caption", YamlText.Of(Caption)));
}

/// <summary>What went wrong, as it is written into an entry.</summary>
/// <param name="What">What went wrong, in a sentence.</param>
public sealed record NewMistake(string What)
{
    /// <summary>Why, as the id of a cause; null where that was not said.</summary>
    public string? Cause { get; init; }

    /// <summary>The time that it cost, as the maker writes it; null where that was not said.</summary>
    public string? Lost { get; init; }

    /// <summary>What became of the part; null where that was not said.</summary>
    public Outcome? Outcome { get; init; }

    /// <summary>What to do another time; null where that was not said.</summary>
    public string? Lesson { get; init; }

    /// <summary>The id of a lesson that was known already and not heeded; null for none.</summary>
    public string? Repeats { get; init; }

    /// <summary>The number of the job that it belongs to, from 1.</summary>
    public int Job { get; init; } = 1;

    /// <summary>The mistake as an item of <c>mistakes</c>, on one line: its sentence alone where nothing else was said.</summary>
    internal string ToYaml() => this == new NewMistake(What)
        ? YamlText.Of(What)
        : YamlText.Map(
            ("what", YamlText.Of(What)),
            ("cause", Text(Cause)),
            ("lost", Text(Lost)),
            ("outcome", Outcome?.ToWord()),
            ("lesson", Text(Lesson)),
            ("repeats", Repeats),
            ("job", NewSetting.JobKey(Job)));

    private static string? Text(string? words) => words is null ? null : YamlText.Of(words);
}

/// <summary>What an evening's write-up says beside its hours.</summary>
public sealed record WriteUp
{
    /// <summary>The title; null for one made of the file's name.</summary>
    public string? Title { get; init; }

    /// <summary>How the work was held, for an entry of one job that does not say so; null where it was not said.</summary>
    public string? Held { get; init; }

    /// <summary>What everything was measured from, for the same; null where it was not said.</summary>
    public string? Datum { get; init; }

    /// <summary>Ids of tools used in all jobs.</summary>
    public IReadOnlyList<string> Tools { get; init; } = [];

    /// <summary>What else the evening gave: mistakes, lessons, the next step.</summary>
    public Amendment Facts { get; init; } = new();

    /// <summary>Tonight's pictures.</summary>
    public IReadOnlyList<NewPhoto> Photos { get; init; } = [];

    /// <summary>The evening as it was told, which becomes the text as it is; empty where it was not.</summary>
    public string Account { get; init; } = "";

    /// <summary>Remarks for the text, in their order; below the account.</summary>
    public IReadOnlyList<string> Remarks { get; init; } = [];

    /// <summary>Whether there is nothing in it.</summary>
    public bool IsEmpty => (Title ?? Held ?? Datum) is null && Facts.IsEmpty && Account.Length + Tools.Count + Photos.Count + Remarks.Count == 0;

    /// <summary>The same with what remarks from the bench say.</summary>
    public WriteUp With(ToldTonight told) => this with { Remarks = told.Remarks, Facts = told.With(Facts), Photos = told.With(Photos) };

    /// <summary>The lists of an entry with what is said under each; none that is empty.</summary>
    internal IEnumerable<(string Key, IReadOnlyList<string> Items)> Lists =>
        [.. Facts.Lists.Where(list => list.Items.Count > 0), .. Photos.Count == 0 ? [] : new[] { ("photos", (IReadOnlyList<string>)[.. Photos.Select(photo => photo.ToYaml())]) }];

    /// <summary>
    /// The keys <c>held</c>, <c>datum</c>, <c>tools</c> and <c>next</c> with their values as YAML, without those that were
    /// not said.
    /// </summary>
    internal IEnumerable<(string Key, string Value)> Keys()
    {
        if (Held is { } held)
        {
            yield return ("held", YamlText.Of(held));
        }

        if (Datum is { } datum)
        {
            yield return ("datum", YamlText.Of(datum));
        }

        if (Tools.Count > 0)
        {
            yield return ("tools", YamlText.List(Tools.Select(YamlText.Of)));
        }

        if (Facts.Next is { } next)
        {
            yield return ("next", YamlText.Of(next));
        }
    }
}
