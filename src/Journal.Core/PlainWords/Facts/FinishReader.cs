using Journal.Core.Model;
using Journal.Core.PlainWords.Clauses;
using Journal.Core.PlainWords.Names;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Facts;

/// <summary>Reads which parts were finished: “the crosshead is finished”, “finished the pins”, “that's the cover done”.</summary>
internal sealed class FinishReader(Account account, Topic topic)
{
    private readonly List<ProposedFinish> finished = [];

    public IReadOnlyList<ProposedFinish> Finished => finished;

    public void Read(int index)
    {
        var clause = account.Clauses[index];
        if (!clause.IsTonight || clause.FirstOf(Cue.Finished) is not { } hit || clause.Has(Cue.Unfinished) || !clause.IsReal(hit.First) || clause.HasAny(Cue.Film, Cue.Negation, Cue.Future))
        {
            return;
        }

        var isBehind = account.Word(hit.First) is "finished" or "finish" or "completed" && account.OperationBeginning(hit.Next) is not null;
        var name = clause.Parts.LastOrDefault(part => part.Next <= hit.First && hit.First - part.Next <= 5) ?? clause.Parts.FirstOrDefault(part => part.First >= hit.Next && part.First - hit.Next <= 3);
        if (isBehind || name is null || topic.IsAside(clause, name) && name.First > hit.First)
        {
            return;
        }

        foreach (var id in topic.Resolve(name).Where(id => !finished.Exists(part => part.Part.Value == id)))
        {
            finished.Add(new(new Id<Part>(id), Pieces(clause, name), account.SpanOf(clause.First, clause.Next)));
        }
    }

    // "three of the six pins".
    private static int? Pieces(Clause clause, NameMention name)
    {
        var count = clause.Quantities.Find(quantity => quantity.Kind == UnitKind.None && !quantity.IsFraction && quantity.Next <= name.First && name.First - quantity.Next <= 3 && quantity.Value is >= 1 and < 100);
        return count is { } some && some.Value == decimal.Truncate(some.Value) ? (int)some.Value : null;
    }
}
