using System.CommandLine;
using Journal.Cli.Output;

namespace Journal.Cli.Commands;

/// <summary>Every command of the program, in the order of its help: one file to a command, listed here.</summary>
internal static class AllCommands
{
    /// <summary>The commands, talking to a terminal.</summary>
    public static IEnumerable<Command> Create(Terminal terminal) =>
    [
        StartCommand.Create(terminal),
        WriteCommand.Create(terminal),
        AmendCommand.Create(terminal),
        JotCommand.Create(terminal),
        ProposeCommand.Create(terminal),
        StintCommand.Create(terminal),
        BenchCommand.Create(terminal),
        GatherCommand.Create(terminal),
        AddCommand.Create(terminal),
        RenameCommand.Create(terminal),
        SplitCommand.Create(terminal),
        MergeCommand.Create(terminal),
        NextCommand.Create(terminal),
        FindCommand.Create(terminal),
        ShowCommand.Create(terminal),
        CheckCommand.Create(terminal),
        HoursCommand.Create(terminal),
        TimelineCommand.Create(terminal),
        LessonsCommand.Create(terminal),
        ToolingCommand.Create(terminal),
        CostsCommand.Create(terminal),
        ReadingsCommand.Create(terminal),
        SettingsCommand.Create(terminal),
        EstimateCommand.Create(terminal),
        OrderCommand.Create(terminal),
        BeginCommand.Create(terminal),
        TakeInCommand.Create(terminal),
        PublishCommand.Create(terminal),
        PreviewCommand.Create(terminal),
        SendCommand.Create(terminal),
        WordsCommand.Create(terminal),
        CompletionsCommand.Create(terminal),
    ];
}
