using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>A tool and its part in the work.</summary>
/// <param name="Tool">The tool; made up from its id where jobs merely mention it (<see cref="Tool.IsListed"/> is false).</param>
/// <param name="Got">How it came to the shop; made, where jobs made it and the crib does not say.</param>
/// <param name="Cost">Its price in the crib, else what was bought for it; null where neither is known.</param>
/// <param name="FirstUsed">The day of the first job that used it; null for a tool not used yet.</param>
/// <param name="Jobs">How many jobs used it.</param>
/// <param name="Minutes">The time of the jobs that used it: the whole job's, not shared among its tools.</param>
/// <param name="MinutesToMake">The time that making it took; zero for what was not made here.</param>
/// <param name="Builds">The builds that it was used or made in, in the order of the work.</param>
/// <param name="Parts">The parts that it was used on or made for, in the order of the work.</param>
/// <param name="Operations">The operations that it was used for, in the order of the work.</param>
/// <param name="UsedIn">The entries whose jobs used it, in order.</param>
/// <param name="MadeIn">The entries whose jobs made it, in order.</param>
public sealed record ToolFigure(
    Tool Tool,
    Got? Got,
    decimal? Cost,
    DateOnly? FirstUsed,
    int Jobs,
    Minutes Minutes,
    Minutes MinutesToMake,
    IReadOnlyList<Id<Build>> Builds,
    IReadOnlyList<PartRef> Parts,
    IReadOnlyList<Id<Operation>> Operations,
    IReadOnlyList<EntryRef> UsedIn,
    IReadOnlyList<EntryRef> MadeIn)
{
    /// <summary>The tool's id.</summary>
    public Id<Tool> Id => Tool.Id;

    /// <summary>The figure of a tool.</summary>
    /// <param name="tool">The tool.</param>
    /// <param name="jobs">The jobs that used or made it, in the order of the work.</param>
    /// <param name="bought">The prices of what was bought for it in entries, in the journal's currency.</param>
    internal static ToolFigure Of(Tool tool, IReadOnlyList<ToolJob> jobs, IReadOnlyList<decimal> bought)
    {
        var used = jobs.Where(job => job.Used).ToList();
        var making = jobs.Where(job => job.Making is not null).ToList();
        return new ToolFigure(
            tool,
            tool.Got ?? (making.Count > 0 ? Model.Got.Made : null),
            tool.Cost ?? (bought.Count > 0 ? bought.Sum() : null),
            used.Count > 0 ? used[0].Date : null,
            used.Count,
            used.Sum(job => job.Job.Time),
            making.Sum(job => job.Making!.Value),
            [.. jobs.Select(job => job.Entry.Build).Distinct()],
            [.. jobs.SelectMany(job => job.Parts).Distinct()],
            [.. used.SelectMany(job => job.Job.Operations).Distinct()],
            [.. used.Select(job => job.Entry).Distinct()],
            [.. making.Select(job => job.Entry).Distinct()]);
    }
}
