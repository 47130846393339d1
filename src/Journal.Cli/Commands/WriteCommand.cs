using System.CommandLine;
using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Cli.Writing;
using Journal.Core.Writing.Entries;

namespace Journal.Cli.Commands;

/// <summary><c>journal write</c>: tonight's entry, from what the journal knows.</summary>
internal static class WriteCommand
{
    /// <summary>The command, talking to a terminal.</summary>
    public static Command Create(Terminal terminal)
    {
        var (folder, build, part, operation) = (InOption.Create(), JobOptions.Build(), JobOptions.Part(), JobOptions.Operations());
        var hours = new Option<string?>("--hours") { Description = "How long, such as 1h30 or 19:10-20:40. Default: the stint's time.", HelpName = "time" };
        var tools = Many("--tool", "id", "A tool that was used; repeat the option for each.");
        var title = new Option<string?>("--title") { Description = "The entry's title.", HelpName = "words" };
        var mistakes = Many("--mistake", "words", "What went wrong, in a sentence; repeat the option for each.");
        var next = new Option<string?>("--next") { Description = "What to do next, and how the machine was left.", HelpName = "words" };
        var captions = new Option<bool>("--captions") { Description = "Ask for one line per picture, and little else." };
        var entry = Many("--entry", "words", "With `--captions`: the pictures of this entry, by its id, its date or words in it.");
        var photos = new Option<string?>("--photos") { Description = "Also take tonight's pictures from this folder.", HelpName = "folder" };
        var from = new Option<string?>("--from") { Description = "Read the evening from an account in plain words: a text file, or `-` for standard input. It becomes the entry's text.", HelpName = "file|-" };
        var yes = new Option<bool>("--yes") { Description = "With `--from`: write what is sure without asking, and list what was left out." };
        var date = TodayOption.Named("--date", "The evening, such as 2025-10-03. Default: tonight (before four in the morning: last night).", "--today");
        var command = new ExampledCommand("write", "Write tonight's entry, filled in from what the journal knows. Never overwrites another.", "journal write --part head --operation boring --hours 1h30")
        {
            from, yes, part, operation, hours, tools, title, mistakes, next, captions, entry, photos, build, date, folder,
        };
        command.SetAction(asked => OpenJournal.With(asked.GetValue(folder), terminal, open => asked.GetValue(entry) is { Length: > 0 } words ? Caption(open, words, asked.GetValue(captions), terminal) : new EveningWriter(open, terminal).Write(new EntryRequest
        {
            Build = asked.GetValue(build),
            Part = asked.GetValue(part),
            Operations = asked.GetValue(operation) ?? [],
            Hours = asked.GetValue(hours),
            Tools = asked.GetResult(tools) is null ? null : asked.GetValue(tools),
            Title = asked.GetValue(title),
            Mistakes = asked.GetResult(mistakes) is null ? null : asked.GetValue(mistakes),
            Next = asked.GetValue(next),
            WantsCaptions = asked.GetValue(captions),
            Photos = asked.GetValue(photos),
            Account = asked.GetValue(from),
            IsSure = asked.GetValue(yes),
            Evening = asked.GetValue(date),
        })));
        return command;
    }

    private static int Caption(OpenJournal open, string[] words, bool wantsCaptions, Terminal terminal)
    {
        if (!wantsCaptions)
        {
            throw new UsageException("`--entry` goes with `--captions`. To add anything else to an entry: `journal amend`.");
        }

        var entry = EntryArgument.Find(words, open.Journal, build: null, open.Folder, open.Clock.Evening(terminal.Now));
        return AmendCommand.Amend(open, entry, new Amendment(), wantsCaptions: true, terminal);
    }

    private static Option<string[]> Many(string name, string what, string description) =>
        new(name) { Description = description, HelpName = what, Arity = ArgumentArity.OneOrMore, AllowMultipleArgumentsPerToken = false };
}
