using System.CommandLine;
using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Core.Writing;
using Journal.Core.Writing.Bench;

namespace Journal.Cli.Commands;

/// <summary><c>journal start</c>: a new journal with one example build.</summary>
internal static class StartCommand
{
    /// <summary>The command, talking to a terminal.</summary>
    public static Command Create(Terminal terminal)
    {
        var folder = new Argument<string>("folder") { Description = "A new or empty folder." };
        var title = new Option<string>("--title") { Description = "Title, shown at the top of every page.", HelpName = "words", DefaultValueFactory = _ => "My bench book" };
        var today = TodayOption.Create(hidden: true);
        var command = new ExampledCommand("start", "Start a new journal with one small example build.", "journal start the-lean-to") { folder, title, today };
        command.SetAction(asked => Start(asked.GetValue(folder)!, asked.GetValue(title)!, asked.GetValue(today), terminal));
        return command;
    }

    private static int Start(string named, string title, DateOnly? today, Terminal terminal)
    {
        if (string.IsNullOrWhiteSpace(title))
        {
            terminal.Complain("`--title` needs a value; or leave it out. Nothing was written.");
            return ExitStatus.WrongUse;
        }

        var folder = Path.GetFullPath(named, terminal.Folder);
        if (File.Exists(folder) || (Directory.Exists(folder) && Directory.EnumerateFileSystemEntries(folder).Any()))
        {
            terminal.Complain($"{folder} is not empty. Give a new folder. Nothing was written.");
            return ExitStatus.WrongUse;
        }

        terminal.IfStopped(() => $"No file in {folder} is half-written. Empty the folder and start again.");
        var zone = ZoneOf(TimeZoneInfo.Local);
        NewJournal.Write(folder, title, today ?? BenchClock.Evening(TimeZoneInfo.ConvertTime(terminal.Now, TimeZoneInfo.Local).DateTime), zone);
        var print = new Printout(terminal);
        print.Say($"New journal in {folder}. Comments in its files explain each key; the tap wrench is an example build.");
        print.Put($"  cd {(folder.Contains(' ', StringComparison.Ordinal) ? $"\"{folder}\"" : folder)}");
        print.Put("  journal next");
        print.Put("  journal publish --to site");
        return ExitStatus.Well;
    }

    // The machine's own zone by its IANA name; Universal Time where it has none.
    private static string ZoneOf(TimeZoneInfo zone) =>
        zone.Id.Contains('/', StringComparison.Ordinal) ? zone.Id
            : TimeZoneInfo.TryConvertWindowsIdToIanaId(zone.Id, out var name) ? name
            : "Etc/UTC";
}
