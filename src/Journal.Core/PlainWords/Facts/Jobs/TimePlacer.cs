using Journal.Core.PlainWords.Clauses;
using Journal.Core.PlainWords.Quantities;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Facts.Jobs;

/// <summary>The times of a clause, each with what it is the time of.</summary>
internal sealed record ClauseTimes(IReadOnlyList<(Quantity Time, TimeRole Role)> All)
{
    /// <summary>Those of jobs; times by the clock only where no other was said.</summary>
    public IReadOnlyList<Quantity> OwnOfJobs { get; } = Own(All);

    private static List<Quantity> Own(IReadOnlyList<(Quantity Time, TimeRole Role)> all)
    {
        var own = all.Where(time => time.Role == TimeRole.Job).Select(time => time.Time).ToList();
        return own.Exists(time => !time.IsStretch) ? [.. own.Where(time => !time.IsStretch)] : own;
    }
}

/// <summary>
/// Gives times to jobs: the job told in the same clause, else the one told right before that has none, else the one that comes. At the
/// end what was said of the whole evening is settled: the rest, halves, setting up.
/// </summary>
internal sealed class TimePlacer(Account account, Topic topic, JobList jobs)
{
    /// <summary>How many clauses back a time may still belong to a job: “… that was twenty minutes”.</summary>
    private const int NearEnough = 5;

    private readonly HashSet<Quantity> given = [];
    private readonly List<Quantity> unplaced = [];
    private (int Minutes, int Clause, int Sentence, Span Words, bool IsHeading, bool IsFirst)? waiting;
    private readonly Dictionary<string, int> shares = new(StringComparer.Ordinal);
    private (int Minutes, Span Words, bool IsShare)? setUpOfAll;
    private (int Minutes, int Sentence)? lastSaid;

    public (int Minutes, Span Words)? Total { get; private set; }

    public IReadOnlyList<Quantity> Unplaced => unplaced;

    public ClauseTimes TimesOf(Clause clause) =>
        new([.. clause.Quantities.Where(quantity => quantity.Kind == UnitKind.Time).Select(time => (time, TimeRoles.Of(account, clause, time)))]);

    /// <summary>Whether a time said before waits for the work of a clause: “1 h 20: made a bush”.</summary>
    public bool IsWaitingFor(Clause clause) =>
        waiting is { } time && ((clause.Index - time.Clause <= 2 && (time.Sentence == clause.Sentence || time.IsHeading)) || (time.IsFirst && jobs.All.Count == 0 && clause.Index - time.Clause <= 6));

    public void Give(JobDraft job, Quantity time)
    {
        job.Minutes = time.Minutes;
        job.AddWords(account.SpanOf(time.First, time.Next));
        given.Add(time);
    }

    /// <summary>Gives a job the time that waits for it, where its clause has none of its own.</summary>
    public void GiveWaiting(JobDraft job, Clause clause, int ownTimes)
    {
        if (job.Minutes is null && ownTimes == 0 && (IsWaitingFor(clause) || (waiting is { IsFirst: true } first && jobs.All.Count == 1 && clause.Index - first.Clause <= 6)))
        {
            job.Minutes = waiting!.Value.Minutes;
            job.AddWords(waiting.Value.Words);
            waiting = null;
        }
    }

    public void Place(Clause clause, ClauseTimes times)
    {
        PlaceHalf(clause);
        if (times.All.Count > 0 && times.All.LastOrDefault(time => time.Role is TimeRole.Job or TimeRole.Total) is { Time: not null } last)
        {
            lastSaid = (last.Time.Minutes, clause.Sentence);
        }

        foreach (var (time, role) in times.All)
        {
            if (given.Contains(time))
            {
                continue;
            }

            switch (role)
            {
                case TimeRole.Total:
                    Total ??= (time.Minutes, account.SpanOf(clause.First, clause.Next));
                    break;
                case TimeRole.SetUp:
                    PlaceSetUp(clause, time);
                    break;
                case TimeRole.Job:
                    PlaceOfJob(clause, time, times);
                    break;
                default:
                    break;
            }
        }
    }

    /// <summary>Settles what only the whole account tells.</summary>
    public void Finish()
    {
        if (waiting is { } late && jobs.All is [{ Minutes: null } only] && Math.Abs(only.Clause - late.Clause) <= NearEnough)
        {
            only.Minutes = late.Minutes;
            only.AddWords(late.Words);
        }

        SettleUnplaced();
        SettleTotal();
        SettleHalves();
        SettleRest();
        if (setUpOfAll is { } setUp && jobs.All.Where(job => job.SetUp is null).MaxBy(job => job.Minutes ?? -1) is { } longest)
        {
            longest.SetUp = setUp.Minutes;
            longest.AddWords(setUp.Words);
        }
    }

    // "connecting rods tonight, two and a half hours": a time that no job took, as long as all the jobs together, is the evening's.
    private void SettleUnplaced()
    {
        if (Total is null && waiting is { } left && left.Clause <= 3 && jobs.All.Count > 1 && left.Minutes >= jobs.All.Sum(job => job.Minutes ?? 0) && left.Minutes > 45)
        {
            Total = (left.Minutes, left.Words);
            unplaced.RemoveAll(time => time.Minutes == left.Minutes);
        }
    }

    // "half milling to size, half drilling": halves of the time that was said last before them.
    private void SettleHalves()
    {
        foreach (var job in jobs.All)
        {
            var of = job.HalfOf > 0 ? job.HalfOf : job.Minutes is null && job.Parts.Count > 0 && shares.TryGetValue(job.Parts[0], out var share) ? share : 0;
            job.Minutes = of > 0 ? of / 2 : job.Minutes;
        }
    }

    // Where there was one job, the time of the evening is the job's; setting up told beside the cutting belongs to it too.
    private void SettleTotal()
    {
        if (jobs.All is not [var only])
        {
            return;
        }

        if (Total is { } total)
        {
            var sum = only.Minutes + (only.SetUp ?? setUpOfAll?.Minutes);
            if (only.Minutes is null || sum == total.Minutes || only.Minutes == total.Minutes)
            {
                only.Minutes = total.Minutes;
                only.AddWords(total.Words);
                Total = null;
            }
        }
    }

    // "… rest went on the holes": the time of the evening less what was said of the others.
    private void SettleRest()
    {
        var rest = jobs.All.Where(job => job.IsRest && job.Minutes is null).ToList();
        if (Total is { } total && rest.Count == 1 && jobs.All.All(job => job.Minutes is not null || job.IsRest))
        {
            var left = total.Minutes - jobs.All.Sum(job => job.Minutes ?? 0);
            if (left > 0)
            {
                rest[0].Minutes = left;
                rest[0].AddWords(total.Words);
            }
        }
    }

    // "half of it on drilling", "half milling": of the time said before, in the same sentence or the one before.
    private void PlaceHalf(Clause clause)
    {
        var half = clause.Quantities.Find(quantity => quantity is { Kind: UnitKind.None, IsFraction: true, Value: 0.5m } && account.Word(quantity.Next - 1) == "half");
        if (half is null || lastSaid is not { } said || clause.Sentence - said.Sentence > 2 || said.Minutes % 2 != 0)
        {
            return;
        }

        if (jobs.Last is { } job && job.Clause == clause.Index && (job.Minutes is null || job.Minutes == said.Minutes))
        {
            job.HalfOf = said.Minutes;
        }
        else if (clause.IsTonight && clause.Parts.FirstOrDefault(part => !topic.IsAside(clause, part)) is { } part && topic.Resolve(part) is { Count: > 0 } ids)
        {
            shares[ids[0]] = said.Minutes;
        }
    }

    private void PlaceSetUp(Clause clause, Quantity time)
    {
        var words = account.SpanOf(clause.First, clause.Next);
        if (jobs.Last is { SetUp: null } job && clause.Index - job.Clause <= NearEnough && (job.Minutes is null || job.Minutes >= time.Minutes))
        {
            job.SetUp = time.Minutes;
            job.AddWords(words);
        }
        else
        {
            setUpOfAll ??= (time.Minutes, words, clause.Has(Cue.ShareOf));
        }
    }

    private bool IsCuttingAlone(Clause clause)
    {
        for (var at = clause.First; at < clause.Next; at++)
        {
            if (account.Word(at) is "actual" or "itself" or "proper" or "cutting" or "machining")
            {
                return true;
            }
        }

        return false;
    }

    private void PlaceOfJob(Clause clause, Quantity time, ClauseTimes times)
    {
        var words = account.SpanOf(clause.First, clause.Next);
        if (jobs.Last is { } told && told.Clause == clause.Index)
        {
            // "fifty minutes clamping it, then an hour and ten of actual cutting": the setting up was said beside the cutting.
            if (setUpOfAll is { IsShare: false } beside && told.Minutes is null && IsCuttingAlone(clause))
            {
                told.Minutes = time.Minutes + beside.Minutes;
                told.SetUp = beside.Minutes;
                told.AddWords(beside.Words);
                setUpOfAll = null;
                return;
            }

            if (time.IsStretch && times.OwnOfJobs.Any(other => !other.IsStretch))
            {
                Total ??= (time.Minutes, words);
            }
            else
            {
                told.Minutes ??= time.Minutes;
            }

            return;
        }

        if (time.IsStretch && (jobs.Last is not { Minutes: null } before || (clause.Index - before.Clause > 1 && account.Word(clause.First) is not ("that" or "it" or "this"))))
        {
            Total ??= (time.Minutes, words);
            return;
        }

        if (jobs.Last is { Minutes: null, IsRest: false } last && clause.Index - last.Clause <= NearEnough && !NamesAnotherPart(clause, last))
        {
            last.Minutes = time.Minutes;
            last.AddWords(words);
            last.Told(clause);
            return;
        }

        waiting = (time.Minutes, clause.Index, clause.Sentence, words, clause.Parts.Any(), jobs.All.Count == 0 && (clause.Names.Count > 0 || topic.Parts.Count > 0));
        unplaced.Add(time);
    }

    private bool NamesAnotherPart(Clause clause, JobDraft job) =>
        clause.Parts.Any(part => !topic.IsAside(clause, part) && topic.Resolve(part) is { Count: > 0 } ids && !ids.Any(job.Parts.Contains));
}
