using System.CommandLine;
using System.CommandLine.Invocation;
using Journal.Cli.Commands;
using Journal.Cli.Output;

namespace Journal.Cli.Options;

/// <summary>What a command does, how it is called, and an example.</summary>
internal sealed class HelpPage(Terminal terminal) : SynchronousCommandLineAction
{
    /// <inheritdoc/>
    public override bool ClearsParseErrors => true;

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        Print(parseResult.CommandResult.Command, new Printout(terminal));
        return ExitStatus.Well;
    }

    private static void Print(Command command, Printout print)
    {
        print.Say(command.Description ?? "");
        print.Gap();
        print.Put($"  {Call(command)}");
        var options = command.Arguments.Select(argument => (Label(argument), argument.Description ?? ""))
            .Concat(Options.Of(command).Select(option => (Label(option), option.Description ?? "")))
            .ToList();
        var commands = command.Subcommands.Where(one => !one.Hidden).Select(one => (one.Name, one.Description ?? "")).ToList();
        List(print, "Commands", commands);
        List(print, "Options", options);
        var example = (command as ExampledCommand)?.Example ?? "journal hours --in my-journal --format csv > hours.csv";
        print.Heading("Example");
        print.Put($"  {example}");
        if (command is RootCommand)
        {
            print.Gap();
            print.Say("More about a command: `journal <command> --help`. Exit status: 0 success, 1 the journal has errors or omissions, 2 wrong use, 3 could not finish.");
        }
    }

    private static string Call(Command command) => command is RootCommand ? "journal <command> [options]"
        : command.Subcommands.Count > 0 ? $"{Options.Call(command)} {string.Join('|', command.Subcommands.Select(one => one.Name))} [options]"
        : $"{Options.Call(command)}{string.Concat(command.Arguments.Select(argument => $" {Label(argument)}"))} [options]";

    private static string Label(Argument argument) => argument.Arity.MinimumNumberOfValues == 0 ? $"[{argument.Name}]" : $"<{argument.Name}>";

    private static string Label(Option option) => option.HelpName is { } what ? $"{option.Name} <{what}>" : option.Name;

    private static void List(Printout print, string heading, List<(string Name, string Text)> items)
    {
        if (items.Count == 0)
        {
            return;
        }

        print.Heading(heading);
        var width = items.Max(item => item.Name.Length);
        foreach (var (name, text) in items)
        {
            print.Hang($"  {name.PadRight(width)}  ", text);
        }
    }
}
