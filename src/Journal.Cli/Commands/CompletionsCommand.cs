using System.CommandLine;
using System.CommandLine.Parsing;
using Journal.Cli.Output;
using Journal.Core.Parsing.Problems;

namespace Journal.Cli.Commands;

/// <summary><c>journal completions</c>: the lines that teach a shell to complete our words.</summary>
internal static class CompletionsCommand
{
    /// <summary>The command, talking to a terminal.</summary>
    public static Command Create(Terminal terminal)
    {
        var shell = new Argument<string>("shell")
        {
            Description = $"One of {string.Join(", ", CompletionScripts.ByShell.Keys)}.",
            CustomParser = Read,
        };
        shell.CompletionSources.Add(_ => CompletionScripts.ByShell.Keys.Select(name => new System.CommandLine.Completions.CompletionItem(name)));
        var command = new ExampledCommand("completions", "Print the script that lets your shell complete commands, options and values.", "journal completions bash >> ~/.bashrc") { shell };
        command.SetAction(asked =>
        {
            terminal.Out.Write(CompletionScripts.ByShell[asked.GetRequiredValue(shell)]);
            return ExitStatus.Well;
        });
        return command;
    }

    private static string Read(ArgumentResult result)
    {
        var name = result.Tokens[0].Value;
        if (!CompletionScripts.ByShell.ContainsKey(name))
        {
            result.AddError($"There is no completion script for `{name}`. {Suggestion.For(name, [.. CompletionScripts.ByShell.Keys], "shells")}");
        }

        return name;
    }
}
