using System.CommandLine;
using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Core.Checking;
using Journal.Core.Model;
using Journal.Core.Wording;
using Journal.Core.Writing;

namespace Journal.Cli.Commands;

/// <summary><c>journal begin</c>: the plan becomes a build.</summary>
internal static class BeginCommand
{
    /// <summary>The command, talking to a terminal.</summary>
    public static Command Create(Terminal terminal)
    {
        var name = new Argument<string>("plan") { Description = "The plan: its file name without .yaml." };
        var (folder, today) = (InOption.Create(), TodayOption.Create(hidden: false));
        var command = new ExampledCommand("begin", "Turn a plan into a build; its guesses are kept as they are.", "journal begin bench-shaper") { name, folder, today };
        command.SetAction(asked => Run(asked.GetRequiredValue(name), asked.GetValue(folder), asked.GetValue(today) ?? terminal.Today, terminal));
        return command;
    }

    private static int Run(string name, string? named, DateOnly today, Terminal terminal)
    {
        if (JournalPlace.Find(named, terminal.Folder) is not { } folder)
        {
            terminal.Complain(JournalPlace.WhyNot(named, terminal.Folder));
            return ExitStatus.WrongUse;
        }

        var reading = JournalReader.Read(folder, DateOnly.MaxValue);
        if (EstimateSubjects.TellErrors(name, folder, reading, terminal))
        {
            terminal.Complain($"Correct that first; then begin {name}. Nothing was written.");
            return ExitStatus.Flawed;
        }

        if (reading.Journal is not { } journal)
        {
            terminal.Complain(Flaws.Tell(reading, named)!);
            return ExitStatus.Flawed;
        }

        if (journal.PlanNamed(name) is not { } plan)
        {
            terminal.Complain(journal.BuildNamed(name) is { } build ? $"{build.Title} is already a build."
                : EstimateSubjects.NoneNamed(name, "plan", [.. journal.Plans.Where(one => journal.BegunAs(one) is null).Select(one => one.Id.Value)]));
            return ExitStatus.WrongUse;
        }

        var outcome = Beginning.Of(folder, journal, plan, today);
        if (outcome.Refusal is { } why)
        {
            terminal.Complain(why);
            return ExitStatus.WrongUse;
        }

        terminal.IfStopped(() => $"The build was created in {outcome.File}.");
        Tell(plan, outcome.File!, new Printout(terminal));
        return ExitStatus.Well;
    }

    private static void Tell(Plan plan, string file, Printout print)
    {
        print.Say($"Begun: {plan.Title}, {Count.Of(plan.Parts.Count, "part")}, in {file}.");
        print.Say("Your guesses are kept as they were. If you know better later, add a `reguess` beside a guess; both are shown.");
        print.Say($"{plan.File} stays as a record of the plan; from now on `journal estimate {plan.Id}` means the build.");
        if (plan.Publish != Publication.Always)
        {
            print.Say("The plan was not public, but a build always is: its page and parts list will be on the site when you publish.", Ink.Odd);
        }
    }
}
