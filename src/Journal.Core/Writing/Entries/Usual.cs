using Journal.Core.Figures;
using Journal.Core.Model;

namespace Journal.Core.Writing.Entries;

/// <summary>What a maker most likely means tonight, from what was written before.</summary>
public static class Usual
{
    private const int Recent = 6;
    private static readonly Id<Operation> NotSaid = new("other");

    /// <summary>
    /// The part of last time while it is not finished, else the first that is still to go; null for the build as a
    /// whole.
    /// </summary>
    public static Id<Part>? Part(Build build, BuildState state)
    {
        Id<Part>? last = LastJob(build) is { Parts: [var share, ..] } ? share.Part : null;
        return last is { } part && (state.ToGo.Any(one => one.Part == part) || state.Finished.All(one => one.Part != part)) ? part
            : state.ToGo.Count > 0 ? state.ToGo[0].Part
            : null;
    }

    /// <summary>The operation of the last job on a part that says what was done; null where none does.</summary>
    /// <param name="build">The build.</param>
    /// <param name="part">The part; null for the build as a whole.</param>
    public static Id<Operation>? Operation(Build build, Id<Part>? part) =>
        build.Entries.SelectMany(entry => entry.Jobs).LastOrDefault(job => IsOn(job, part) && job.Operations[0] != NotSaid)?.Operations[0];

    /// <summary>Whether a job goes on with the last one: the same part, and the same operation.</summary>
    /// <param name="build">The build.</param>
    /// <param name="part">The job's part; null for the build as a whole.</param>
    /// <param name="operation">Its operation; null where it was not said.</param>
    public static bool IsAsLastTime(Build build, Id<Part>? part, Id<Operation>? operation) =>
        LastJob(build) is { } last && IsOn(last, part) && last.Operations.Contains(operation ?? NotSaid);

    /// <summary>Tools of at least half of the last six jobs with an operation that name any, the most used first.</summary>
    public static IReadOnlyList<Id<Tool>> Tools(MakerJournal journal, Id<Operation> operation)
    {
        var jobs = journal.Entries.SelectMany(entry => entry.Jobs).Where(job => job.Tools.Count > 0 && job.Operations.Contains(operation)).TakeLast(Recent).ToList();
        return
        [
            .. jobs.SelectMany(job => job.Tools)
                .CountBy(tool => tool)
                .Where(count => 2 * count.Value >= jobs.Count)
                .OrderByDescending(count => count.Value)
                .ThenBy(count => count.Key)
                .Select(count => count.Key),
        ];
    }

    private static bool IsOn(Job job, Id<Part>? part) => part is { } id ? job.Parts.Any(share => share.Part == id) : job.IsGeneral;

    private static Job? LastJob(Build build) => build.Entries.Count == 0 ? null : build.Entries[^1].Jobs[^1];
}
