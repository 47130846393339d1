using System.CommandLine;
using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Cli.Writing;
using Journal.Core.Model;
using Journal.Core.Writing;
using static Journal.Cli.Commands.Adding.Additions;

namespace Journal.Cli.Commands.Adding;

/// <summary><c>journal add plan</c>: the next build before it begins, as a file of its own.</summary>
internal static class AddPlan
{
    /// <summary>The command, talking to a terminal.</summary>
    public static ExampledCommand Create(Terminal terminal)
    {
        var (id, folder, title) = (Id("The plan's id, such as bench-shaper."), InOption.Create(), Text("--title", "words", "Its title."));
        var parts = new Option<string[]>("--part") { Description = "A part that you can name so far, by its id; at least one.", HelpName = "id", Required = true, AllowMultipleArgumentsPerToken = true };
        var start = TodayOption.Named("--start", "The day the work shall start, such as 2027-01-09.");
        var command = new ExampledCommand("plan", "A plan of the next build, to be estimated.", "journal add plan bench-shaper --part bed ram lever") { id, title, parts, start, folder };
        command.SetAction(asked => OpenJournal.With(asked.GetValue(folder), terminal, open =>
        {
            var (name, named) = (asked.GetValue(id)!, asked.GetValue(parts)!);
            Refuse(!Lines.MayNameABuild(name), $"The name `{name}` is taken: the site, or Windows, uses it for something else. Choose another.");
            Refuse(open.Journal.Plans.Any(plan => plan.Id.Value == name), $"There is a plan `{name}` already.");
            Refuse(open.Journal.Builds.Any(build => build.Id.Value == name), $"There is a build `{name}` already, and a plan becomes a build of its name.");
            foreach (var part in named)
            {
                RefusePart(part);
                Refuse(named.Count(one => one == part) > 1, $"The part `{part}` is named twice.");
            }

            var called = asked.GetValue(title) ?? Titles.FromId(name);
            return Write(open, terminal, $"Planned now: {called} (`{name}`).", lines => lines.AddPlan(
                name,
                [("title", called), ("start", asked.GetValue(start) is { } day ? Wording.Written.Date(day) : null)],
                [.. named.Select(part => (IReadOnlyList<(string, string?)>)[("id", part)])]));
        }));
        return command;
    }
}
