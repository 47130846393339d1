using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>A tool that must go back soon, or should have gone.</summary>
/// <param name="Tool">The tool, with the day it is due.</param>
/// <param name="Days">Days until then; negative once it is overdue.</param>
public sealed record DueTool(Tool Tool, int Days)
{
    /// <summary>How long before the day it is told: a week, the time to make a journey of it.</summary>
    public const int DaysBefore = 7;

    /// <summary>The tools that are due within a week of a day, or overdue by then, the most pressing first.</summary>
    public static IReadOnlyList<DueTool> Of(MakerJournal journal, DateOnly today) =>
    [
        .. journal.Tools.Where(tool => tool.Due is not null)
            .Select(tool => new DueTool(tool, tool.Due!.Value.DayNumber - today.DayNumber))
            .Where(due => due.Days <= DaysBefore)
            .OrderBy(due => due.Days)
            .ThenBy(due => due.Tool.Id),
    ];
}
