using System.CommandLine;
using System.Globalization;
using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Core.Writing.Bench;
using Journal.Core.Writing.Names;
using Journal.Core.Wording;
using Journal.Core.Parsing.Text;

namespace Journal.Cli.Writing;

/// <summary>Shows a change of names line by line, asks where someone can answer, and makes it: all of it or nothing.</summary>
internal sealed class NameChanges
{
    private readonly Option<bool> dryRun = new("--dry-run") { Description = "Show the lines that would change, and change nothing." };
    private readonly Option<bool> yes = new("--yes") { Description = "Do not ask." };
    private readonly Option<string?> folder = InOption.Create();

    /// <summary>The options, to be added to a command.</summary>
    public IReadOnlyList<Option> Options => [dryRun, yes, folder];

    /// <summary>Works a change out, shows it and makes it.</summary>
    public int Run(ParseResult asked, Terminal terminal, Func<OpenJournal, NameOutcome> workOut) => OpenJournal.With(asked.GetValue(folder), terminal, open =>
    {
        var outcome = workOut(open);
        if (outcome.Change is not { } change)
        {
            throw new UsageException(outcome.WhyNot);
        }

        terminal.Show(print => Show(change, print));
        terminal.Out.Flush();
        var size = $"{Count.Of(change.LineCount, "line")} in {Count.Of(change.Files.Count, "file")}";
        if (asked.GetValue(dryRun))
        {
            terminal.Complain($"{size} would change; nothing was changed.");
            return ExitStatus.Well;
        }

        if (terminal.CanAsk && !asked.GetValue(yes) && new Questions(terminal).Line($"Change {size}? (y; Enter: no)") is not ("y" or "Y" or "yes"))
        {
            terminal.Complain("Nothing was changed.");
            return ExitStatus.Well;
        }

        Make(open, change, terminal);
        terminal.Complain($"{size} changed.");
        return ExitStatus.Well;
    });

    private static void Make(OpenJournal open, NameChange change, Terminal terminal)
    {
        using var slate = SlateFile.Take(open.Folder, terminal.Complain);
        if (UnfinishedChange.Make(open.Folder, change, slate) is { } changed)
        {
            throw new UsageException($"{changed} was changed meanwhile; nothing was done. Give the command again.");
        }
    }

    private static void Show(NameChange change, Printout print)
    {
        foreach (var file in change.Files)
        {
            print.Put(Printable.Of(file.File), Ink.Strong);
            var lines = file.Lines;
            var width = lines.Max(one => one.First + one.Old.Count).ToString(CultureInfo.InvariantCulture).Length;
            foreach (var one in lines)
            {
                Put(print, one.Old, one.First, width, '-');
                Put(print, one.New, one.First, width, '+');
            }
        }

        foreach (var move in change.Moves)
        {
            print.Put(Printable.Of($"{move.From} becomes {move.To}"), Ink.Strong);
        }
    }

    private static void Put(Printout print, IReadOnlyList<string> lines, int first, int width, char sign)
    {
        foreach (var (i, line) in lines.Index())
        {
            var number = (first + i).ToString(CultureInfo.InvariantCulture).PadLeft(width);
            print.Put(Printable.Of($"  {number} {sign} {line}"), sign == '-' ? Ink.Bad : Ink.Good);
        }
    }
}
