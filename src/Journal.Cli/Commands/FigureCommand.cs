using System.CommandLine;
using Journal.Cli.Asking;
using Journal.Cli.Output;
using Journal.Core.Model;
using Journal.Core.Reading;

namespace Journal.Cli.Commands;

/// <summary>A command that reads the journal and shows figures of it in one of three forms.</summary>
internal sealed record FigureCommand
{
    /// <summary>The word that calls it.</summary>
    public required string Name { get; init; }

    /// <summary>One sentence on what it does.</summary>
    public required string Description { get; init; }

    /// <summary>A call that a maker could type as it stands.</summary>
    public required string Example { get; init; }

    /// <summary>The figures for people.</summary>
    public required Action<MakerJournal, Printout> Table { get; init; }

    /// <summary>The figures for spreadsheets.</summary>
    public required Func<MakerJournal, CsvTable> Csv { get; init; }

    /// <summary>The figures for programs, in the shape of DESIGN section 7.</summary>
    public required Func<MakerJournal, object> Json { get; init; }

    /// <summary>The command, talking to a terminal.</summary>
    public Command Create(Terminal terminal)
    {
        var (folder, format, today) = (InOption.Create(), FormatOption.Create(), TodayOption.Create(hidden: true));
        var command = new ExampledCommand(Name, Description, Example) { folder, format, today };
        command.SetAction(asked => Run(asked.GetValue(folder), asked.GetValue(today), terminal, journal => Show(journal, asked.GetValue(format), terminal)));
        return command;
    }

    /// <summary>Reads the journal and shows figures of it; says what is missing from them.</summary>
    /// <param name="named">The folder as the maker named it; null where none was.</param>
    /// <param name="today">The date to take as today; null for none.</param>
    /// <param name="terminal">Where to.</param>
    /// <param name="show">Shows the figures; or says what in the question the journal does not know.</param>
    public static int Run(string? named, DateOnly? today, Terminal terminal, Func<MakerJournal, string?> show)
    {
        if (JournalPlace.Find(named, terminal.Folder) is not { } folder)
        {
            terminal.Complain(JournalPlace.WhyNot(named, terminal.Folder));
            return ExitStatus.WrongUse;
        }

        // Figures do not read the clock: no entry lies in the future here. `journal check` tells those that do.
        var reading = JournalReader.Read(folder, today ?? DateOnly.MaxValue);
        if (reading.Journal is { } journal)
        {
            if (show(journal) is { } notUnderstood)
            {
                terminal.Complain(notUnderstood);
                return ExitStatus.WrongUse;
            }

            terminal.Out.Flush();
        }

        if (Flaws.Tell(reading, named) is { } flaws)
        {
            terminal.Complain(flaws);
        }

        return reading.IsFlawed ? ExitStatus.Flawed : ExitStatus.Well;
    }

    /// <summary>Shows the figures in one of the three forms; nothing is left to complain of.</summary>
    public string? Show(MakerJournal journal, OutputFormat format, Terminal terminal)
    {
        switch (format)
        {
            case OutputFormat.Json:
                Output.Json.Write(Json(journal), terminal.Out);
                break;
            case OutputFormat.Csv:
                Csv(journal).WriteTo(terminal.Out);
                break;
            default:
                Table(journal, new Printout(terminal));
                break;
        }

        return null;
    }
}
