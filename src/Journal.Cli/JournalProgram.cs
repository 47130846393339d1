using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using Journal.Cli.Commands;
using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Cli.Wording;

namespace Journal.Cli;

/// <summary>The whole program but for the process around it, so that tests go in by the same door as makers.</summary>
internal static class JournalProgram
{
    /// <summary>Understands what was asked, does it, and says how it ended (<see cref="ExitStatus"/>).</summary>
    public static int Run(IReadOnlyList<string> args, Terminal terminal)
    {
        try
        {
            return Told(Answer(args, terminal), terminal);
        }
        catch (OperationCanceledException) when (terminal.Stopping is { Token.IsCancellationRequested: true } stopping)
        {
            terminal.Complain(stopping.Sentence);
            return stopping.Status;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            terminal.Complain($"Could not finish: {DiskTrouble.InWords(e)}");
            return ExitStatus.NotFinished;
        }
#pragma warning disable CA1031 // Said below.
        catch (Exception) when (args is [var first, ..] && first.StartsWith("[suggest", StringComparison.Ordinal))
#pragma warning restore CA1031
        {
            // The library does not understand every half-typed line; to the tab key there is nothing to say then.
            return ExitStatus.Well;
        }
#pragma warning disable CA1031 // Whatever is left is a fault of ours; a maker gets a sentence, not a stack.
        catch (Exception e)
#pragma warning restore CA1031
        {
            terminal.Complain($"Could not finish, because of a fault in this program: {e.GetType().Name}: {e.Message}");
            terminal.Complain(FaultReport.Write(e, args) is { } report
                ? $"Your files are unchanged. To report this, send {report}; it contains nothing from your journal."
                : "Your files are unchanged. Please report this, with the command that you gave.");
            return ExitStatus.NotFinished;
        }
    }

    private static int Answer(IReadOnlyList<string> args, Terminal terminal)
    {
        // The one question that needs none of the commands; it is asked often, and of every program.
        if (args is ["--version"])
        {
            VersionLine.Write(terminal.Out);
            return ExitStatus.Well;
        }

        if (args.Select(ForeignBytes.In).FirstOrDefault(wrong => wrong is not null) is { } foreign)
        {
            terminal.Complain(foreign);
            return ExitStatus.WrongUse;
        }

        var root = Root(terminal);
        var asked = root.Parse(args.Count > 0 ? args : ["--help"], new ParserConfiguration { ResponseFileTokenReplacer = null });
        if (asked.Errors.Count > 0 && asked.Action is not HelpPage)
        {
            terminal.Complain(WrongUse.Explain(asked));
            return ExitStatus.WrongUse;
        }

        if (asked.CommandResult.Command is ExampledCommand)
        {
            terminal.Stopping?.Watch(asked.Action is AsynchronousCommandLineAction, terminal.Complain);
        }

        // The library hears Ctrl-C only once a command has given back its task, which is too late: see Stopping.
        var configuration = new InvocationConfiguration
        {
            Output = terminal.Out,
            Error = terminal.Error,
            EnableDefaultExceptionHandler = false,
            ProcessTerminationTimeout = null,
        };
        return asked.InvokeAsync(configuration, terminal.Stopping?.Token ?? CancellationToken.None).GetAwaiter().GetResult();
    }

    private static int Told(int status, Terminal terminal)
    {
        terminal.Out.Flush();
        if (terminal.LostResults() is not { } failure)
        {
            return status;
        }

        terminal.Complain($"The results could not be shown: {DiskTrouble.OfOutput(failure)} If the command writes files, they are written; do not repeat it.");
        return ExitStatus.NotFinished;
    }

    private static RootCommand Root(Terminal terminal)
    {
        var root = new RootCommand("Turns a workshop maker's notes into hours, lessons, tooling and a site worth reading.");
        foreach (var command in AllCommands.Create(terminal))
        {
            root.Add(command);
        }

        JournalCompletions.Teach(root, terminal);
        root.Options.Clear();
        root.Add(new HelpOption("--help", "-h") { Action = new HelpPage(terminal), Description = "Show what a command does, with an example." });
        root.Add(new VersionOption { Action = new VersionLine(terminal), Description = "Show the version." });
        return root;
    }
}
