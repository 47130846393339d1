using System.CommandLine;
using Journal.Cli.Options;
using Journal.Cli.Output;
using Journal.Cli.Tables;
using Journal.Core.Figures;
using Journal.Core.Model;

namespace Journal.Cli.Commands;

/// <summary><c>journal tooling</c>: what was worked with.</summary>
internal static class ToolingCommand
{
    /// <summary>The command, talking to a terminal.</summary>
    public static Command Create(Terminal terminal) => new FigureCommand
    {
        Name = "tooling",
        Description = "What was used: tools, jigs and fixtures, what they cost, and what each build needs.",
        Example = "journal tooling --format csv > tools.csv",
        By = Narrows.Build | Narrows.Part | Narrows.Dates,
        Table = (journal, print) => ToolingTable.Print(journal, Tooling.Of(journal), print),
        Csv = journal => new CsvTable(
            ["id", "title", "kind", "got", "cost", "firstUsed", "minutes", "jobs", "parts", "operations", "minutesToMake"],
            Tooling.Of(journal).Tools.Select(Row)),
        Json = journal => Shape(Tooling.Of(journal)),
    }.Create(terminal);

    // Ids hold no spaces, so a list of them joined by spaces can be taken apart again.
    private static object?[] Row(ToolFigure tool) =>
    [
        tool.Id, tool.Tool.Title, tool.Tool.Kind, tool.Got?.ToWord(), tool.Cost, tool.FirstUsed, tool.Minutes, tool.Jobs,
        string.Join(' ', tool.Parts), string.Join(' ', tool.Operations), tool.MinutesToMake,
    ];

    private static object Shape(Tooling tooling) => new
    {
        Tools = tooling.Tools.Select(tool => new
        {
            tool.Id,
            tool.Tool.Title,
            tool.Tool.Kind,
            Got = tool.Got?.ToWord(),
            tool.Cost,
            tool.FirstUsed,
            tool.Minutes,
            tool.Jobs,
            Parts = tool.Parts.Select(part => part.ToString()),
            tool.Operations,
            tool.MinutesToMake,
            Need = tool.Tool.Need.ToWord(),
            Listed = tool.Tool.IsListed,
        }),
        Totals = new { tooling.Cost, tooling.MinutesToMake },
        Builds = tooling.Builds.Select(build => new { build.Build, build.Essential, build.Handy, build.Workarounds, build.Fixtures }),
    };
}
