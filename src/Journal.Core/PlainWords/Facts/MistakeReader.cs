using Journal.Core.Model;
using Journal.Core.PlainWords.Clauses;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Facts;

/// <summary>
/// Reads what went wrong. One sign alone is seldom enough: clauses near each other that tell of harm, its cause, the time it cost, what
/// became of the part and whose fault it was are weighed together.
/// </summary>
internal sealed class MistakeReader(Account account, Recall lessons)
{
    /// <summary>How many clauses without a sign may stand inside a mistake.</summary>
    private const int WidestGap = 4;

    /// <summary>How many sentences lie between its signs at most.</summary>
    private const int WidestLeap = 2;

    /// <summary>How many clauses behind a mistake may still tell what became of it, or which lesson was forgotten.</summary>
    private const int Aftermath = 5;

    private const int Enough = 4;
    private const int EnoughForAnother = 6;
    private const int MostWords = 32;

    private readonly List<ProposedMistake> mistakes = [];
    private readonly List<(int First, int Last)> places = [];
    private readonly HashSet<int> told = [];

    public IReadOnlyList<ProposedMistake> Mistakes => mistakes;

    /// <summary>Reads the whole account.</summary>
    public void ReadAll()
    {
        var reader = new MistakeSignReader(account);
        var signs = account.Clauses.Select(reader.Of).ToList();
        var clusters = Clusters(signs).Select(place => (Place: place, Weight: WeightOf(signs, place))).Where(cluster => cluster.Weight >= Enough).ToList();
        var most = clusters.Count == 0 ? 0 : clusters.Max(cluster => cluster.Weight);
        foreach (var (place, weight) in clusters)
        {
            if ((weight == most && mistakes.Count == 0) || weight >= EnoughForAnother)
            {
                Add(signs, place);
            }
        }
    }

    /// <summary>Whether a clause is told as part of a mistake.</summary>
    public bool Tells(int index) => told.Contains(index);

    /// <summary>A known lesson spoken of right after a mistake is the one that was not heeded.</summary>
    public bool TakeAsRepeated(int index, string lesson)
    {
        const int SoonAfter = 3;
        var at = places.FindLastIndex(place => index >= place.First - 1 && index - place.Last <= SoonAfter);
        if (at < 0 || (mistakes[at].Repeats is { } known && known.Value != lesson))
        {
            return false;
        }

        mistakes[at] = mistakes[at] with { Repeats = new Id<Lesson>(lesson) };
        return true;
    }

    private IEnumerable<(int First, int Last)> Clusters(List<MistakeSigns> signs)
    {
        var first = -1;
        var last = -1;
        for (var at = 0; at < signs.Count; at++)
        {
            if (!signs[at].IsAny)
            {
                continue;
            }

            if (first >= 0 && (at - last > WidestGap || account.Clauses[at].Sentence - account.Clauses[last].Sentence > WidestLeap))
            {
                yield return (first, last);
                first = -1;
            }

            (first, last) = (first < 0 ? at : first, at);
        }

        if (first >= 0)
        {
            yield return (first, last);
        }
    }

    private int WeightOf(List<MistakeSigns> signs, (int First, int Last) place)
    {
        var all = signs.GetRange(place.First, place.Last - place.First + 1);
        var isTold = all.Exists(sign => sign.IsEvent) || (all.Exists(sign => sign.Lost is not null) && all.Exists(sign => sign.IsBlame));
        if (!isTold)
        {
            return 0;
        }

        return (all.Exists(sign => sign.IsPlain) ? IsDeed(signs, place) ? 4 : 3 : 0) + (all.Exists(sign => sign.IsHarm) ? 2 : all.Exists(sign => sign.IsHint) ? 1 : 0) + (all.Exists(sign => sign.Cause is not null) ? 2 : 0)
            + (all.Exists(sign => sign.IsBlame || sign.IsHeading) ? 2 : 0) + (all.Exists(sign => sign.Lost is not null) ? 3 : 0) + (all.Exists(sign => sign.Outcome is not null) ? 2 : 0);
    }

    // "I broke a tap", "broke a tap": done, rather than found broken.
    private bool IsDeed(List<MistakeSigns> signs, (int First, int Last) place) =>
        Enumerable.Range(place.First, place.Last - place.First + 1).Any(at => signs[at].IsPlain && (account.Clauses[at].Has(Cue.Maker) || account.Clauses[at].FirstOf(Cue.Mistake) is { } hit && hit.First == account.Clauses[at].First));

    private void Add(List<MistakeSigns> signs, (int First, int Last) place)
    {
        var at = EventIn(signs, place);
        var clause = account.Clauses[at];
        var isReason = at > 0 && account.Word(clause.First) is "because" or "cos" or "cause" or "as" or "since" && account.Clauses[at - 1].Sentence == clause.Sentence && account.Clauses[at - 1] is { IsOthers: false, IsPast: false };
        if (Wording.Of(account, isReason ? account.Clauses[at - 1].First : clause.First, clause.Next) is not { } what)
        {
            return;
        }

        mistakes.Add(new(what.Text, WordsOf(place, at, what.Words))
        {
            Cause = CauseOf(signs, place, at),
            Lost = Near(signs, place).Select(sign => sign.Lost).FirstOrDefault(lost => lost is not null),
            Outcome = Near(signs, place).Select(sign => sign.Outcome).FirstOrDefault(outcome => outcome is not null),
            Repeats = RepeatedAt(place),
        });
        places.Add(place);
        told.UnionWith(Enumerable.Range(place.First, place.Last - place.First + 1));
    }

    // The clause that tells most of what happened.
    private int EventIn(List<MistakeSigns> signs, (int First, int Last) place)
    {
        var best = place.First;
        var most = -1;
        for (var at = place.First; at <= place.Last; at++)
        {
            var weight = signs[at].IsHeading ? 0 : (signs[at].IsPlain ? 3 : 0) + (signs[at].IsHarm ? 3 : signs[at].IsHint ? 2 : 0) + (signs[at].Cause is not null ? 2 : 0) + (signs[at].IsBlame ? 1 : 0) + (CostsTime(signs, at) ? 2 : 0);
            if (weight > most)
            {
                (best, most) = (at, weight);
            }
        }

        return best;
    }

    // The time lost in the same sentence, at the clause or right behind it.
    private bool CostsTime(List<MistakeSigns> signs, int at) =>
        Enumerable.Range(at, 3).Any(next => next < signs.Count && signs[next].Lost is not null && account.Clauses[next].Sentence == account.Clauses[at].Sentence);

    private Span WordsOf((int First, int Last) place, int at, Span what)
    {
        var (first, last) = place;
        while (account.Clauses[last].Next - account.Clauses[first].First > MostWords && (first < at || last > at))
        {
            (first, last) = last > at ? (first, last - 1) : (first + 1, last);
        }

        var whole = account.SpanOf(account.Clauses[first].First, account.Clauses[last].Next);
        return new(Math.Min(whole.Start, what.Start), Math.Max(whole.End, what.End));
    }

    // What the maker says with "because" goes before what only happened.
    private Id<Cause>? CauseOf(List<MistakeSigns> signs, (int First, int Last) place, int at)
    {
        var causes = Enumerable.Range(place.First, place.Last - place.First + 1).Where(i => signs[i].Cause is not null).ToList();
        return causes.Count == 0 ? null : signs[causes.OrderBy(i => account.Clauses[i].Has(Cue.Reason) ? 0 : 1).ThenBy(i => MistakeSignReader.IsSymptom(signs[i].Cause!.Value) ? 1 : 0).ThenBy(i => Math.Abs(i - at)).First()].Cause;
    }

    private static IEnumerable<MistakeSigns> Near(List<MistakeSigns> signs, (int First, int Last) place) =>
        signs.Skip(place.First).Take(place.Last - place.First + 1 + Aftermath);

    // "Again!", "I knew better", "my own rule": then the lesson that the words are near to.
    private Id<Lesson>? RepeatedAt((int First, int Last) place)
    {
        for (var at = Math.Max(0, place.First - 1); at <= Math.Min(place.Last + 1, account.Clauses.Count - 1); at++)
        {
            var clause = account.Clauses[at];
            if (clause.Has(Cue.Ignored) && lessons.In(account, account.Clauses[Math.Max(0, at - 2)].First, account.Clauses[Math.Min(at + 1, account.Clauses.Count - 1)].Next) is [{ Share: > 0.35, Words: > 1 } best, ..])
            {
                return new Id<Lesson>(best.Id);
            }
        }

        return null;
    }
}
