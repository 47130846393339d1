using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>What was worked with (docs/figures.md, Tooling).</summary>
/// <param name="Tools">The crib in its order, tools that entries define, then tools that jobs merely mention, by first mention.</param>
/// <param name="Builds">What each build needs, by build.</param>
public sealed record Tooling(IReadOnlyList<ToolFigure> Tools, IReadOnlyList<BuildTooling> Builds)
{
    /// <summary>What all tools cost, in the journal's currency; those without a price count nothing.</summary>
    public decimal Cost => Tools.Sum(tool => tool.Cost ?? 0);

    /// <summary>The time that making tools, jigs and fixtures took.</summary>
    public Minutes MinutesToMake => Tools.Sum(tool => tool.MinutesToMake);

    /// <summary>The tooling of a journal.</summary>
    public static Tooling Of(MakerJournal journal)
    {
        List<ToolJob> jobs = [.. journal.Entries.SelectMany(ToolJob.Of)];
        var byTool = jobs.ToLookup(job => job.Tool);
        var bought = journal.Entries.SelectMany(entry => entry.Bought)
            .Where(purchase => purchase.ForTool is not null)
            .ToLookup(purchase => purchase.ForTool!.Value, purchase => purchase.Cost);
        var tools = journal.Tools.DistinctBy(tool => tool.Id).ToList();
        var listed = tools.Select(tool => tool.Id).ToHashSet();
        var unlisted = jobs.Select(job => job.Tool).Distinct().Where(id => !listed.Contains(id))
            .Select(id => new Tool { Id = id, Title = id.ToTitle(), IsListed = false });
        List<ToolFigure> figures = [.. tools.Concat(unlisted).Select(tool => ToolFigure.Of(tool, [.. byTool[tool.Id]], [.. bought[tool.Id]]))];
        return new Tooling(figures, BuildTooling.Of(journal, figures, jobs));
    }
}
