using Journal.Core.PlainWords.Clauses;
using Journal.Core.PlainWords.Names;
using Journal.Core.PlainWords.Tokens;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Facts.Jobs;

/// <summary>Finds the parts that work was done to: its object, else what stands before it, else what was spoken of.</summary>
internal sealed class PartFinder(Account account, Topic topic)
{
    private static readonly HashSet<string> Articles = ["a", "an", "another", "some", "two", "three", "four", "six"];

    /// <summary>Work on the shop or the engine as a whole: what was spoken of is not its object unless it is named.</summary>
    private static readonly HashSet<string> OfNoPart = ["cleaning", "maintenance", "filming", "planning", "drawing", "wiring", "assembly", "trial-running", "running-in", "measuring", "tool-making", "tool-grinding"];

    /// <param name="clause">The clause.</param>
    /// <param name="operation">The work.</param>
    /// <param name="work">All work of the clause.</param>
    /// <param name="isNamed">Whether the parts were named here, or something that is no part of the build.</param>
    public IReadOnlyList<string> Of(Clause clause, OperationHit operation, IReadOnlyList<OperationHit> work, out bool isNamed)
    {
        isNamed = true;
        var end = clause.Next;
        foreach (var other in work)
        {
            end = other.First > operation.First ? Math.Min(end, other.First) : end;
        }

        // "drilled and reamed the block": the object behind the last verb is the object of each.
        if (end < clause.Next && !clause.Parts.Any(part => part.First > operation.First && part.First < end))
        {
            end = clause.Next;
        }

        var objects = Listed(clause, [.. clause.Parts.Where(part => part.First >= operation.First && part.First < end && !topic.IsPurpose(part))]);
        if (objects.Count == 0)
        {
            objects = Listed(clause, [.. clause.Parts.Where(part => part.Next <= operation.First)]);
        }

        if (objects.Count > 0)
        {
            return objects;
        }

        if (OfNoPart.Contains(operation.Operation.Value) || IsNewThing(clause, operation))
        {
            return [];
        }

        isNamed = false;
        return topic.Parts;
    }

    /// <summary>The first part, and those that are listed with it: “the front and the rear standard”.</summary>
    public List<string> Listed(Clause clause, IReadOnlyList<NameMention> names)
    {
        var ids = new List<string>();
        var end = -1;
        foreach (var name in names)
        {
            if (ids.Count > 0 && !JoinsList(end, name.First))
            {
                break;
            }

            if (topic.IsAside(clause, name))
            {
                continue;
            }

            ids.AddRange(topic.Resolve(name).Where(id => !ids.Contains(id)));
            end = name.Next;
        }

        return ids;
    }

    // "turned an oil cup", "sawed two blanks": a thing that is no part, no feature of one and no everyday word.
    private bool IsNewThing(Clause clause, OperationHit operation)
    {
        if (operation.Form != VerbForm.Past || !Articles.Contains(account.Word(operation.Next)) || operation.Operation.Value is "gasket-making" or "drilling" or "grooving" or "slotting" or "keyway-cutting")
        {
            return false;
        }

        var at = operation.Next + 1;
        while (at < clause.Next && account.Tokens[at].Kind == TokenKind.Word && account.QuantityAt(at) is null && !account.HasCueAt(at, Cue.Using) && !account.HasCueAt(at, Cue.Into) && account.Word(at) is not ("and" or "out" or "from" or "for" or "to" or "too" or "also" or "tonight" or "first" or "as" or "again" or "with" or "up" or "of" or "that"))
        {
            at++;
        }

        var head = at - 1;
        return head > operation.Next && !account.HasCueAt(head, Cue.Feature) && !account.HasCueAt(head, Cue.FeatureMeasured) && !Lexicon.Shared.Ordinary.Contains(account.Word(head));
    }

    private bool JoinsList(int from, int to)
    {
        for (var at = from; at < to; at++)
        {
            if (account.Word(at) is not ("and" or "," or "&" or "the" or "then" or "both" or "+" or "plus" or "a" or "with" or "two"))
            {
                return false;
            }
        }

        return to - from <= 4;
    }
}
