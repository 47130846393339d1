using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Parsing.Problems;
using Journal.Core.Parsing.Values;

namespace Journal.Core.Writing.Entries;

/// <summary>Tools as makers name them at the bench (“files, scribing block”), held against those that the journal knows.</summary>
/// <param name="journal">The journal.</param>
public sealed class ToolNames(MakerJournal journal)
{
    private const int MostOffered = 4;
    private const string NoName = "a-name"; // What a text without letters comes to.

    /// <summary>
    /// The names on a line: parted by commas; without commas the whole line is one name, unless its words are tools of their own.
    /// </summary>
    public IReadOnlyList<string> On(string line)
    {
        var names = line.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        return names is [var one] && Find(one) is null && one.Split(' ', StringSplitOptions.RemoveEmptyEntries) is { Length: > 1 } words && words.Any(word => Find(word) is not null) ? words : names;
    }

    /// <summary>The tool of the crib that a name means, by its id or its title; null where none is called so.</summary>
    public Id<Tool>? Find(string name)
    {
        var slug = Slug.Of(name);
        return journal.Tools.FirstOrDefault(tool => tool.Id.Value == slug || Slug.Of(tool.Title) == slug)?.Id;
    }

    /// <summary>Tools that may be meant by a name that none has: those that share a word with it, then the one that is spelt most like it.</summary>
    public IReadOnlyList<Id<Tool>> Near(string name)
    {
        var stems = TextTokens.Of(name).Select(WordStem.Of).ToHashSet();
        return
        [
            .. journal.Tools
                .Select(tool => (tool.Id, Shared: TextTokens.Of($"{tool.Id} {tool.Title}").Select(WordStem.Of).Distinct().Count(stems.Contains)))
                .Where(one => one.Shared > 0)
                .OrderByDescending(one => one.Shared)
                .Select(one => one.Id)
                .Concat(Suggestion.Nearest(Slug.Of(name), [.. journal.Tools.Select(tool => tool.Id.Value)]) is { } alike ? [new Id<Tool>(alike)] : [])
                .Distinct()
                .Take(MostOffered),
        ];
    }

    /// <summary>The id of a new tool of a name; null where no id can be made of it.</summary>
    public static Id<Tool>? NewId(string name) => Slug.Of(name) is var id && id != NoName ? new(id) : null;
}
