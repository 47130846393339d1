using Journal.Core.Model;
using Journal.Core.PlainWords;

namespace Journal.Core.Writing.Told;

/// <summary>What tonight's remarks say as keys; offered beside the questions, and entered only where the maker accepts it.</summary>
/// <param name="Text">The remarks, a line each.</param>
/// <param name="Proposal">The keys, each with where in the text it was said.</param>
public sealed record Heard(string Text, Proposal Proposal)
{
    /// <summary>The remarks as they were made.</summary>
    public IReadOnlyList<string> Remarks { get; init; } = [];

    /// <summary>The remarks of an evening, read for a build.</summary>
    /// <param name="remarks">The remarks.</param>
    /// <param name="journal">The journal.</param>
    /// <param name="build">The build.</param>
    /// <param name="evening">The evening.</param>
    public static Heard Of(IReadOnlyList<string> remarks, MakerJournal journal, Build build, DateOnly evening)
    {
        var text = string.Join('\n', remarks);
        return new(text, AccountReader.Read(text, journal, build, evening)) { Remarks = remarks };
    }

    /// <summary>Why something is offered: the first words that say it; null where none do.</summary>
    public string? Because(params IReadOnlyList<Span> words) => words.Count == 0 ? null : Quote.AsReason(Text, words[0]);
}
