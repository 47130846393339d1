using Journal.Core.Model;
using Journal.Core.PlainWords;

namespace Journal.Core.Writing.Told;

/// <summary>
/// Gives jobs the time that is left of the evening's total. Where one job alone has no time of its own it is its time; several get it
/// together, as one job on all their parts with all their operations, for how it was shared was not said.
/// </summary>
public static class ToldTimes
{
    /// <summary>The proposal with as many of its jobs timed as its words allow.</summary>
    public static Proposal Settle(Proposal proposal)
    {
        var timeless = proposal.Jobs.Where(job => job.Time is null).ToList();
        if (timeless.Count == 0 || Rest(proposal) is not { Count: > 0 } rest)
        {
            return proposal;
        }

        var together = Together(timeless);
        return With(proposal, together with { Time = rest, SetUp = together.SetUp <= rest ? together.SetUp : null });
    }

    /// <summary>The same, and the jobs that still have no time as one.</summary>
    public static Proposal Together(Proposal proposal)
    {
        var settled = Settle(proposal);
        var timeless = settled.Jobs.Where(job => job.Time is null).ToList();
        return timeless.Count < 2 ? settled : With(settled, Together(timeless));
    }

    // The one stands where the first of those without a time stood.
    private static Proposal With(Proposal proposal, ProposedJob together)
    {
        var first = proposal.Jobs.First(job => job.Time is null);
        return proposal with { Jobs = [.. proposal.Jobs.Where(job => job.Time is not null || ReferenceEquals(job, first)).Select(job => job.Time is null ? together : job)] };
    }

    /// <summary>The total without the jobs that have a time of their own; null without a total, or where they come to more.</summary>
    public static Minutes? Rest(Proposal proposal) =>
        proposal.Total is { } total && total >= Known(proposal) ? total - Known(proposal) : null;

    private static Minutes Known(Proposal proposal) => proposal.Jobs.Select(job => job.Time ?? Minutes.Zero).Sum();

    // What was said of one of them only would be said of all.
    private static ProposedJob Together(List<ProposedJob> jobs) => jobs is [var one] ? one : new()
    {
        Parts = [.. jobs.SelectMany(job => job.Parts).Distinct()],
        Operations = [.. jobs.SelectMany(job => job.Operations).Distinct()],
        SetUp = jobs.Exists(job => job.SetUp is not null) ? jobs.Select(job => job.SetUp ?? Minutes.Zero).Sum() : null,
        Held = TheOne(jobs.Select(job => job.Held)),
        Datum = TheOne(jobs.Select(job => job.Datum)),
        Tools = [.. jobs.SelectMany(job => job.Tools).Distinct()],
        Mends = jobs.Select(job => job.Mends).FirstOrDefault(mends => mends is not null),
        Words = [.. jobs.SelectMany(job => job.Words)],
    };

    private static string? TheOne(IEnumerable<string?> said) => said.Distinct().ToList() is [var one] ? one : null;
}
