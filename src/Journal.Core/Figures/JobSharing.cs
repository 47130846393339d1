using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>One job's time for one part and one operation.</summary>
/// <param name="Entry">The entry that tells of it.</param>
/// <param name="Date">The entry's date.</param>
/// <param name="Job">The number of the job in the entry, from 1.</param>
/// <param name="Part">The part; null for the build as a whole.</param>
/// <param name="Operation">What was done.</param>
/// <param name="Minutes">The share of the job's time; the cells of a job add up to the job.</param>
public sealed record OperationCell(EntryRef Entry, DateOnly Date, int Job, Id<Part>? Part, Id<Operation> Operation, Minutes Minutes);

/// <summary>One job's time for one part and one kind of time.</summary>
/// <param name="Entry">The entry that tells of it.</param>
/// <param name="Date">The entry's date.</param>
/// <param name="Job">The number of the job in the entry, from 1.</param>
/// <param name="Part">The part; null for the build as a whole.</param>
/// <param name="Kind">What the time went into.</param>
/// <param name="Minutes">The share of the job's time; the cells of a job add up to the job.</param>
public sealed record KindCell(EntryRef Entry, DateOnly Date, int Job, Id<Part>? Part, TimeKind Kind, Minutes Minutes);

/// <summary>How a job's time is shared out so that every sum is exact (docs/figures.md, Minutes and how they are shared).</summary>
internal static class JobSharing
{
    /// <summary>The job's time by part: by weight, or all of it to the whole (null).</summary>
    public static IReadOnlyList<(Id<Part>? Part, Minutes Time)> OverParts(this Job job) => job.IsGeneral
        ? [(null, job.Time)]
        : job.Parts is [var only] ? [(only.Part, job.Time)] : [.. job.Parts.Zip(job.Time.Share([.. job.Parts.Select(share => share.Weight)]), (share, time) => ((Id<Part>?)share.Part, time))];

    /// <summary>First over the parts by weight, then each part's share over the operations equally.</summary>
    public static IEnumerable<OperationCell> OperationCells(Entry entry, Job job) =>
        from share in job.OverParts()
        from pair in job.Operations.Zip(share.Time.ShareEqually(job.Operations.Count))
        select new OperationCell(entry.Ref, entry.Date, job.Number, share.Part, pair.First, pair.Second);

    /// <summary>
    /// The job's kinds of time, each shared over the parts. Each part takes its time in proportion to what is left of
    /// the kinds, so that the parts keep their sums and the kinds keep theirs, to the minute.
    /// </summary>
    public static IEnumerable<KindCell> KindCells(Entry entry, Job job, Vocabulary vocabulary)
    {
        var kinds = Kinds(job, vocabulary);
        var left = kinds.Select(kind => kind.Minutes).ToArray();
        var shares = job.OverParts();
        foreach (var (part, time) in shares.Where(share => share.Time > Minutes.Zero))
        {
            IReadOnlyList<Minutes> taken = shares.Count == 1 ? [.. left] : time.Share([.. left.Select(minutes => (decimal)minutes.Count)]);
            for (var i = 0; i < kinds.Count; i++)
            {
                left[i] -= taken[i];
                if (taken[i] > Minutes.Zero)
                {
                    yield return new KindCell(entry.Ref, entry.Date, job.Number, part, kinds[i].What, taken[i]);
                }
            }
        }
    }

    /// <summary>
    /// A job's time by kind: its set-up to setting up; the rest to putting right if it mends something, else equally
    /// to the kinds of its operations.
    /// </summary>
    private static List<TimeOf<TimeKind>> Kinds(Job job, Vocabulary vocabulary)
    {
        var setUp = job.SetUp < job.Time ? job.SetUp : job.Time;
        var rest = job.Time - setUp;
        var work = job.Mends is null
            ? job.Operations.Select(id => vocabulary.Operation(id).Kind).Zip(rest.ShareEqually(job.Operations.Count))
            : [(TimeKind.PuttingRight, rest)];
        return [.. Sums.By(work.Prepend((TimeKind.SettingUp, setUp)), share => share.Item1, share => share.Item2)];
    }
}
