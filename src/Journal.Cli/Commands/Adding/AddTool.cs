using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Cli.Writing;
using Journal.Core.Model;
using static Journal.Cli.Commands.Adding.Additions;

namespace Journal.Cli.Commands.Adding;

/// <summary><c>journal add tool</c>: a line of the crib.</summary>
internal static class AddTool
{
    /// <summary>The command, talking to a terminal.</summary>
    public static ExampledCommand Create(Terminal terminal)
    {
        var (id, folder, title) = (Id("The tool's id, such as boring-head."), InOption.Create(), Text("--title", "words", "Its title."));
        var (kind, got) = (Text("--kind", "word", "What kind of tool it is, such as gauge."), Text("--got", "word", $"How you got it: {string.Join(", ", EnumNames.All<Got>())}."));
        var (cost, need) = (Number("--cost", "sum", "What it cost."), Text("--need", "word", $"How much you need it: {string.Join(", ", EnumNames.All<Need>())}."));
        var (from, due) = (Text("--borrowed-from", "name", "Whom it is borrowed from; never published."), TodayOption.Named("--due", "The day it is due back, such as 2025-12-01; `journal next` tells you in time."));
        var command = new ExampledCommand("tool", "Add a tool to the crib.", "journal add tool boring-head --kind tool-holding --got bought --cost 85") { id, title, kind, got, cost, need, from, due, folder };
        command.SetAction(asked => OpenJournal.With(asked.GetValue(folder), terminal, open =>
        {
            var name = asked.GetValue(id)!;
            Refuse(open.Journal.Tools.Any(tool => tool.Id.Value == name && tool.IsListed), $"There is already a tool `{name}`.");
            Known(open.Journal.Vocabulary.ToolKinds, asked.GetValue(kind), "kind of tool", "kinds of tools");
            OneOf<Got>(asked.GetValue(got), "--got");
            OneOf<Need>(asked.GetValue(need), "--need");
            return Write(open, terminal, $"Added to the crib: `{name}`.", lines => lines.AddTool([
                ("id", name),
                ("title", asked.GetValue(title)),
                ("kind", asked.GetValue(kind)),
                ("got", asked.GetValue(got) ?? (asked.GetValue(from) is null ? null : Got.Borrowed.ToWord())),
                ("cost", Plain(asked.GetValue(cost))),
                ("need", asked.GetValue(need)),
                ("borrowed-from", asked.GetValue(from)),
                ("due", asked.GetValue(due) is { } day ? Wording.Written.Date(day) : null),
            ]));
        }));
        return command;
    }
}
