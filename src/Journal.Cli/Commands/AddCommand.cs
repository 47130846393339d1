using System.CommandLine;
using Journal.Cli.Commands.Adding;
using Journal.Cli.Output;

namespace Journal.Cli.Commands;

/// <summary><c>journal add</c>: a build, a plan, a part or a tool, as a line in the right file.</summary>
internal static class AddCommand
{
    /// <summary>The command, talking to a terminal.</summary>
    public static Command Create(Terminal terminal) =>
        new ExampledCommand("add", "Add a build, a plan, a part or a tool; no other line of your files changes.", "journal add part lever --quantity 2 --material brass")
        {
            AddBuild.Create(terminal), AddPlan.Create(terminal), AddPart.Create(terminal), AddTool.Create(terminal),
        };
}
