using System.CommandLine;
using Journal.Cli.Output;
using Journal.Cli.Wording;
using Journal.Core.Model;
using Journal.Core.Parsing.Problems;

namespace Journal.Cli.Commands;

/// <summary><c>journal words</c>: what can be said.</summary>
internal static class WordsCommand
{
    /// <summary>The command, talking to a terminal.</summary>
    public static Command Create(Terminal terminal)
    {
        var list = new Argument<string?>("list") { Description = $"One of {string.Join(", ", SayableWord.Lists)}; or a word to look up. Left out: all.", Arity = ArgumentArity.ZeroOrOne };
        list.CompletionSources.Add(_ => SayableWord.Lists.Select(name => new System.CommandLine.Completions.CompletionItem(name)));
        return (Of(null) with { Arguments = [list], Narrowed = asked => Of(asked.GetValue(list)) }).Create(terminal);
    }

    private static FigureCommand Of(string? said) => new()
    {
        Name = "words",
        Description = "What can be said: operations, causes, materials, kinds, each with its meaning and other spellings.",
        Example = "journal words causes",
        Objection = journal => said is not null && Meant(said, journal).Count == 0
            ? $"There is no list and no word `{said}`. {Suggestion.For(said, [.. SayableWord.Lists, .. SayableWord.All(journal).Select(word => word.Word)], "lists")}"
            : null,
        Table = (journal, print) => Print(Meant(said, journal), print),
        Csv = journal => new CsvTable(["list", "word", "title", "meaning", "also", "own"], Meant(said, journal).Select(Row)),
        Json = journal => new { Words = Meant(said, journal).Select(Shape) },
    };

    // `kinds` means every list of kinds; what is no list is looked up in all of them, by its beginning too.
    private static List<SayableWord> Meant(string? said, MakerJournal journal)
    {
        var all = SayableWord.All(journal).ToList();
        return said is null ? all
            : all.Where(word => word.List == said || word.List.Split('-').Contains(said)).ToList() is { Count: > 0 } list ? list
            : all.Where(word => word.Spellings.Contains(said)).ToList() is { Count: > 0 } exact ? exact
            : [.. all.Where(word => word.Spellings.Any(spelling => spelling.StartsWith(said, StringComparison.OrdinalIgnoreCase)))];
    }

    private static void Print(List<SayableWord> words, Printout print)
    {
        foreach (var list in words.GroupBy(word => word.List))
        {
            print.Heading(Titles.FromId(list.Key));
            print.Table(
                [Column.Words("Word"), Column.Words("Meaning"), Column.Words("Also")],
                list.Select(word => new[] { word.Word, word.Meaning ?? (word.IsOwn ? $"{word.Title} (your own word)" : word.Title), string.Join(", ", word.Also) }));
        }

        if (words.Select(word => word.List).Distinct().Count() == 1 && SayableWord.CanBeAdded(words[0].List))
        {
            print.Gap();
            print.Say($"A word of your own: write it under `{words[0].List}` in journal.yaml.", Ink.Faint);
        }
    }

    private static object?[] Row(SayableWord word) => [word.List, word.Word, word.Title, word.Meaning, string.Join(' ', word.Also), word.IsOwn ? "true" : "false"];

    private static object Shape(SayableWord word) => new { word.List, word.Word, word.Title, word.Meaning, word.Also, Own = word.IsOwn };
}
