using System.CommandLine;
using Journal.Cli.Output;
using Journal.Cli.Searching;
using Journal.Cli.Tables;
using Journal.Core.Model;
using Journal.Core.Writing.Bench;

namespace Journal.Cli.Commands;

/// <summary><c>journal find</c>: an evening of long ago, by words in it.</summary>
internal static class FindCommand
{
    private const int MostPassages = 5;

    /// <summary>The command, talking to a terminal.</summary>
    public static Command Create(Terminal terminal)
    {
        var (words, filters) = (new Argument<string[]>("words") { Description = "The words: all of them must be there; the beginning of each is enough.", Arity = ArgumentArity.ZeroOrMore }, new SearchFilters());
        return (Of(new SearchWords(""), (_, _) => true, null) with
        {
            Arguments = [words],
            Options = filters.Options,
            Narrowed = asked => new SearchWords(string.Join(' ', asked.GetValue(words) ?? [])) is var said && said.IsEmpty && !filters.AreGiven(asked)
                ? Of(said, (_, _) => true, _ => "Say what to look for, such as `journal find slipped`.")
                : Of(said, (thing, journal) => filters.Take(asked, thing, journal), journal => filters.Objection(asked, journal)),
        }).Create(terminal);
    }

    private static FigureCommand Of(SearchWords words, Func<Thing, MakerJournal, bool> takes, Func<MakerJournal, string?>? objection) =>
        Among([], words, takes, objection) with { Beside = (folder, _) => Among(SlateFile.Peek(folder).Jots, words, takes, objection) };

    private static FigureCommand Among(IReadOnlyList<Jot> jots, SearchWords words, Func<Thing, MakerJournal, bool> takes, Func<MakerJournal, string?>? objection)
    {
        return new FigureCommand
        {
            Name = "find",
            Description = "An evening of long ago, by words in it: entries, lessons, readings, remarks, parts and tools.",
            Example = "journal find off the boss",
            Objection = objection ?? (_ => null),
            Table = (journal, print) => FoundList.Print(journal, Found(journal), words, print),
            Csv = journal => new CsvTable(
                ["kind", "build", "id", "date", "entry", "title", "text"],
                Found(journal).Select(thing => new object?[] { thing.Kind, thing.Build, thing.Id, thing.Date, thing.Entry?.Entry, thing.Title, string.Join(" | ", words.Passages(thing, MostPassages)) })),
            Json = journal => new
            {
                Found = Found(journal).Select(thing => new { thing.Kind, thing.Build, thing.Id, thing.Date, thing.Entry?.Entry, thing.Title, Texts = words.Passages(thing, MostPassages) }),
            },
        };

        List<Thing> Found(MakerJournal journal) => [.. Things.Of(journal, jots).Where(thing => takes(thing, journal) && words.AreIn(thing))];
    }
}
