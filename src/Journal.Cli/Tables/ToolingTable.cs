using Journal.Cli.Output;
using Journal.Cli.Wording;
using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Wording;

namespace Journal.Cli.Tables;

/// <summary>What was worked with, for people.</summary>
internal static class ToolingTable
{
    /// <summary>A lead, the tools with the most used first, and what each build needs.</summary>
    public static void Print(MakerJournal journal, Tooling tooling, Printout print)
    {
        var titles = new TitleBook(journal);
        if (tooling.Tools.Count == 0)
        {
            print.Say("No tools yet. List them in tools.yaml, or name them under `tools` in an entry.");
            return;
        }

        var making = tooling.MinutesToMake == Minutes.Zero ? "" : $"; {tooling.MinutesToMake} went into making jigs, fixtures and tools";
        var cost = tooling.Cost == 0 ? "" : $", {Written.Money(tooling.Cost)} {journal.Currency} in all";
        print.Say($"{Count.Of(tooling.Tools.Count, "tool")}{cost}{making}.");
        print.Gap();
        print.Table(
            [Column.Words("Tool"), Column.Words("Got"), Column.Figures("Cost"), Column.Figures("First used"), Column.Figures("Jobs"), Column.Figures("Hours"), Column.Figures("To make")],
            tooling.Tools.OrderByDescending(tool => tool.Minutes).Select(Row),
            ["Total", "", Written.Money(tooling.Cost), "", "", "", Written.Time(tooling.MinutesToMake)]);
        print.Say("Hours are those of all jobs that used the tool; a job with several tools counts for each.", Ink.Faint);
        foreach (var build in tooling.Builds)
        {
            PrintNeeds(build, titles, print);
        }
    }

    private static string[] Row(ToolFigure tool) =>
    [
        tool.Tool.IsListed ? tool.Tool.Title : $"{tool.Tool.Title} (not in the crib)",
        tool.Got?.ToWord() ?? "",
        Written.Money(tool.Cost),
        Written.Date(tool.FirstUsed),
        Count.Cell(tool.Jobs),
        Written.Time(tool.Minutes),
        Written.Time(tool.MinutesToMake),
    ];

    private static void PrintNeeds(BuildTooling build, TitleBook titles, Printout print)
    {
        if (build.Essential.Count + build.Handy.Count + build.Workarounds.Count + build.Fixtures.Count == 0)
        {
            return;
        }

        print.Heading($"What you need for: {titles.Of(build.Build)}");
        List(print, "Essential    ", build.Essential, titles);
        List(print, "Handy        ", build.Handy, titles);
        List(print, "Workarounds  ", build.Workarounds, titles);
        foreach (var (i, fixture) in build.Fixtures.Index())
        {
            var parts = string.Join(", ", fixture.Parts.Select(part => titles.Of(new PartRef(build.Build, part))));
            var time = fixture.MinutesToMake == Minutes.Zero ? "" : $", {fixture.MinutesToMake} to make";
            print.Hang(i == 0 ? "Fixtures     " : "             ", $"{titles.Of(fixture.Tool)}{time}{(parts.Length == 0 ? "" : $", for {parts}")}");
        }
    }

    private static void List(Printout print, string label, IReadOnlyList<Id<Tool>> tools, TitleBook titles) =>
        print.Hang(label, string.Join("; ", tools.Select(titles.Of)));
}
