using Journal.Core.Model;
using Journal.Core.Parsing.KeyReaders;
using Journal.Core.Parsing.Problems;
using Journal.Core.Parsing.Values;

namespace Journal.Core.Parsing.Checks;

/// <summary>
/// Finds the same evening written up twice: two entries of a build with a job of the same date, parts, operations and hours. Jobs
/// with different times by the clock are two jobs.
/// </summary>
internal static class SameWork
{
    /// <summary>Warns of each job that stands in an earlier entry already.</summary>
    /// <param name="entries">The entries by date, with what their files say of the clock.</param>
    /// <param name="log">Takes the warnings.</param>
    public static void Check(IEnumerable<(Entry Entry, FileScope Scope)> entries, ProblemLog log)
    {
        foreach (var evening in entries.GroupBy(one => (one.Entry.Build, one.Entry.Date)).Where(evening => evening.Skip(1).Any()))
        {
            var earlier = new List<(Job Job, ClockClaim Claim)>();
            foreach (var (entry, scope) in evening)
            {
                // A job without hours makes no claim, and which claim is whose cannot be told then.
                List<(Job Job, ClockClaim Claim)> jobs = entry.Jobs.Count == scope.Clock.Count ? [.. entry.Jobs.Zip(scope.Clock)] : [];
                foreach (var (job, claim) in jobs)
                {
                    if (earlier.Find(one => IsSame(one.Job, job) && (one.Claim.Stretches.Count == 0 || claim.Stretches.Count == 0)) is { Claim.Place: var first, Job: not null })
                    {
                        log.Add(ProblemTable.SameWorkTwice, claim.Place, Dates.Write(entry.Date), first.File, first.Line);
                    }
                }

                earlier.AddRange(jobs);
            }
        }
    }

    private static bool IsSame(Job one, Job other) =>
        one.Time == other.Time
        && one.Parts.Select(share => share.Part).ToHashSet().SetEquals(other.Parts.Select(share => share.Part))
        && one.Operations.ToHashSet().SetEquals(other.Operations);
}
