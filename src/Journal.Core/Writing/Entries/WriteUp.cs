using Journal.Core.Writing.Yaml;

namespace Journal.Core.Writing.Entries;

/// <summary>A picture as it is written into an entry.</summary>
/// <param name="File">From the build's folder.</param>
/// <param name="Caption">What it shows; null where that was not said.</param>
public sealed record NewPhoto(string File, string? Caption)
{
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

    /// <summary>What to do another time; null where that was not said.</summary>
    public string? Lesson { get; init; }

    internal string ToYaml() => Cause is null && Lost is null && Lesson is null
        ? YamlText.Of(What)
        : YamlText.Map(("what", YamlText.Of(What)), ("cause", Text(Cause)), ("lost", Text(Lost)), ("lesson", Text(Lesson)));

    private static string? Text(string? words) => words is null ? null : YamlText.Of(words);
}

/// <summary>What an evening's write-up says beside its hours.</summary>
public sealed record WriteUp
{
    /// <summary>The title; null for one made of the file's name.</summary>
    public string? Title { get; init; }

    /// <summary>Ids of tools used.</summary>
    public IReadOnlyList<string> Tools { get; init; } = [];

    /// <summary>What went wrong.</summary>
    public IReadOnlyList<NewMistake> Mistakes { get; init; } = [];

    /// <summary>What to do next.</summary>
    public string? Next { get; init; }

    /// <summary>Tonight's pictures.</summary>
    public IReadOnlyList<NewPhoto> Photos { get; init; } = [];

    /// <summary>Remarks for the text, in their order.</summary>
    public IReadOnlyList<string> Remarks { get; init; } = [];

    /// <summary>Whether there is nothing in it.</summary>
    public bool IsEmpty => Title is null && Next is null && Tools.Count + Mistakes.Count + Photos.Count + Remarks.Count == 0;

    internal IEnumerable<(string Key, string Value)> Keys()
    {
        if (Tools.Count > 0)
        {
            yield return ("tools", YamlText.List(Tools.Select(YamlText.Of)));
        }

        if (Next is not null)
        {
            yield return ("next", YamlText.Of(Next));
        }
    }
}
