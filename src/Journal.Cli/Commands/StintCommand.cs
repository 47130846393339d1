using System.CommandLine;
using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Cli.Writing;
using Journal.Core.Figures;
using Journal.Core.Wording;
using Journal.Core.Writing.Bench;
using Journal.Core.Writing.Entries;

namespace Journal.Cli.Commands;

/// <summary><c>journal stint</c>: the time at the bench, kept safe between commands.</summary>
internal static class StintCommand
{
    /// <summary>The command, talking to a terminal.</summary>
    public static Command Create(Terminal terminal) =>
        new ExampledCommand("stint", "Time your evening at the bench: begin when you switch the light on, end when you switch it off.", "journal stint begin --part head --operation boring")
        {
            BeginCommand(terminal), PauseCommand(terminal), EndCommand(terminal), ShowCommand(terminal),
        };

    private static ExampledCommand BeginCommand(Terminal terminal)
    {
        var (folder, build, part, operation) = (InOption.Create(), JobOptions.Build(), JobOptions.Part(), JobOptions.Operation());
        var command = new ExampledCommand("begin", "Begin a stint, or continue after a pause.", "journal stint begin --part head --operation boring") { part, operation, build, folder };
        command.SetAction(asked => OnSlate(asked.GetValue(folder), terminal, (open, slate) =>
            Begin(open, slate, asked.GetValue(build), asked.GetValue(part), asked.GetValue(operation), terminal)));
        return command;
    }

    private static ExampledCommand PauseCommand(Terminal terminal)
    {
        var folder = InOption.Create();
        var command = new ExampledCommand("pause", "Stop the clock, for tea or the phone, until `journal stint begin`.", "journal stint pause") { folder };
        command.SetAction(asked => OnSlate(asked.GetValue(folder), terminal, (open, slate) => Pause(open, slate, terminal)));
        return command;
    }

    private static ExampledCommand EndCommand(Terminal terminal)
    {
        var (folder, part, operation) = (InOption.Create(), JobOptions.Part(), JobOptions.Operations());
        part.Description = "The part, if it is not the one that the stint began with.";
        operation.Description = "The operation, likewise; once for each.";
        var at = ClockTime.Option("--at", "When you stopped, such as 22:40. Default: now.");
        var now = new Option<bool>("--now") { Description = "The stint ran overnight because you worked through." };
        var drop = new Option<bool>("--drop") { Description = "Discard the stint; write nothing." };
        var command = new ExampledCommand("end", "End the stint; its job goes into tonight's entry.", "journal stint end --at 22:40") { part, operation, at, now, drop, folder };
        command.SetAction(asked => OnSlate(asked.GetValue(folder), terminal, (open, slate) =>
            End(open, slate, new SaidEnd(asked.GetValue(at), asked.GetValue(now), asked.GetValue(drop)), asked.GetValue(part), asked.GetValue(operation) ?? [], terminal)));
        return command;
    }

    private static ExampledCommand ShowCommand(Terminal terminal)
    {
        var folder = InOption.Create();
        var command = new ExampledCommand("show", "Show whether a stint is running, and for how long.", "journal stint show") { folder };
        command.SetAction(asked => OpenJournal.With(asked.GetValue(folder), terminal, open =>
        {
            new Printout(terminal).Say(Show(open, SlateFile.Peek(open.Folder).Stint, terminal));
            return ExitStatus.Well;
        }));
        return command;
    }

    private static int OnSlate(string? named, Terminal terminal, Func<OpenJournal, SlateFile, int> work) => OpenJournal.With(named, terminal, open =>
    {
        using var slate = SlateFile.Take(open.Folder, terminal.Complain);
        return work(open, slate);
    });

    private static int Begin(OpenJournal open, SlateFile slate, string? named, string? part, string? operation, Terminal terminal)
    {
        if (slate.Slate.Stint is { } running)
        {
            return GoOn(open, slate, running, isOther: named is not null || part is not null || operation is not null, terminal);
        }

        var build = open.Build(named);
        var takenPart = OpenJournal.Part(build, part) ?? (build.Parts.Count == 0 ? null : Usual.Part(build, BuildStateOf(open, build.Id))?.Value ?? "whole");
        var partId = takenPart is null or "whole" ? (Core.Model.Id<Core.Model.Part>?)null : new(takenPart);
        var takenOperation = open.Operation(operation) ?? Usual.Operation(build, partId)?.Value;
        var stint = new Stint { Began = terminal.Now.ToUniversalTime(), Build = build.Id.Value, Part = takenPart, Operation = takenOperation };
        slate.Keep(slate.Slate with { Stint = stint });
        var asLastTime = part is null && operation is null && Usual.IsAsLastTime(build, partId, takenOperation is null ? null : new(takenOperation)) ? ", as last time" : "";
        terminal.Complain($"Begun at {open.Clock.Time(terminal.Now)}: {JobTitle.Of(new TitleBook(open.Journal), stint)}{asLastTime}.");
        return ExitStatus.Well;
    }

    private static int GoOn(OpenJournal open, SlateFile slate, Stint running, bool isOther, Terminal terminal)
    {
        if (isOther || running.IsForgotten(open.Clock, terminal.Now) || !running.IsPaused)
        {
            var goOn = isOther && running.IsPaused ? " To continue it: `journal stint begin` without options." : "";
            throw new UsageException($"{Show(open, running, terminal)} End that one first: `journal stint end`.{goOn}");
        }

        slate.Keep(slate.Slate with { Stint = running.ContinuedAt(terminal.Now.ToUniversalTime()) });
        terminal.Complain($"Continued at {open.Clock.Time(terminal.Now)}, {running.TimeUntil(terminal.Now)} at the bench so far.");
        return ExitStatus.Well;
    }

    private static int Pause(OpenJournal open, SlateFile slate, Terminal terminal)
    {
        if (slate.Slate.Stint is not { IsPaused: false } running || running.IsForgotten(open.Clock, terminal.Now))
        {
            var remedy = slate.Slate.Stint is { IsPaused: false } ? " It was not ended that evening; give the time: `journal stint end --at 22:40`." : "";
            throw new UsageException(Show(open, slate.Slate.Stint, terminal) + remedy);
        }

        slate.Keep(slate.Slate with { Stint = running.PausedAt(terminal.Now.ToUniversalTime()) });
        terminal.Complain($"Paused at {open.Clock.Time(terminal.Now)}, {running.TimeUntil(terminal.Now)} at the bench so far. `journal stint begin` continues it.");
        return ExitStatus.Well;
    }

    private static int End(OpenJournal open, SlateFile slate, SaidEnd said, string? part, IReadOnlyList<string> operations, Terminal terminal)
    {
        if (slate.Slate.Stint is null)
        {
            throw new UsageException(Show(open, null, terminal));
        }

        if (new StintEnding(open, slate, terminal).End(said, part, operations) is { } file)
        {
            terminal.Out.WriteLine(Path.Combine(open.Folder, file.Replace('/', Path.DirectorySeparatorChar)));
        }

        return ExitStatus.Well;
    }

    private static string Show(OpenJournal open, Stint? stint, Terminal terminal) =>
        stint is null ? "No stint is running. Begin one with `journal stint begin`." : StintText.Of(stint, open.Journal, open.Clock, terminal.Now);

    private static BuildState BuildStateOf(OpenJournal open, Core.Model.Id<Core.Model.Build> build) =>
        State.Of(open.Journal).Builds.Single(state => state.Build == build);
}
