using Journal.Core.Model;
using Journal.Core.PlainWords.Clauses;
using Journal.Core.PlainWords.Names;
using Journal.Core.PlainWords.Quantities;
using Journal.Core.PlainWords.Tokens;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Facts;

/// <summary>Reads what happened beside the work: parts finished, things bought and made, trials.</summary>
internal sealed class EventReader(Account account, Topic topic)
{
    private static readonly HashSet<string> Enders = ["for", "from", "at", "to", "so", "because", "which", "that", "cost", "and", "was", "on", "with", "in", "tonight", "today", "off", "costs", "by", "of"];
    private const int LongestList = 12;
    private readonly List<ProposedFinish> finished = [];
    private readonly List<ProposedPurchase> bought = [];
    private readonly List<ProposedTool> made = [];
    private readonly List<ProposedTrial> trials = [];

    public IReadOnlyList<ProposedFinish> Finished => finished;

    public IReadOnlyList<ProposedPurchase> Bought => bought;

    public IReadOnlyList<ProposedTool> Made => made;

    public IReadOnlyList<ProposedTrial> Trials => trials;

    public void Read(int index)
    {
        var clause = account.Clauses[index];
        if (!clause.IsTonight)
        {
            return;
        }

        ReadFinished(clause);
        ReadBought(clause, index);
        ReadMade(clause);
        ReadTrial(clause, index);
    }

    // "the crosshead is finished", "finished the pins", "that's the cover done".
    private void ReadFinished(Clause clause)
    {
        if (clause.FirstOf(Cue.Finished) is not { } hit || clause.Has(Cue.Unfinished) || !clause.IsReal(hit.First) || clause.HasAny(Cue.Film, Cue.Negation, Cue.Future))
        {
            return;
        }

        var isBehind = account.Word(hit.First) is "finished" or "finish" or "completed" && account.OperationBeginning(hit.Next) is not null;
        var name = clause.Parts.LastOrDefault(part => part.Next <= hit.First && hit.First - part.Next <= 5) ?? clause.Parts.FirstOrDefault(part => part.First >= hit.Next && part.First - hit.Next <= 3);
        if (isBehind || name is null || topic.IsAside(clause, name) && name.First > hit.First)
        {
            return;
        }

        foreach (var id in topic.Resolve(name))
        {
            if (!finished.Exists(part => part.Part.Value == id))
            {
                finished.Add(new(new Id<Part>(id), Pieces(clause, name), account.SpanOf(clause.First, clause.Next)));
            }
        }
    }

    // "three of the six pins".
    private static int? Pieces(Clause clause, NameMention name)
    {
        var count = clause.Quantities.Find(quantity => quantity.Kind == UnitKind.None && !quantity.IsFraction && quantity.Next <= name.First && name.First - quantity.Next <= 3 && quantity.Value is >= 1 and < 100);
        return count is { } some && some.Value == decimal.Truncate(some.Value) ? (int)some.Value : null;
    }

    private void ReadBought(Clause clause, int index)
    {
        if (clause.FirstOf(Cue.Bought) is not { } hit || !clause.IsReal(hit.First))
        {
            return;
        }

        var verb = account.Word(hit.First);
        var cost = Cost(index, verb is "bought" or "bt" or "paid" or "purchased" or "ordered");
        var isSure = verb is "bought" or "bt" or "purchased" or "paid" or "ordered" or "picked" || (cost is not null && verb is "got" or "cost" or "spent" or "set" or "came" or "splashed" or "costing" or "invested" or "sprang" or "forked" or "shelled");
        if (!isSure || (cost is null && verb is not ("bought" or "purchased" or "bt")))
        {
            return;
        }

        var (first, next) = verb is "cost" or "came" or "set" ? (clause.First, hit.First) : (hit.Next, clause.Next);
        if (What(first, next) is not { } what)
        {
            if (What(clause.First, hit.First) is not { } before)
            {
                return;
            }

            what = before;
        }

        AddListed(index);
        bought.Add(new(what.Text, cost?.Value, account.SpanOf(clause.First, cost is { } sum ? Math.Max(clause.Next, sum.Next) : clause.Next)));
    }

    // The money in the clause, or right behind it in the same sentence.
    private Quantity? Cost(int index, bool mayBeUnnamed)
    {
        for (var at = index; at < Math.Min(index + 3, account.Clauses.Count) && account.Clauses[at].Sentence == account.Clauses[index].Sentence && !account.Clauses[at].IsOthers; at++)
        {
            if (account.Clauses[at].Quantities.Find(quantity => quantity.Kind == UnitKind.Money) is { } money)
            {
                return money;
            }

            if (mayBeUnnamed && Unnamed(account.Clauses[at]) is { } sum)
            {
                return sum;
            }
        }

        return null;
    }

    // "for twenty two fifty", "4.80": money without its name, where something was bought.
    private static Quantity? Unnamed(Clause clause)
    {
        foreach (var quantity in clause.Quantities)
        {
            if (quantity is not { Kind: UnitKind.None, IsFraction: false })
            {
                continue;
            }

            if (quantity.IsPair && quantity.Value == decimal.Truncate(quantity.Value))
            {
                return quantity with { Kind = UnitKind.Money, Value = quantity.Value / 100 };
            }

            if (quantity.Value.Scale == 2 && quantity.Next >= clause.Next)
            {
                return quantity with { Kind = UnitKind.Money };
            }
        }

        return null;
    }

    // "studs £3.20 & a foot of bronze 7.80": what is listed behind, each with its price.
    private void AddListed(int index)
    {
        for (var at = index + 1; at < Math.Min(account.Clauses.Count, index + LongestList) && account.Clauses[at].Sentence == account.Clauses[index].Sentence; at++)
        {
            var clause = account.Clauses[at];
            var price = clause.Quantities.Find(quantity => quantity.Kind == UnitKind.Money) ?? Unnamed(clause);
            if (price is null || price.First == clause.First || price.Next < clause.Next || clause.Operations.Count > 0 || clause.Hits.Exists(hit => hit.Cue is Cue.Reads or Cue.Maker) || What(clause.First, price.First) is not { } what)
            {
                return;
            }

            bought.Add(new(what.Text, price.Value, account.SpanOf(clause.First, clause.Next)));
        }
    }

    private (string Text, Span Words)? What(int first, int next)
    {
        while (first < next && account.Word(first) is "a" or "an" or "the" or "some" or "myself" or "me" or "us" or "new" or "up" or "i" or "my")
        {
            first++;
        }

        var end = first;
        while (end < next && (!Enders.Contains(account.Word(end)) || (account.Word(end) is "of" && end > first)) && account.QuantityAt(end) is not { Kind: UnitKind.Money } && !(account.QuantityAt(end) is { Kind: UnitKind.None, Value.Scale: 2 }) && account.Tokens[end].Kind is TokenKind.Word or TokenKind.Number or TokenKind.Mark)
        {
            end++;
        }

        return end > first ? Wording.ThingOf(account, first, end) : null;
    }

    private void ReadMade(Clause clause)
    {
        if (MadeThings.In(account, clause) is { } thing)
        {
            made.Add(new(thing.Title, thing.Kind, account.SpanOf(clause.First, clause.Next)));
        }
    }

    private void ReadTrial(Clause clause, int index)
    {
        if (clause.FirstOf(Cue.TrialOn) is not { } on || !clause.IsReal(on.First) || clause.HasAny(Cue.Film))
        {
            return;
        }

        var hasTrial = clause.Has(Cue.Trial) || (index + 1 < account.Clauses.Count && account.Clauses[index + 1] is { } next && next.Has(Cue.Trial) && next.IsTonight && clause.Next - clause.First <= 4)
            || (index > 0 && account.Clauses[index - 1].Has(Cue.Trial) && account.Clauses[index - 1].Sentence == clause.Sentence);
        if (!hasTrial || clause.Operations.Count > 0 && account.Word(on.First + 1) is "hand" or "drill")
        {
            return;
        }

        var words = account.Word(on.Next - 1);
        var kind = words switch { "air" or "compressor" => "air", "steam" => "steam", "power" or "motor" or "mains" => "power", "hand" => "hand", _ => words };
        if (trials.Exists(trial => trial.On == kind))
        {
            return;
        }

        var time = Enumerable.Range(index, 3).Where(at => at < account.Clauses.Count && account.Clauses[at].IsTonight && !account.Clauses[at].Has(Cue.Film)).Select(at => account.Clauses[at].Quantities.Find(quantity => quantity is { Kind: UnitKind.Time, IsVague: false })).FirstOrDefault(found => found is not null);
        trials.Add(new(kind, time is null ? null : new Minutes(time.Minutes), account.SpanOf(clause.First, time is null ? clause.Next : Math.Max(clause.Next, time.Next))));
    }
}
