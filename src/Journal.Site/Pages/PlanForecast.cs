using Journal.Core.Estimating;
using Journal.Core.Model;
using Journal.Core.Trade;

namespace Journal.Site.Pages;

/// <summary>
/// What is to be shown of a plan: its estimate while it is not begun, the estimate of its build while that is under way,
/// and what was foreseen on the eve of the work once it is finished.
/// </summary>
/// <param name="Result">The estimate, or why there is none.</param>
/// <param name="Preparation">Cautions and tools for what is to come.</param>
/// <param name="Build">The build that the plan has become; null while it is not begun.</param>
/// <param name="HasDates">Whether anything says when the work begins.</param>
internal sealed record PlanForecast(EstimateResult Result, Preparation Preparation, Build? Build, bool HasDates)
{
    /// <summary>Whether the build is finished.</summary>
    public bool IsFinished => Build?.Status == BuildStatus.Finished;

    /// <summary>The plan itself.</summary>
    public required Plan Plan { get; init; }

    /// <summary>The parts list.</summary>
    public required IReadOnlyList<Part> Parts { get; init; }

    /// <summary>The guesses for the work on the whole.</summary>
    public required IReadOnlyDictionary<Id<Operation>, Minutes> Whole { get; init; }

    /// <summary>The forecast as the date of the latest entry sees it (docs/figures.md, Today).</summary>
    public static PlanForecast Of(Plan plan, MakerJournal journal)
    {
        var build = journal.BegunAs(plan);
        var today = journal.LatestDate ?? plan.Start ?? DateOnly.MinValue;
        if (build is { Status: not BuildStatus.Finished })
        {
            return new(Estimate.Of(journal, build, new EstimateOptions { Today = today }), Preparation.For(build, journal, CautionLoader.Shared), build, journal.LatestDate is not null)
            {
                Plan = plan, Parts = build.Parts, Whole = build.Whole,
            };
        }

        var asOf = build is { Started: not null } or { Entries.Count: > 0 } ? EstimateOutcome.EveOf(build) : today;
        return new(
            Estimate.Of(journal, plan, new EstimateOptions { Today = asOf }),
            Preparation.For(plan, journal, CautionLoader.Shared),
            build,
            journal.LatestDate is not null || plan.Start is not null)
        {
            Plan = plan, Parts = plan.Parts, Whole = plan.Whole,
        };
    }
}
