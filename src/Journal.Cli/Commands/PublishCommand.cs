using System.CommandLine;
using System.Diagnostics;
using System.Globalization;
using Journal.Cli.Asking;
using Journal.Cli.Output;
using Journal.Cli.Tables;
using Journal.Cli.Wording;
using Journal.Core.Reading;
using Journal.Site;
using Journal.Site.Output;
using Journal.Site.Templates;

namespace Journal.Cli.Commands;

/// <summary><c>journal publish</c>: the site.</summary>
internal static class PublishCommand
{
    /// <summary>The command, talking to a terminal.</summary>
    public static Command Create(Terminal terminal)
    {
        var (folder, today) = (InOption.Create(), TodayOption.Create(hidden: true));
        var to = new Option<string>("--to") { Description = "The site's folder: a new one, an empty one, or one published before.", HelpName = "folder", Required = true };
        var template = new Option<string?>("--template") { Description = "Your own copy of site-template, for another look.", HelpName = "folder" };
        var command = new ExampledCommand("publish", "The journal as a site of static files.", "journal publish --to site") { to, folder, template, today };
        command.SetAction((asked, cancellation) => Task.FromResult(Run(
            asked.GetValue(folder), asked.GetValue(to)!, asked.GetValue(template), asked.GetValue(today) ?? terminal.Today, terminal, cancellation)));
        return command;
    }

    private static int Run(string? named, string to, string? template, DateOnly today, Terminal terminal, CancellationToken cancellation)
    {
        var clock = Stopwatch.StartNew();
        if (JournalPlace.Find(named, terminal.Folder) is not { } folder)
        {
            terminal.Complain(JournalPlace.WhyNot(named, terminal.Folder));
            return ExitStatus.WrongUse;
        }

        var reading = JournalReader.Read(folder, today);
        var problems = new Printout(terminal with { Out = terminal.Error });
        if (reading.Problems.Count > 0)
        {
            ProblemList.Print(folder, reading, problems);
        }

        if (reading.HasErrors || reading.Journal is null)
        {
            terminal.Complain("Nothing was published.");
            return ExitStatus.Flawed;
        }

        try
        {
            var order = new PublishOrder(folder, reading.Journal, Path.GetFullPath(to, terminal.Folder), today, template is null ? null : Path.GetFullPath(template, terminal.Folder))
            {
                Progress = new PictureProgressLine(terminal),
            };
            var published = Publisher.Publish(order, cancellation);
            if (published.Problems.Count > 0)
            {
                ProblemList.Print(folder, reading with { Problems = published.Problems }, problems);
            }

            Tell(reading, published, clock.Elapsed, terminal);
            return reading.IsFlawed || published.Problems.Count > 0 ? ExitStatus.Flawed : ExitStatus.Well;
        }
        catch (Exception e) when (e is PublishingException or TemplateException or IOException or UnauthorizedAccessException)
        {
            terminal.Complain($"{e.Message}");
            terminal.Complain("Nothing was published; a site that stood there stands as it was.");
            return ExitStatus.NotFinished;
        }
        catch (OperationCanceledException)
        {
            terminal.Complain("Stopped. Nothing was published; a site that stood there stands as it was.");
            return ExitStatus.NotFinished;
        }
    }

    private static void Tell(JournalReading reading, Published published, TimeSpan took, Terminal terminal)
    {
        var entries = reading.Journal!.Builds.Sum(build => build.Entries.Count);
        var changed = published.Changed == 0 ? "nothing had changed" : published.Changed == published.Files ? "all new" : $"{Count.Of(published.Changed, "file")} written anew";
        var print = new Printout(terminal);
        print.Say($"Published {Count.Of(reading.Journal.Builds.Count, "build")} and {Count.Of(entries, "entry", "entries")} as {Count.Of(published.Pages, "page")} and {Count.Of(published.Pictures, "picture")}; {changed}.");
        print.Say(string.Create(CultureInfo.InvariantCulture, $"It took {took.TotalSeconds:0.0} s."));
        print.Put($"Open {published.FrontPage}");
    }
}
