using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>What a mistake cost: what was lost at once, the jobs that mend it, and what was bought because of it.</summary>
/// <param name="Ref">Which mistake it is.</param>
/// <param name="Mistake">The mistake as written.</param>
/// <param name="On">The job that it belongs to.</param>
/// <param name="MadeIn">The entry where it was made; the entry that tells of it unless it was found later.</param>
/// <param name="MendedBy">The jobs that mend it, in order, each with all of its time.</param>
/// <param name="Purchases">What was bought because of it, in order.</param>
public sealed record MistakeCost(
    MistakeRef Ref,
    Mistake Mistake,
    JobFacts On,
    EntryRef MadeIn,
    IReadOnlyList<MendingJob> MendedBy,
    IReadOnlyList<DatedPurchase> Purchases)
{
    /// <summary>The time lost at once and the time of the jobs that mend it, set-up included.</summary>
    public Minutes Minutes { get; } = Mistake.Lost + MendedBy.Sum(job => job.Minutes);

    /// <summary>The money spent because of it, in the journal's currency.</summary>
    public decimal Money { get; } = Purchases.Sum(purchase => purchase.Purchase.Cost);

    /// <summary>The mistakes of a journal with what they cost, by date, build, entry and number. Each job and purchase counts once.</summary>
    public static IReadOnlyList<MistakeCost> Of(MakerJournal journal)
    {
        var entries = journal.Entries;
        var index = new MistakeIndex(entries);
        var mending = Mending(entries, index).ToLookup(pair => pair.Mistake, pair => pair.Job);
        var buying = Buying(entries, index).ToLookup(pair => pair.Mistake, pair => pair.Purchase);
        var parts = journal.Builds.ToDictionary(build => build.Id, BuildParts.PartsById);
        return
        [
            .. from entry in entries
               from numbered in entry.Mistakes.Index()
               let at = new MistakeRef(entry.Ref, numbered.Index + 1)
               let mistake = numbered.Item
               select new MistakeCost(
                   at,
                   mistake,
                   JobFacts.Of(entry, mistake.Job, parts[entry.Build]),
                   mistake.MadeOn is { } made ? new EntryRef(entry.Build, made) : entry.Ref,
                   [.. mending[at]],
                   [.. buying[at]]),
        ];
    }

    private static IEnumerable<(MistakeRef? Mistake, MendingJob Job)> Mending(IEnumerable<Entry> entries, MistakeIndex index) =>
        from entry in entries
        from job in entry.Jobs
        where job.Mends is not null
        select (index.Find(entry.Build, job.Mends!.Value), new MendingJob(entry.Ref, entry.Date, job.Number, job.Time));

    private static IEnumerable<(MistakeRef? Mistake, DatedPurchase Purchase)> Buying(IEnumerable<Entry> entries, MistakeIndex index) =>
        from entry in entries
        from purchase in entry.Bought
        where purchase.Because is not null
        select (index.Find(entry.Build, purchase.Because!.Value), new DatedPurchase(entry.Ref, entry.Date, purchase));
}

/// <summary>A job that puts a mistake right.</summary>
/// <param name="Entry">The entry that tells of it.</param>
/// <param name="Date">The entry's date.</param>
/// <param name="Job">The number of the job in the entry, from 1.</param>
/// <param name="Minutes">All of the job's time.</param>
public sealed record MendingJob(EntryRef Entry, DateOnly Date, int Job, Minutes Minutes);
