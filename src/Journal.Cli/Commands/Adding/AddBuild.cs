using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Cli.Writing;
using Journal.Core.Model;
using Journal.Core.Writing;
using static Journal.Cli.Commands.Adding.Additions;

namespace Journal.Cli.Commands.Adding;

/// <summary><c>journal add build</c>: a build of its own folder.</summary>
internal static class AddBuild
{
    /// <summary>The command, talking to a terminal.</summary>
    public static ExampledCommand Create(Terminal terminal)
    {
        var (id, folder, title) = (Id("The build's folder, such as bench-drill."), InOption.Create(), Text("--title", "words", "Its title."));
        var (units, cost) = (Text("--units", "mm|inch", "The unit of its drawings. Default: the journal's."), Number("--cost", "sum", "What the kit cost."));
        var started = TodayOption.Named("--started", "The day it was started, such as 2025-09-06. Default: today.", "--today");
        var command = new ExampledCommand("build", "Add a build, in a folder of its own.", "journal add build bench-drill --title \"Sensitive bench drill\"") { id, title, units, cost, started, folder };
        command.SetAction(asked => OpenJournal.With(asked.GetValue(folder), terminal, open =>
        {
            var name = asked.GetValue(id)!;
            Refuse(!Lines.MayNameABuild(name), $"The name `{name}` is reserved by the site or by Windows. Choose another.");
            Refuse(open.Journal.Builds.Any(build => build.Id.Value == name), $"There is already a build `{name}`.");
            Refuse(asked.GetValue(units) is { } unit && unit is not ("mm" or "inch"), "Units are `mm` or `inch`.");
            var called = asked.GetValue(title) ?? Titles.FromId(name);
            return Write(open, terminal, $"Under way now: {called} (`{name}`).", lines => lines.AddBuild(name, [
                ("title", called),
                ("status", "under-way"),
                ("started", Wording.Written.Date(asked.GetValue(started) ?? open.Clock.Evening(terminal.Now))),
                ("units", asked.GetValue(units)),
                ("cost", Plain(asked.GetValue(cost))),
            ]));
        }));
        return command;
    }
}
