using System.CommandLine;
using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Parsing.Problems;

namespace Journal.Cli.Options;

/// <summary>
/// The job that a maker asks about: <c>--for boring --material cast-iron --part head --tool boring-head</c>, each of them once or more
/// often, at least one.
/// </summary>
internal sealed class JobQuestion
{
    private readonly Option<string[]> operations = Words("--for", "operation", "Show the lessons to read before this operation, such as boring.");
    private readonly Option<string[]> materials = Words("--material", "material", "… on this material, such as cast-iron. Default: the part's.");
    private readonly Option<string[]> parts = Words("--part", "part", "… on this part, or the part of the same name in another build.");
    private readonly Option<string[]> tools = Words("--tool", "tool", "… with this tool.");

    /// <summary>The options, to be added to a command.</summary>
    public IReadOnlyList<Option> Options => [operations, materials, parts, tools];

    /// <summary>Whether a job was asked about.</summary>
    public bool IsAsked(ParseResult asked) => Options.Any(option => asked.GetResult(option) is not null);

    /// <summary>The job in the journal's own words, or what was not understood.</summary>
    public (JobToCome? Job, string? Fault) Understand(ParseResult asked, MakerJournal journal)
    {
        var faults = new List<string>();
        var vocabulary = journal.Vocabulary;
        var ids = Parts(asked.GetValue(parts) ?? [], journal, faults);
        var of = Known(asked.GetValue(materials) ?? [], vocabulary.Materials, "material", faults);
        var job = new JobToCome(
            Known(asked.GetValue(operations) ?? [], vocabulary.Operations, "operation", faults),
            of.Count > 0 ? of : MaterialsOf(ids, journal),
            ids,
            Tools(asked.GetValue(tools) ?? [], journal, faults));
        return faults.Count > 0 ? (null, faults[0]) : (job, null);
    }

    private static Option<string[]> Words(string name, string helpName, string description) =>
        new(name) { HelpName = helpName, Description = description, Arity = ArgumentArity.OneOrMore, AllowMultipleArgumentsPerToken = true };

    private static List<Id<T>> Known<T>(string[] words, WordList<T> list, string what, List<string> faults)
        where T : class
    {
        var ids = new List<Id<T>>();
        foreach (var word in words)
        {
            if (list.TryFind(word, out var id))
            {
                ids.Add(id);
            }
            else
            {
                faults.Add($"There is no {what} `{word}`. {Suggestion.For(word, list.Spellings, what + "s")}");
            }
        }

        return ids;
    }

    private static List<Id<Part>> Parts(string[] words, MakerJournal journal, List<string> faults)
    {
        var known = PartsKnown(journal).Select(part => part.Id.Value).ToHashSet();
        return [.. words.Select(word => word[(word.LastIndexOf('/') + 1)..]).Where(word => Has(known, word, "part", faults)).Select(word => new Id<Part>(word))];
    }

    private static List<Id<Tool>> Tools(string[] words, MakerJournal journal, List<string> faults)
    {
        var known = Tooling.Of(journal).Tools.Select(tool => tool.Id.Value).ToHashSet();
        return [.. words.Where(word => Has(known, word, "tool", faults)).Select(word => new Id<Tool>(word))];
    }

    private static bool Has(HashSet<string> known, string word, string what, List<string> faults)
    {
        if (known.Contains(word))
        {
            return true;
        }

        faults.Add($"There is no {what} `{word}`. {Suggestion.For(word, known, what + "s")}");
        return false;
    }

    private static List<Id<MaterialFamily>> MaterialsOf(List<Id<Part>> parts, MakerJournal journal) =>
        [.. PartsKnown(journal).Where(part => parts.Contains(part.Id)).Select(part => part.Material?.Family).OfType<Id<MaterialFamily>>().Distinct()];

    private static IEnumerable<Part> PartsKnown(MakerJournal journal) =>
        journal.Builds.SelectMany(build => build.Parts).Concat(journal.Plans.SelectMany(plan => plan.Parts));
}
