using System.CommandLine;
using System.Diagnostics;
using System.Globalization;
using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Cli.Tables;
using Journal.Cli.Wording;
using Journal.Core.Parsing.Problems;
using Journal.Core.Wording;
using Journal.Site.Output;
using Journal.Site.Publishing;
using Journal.Site.Sending;
using Journal.Site.Templates;

namespace Journal.Cli.Commands;

/// <summary><c>journal publish</c>: the site.</summary>
internal static class PublishCommand
{
    private const int FewWarnings = 8;

    /// <summary>The command, talking to a terminal.</summary>
    public static Command Create(Terminal terminal)
    {
        var (folder, today) = (InOption.Create(), TodayOption.Create(hidden: true));
        var to = new Option<string>("--to") { Description = "The site's folder: a new one, an empty one, or one published to before.", HelpName = "folder", Required = true };
        var template = new Option<string?>("--template") { Description = "Your own copy of site-template, to change the look.", HelpName = "folder" };
        var command = new ExampledCommand("publish", "Make the site: static files from the journal.", "journal publish --to site") { to, folder, template, today };
        command.SetAction((asked, cancellation) => Task.FromResult(Run(
            asked.GetValue(folder), asked.GetValue(to)!, asked.GetValue(template), asked.GetValue(today), terminal, cancellation)));
        return command;
    }

    private static int Run(string? named, string to, string? template, DateOnly? today, Terminal terminal, CancellationToken cancellation)
    {
        var clock = Stopwatch.StartNew();
        if (JournalPlace.Find(named, terminal.Folder) is not { } folder)
        {
            terminal.Complain(JournalPlace.WhyNot(named, terminal.Folder));
            return ExitStatus.WrongUse;
        }

        var problems = new Printout(terminal with { Out = terminal.Error });
        var site = Path.GetFullPath(to, terminal.Folder);
        terminal.IfStopped(WhatStands(site));
        var order = new PublishOrder(folder, site, today ?? terminal.TodayAt(folder), template is null ? null : Path.GetFullPath(template, terminal.Folder))
        {
            Progress = new PictureProgressLine(terminal),
            Read = found => Print(folder, found, problems),
        };
        try
        {
            var outcome = SitePublisher.Publish(order, cancellation);
            if (outcome.Published is not { } published)
            {
                terminal.Complain("Nothing was published.");
                return ExitStatus.Flawed;
            }

            Print(folder, published.Problems, problems);
            Tell(published, clock.Elapsed, terminal);
            return outcome.IsFlawed ? ExitStatus.Flawed : ExitStatus.Well;
        }
        catch (Exception e) when (e is PublishingException or TemplateException or IOException or UnauthorizedAccessException)
        {
            terminal.Complain(DiskTrouble.InWords(e));
            terminal.Complain("Nothing was published; the existing site is unchanged.");
            return ExitStatus.NotFinished;
        }
    }

    // Many warnings, the same at every publish, would push what matters off a phone.
    private static void Print(string folder, IReadOnlyList<Problem> found, Printout problems)
    {
        var warnings = found.Count(problem => problem.Severity == Severity.Warning);
        var shown = warnings > FewWarnings ? [.. found.Where(problem => problem.Severity != Severity.Warning)] : found;
        if (shown.Count > 0)
        {
            ProblemList.Print(folder, shown, problems);
        }

        if (warnings > FewWarnings)
        {
            problems.Say($"{Casing.Capital(Count.Of(warnings, "warning"))}; see `journal check`.");
        }
    }

    // The list of a site's files is written anew with every publish that changes something, and comes in with it.
    private static Func<string> WhatStands(string site)
    {
        var list = Path.Combine(site, SiteToSend.Mark);
        var before = TimeOf(list);
        return () => TimeOf(list) == before
            ? "Nothing was published; the existing site is unchanged."
            : $"The new site is complete in {site}.";
    }

    // Null where it may not be looked at; then there is no publishing either.
    private static DateTime? TimeOf(string file)
    {
        try
        {
            return File.GetLastWriteTimeUtc(file);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private static void Tell(Published published, TimeSpan took, Terminal terminal)
    {
        var changed = published.Changed == 0 ? "nothing changed" : published.Changed == published.Files ? "all new" : $"{Count.Of(published.Changed, "file")} rewritten";
        var print = new Printout(terminal);
        print.Say($"Published {Count.Of(published.Builds, "build")} and {Count.Of(published.Entries, "entry", "entries")} as {Count.Of(published.Pages, "page")} and {Count.Of(published.Pictures, "picture")}; {changed}.");
        print.Say(string.Create(CultureInfo.InvariantCulture, $"It took {took.TotalSeconds:0.0} s."));
        print.Put($"Open {published.FrontPage}");
    }
}
