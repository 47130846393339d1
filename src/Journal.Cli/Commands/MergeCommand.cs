using System.CommandLine;
using Journal.Cli.Output;
using Journal.Cli.Writing;
using Journal.Core.Writing.Names;

namespace Journal.Cli.Commands;

/// <summary><c>journal merge tool</c>: one tool that was written by two names.</summary>
internal static class MergeCommand
{
    /// <summary>The command, talking to a terminal.</summary>
    public static Command Create(Terminal terminal)
    {
        var (old, into, changes) = (new Argument<string>("tool") { Description = "The name that goes." }, new Argument<string>("into") { Description = "The name that stays." }, new NameChanges());
        var tool = new ExampledCommand("tool", "One tool that was written by two names; the line that goes stays in the crib as a remark.", "journal merge tool boring-head lathe") { old, into };
        foreach (var option in changes.Options)
        {
            tool.Add(option);
        }

        tool.SetAction(asked => changes.Run(asked, terminal, open => new Merging(open.Folder, open.Journal).Tool(asked.GetValue(old)!, asked.GetValue(into)!)));
        return new ExampledCommand("merge", "One thing that was written by two names. Shows every line first.", "journal merge tool boring-head lathe --dry-run") { tool };
    }
}
