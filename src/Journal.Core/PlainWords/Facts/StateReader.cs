using Journal.Core.Model;
using Journal.Core.PlainWords.Clauses;
using Journal.Core.PlainWords.Facts.Jobs;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Facts;

/// <summary>Reads what was put right: known snags and earlier mistakes.</summary>
internal sealed class StateReader(Account account, Recall knownSnags, Recall knownMistakes)
{
    private readonly List<Known<Snag>> cleared = [];
    private readonly List<Known<Mistake>> mends = [];
    private readonly List<int> mendedAt = [];

    /// <summary>Clauses that tell of a snag put right.</summary>
    public HashSet<int> ClearedClauses { get; } = [];

    public IReadOnlyList<Known<Snag>> Cleared => cleared;

    public IReadOnlyList<Known<Mistake>> Mends => mends;

    public void Read(int index)
    {
        var clause = account.Clauses[index];
        if (!clause.IsTonight)
        {
            return;
        }

        if (ReadCleared(clause, index))
        {
            ClearedClauses.Add(index);
        }
    }

    // A known snag spoken of, and words near it that say it is gone; or work on the very thing.
    private bool ReadCleared(Clause clause, int index)
    {
        var isListed = clause.FirstOf(Cue.Cleared) is { } said && account.Word(said.First) is "off" or "crossing" or "cross" or "crossed" or "strike" or "struck" or "scratch" or "tick" or "ticked" or "come";
        var (first, next) = Around(index, isListed ? 5 : 2);
        var isSaid = clause.FirstOf(Cue.Cleared) is { } hit && clause.IsTonight && !IsDenied(clause, hit);
        var isWorked = clause.Operations.Exists(operation => operation.Form == VerbForm.Past && clause.IsReal(operation.First));
        if ((!isSaid && !isWorked) || Says(clause, "still") || Says(clause, "stays"))
        {
            return false;
        }

        var enough = isSaid ? 0.3 : 0.6;
        var found = isSaid ? knownSnags.In(account, first, next) : knownSnags.In(account, clause.First, clause.Next);
        var isOpen = found.FirstOrDefault(known => known.Share >= enough && known.Words > 1 && !cleared.Exists(other => other.Id.Value == known.Id));
        if (isOpen is { } snag)
        {
            cleared.Add(new(new Id<Snag>(snag.Id), account.SpanOf(clause.First, clause.Next)));
            return true;
        }

        return false;
    }

    private bool Says(Clause clause, string word) => Enumerable.Range(clause.First, clause.Next - clause.First).Any(at => account.Word(at) == word);

    private static bool IsDenied(Clause clause, CueHit hit) =>
        clause.Hits.Exists(other => other.First < hit.First && other.Cue is Cue.Negation or Cue.Unreal or Cue.Future && other.First < hit.First);

    // The clause with its neighbours, as far as they tell of tonight.
    private (int First, int Next) Around(int index, int reach = 2)
    {
        var (first, next) = (index, index);
        while (first > 0 && index - first < reach && !account.Clauses[first - 1].IsOthers)
        {
            first--;
        }

        while (next + 1 < account.Clauses.Count && next - index < 1 && !account.Clauses[next + 1].IsOthers)
        {
            next++;
        }

        return (account.Clauses[first].First, account.Clauses[next].Next);
    }

    /// <summary>An earlier mistake spoken of, and words near it that say it was put right.</summary>
    public void ReadMends(int index)
    {
        var clause = account.Clauses[index];
        if (clause.FirstOf(Cue.Mended) is not { } hit || !clause.IsReal(hit.First))
        {
            return;
        }

        var (first, next) = Around(index, 3);
        if (knownMistakes.In(account, first, next) is [{ Share: >= 0.3, Words: > 1 } best, ..] && !mends.Exists(known => known.Id.Value == best.Id))
        {
            mends.Add(new(new Id<Mistake>(best.Id), account.SpanOf(clause.First, clause.Next)));
            mendedAt.Add(index);
        }
    }

    /// <summary>Each mended mistake stands on the job nearest to where it was told.</summary>
    public void Settle(JobList jobs)
    {
        for (var i = 0; i < mends.Count; i++)
        {
            var job = jobs.Closest(mendedAt[i], job => job.Mends is null);
            if (job is not null)
            {
                job.Mends = mends[i].Id;
            }
        }
    }
}
