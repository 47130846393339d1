using System.CommandLine;
using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Cli.Tables;
using Journal.Cli.Wording;
using Journal.Core.Checking;
using Journal.Core.Parsing.Problems;
using Journal.Core.Wording;
using Journal.Site.Sending;

namespace Journal.Cli.Commands;

/// <summary><c>journal send</c>: the site to where viewers are.</summary>
internal static class SendCommand
{
    private const string UsualSite = "site";

    private sealed record SendRequest(string Destination, string? Journal, string? Site, bool DryRun, bool TakeOver, bool Verify, DateOnly? Today);

    /// <summary>The command, talking to a terminal.</summary>
    public static Command Create(Terminal terminal)
    {
        var destination = new Argument<string>("destination") { Description = "A name listed under `destinations` in journal.yaml." };
        var (folder, today) = (InOption.Create(), TodayOption.Create(hidden: true));
        var site = new Option<string?>("--site") { Description = "The published site. Default: `site` in this folder, in the journal, or beside it.", HelpName = "folder" };
        var dryRun = new Option<bool>("--dry-run") { Description = "Only show what would be sent and deleted." };
        var verify = new Option<bool>("--verify") { Description = "Check what is at the destination, and send again what is missing there." };
        var takeOver = new Option<bool>("--take-over") { Description = "Overwrite files there that no earlier send put there, or another journal’s site." };
        var command = new ExampledCommand("send", "Send the published site to where viewers are; only changes are sent.", "journal send disk --dry-run")
        {
            destination, site, dryRun, verify, takeOver, folder, today,
        };
        command.SetAction((asked, cancellation) => Run(
            new SendRequest(asked.GetRequiredValue(destination), asked.GetValue(folder), asked.GetValue(site), asked.GetValue(dryRun), asked.GetValue(takeOver), asked.GetValue(verify), asked.GetValue(today)),
            terminal,
            cancellation));
        return command;
    }

    private static async Task<int> Run(SendRequest request, Terminal terminal, CancellationToken cancellation)
    {
        if (JournalPlace.Find(request.Journal, terminal.Folder) is not { } folder)
        {
            terminal.Complain(JournalPlace.WhyNot(request.Journal, terminal.Folder));
            return ExitStatus.WrongUse;
        }

        terminal.IfStopped(() => "Nothing was sent.");
        var today = request.Today ?? terminal.TodayAt(folder);
        var reading = JournalReader.Read(folder, today);
        if (reading.HasErrors || reading.Journal is null)
        {
            var errors = reading with { Problems = [.. reading.Problems.Where(problem => problem.Severity == Severity.Error)] };
            ProblemList.Print(folder, errors, new Printout(terminal with { Out = terminal.Error }));
            terminal.Complain("Nothing was sent.");
            return ExitStatus.Flawed;
        }

        if (reading.Journal.Destinations.FirstOrDefault(one => one.Name.Value == request.Destination) is not { } destination)
        {
            var known = reading.Journal.Destinations.Select(one => one.Name.Value).ToList();
            terminal.Complain($"There is no destination `{request.Destination}` in journal.yaml. {(known.Count == 0 ? "Write one under `destinations`, such as `disk: {folder: /srv/www/bench}`." : Suggestion.For(request.Destination, known, "destinations"))}");
            return ExitStatus.WrongUse;
        }

        var site = SiteOf(request, folder, terminal);
        if (SiteToSend.WhyNot(folder, reading.Journal, site) is { } reason)
        {
            terminal.Complain($"{reason} Nothing was sent.");
            return ExitStatus.NotFinished;
        }

        var order = new SendOrder(folder, site, destination)
        {
            Id = reading.Journal.Id,
            Title = reading.Journal.Title,
            DryRun = request.DryRun,
            TakeOver = request.TakeOver,
            Verify = request.Verify,
            Maker = reading.Journal.Maker,
            Today = today,
            Progress = new SendProgressLine(terminal),
        };
        terminal.IfStopped(() => "Readers see whole pages; the next send continues from here.");
        return await Send(order, reading, terminal, cancellation);
    }

    private static async Task<int> Send(SendOrder order, JournalReading reading, Terminal terminal, CancellationToken cancellation)
    {
        try
        {
            var report = await Sender.SendAsync(order, cancellation);
            Tell(order, report, new Printout(terminal));
            return reading.IsFlawed ? ExitStatus.Flawed : ExitStatus.Well;
        }
        catch (SendingException e)
        {
            terminal.Complain(e.Message);
            return ExitStatus.NotFinished;
        }
    }

    private static void Tell(SendOrder order, SendReport report, Printout print)
    {
        if (report.Files.Count + report.Deleted.Count == 0)
        {
            print.Say($"`{order.Destination.Name}` is up to date; nothing to send.");
            return;
        }

        if (order.DryRun)
        {
            foreach (var line in report.Files.Select(address => $"send  {address}").Concat(report.Deleted.Select(address => $"delete  {address}")))
            {
                print.Put(line);
            }
        }

        var takenAway = report.Deleted.Count == 0 ? "" : $", and {(order.DryRun ? "would delete" : "deleted")} {Count.Of(report.Deleted.Count, "file")} that the site no longer has";
        print.Say($"{(order.DryRun ? "Would send" : "Sent")} {Count.Of(report.Files.Count, "file")}, {Bytes.InWords(report.Bytes)}, to `{order.Destination.Name}`{takenAway}.");
    }

    // As given, else where a publish usually puts it: here, in the journal, beside the journal.
    private static string SiteOf(SendRequest request, string journal, Terminal terminal)
    {
        if (request.Site is { } given)
        {
            return Path.TrimEndingDirectorySeparator(Path.GetFullPath(given, terminal.Folder));
        }

        string[] usual = [.. new[] { terminal.Folder, journal, Path.GetDirectoryName(journal) ?? journal }.Select(place => Path.Combine(place, UsualSite))];
        return usual.FirstOrDefault(place => File.Exists(Path.Combine(place, SiteToSend.Mark))) ?? usual[0];
    }
}
