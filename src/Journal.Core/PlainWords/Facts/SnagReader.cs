using Journal.Core.PlainWords.Clauses;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Facts;

/// <summary>
/// Reads new snags: what still leaks, knocks or binds, a fault that is there now, and what the maker puts on his list. What is only still to be
/// made is none, and neither is a known one.
/// </summary>
internal sealed class SnagReader(Account account, Recall known, MistakeReader mistakes, StateReader state)
{
    private const int LongestFault = 14;
    private const int MostSnags = 20;

    private readonly List<ProposedText> snags = [];
    private readonly HashSet<int> told = [];

    public IReadOnlyList<ProposedText> Snags => snags;

    public void Read(int index)
    {
        var clause = account.Clauses[index];
        if (!clause.IsTonight || clause.IsFilm || state.ClearedClauses.Contains(index) || told.Contains(index) || snags.Count >= MostSnags)
        {
            return;
        }

        if (Announced(clause) is { } first)
        {
            Add(index, first, first < clause.Next ? clause.Next : EndOfNext(index));
            told.Add(index + (first < clause.Next ? 0 : 1));
        }
        else if (clause.Hits.Exists(hit => hit.Cue == Cue.OnTheList && clause.IsReal(hit.First)))
        {
            AddListed(clause, index);
        }
        else if (!mistakes.Tells(index) && !clause.Has(Cue.Cleared) && (Has(clause, Cue.Snag) || IsFault(clause)))
        {
            Add(index, clause.First, clause.Next);
        }
    }

    // "Snag: …", "new snag: …", "remaining problem: …".
    private int? Announced(Clause clause)
    {
        var at = clause.First + (account.Word(clause.First) is "new" or "one" or "another" or "remaining" or "only" or "a" or "still" ? 1 : 0);
        if (account.Word(at) is not ("snag" or "snags" or "problem" or "niggle" or "fault"))
        {
            return null;
        }

        var behind = account.Word(at + 1);
        return at + 1 >= clause.Next && behind == ":" ? clause.Next : behind is "is" or "-" or "that" or "with" ? at + 2 : null;
    }

    private int EndOfNext(int index) => index + 1 < account.Clauses.Count ? account.Clauses[index + 1].Next : account.Clauses[index].Next;

    // "…, so that one stays on the list", "…, put on list": said of what was told right before.
    private void AddListed(Clause clause, int index)
    {
        var hit = clause.FirstOf(Cue.OnTheList)!.Value;
        if (hit.First - clause.First > 5)
        {
            Add(index, clause.First, hit.First);
            return;
        }

        for (var back = index - 1; back >= Math.Max(0, index - 3); back--)
        {
            var before = account.Clauses[back];
            if (!before.IsTonight || told.Contains(back))
            {
                return;
            }

            if (before.Has(Cue.Feature) || before.Names.Count > 0 || Has(before, Cue.Snag) || Has(before, Cue.Fault))
            {
                Add(back, before.First, before.Next);
                return;
            }
        }
    }

    private static bool Has(Clause clause, Cue cue) => clause.Hits.Exists(hit => hit.Cue == cue && clause.IsReal(hit.First));

    // "one of the cap screws is stripped", "the centre hole is shallow": there now, and of the work.
    private bool IsFault(Clause clause) =>
        clause.Next - clause.First <= LongestFault && Has(clause, Cue.Fault) && clause.FirstOf(Cue.Fault)!.Value is var fault && Has(clause.First, fault.First) && !clause.Operations.Exists(operation => operation.Form == VerbForm.Past) && !clause.Has(Cue.Maker)
        && (clause.Parts.Any() || (clause.Has(Cue.Feature) && !clause.Tools.Any()));

    private bool Has(int first, int next) => Enumerable.Range(first, Math.Max(0, next - first)).Any(at => account.Word(at) is "is" or "are" or "'s" or "has" or "stands" or "stand" or "have" or "sits" || account.HasCueAt(at, Cue.Fault)) || account.Word(next) is "is" or "are" or "has" or "stands";

    private void Add(int index, int first, int next)
    {
        if (next <= first || known.In(account, first, next) is [{ Share: >= 0.35, Words: > 1 }, ..] || Wording.Of(account, first, next) is not { } text || text.Text.Length < 8)
        {
            return;
        }

        told.Add(index);
        snags.Add(new(text.Text, text.Words));
    }
}
