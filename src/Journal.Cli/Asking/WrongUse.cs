using System.CommandLine;
using System.CommandLine.Parsing;
using Journal.Core.Reading.Problems;

namespace Journal.Cli.Asking;

/// <summary>Says in one clear line what was not understood, with the nearest word that would have been.</summary>
internal static class WrongUse
{
    /// <summary>The first thing that was wrong, and where to look.</summary>
    public static IEnumerable<string> Explain(ParseResult asked, IReadOnlyList<string> args)
    {
        var command = asked.CommandResult.Command;
        yield return asked.UnmatchedTokens.Count > 0 ? Stray(asked.UnmatchedTokens[0], command)
            : args.Count == 0 ? "Say what you want to know."
            : Sentence(asked.Errors[0]);
        yield return command is RootCommand ? "See `journal --help`." : $"See `journal {command.Name} --help`.";
    }

    private static string Stray(string word, Command command)
    {
        if (word.StartsWith('-') && word.Length > 1)
        {
            var name = word.Split('=', ':')[0];
            return $"There is no option `{name}`{Nearest(name, OptionsOf(command))}";
        }

        return command is RootCommand
            ? $"There is no command `{word}`{Nearest(word, NamesOf(command.Subcommands))}"
            : $"`{word}` is one word too many for `journal {command.Name}`{Nearest(word, OptionsOf(command))}";
    }

    private static string Nearest(string written, IReadOnlyCollection<string> known) =>
        Suggestion.Nearest(written, known) is { } nearest ? $". Did you mean `{nearest}`?" : ".";

    private static string[] NamesOf(IEnumerable<Command> commands) =>
        [.. commands.Where(command => !command.Hidden).Select(command => command.Name)];

    private static string[] OptionsOf(Command command) =>
        [.. Options.Of(command).Select(option => option.Name)];

    private static string Sentence(ParseError error) => error.SymbolResult switch
    {
        OptionResult { Tokens.Count: 0 } bare when bare.Option.HelpName is { } what => $"`{bare.Option.Name}` wants {what} behind it.",
        OptionResult { Tokens.Count: > 1 } twice => $"`{twice.Option.Name}` was given more than once.",
        _ => error.Message,
    };
}
