using System.CommandLine;
using Journal.Cli.Options;
using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Parsing.Problems;

namespace Journal.Cli.Searching;

/// <summary>What narrows a search down: <c>--build</c>, <c>--part</c>, <c>--tool</c>, <c>--operation</c>, <c>--since</c> and <c>--until</c>.</summary>
internal sealed class SearchFilters
{
    private readonly ExcerptOptions excerpt = new(Narrows.Build | Narrows.Dates);
    private readonly Option<string?> part = PartOption.Create();
    private readonly Option<string?> tool = new("--tool") { Description = "Only what was done with this tool.", HelpName = "id" };
    private readonly WordOption<Operation> operation = WordOptions.For with { Name = "--operation" };
    private readonly Option<string?> operationOption;

    /// <summary>Makes the options; each command needs filters of its own.</summary>
    public SearchFilters() => operationOption = operation.Create();

    /// <summary>The options, to be added to a command.</summary>
    public IReadOnlyList<Option> Options => [.. excerpt.Options.Take(1), part, tool, operationOption, .. excerpt.Options.Skip(1)];

    /// <summary>Whether any of them was given.</summary>
    public bool AreGiven(ParseResult asked) => Options.Any(option => asked.GetResult(option) is not null);

    /// <summary>Why the filters make no sense in a journal, and what to write instead; null where they do.</summary>
    public string? Objection(ParseResult asked, MakerJournal journal) =>
        excerpt.Objection(asked, journal)
        ?? PartOption.Objection(asked.GetValue(part), journal)
        ?? operation.Objection(asked.GetValue(operationOption), journal)
        ?? UnknownTool(asked.GetValue(tool), journal);

    /// <summary>Whether a thing is one of those asked for. A thing without a date, part or tool is not, where one is asked for.</summary>
    public bool Take(ParseResult asked, Thing thing, MakerJournal journal)
    {
        var (build, since, until) = excerpt.Said(asked);
        return (build is null || thing.Build?.Value == build)
            && (since is null || thing.Date >= since)
            && (until is null || thing.Date <= until)
            && (asked.GetValue(part) is not { } word || (thing.Build is { } of && thing.Parts.Any(one => PartOption.Takes(word, of, one))))
            && (asked.GetValue(tool) is not { } id || thing.Tools.Any(one => one.Value == id))
            && (asked.GetValue(operationOption) is not { } done || thing.Operations.Any(one => operation.Takes(done, one, journal)));
    }

    private static string? UnknownTool(string? word, MakerJournal journal)
    {
        if (word is null)
        {
            return null;
        }

        var known = Tooling.Of(journal).Tools.Select(one => one.Id.Value).ToList();
        return known.Contains(word) ? null : $"There is no tool `{word}`. {Suggestion.For(word, known, "tools")}";
    }
}
