using Journal.Core.Figures;
using Journal.Core.Model;
using Journal.Core.Writing.Entries;

namespace Journal.Core.Writing.Told;

/// <summary>
/// What <c>check</c> would object to beside what stands in the journal already: a day of more than a day, a part finished twice, a snag
/// cleared that is not open. What is let through counts for the evenings that are told after it.
/// </summary>
/// <param name="journal">The journal.</param>
/// <param name="build">The build that the evenings are of.</param>
public sealed class ToldLimits(MakerJournal journal, Build build)
{
    private static readonly Minutes Day = new(24 * 60);

    private readonly BuildState state = State.Of(journal).Builds.Single(state => state.Build == build.Id);
    private readonly Dictionary<DateOnly, Minutes> worked = [];
    private readonly Dictionary<Id<Part>, int> finished = [];
    private readonly HashSet<Id<Snag>> cleared = [];

    /// <summary>Whether jobs are taken that do not say their hours or their part, for the maker to fill in.</summary>
    public bool TakesGaps { get; init; }

    internal MakerJournal Journal => journal;

    internal Build Build => build;

    /// <summary>Why a day cannot hold another job; null where it can.</summary>
    internal string? WhyNoTime(DateOnly date, Minutes time)
    {
        var before = worked.TryGetValue(date, out var known) ? known : journal.Entries.Where(entry => entry.Date == date).Select(entry => entry.Time).Sum();
        if (before + time > Day)
        {
            return "with it the day would have more than 24 hours of work";
        }

        worked[date] = before + time;
        return null;
    }

    /// <summary>Why a part, or pieces of it, cannot be finished on an evening; null where they can.</summary>
    internal string? WhyNotFinished(Finished said, DateOnly date, IReadOnlyList<NewJob> jobs)
    {
        var left = (state.ToGo.FirstOrDefault(one => one.Part == said.Part)?.Pieces ?? 0) - finished.GetValueOrDefault(said.Part);
        var isWorkedLater = jobs.All(job => !job.Parts.Contains(said.Part.Value)) && FirstWork(said.Part) is { } first && first > date;
        if (left <= 0 || said.Pieces > left || isWorkedLater)
        {
            return left <= 0 ? "it is finished already" : isWorkedLater ? "the first work on it is later" : "the build needs no more than that many pieces";
        }

        finished[said.Part] = finished.GetValueOrDefault(said.Part) + (said.Pieces ?? left);
        return null;
    }

    /// <summary>Why a snag cannot be cleared; null where it can.</summary>
    internal string? WhyNotCleared(Id<Snag> snag) =>
        state.Snags.All(open => open.Snag.Id != snag) || !cleared.Add(snag) ? "it is cleared already" : null;

    private DateOnly? FirstWork(Id<Part> part) =>
        build.Entries.Where(entry => entry.Jobs.Any(job => job.Parts.Any(share => share.Part == part))).Select(entry => (DateOnly?)entry.Date).Min();
}
