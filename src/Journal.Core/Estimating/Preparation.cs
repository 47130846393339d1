using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Trade;

namespace Journal.Core.Estimating;

/// <summary>What to have ready, and to be careful of, before planned work begins.</summary>
/// <param name="Cautions">Every caution that the planned operations and materials call for, what maims first.</param>
/// <param name="Tools">The tools that jobs with these operations used before, the most used first.</param>
public sealed record Preparation(IReadOnlyList<Caution> Cautions, IReadOnlyList<ToolForWork> Tools)
{
    private const int AFew = 5;

    /// <summary>Those to read first: the few that maim first, and every one on pressure, steam, gas and mains.</summary>
    public IReadOnlyList<Caution> MostSerious => [.. Cautions.Where((caution, i) => i < AFew || caution.Kind != CautionKind.Other)];

    /// <summary>Tools to find before the work begins, as they are not in the crib.</summary>
    public IEnumerable<ToolForWork> ToFind => Tools.Where(tool => tool.Missing is not null);

    /// <summary>For a plan.</summary>
    public static Preparation For(Plan plan, MakerJournal journal, IReadOnlyList<Caution> cautions) =>
        For(plan.Title, plan.Parts, plan.Whole.Keys, journal, cautions);

    /// <summary>For what is left of a build.</summary>
    public static Preparation For(Build build, MakerJournal journal, IReadOnlyList<Caution> cautions)
    {
        var finished = PiecesFinished.Of(build).Finished.Select(part => part.Part).ToHashSet();
        return For(build.Title, [.. build.Parts.Where(part => !finished.Contains(part.Id))], build.Whole.Keys, journal, cautions);
    }

    private static Preparation For(
        string title, IReadOnlyList<Part> parts, IEnumerable<Id<Operation>> whole, MakerJournal journal, IReadOnlyList<Caution> cautions)
    {
        List<Id<Operation>> onWhole = [.. whole];
        var operations = parts.SelectMany(part => part.Operations).Concat(onWhole).ToHashSet();
        var byWords = new CautionPhrases(cautions).In(string.Join('\n', parts.Select(part => part.Title).Prepend(title)));
        return new Preparation(
            [
                .. cautions.Where(caution => byWords.Contains(caution)
                    || caution.IsCalledForBy(onWhole, [])
                    || parts.Any(part => caution.IsCalledForBy(part.Operations, part.Material is { } material ? [material.Family] : []))),
            ],
            ToolsOf(operations, journal));
    }

    private static List<ToolForWork> ToolsOf(HashSet<Id<Operation>> operations, MakerJournal journal)
    {
        var jobs = journal.Entries.SelectMany(entry => entry.Jobs)
            .Where(job => job.Operations.Any(operations.Contains))
            .SelectMany(job => job.Tools.Distinct(), (job, tool) => (Tool: tool, job.Operations))
            .ToLookup(use => use.Tool, use => use.Operations);
        return
        [
            .. Tooling.Of(journal).Tools.Where(tool => jobs.Contains(tool.Id))
                .Select(tool => new ToolForWork(
                    tool.Tool,
                    Missing(tool),
                    jobs[tool.Id].Count(),
                    [.. jobs[tool.Id].SelectMany(job => job).Where(operations.Contains).Distinct()]))
                .OrderByDescending(tool => tool.Jobs),
        ];
    }

    // What is in the crib but went back to its owner is not at hand either.
    private static WhyMissing? Missing(ToolFigure tool) =>
        !tool.Tool.IsListed ? WhyMissing.NotInCrib
        : tool.Got == Got.Borrowed ? WhyMissing.Borrowed
        : tool.Got == Got.Hired ? WhyMissing.Hired
        : null;
}

/// <summary>A tool that work of a kind took before.</summary>
/// <param name="Tool">The tool.</param>
/// <param name="Missing">Why it is not at hand; null where the shop has it.</param>
/// <param name="Jobs">How many jobs with the planned operations used it.</param>
/// <param name="Operations">Which of the planned operations, in the order of the work.</param>
public sealed record ToolForWork(Tool Tool, WhyMissing? Missing, int Jobs, IReadOnlyList<Id<Operation>> Operations);

/// <summary>Why a tool is not at hand.</summary>
public enum WhyMissing
{
    /// <summary>Jobs named it, and the crib does not list it.</summary>
    NotInCrib,

    /// <summary>It was borrowed.</summary>
    Borrowed,

    /// <summary>It was hired.</summary>
    Hired,
}
