using Journal.Core.Model;
using Journal.Core.PlainWords.Clauses;
using Journal.Core.PlainWords.Quantities;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Facts;

/// <summary>
/// Reads runs of the thing that is built: a word for running with what drove it, said in the same breath or shortly before, and how long.
/// </summary>
internal sealed class TrialReader(Account account)
{
    private const int SourceNear = 8;
    private const int RunNear = 2;
    private const int MostTrials = 12;

    private readonly List<(ProposedTrial Trial, int Clause)> trials = [];
    private (string On, int Clause)? source;
    private int runAt = -10;

    public IReadOnlyList<ProposedTrial> Trials => [.. trials.Select(trial => trial.Trial)];

    /// <summary>Whether a clause tells of a run, so that its turns a minute are no cutting speed.</summary>
    public bool IsNear(int clause) => trials.Exists(trial => Math.Abs(trial.Clause - clause) <= RunNear);

    public void ReadAll()
    {
        foreach (var clause in account.Clauses)
        {
            Read(clause);
        }
    }

    private void Read(Clause clause)
    {
        if (!clause.IsTonight || clause.HasAny(Cue.Film, Cue.Document))
        {
            return;
        }

        var said = SourceIn(clause);
        source = said is null ? source : (said.Value.On, clause.Index);
        var isRun = clause.Hits.Exists(hit => hit.Cue == Cue.Trial && clause.IsReal(hit.First) && IsOfTheBuild(clause, hit));
        runAt = isRun ? clause.Index : runAt;
        var time = TimeOf(clause);
        var isRunning = clause.Index - runAt <= RunNear;
        var isPlain = said is { IsPlain: true } && time is not null && !clause.Operations.Exists(operation => clause.IsReal(operation.First));
        if (source is not { } on || clause.Index - on.Clause > SourceNear || !(isRun || (isRunning && said is not null) || isPlain))
        {
            return;
        }

        if (on.On == "hand" && !clause.Hits.Exists(hit => hit.Cue == Cue.Trial && account.Word(hit.First) is "spun" or "spin" or "turned" or "ran" or "first"))
        {
            return;
        }

        Add(clause, on.On, time);
    }

    // "on air", "under steam"; or a fuel at the head: "then gas: 1st run …", "I borrowed a compressor".
    private (string On, bool IsPlain)? SourceIn(Clause clause)
    {
        foreach (var hit in clause.Hits)
        {
            if (hit.Cue == Cue.TrialOn && clause.IsReal(hit.First))
            {
                var (first, last) = (account.Word(hit.First), account.TextOf(hit.First + 1, hit.Next).ToLowerInvariant());
                var word = last.StartsWith("the ", StringComparison.Ordinal) ? last[4..] : last.StartsWith("its ", StringComparison.Ordinal) ? last[4..] : last;
                return (Named(word), first is "on" or "under" && word is not ("motor" or "hand"));
            }

            if (hit.Cue == Cue.Fuel && clause.IsReal(hit.First) && (clause.Next - clause.First <= 4 || account.Word(hit.First) is "compressor"))
            {
                return (Named(account.TextOf(hit.First, hit.Next).ToLowerInvariant()), false);
            }
        }

        return null;
    }

    private static string Named(string word) => word switch
    {
        "air" or "compressed air" or "compressor" or "bottled air" => "air",
        "motor" or "mains" or "power" or "battery" or "electric" or "the motor" => "power",
        _ => word,
    };

    // "ran the reamer through", "the lathe running slow", "ran out of evening" are no runs of the build.
    private bool IsOfTheBuild(Clause clause, CueHit hit)
    {
        var behind = account.Word(hit.Next);
        var isNoun = account.Word(hit.First) is "run" && account.Word(hit.First - 1) is "a" or "the" && account.Word(hit.Next) is "in";
        return !isNoun && behind is not ("out" or "into" or "the" or "a" or "through" or "slow" or "slowly" or "down" or "off" or "true" or "straight" or "up" or "to" or "of" or "in" or "under")
            && !(account.Word(hit.First) is "run" or "runs" or "running" && clause.HasBefore(Cue.Document, hit.First));
    }

    // The time in the clause, or right behind it where nothing else is told.
    private Quantity? TimeOf(Clause clause)
    {
        for (var at = clause.Index; at < Math.Min(account.Clauses.Count, clause.Index + 3); at++)
        {
            var other = account.Clauses[at];
            if (at > clause.Index && (!other.IsTonight || other.Operations.Count > 0 || other.Has(Cue.Film) || other.Sentence > clause.Sentence + 1))
            {
                return null;
            }

            if (other.Quantities.Find(quantity => quantity is { Kind: UnitKind.Time, IsVague: false, IsStretch: false, Minutes: > 0 }) is { } time)
            {
                return time;
            }
        }

        return null;
    }

    private void Add(Clause clause, string on, Quantity? time)
    {
        var minutes = time is null ? (Minutes?)null : new Minutes(time.Minutes);
        var words = account.SpanOf(clause.First, Math.Max(clause.Next, time?.Next ?? 0));
        var known = trials.FindIndex(trial => trial.Trial.On == on);
        var isAnother = clause.Hits.Exists(hit => hit.Cue == Cue.Trial && account.Word(hit.First) is "1st" or "2nd" or "second" or "third" or "3rd" or "another");
        if (known >= 0 && !(isAnother && minutes is not null && !trials.Exists(trial => trial.Trial.On == on && trial.Trial.Time == minutes)))
        {
            if (trials[known].Trial.Time is null && minutes is not null)
            {
                trials[known] = (trials[known].Trial with { Time = minutes, Words = words }, clause.Index);
            }

            return;
        }

        if (trials.Count >= MostTrials)
        {
            return;
        }

        trials.Add((new(on, minutes, words), clause.Index));
    }
}
