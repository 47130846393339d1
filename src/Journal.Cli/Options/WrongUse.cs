using System.CommandLine;
using System.CommandLine.Parsing;
using Journal.Core.Parsing.Problems;

namespace Journal.Cli.Options;

/// <summary>Says in one clear line what was not understood, with the nearest word that would have been.</summary>
internal static class WrongUse
{
    /// <summary>The first thing that was wrong, and where to look.</summary>
    public static string Explain(ParseResult asked)
    {
        var command = asked.CommandResult.Command;
        var what = asked.UnmatchedTokens.Count > 0 ? Stray(asked.UnmatchedTokens[0], command) : Sentence(asked.Errors[0]);
        return command is RootCommand ? $"{what} See `journal --help`." : $"{what} See `{Options.Call(command)} --help`.";
    }

    private static string Stray(string word, Command command) => (command, IsOption: word.Length > 1 && word[0] == '-') switch
    {
        (RootCommand root, IsOption: true) => StrayBeforeCommand(OptionName(word), root),
        (RootCommand root, _) => $"There is no command `{word}`{Nearest(word, [.. root.Subcommands.Where(one => !one.Hidden).Select(one => one.Name)])}",
        (_, IsOption: true) => $"There is no option `{OptionName(word)}`{Nearest(OptionName(word), NamesOf(Options.Of(command)))}",
        ({ Subcommands.Count: > 0 }, _) => $"`{Options.Call(command)}` has no command `{word}`{Nearest(word, [.. command.Subcommands.Select(one => one.Name)])}",
        _ => $"`{word}` is not expected after `{Options.Call(command)}`{Nearest($"--{word}", NamesOf(Options.Of(command)))}",
    };

    private static string StrayBeforeCommand(string name, RootCommand root)
    {
        var owner = root.Subcommands.LastOrDefault(command => command.Options.Any(option => option.Name == name));
        return owner is null ? $"There is no option `{name}`{Nearest(name, NamesOf(Options.Of(root)))}"
            : $"`{name}` goes after a command, such as `journal {owner.Name} {name}`.";
    }

    private static string OptionName(string word) => word.Split('=', ':')[0];

    private static string[] NamesOf(IEnumerable<Option> options) => [.. options.Select(option => option.Name)];

    private static string Nearest(string written, IReadOnlyCollection<string> known) =>
        Suggestion.Nearest(written, known) is { } nearest ? $". Did you mean `{nearest}`?" : ".";

    private static string Sentence(ParseError error) => error.SymbolResult switch
    {
        OptionResult { Option: VersionOption } => "`--version` takes nothing else.",
        CommandResult { Command: RootCommand } => "Give a command.",
        CommandResult { Command.Subcommands.Count: > 0 } bare => $"`{Options.Call(bare.Command)}` needs one of {string.Join(", ", bare.Command.Subcommands.Select(one => one.Name))}.",
        CommandResult { Command.Arguments.Count: > 0 } bare => Wants(Options.Call(bare.Command), bare.Command.Arguments[0].Name),
        ArgumentResult { Tokens.Count: 0, Parent: CommandResult parent } bare => Wants(Options.Call(parent.Command), bare.Argument.Name),
        OptionResult { Tokens.Count: 0 } bare => Wants(bare.Option.Name, bare.Option.HelpName!),
        OptionResult { IdentifierTokenCount: > 1 } twice => $"`{twice.Option.Name}` was given more than once.",
        _ => error.Message,
    };

    private static string Wants(string word, string what) => $"`{word}` needs <{what}>.";
}
