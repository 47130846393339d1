using System.CommandLine;

namespace Journal.Cli.Asking;

/// <summary>The options that a command has.</summary>
internal static class Options
{
    /// <summary>A command's own, then those that all commands have; hidden ones left out.</summary>
    public static IEnumerable<Option> Of(Command command) =>
        command.Options
            .Concat(command.Parents.OfType<Command>().SelectMany(parent => parent.Options).Where(option => option.Recursive))
            .Where(option => !option.Hidden);
}
