using System.CommandLine;
using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Core.Checking;
using Journal.Core.Model;

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

    /// <summary>The figures for other programs, as JSON. Fields may be added but keep their names: others rely on them.</summary>
    public required Func<MakerJournal, object> Json { get; init; }

    /// <summary>Options of its own, which narrow the figures down.</summary>
    public IReadOnlyList<Option> Options { get; init; } = [];

    /// <summary>What stands behind its name.</summary>
    public IReadOnlyList<Argument> Arguments { get; init; } = [];

    /// <summary>By what the journal is narrowed down before its figures are worked out.</summary>
    public Narrows By { get; init; }

    /// <summary>The command as those options narrow it; null where there are none.</summary>
    public Func<ParseResult, FigureCommand>? Narrowed { get; init; }

    /// <summary>Why its options cannot be meant, in a sentence, now that the journal is read; null where all is well.</summary>
    public Func<MakerJournal, string?> Objection { get; init; } = _ => null;

    /// <summary>The command with what the journal’s folder holds beside the journal; null where it asks for none of that.</summary>
    public Func<string, FigureCommand, FigureCommand>? Beside { get; init; }

    /// <summary>What people are told besides, of what the journal’s folder holds beside the journal.</summary>
    public Func<string, MakerJournal, IEnumerable<string>> Besides { get; init; } = (_, _) => [];

    /// <summary>The command, talking to a terminal.</summary>
    public Command Create(Terminal terminal)
    {
        var (folder, format, today) = (InOption.Create(), FormatOption.Create(), TodayOption.Create(hidden: true));
        var excerpt = new ExcerptOptions(By);
        var command = new ExampledCommand(Name, Description, Example);
        foreach (var argument in Arguments)
        {
            command.Add(argument);
        }

        foreach (var option in Options.Concat(excerpt.Options).Concat([folder, format, today]))
        {
            command.Add(option);
        }

        command.SetAction(asked => (Narrowed?.Invoke(asked) ?? this).Run(
            asked.GetValue(folder),
            asked.GetValue(format),
            asked.GetValue(today),
            journal => excerpt.Objection(asked, journal),
            journal => excerpt.Of(asked, journal),
            terminal));
        return command;
    }

    private int Run(string? named, OutputFormat format, DateOnly? today, Func<MakerJournal, string?> objection, Func<MakerJournal, MakerJournal> piece, Terminal terminal)
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
            if ((objection(journal) ?? Objection(journal)) is { } wrong)
            {
                terminal.Complain($"{wrong} See `journal {Name} --help`.");
                return ExitStatus.WrongUse;
            }

            (Beside?.Invoke(folder, this) ?? this).Show(piece(journal), format, terminal);
            terminal.Out.Flush();
            foreach (var told in format == OutputFormat.Table ? Besides(folder, journal) : [])
            {
                terminal.Complain(told);
            }
        }

        if (Flaws.Tell(reading, named) is { } flaws)
        {
            terminal.Complain(flaws);
        }

        return reading.IsFlawed ? ExitStatus.Flawed : ExitStatus.Well;
    }

    private void Show(MakerJournal journal, OutputFormat format, Terminal terminal)
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
                terminal.Show(print => Table(journal, print));
                break;
        }
    }
}
