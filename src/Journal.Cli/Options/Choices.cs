using Journal.Core.Parsing.Problems;

namespace Journal.Cli.Options;

/// <summary>Words that can be chosen from.</summary>
/// <param name="WhatTheyAre">What the words name, such as <c>parts</c>.</param>
/// <param name="Listed">Those shown with numbers; none where there are too many to show.</param>
/// <param name="Known">All of them, for “did you mean”.</param>
/// <param name="Find">The word that is meant by a spelling; null where none is.</param>
internal sealed record Choices(string WhatTheyAre, IReadOnlyList<string> Listed, IReadOnlyCollection<string> Known, Func<string, string?> Find)
{
    /// <summary>The word that an answer means, by its number in the list or by name, or what is wrong with it.</summary>
    public (string? Word, string? Wrong) Meant(string answer) =>
        int.TryParse(answer, out var number) && number >= 1 && number <= Listed.Count ? (Listed[number - 1], null)
        : Find(answer) is { } word ? (word, null)
        : (null, $"There is no `{answer}`. {Suggestion.For(answer, Known, WhatTheyAre)}");

    /// <summary>The words that an answer means, parted by commas, each once.</summary>
    public (IReadOnlyList<string> Words, string? Wrong) AllMeant(string answer)
    {
        var meant = answer.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(Meant).ToList();
        return ([.. meant.Select(one => one.Word).OfType<string>().Distinct()], meant.Count == 0 ? "Name at least one." : meant.Find(one => one.Wrong is not null).Wrong);
    }
}
