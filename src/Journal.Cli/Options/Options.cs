using System.CommandLine;

namespace Journal.Cli.Options;

/// <summary>The options that a command has.</summary>
internal static class Options
{
    /// <summary>The words that call a command: <c>journal stint begin</c>.</summary>
    public static string Call(Command command) =>
        command is RootCommand ? "journal" : $"{Call(command.Parents.OfType<Command>().First())} {command.Name}";

    /// <summary>A command's own, then those that all commands have; hidden ones left out.</summary>
    public static IEnumerable<Option> Of(Command command) =>
        command.Options
            .Concat(command.Parents.OfType<Command>().SelectMany(parent => parent.Options).Where(option => option.Recursive))
            .Where(option => !option.Hidden);
}
