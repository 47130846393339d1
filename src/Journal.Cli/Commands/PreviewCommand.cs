using System.CommandLine;
using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Cli.Wording;
using Journal.Core.Parsing.Problems;
using Journal.Core.Wording;
using Journal.Site.Preview;
using Journal.Site.Serving;

namespace Journal.Cli.Commands;

/// <summary><c>journal preview</c>: the site while you write.</summary>
internal static class PreviewCommand
{
    private const int UsualPort = 8765;

    /// <summary>The command, talking to a terminal.</summary>
    public static Command Create(Terminal terminal)
    {
        var (folder, today) = (InOption.Create(), TodayOption.Create(hidden: true));
        var port = PortOption.Create(UsualPort);
        var template = new Option<string?>("--template") { Description = "Your own copy of site-template, to change the look.", HelpName = "folder" };
        var command = new ExampledCommand("preview", "Show the site on this machine while you write; it updates whenever you save. Ctrl-C ends it.", "journal preview") { port, template, folder, today };
        command.SetAction((asked, cancellation) => Run(
            asked.GetValue(folder), asked.GetValue(port), asked.GetValue(template), asked.GetValue(today), terminal, cancellation));
        return command;
    }

    private static async Task<int> Run(string? named, int? port, string? template, DateOnly? today, Terminal terminal, CancellationToken cancellation)
    {
        if (JournalPlace.Find(named, terminal.Folder) is not { } folder)
        {
            terminal.Complain(JournalPlace.WhyNot(named, terminal.Folder));
            return ExitStatus.WrongUse;
        }

        if (terminal.Stopping is { } stopping)
        {
            // To be stopped is how it ends.
            stopping.Status = ExitStatus.Well;
        }

        var look = template is null ? null : Path.GetFullPath(template, terminal.Folder);
        try
        {
            await using var preview = await Open(folder, today ?? terminal.TodayAt(folder), look, port);
            return await Run(preview, terminal, cancellation);
        }
        catch (PortException e)
        {
            var why = e.IsKeptBySystem ? "is reserved by the system" : "is in use";
            terminal.Complain($"Port {port} {why}. Leave out `--port` to use a free one.");
            return ExitStatus.NotFinished;
        }
    }

    private static async Task<int> Run(SitePreview preview, Terminal terminal, CancellationToken cancellation)
    {
        await preview.Run((times, problems) => Tell(preview, times, problems, terminal), cancellation);
        return ExitStatus.Well;
    }

    private static async Task<SitePreview> Open(string folder, DateOnly today, string? template, int? port)
    {
        try
        {
            return await SitePreview.Start(folder, today, template, port ?? UsualPort);
        }
        catch (PortException) when (port is null)
        {
            return await SitePreview.Start(folder, today, template, port: 0);
        }
    }

    private static void Tell(SitePreview preview, int times, IReadOnlyList<Problem> problems, Terminal terminal)
    {
        if (times == 1)
        {
            terminal.Out.WriteLine(preview.Address);
            terminal.Out.Flush();
            terminal.Complain("Open it in a browser on this machine. Ctrl-C ends it.");
        }

        var counts = problems.Count == 0 ? "no problems" : $"{ProblemCounts.InWords(problems)}; see `journal check`";
        terminal.Complain($"Made {Count.Times(times)}: {counts}.");
    }
}
