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
        var parts = new Option<string[]>("--part") { Description = "A part that you already know of, by its id; at least one.", HelpName = "id", Required = true, AllowMultipleArgumentsPerToken = true };
        var start = TodayOption.Named("--start", "The day the work will start, such as 2027-01-09.");
        var command = new ExampledCommand("plan", "Add a plan for the next build, to be estimated.", "journal add plan bench-shaper --part bed ram lever") { id, title, parts, start, folder };
        command.SetAction(asked => OpenJournal.With(asked.GetValue(folder), terminal, open =>
        {
            var (name, named) = (asked.GetValue(id)!, asked.GetValue(parts)!);
            Refuse(!Lines.MayNameABuild(name), $"The name `{name}` is reserved by the site or by Windows. Choose another.");
            Refuse(open.Journal.Plans.Any(plan => plan.Id.Value == name), $"There is already a plan `{name}`.");
            Refuse(open.Journal.Builds.Any(build => build.Id.Value == name), $"There is already a build `{name}`, and a plan becomes a build of the same name.");
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
