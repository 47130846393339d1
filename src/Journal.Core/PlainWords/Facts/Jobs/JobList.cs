using Journal.Core.PlainWords.Clauses;

namespace Journal.Core.PlainWords.Facts.Jobs;

/// <summary>The jobs read so far, and how a later clause finds the one that it speaks of.</summary>
internal sealed class JobList
{
    /// <summary>No evening has more jobs than this between two mentions of one.</summary>
    private const int MostBetween = 24;
    private readonly List<JobDraft> jobs = [];
    private Dictionary<int, JobDraft>? byClause;

    public IReadOnlyList<JobDraft> All => jobs;

    public JobDraft? Last => jobs.Count > 0 ? jobs[^1] : null;

    public void RemoveAll(Predicate<JobDraft> isNone) => jobs.RemoveAll(isNone);

    public JobDraft Begin(IReadOnlyList<string> parts, bool isNamed)
    {
        var draft = new JobDraft { HasNamedPart = isNamed };
        draft.Parts.AddRange(parts);
        jobs.Add(draft);
        return draft;
    }

    /// <summary>The last job, from the newest back, that meets a condition.</summary>
    public JobDraft? Recent(Func<JobDraft, bool> isMeant)
    {
        for (var at = jobs.Count - 1; at >= Math.Max(0, jobs.Count - MostBetween); at--)
        {
            if (isMeant(jobs[at]))
            {
                return jobs[at];
            }
        }

        return null;
    }

    /// <summary>The job that a clause tells of, or that was told of last.</summary>
    public JobDraft? At(int clause) => Recent(job => job.Clause <= clause);

    /// <summary>
    /// The job that a clause belongs to: told in it, right before it or right behind it. Where the evening had one job only, that one.
    /// Ask when all are read.
    /// </summary>
    public JobDraft? NearestTo(Account account, int clause)
    {
        const int SoonAfter = 4;
        const int SoonBefore = 4;
        const int OnlyOne = 12;
        byClause ??= ByClause();
        if (byClause.TryGetValue(clause, out var here))
        {
            return here;
        }

        // "Held in the three-jaw, faced the end": what opens a sentence belongs to the work behind it in that sentence.
        var sentence = account.Clauses[clause].Sentence;
        for (var distance = 1; distance <= SoonAfter; distance++)
        {
            if (byClause.TryGetValue(clause - distance, out var before) && account.Clauses[clause - distance].Sentence == sentence)
            {
                return before;
            }
        }

        for (var distance = 1; distance <= SoonBefore; distance++)
        {
            if (byClause.TryGetValue(clause + distance, out var behind) && account.Clauses[clause + distance].Sentence == sentence)
            {
                return behind;
            }
        }

        for (var distance = 1; distance <= SoonAfter; distance++)
        {
            if (byClause.TryGetValue(clause - distance, out var before))
            {
                return before;
            }
        }

        for (var distance = 1; distance <= SoonBefore; distance++)
        {
            if (byClause.TryGetValue(clause + distance, out var behind))
            {
                return behind;
            }
        }

        return jobs.Count == 1 && Math.Abs(jobs[0].Clause - clause) <= OnlyOne ? jobs[0] : null;
    }

    private Dictionary<int, JobDraft> ByClause()
    {
        var found = new Dictionary<int, JobDraft>();
        foreach (var job in jobs)
        {
            foreach (var clause in job.Clauses)
            {
                found[clause] = job;
            }
        }

        return found;
    }

    /// <summary>The job told nearest to a clause, of those that meet a condition.</summary>
    public JobDraft? Closest(int clause, Func<JobDraft, bool> isMeant) => jobs.Where(isMeant).MinBy(job => Math.Abs(job.Clause - clause));
}
