using System.CommandLine;
using System.CommandLine.Completions;
using Journal.Cli.Output;
using Journal.Core.Checking;
using Journal.Core.Figures;
using Journal.Core.Model;

namespace Journal.Cli.Options;

/// <summary>What the tab key offers from the journal: the ids of its parts, tools and plans, and the words of its vocabulary.</summary>
internal static class JournalCompletions
{
    private static readonly Dictionary<string, Func<MakerJournal, string?, IEnumerable<string>>> ByName = new(StringComparer.Ordinal)
    {
        ["--build"] = (journal, _) => Builds(journal),
        ["--part"] = (journal, build) => [.. Parts(journal, build), "whole"],
        ["--without"] = (journal, _) => journal.Plans.SelectMany(plan => plan.Parts).Select(part => part.Id.Value).Concat(Parts(journal, null)),
        ["--twice"] = (journal, _) => journal.Plans.SelectMany(plan => plan.Parts).Select(part => part.Id.Value).Concat(Parts(journal, null)),
        ["--operation"] = (journal, _) => Words(journal.Vocabulary.Operations),
        ["--for"] = (journal, _) => Words(journal.Vocabulary.Operations),
        ["--material"] = (journal, _) => Words(journal.Vocabulary.Materials),
        ["--stock"] = (journal, _) => Words(journal.Vocabulary.StockForms),
        ["--kind"] = (journal, _) => Words(journal.Vocabulary.ToolKinds),
        ["--got"] = (_, _) => EnumNames.All<Got>(),
        ["--need"] = (_, _) => EnumNames.All<Need>(),
        ["--tool"] = (journal, _) => journal.Tools.Select(tool => tool.Id.Value),
        ["--plan"] = (journal, _) => Plans(journal),
        ["--like"] = (journal, _) => journal.Builds.SelectMany(build => build.Parts, (build, part) => $"{build.Id}/{part.Id}"),
        ["entry"] = (journal, build) => journal.Entries.Reverse().Where(entry => build is null || entry.Build.Value == build).Select(entry => entry.Id.Value),
        ["--entry"] = (journal, build) => journal.Entries.Reverse().Where(entry => build is null || entry.Build.Value == build).Select(entry => entry.Id.Value),
        ["--finished"] = Parts,
        ["--cleared"] = (journal, _) => State.Of(journal).Builds.SelectMany(build => build.Snags).Select(open => open.Snag.Id.Value),
        ["--cause"] = (journal, _) => Words(journal.Vocabulary.Causes),
        ["part"] = Parts,
        ["tool"] = (journal, _) => journal.Tools.Select(tool => tool.Id.Value),
        ["operation"] = (journal, _) => Words(journal.Vocabulary.Operations),
        ["lesson"] = (journal, _) => journal.Entries.Reverse().SelectMany(entry => entry.Lessons).Select(lesson => lesson.Id.Value),
        ["build"] = (journal, _) => Builds(journal),
        ["into"] = (journal, _) => journal.Tools.Select(tool => tool.Id.Value),
        ["plan"] = (journal, _) => Plans(journal),
        ["plan or build"] = (journal, _) => [.. Plans(journal), .. Builds(journal)],
        ["destination"] = (journal, _) => journal.Destinations.Select(one => one.Name.Value),
    };

    /// <summary>Teaches a command, and those below it, what the journal knows for their options and arguments.</summary>
    public static void Teach(Command command, Terminal terminal)
    {
        foreach (var (name, sources) in command.Options.Select(one => (one.Name, one.CompletionSources)).Concat(command.Arguments.Select(one => (one.Name, one.CompletionSources))))
        {
            if (ByName.TryGetValue(name, out var words))
            {
                sources.Add(asked => Known(asked.ParseResult, terminal, words));
            }
        }

        foreach (var below in command.Subcommands)
        {
            Teach(below, terminal);
        }
    }

    private static IEnumerable<CompletionItem> Known(ParseResult asked, Terminal terminal, Func<MakerJournal, string?, IEnumerable<string>> words)
    {
        var journal = JournalPlace.Find(Said(asked, "--in"), terminal.Folder) is { } folder ? JournalReader.Read(folder, DateOnly.MaxValue).Journal : null;
        return journal is null ? [] : words(journal, Said(asked, "--build")).Distinct().Select(word => new CompletionItem(word));
    }

    // Half a line may still lack what shall stand behind an option.
    private static string? Said(ParseResult asked, string option) => asked.GetResult(option) is { Tokens: [var said, ..] } ? said.Value : null;

    private static IEnumerable<string> Builds(MakerJournal journal) => journal.Builds.Select(build => build.Id.Value);

    private static IEnumerable<string> Plans(MakerJournal journal) => journal.Plans.Select(plan => plan.Id.Value);

    private static IEnumerable<string> Parts(MakerJournal journal, string? build) =>
        journal.Builds.Where(one => build is null || one.Id.Value == build).SelectMany(one => one.Parts).Select(part => part.Id.Value);

    private static IEnumerable<string> Words<T>(WordList<T> words)
        where T : class => words.Ids.Select(id => id.Value);
}
