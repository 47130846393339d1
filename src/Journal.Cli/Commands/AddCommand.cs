using System.CommandLine;
using Journal.Cli.Commands.Adding;
using Journal.Cli.Output;

namespace Journal.Cli.Commands;

/// <summary><c>journal add</c>: a build, a plan, a part or a tool, as a line in the right file.</summary>
internal static class AddCommand
{
    /// <summary>The command, talking to a terminal.</summary>
    public static Command Create(Terminal terminal) =>
        new ExampledCommand("add", "A build, a plan, a part or a tool: a line in the right file, its neighbours untouched.", "journal add part lever --quantity 2 --material brass")
        {
            AddBuild.Create(terminal), AddPlan.Create(terminal), AddPart.Create(terminal), AddTool.Create(terminal),
        };
}
