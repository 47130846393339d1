using System.CommandLine;
using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Cli.Writing;
using Journal.Core.Writing.Names;

namespace Journal.Cli.Commands;

/// <summary><c>journal rename</c>: another name for a part, a tool, an operation, a lesson or a build, wherever it stands.</summary>
internal static class RenameCommand
{
    /// <summary>The command, talking to a terminal.</summary>
    public static Command Create(Terminal terminal) =>
        new ExampledCommand("rename", "Another name for a thing, wherever it stands: lists, entries, links in texts, plans. Shows every line first.", "journal rename part head headstock --dry-run")
        {
            Part(terminal),
            Of(terminal, "tool", "A tool.", "journal rename tool lathe small-lathe", (open, old, name) => new Renaming(open.Folder, open.Journal).Tool(old, name)),
            Of(terminal, "operation", "An operation that you added in journal.yaml.", "journal rename operation gilding gold-leaf", (open, old, name) => new Renaming(open.Folder, open.Journal).Operation(old, name)),
            Of(terminal, "lesson", "A lesson; one that had no id gets one.", "journal rename lesson lap-last lap-at-the-end", (open, old, name) => new Renaming(open.Folder, open.Journal).Lesson(old, name)),
            Of(terminal, "build", "A build and its folder.", "journal rename build vice machine-vice", (open, old, name) => new Renaming(open.Folder, open.Journal).Build(old, name)),
        };

    private static ExampledCommand Part(Terminal terminal)
    {
        var build = JobOptions.Build();
        var (old, name, changes) = (new Argument<string>("part") { Description = "Its name now; `build/part` names one of another build." }, NewName(), new NameChanges());
        var command = new ExampledCommand("part", "A part of a build.", "journal rename part head headstock") { old, name, build };
        Add(command, changes);
        command.SetAction(asked => changes.Run(asked, terminal, open =>
        {
            var (of, part) = PartOfBuild.Find(open, asked.GetValue(build), asked.GetValue(old)!);
            return new Renaming(open.Folder, open.Journal).Part(of, part, asked.GetValue(name)!);
        }));
        return command;
    }

    private static ExampledCommand Of(Terminal terminal, string what, string description, string example, Func<OpenJournal, string, string, NameOutcome> rename)
    {
        var (old, name, changes) = (new Argument<string>(what) { Description = "Its name now." }, NewName(), new NameChanges());
        var command = new ExampledCommand(what, description, example) { old, name };
        Add(command, changes);
        command.SetAction(asked => changes.Run(asked, terminal, open => rename(open, asked.GetValue(old)!, asked.GetValue(name)!)));
        return command;
    }

    private static Argument<string> NewName() => new("name") { Description = "Its name from now on." };

    private static void Add(Command command, NameChanges changes)
    {
        foreach (var option in changes.Options)
        {
            command.Add(option);
        }
    }
}
