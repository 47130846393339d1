using Journal.Core.PlainWords.Clauses;
using Journal.Core.PlainWords.Names;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Facts;

/// <summary>Reads how the work was held, what it was measured from, and which tools were used.</summary>
internal sealed class HoldingReader(Account account, JobReader jobs)
{
    private const int LongestHolding = 14;
    private static readonly HashSet<string> Prepositions = ["in", "on", "between", "by", "against", "to", "onto", "with", "from", "at", "into", "under", "over", "across", "off"];
    private static readonly HashSet<string> Stops = ["and", "then", "which", "so", "but", "i", "while", "because", "took", "for", "datum", "came", "that", "it", "using", "went", "was", "is", "about", "where", "who", "when", "we"];
    private static readonly HashSet<string> LeadingVerbs = ["clamped", "bolted", "strapped", "upside", "standing", "straight", "wrung", "glued", "superglued", "packed", "upright", "flat", "dogged", "soldered", "square"];

    /// <summary>Things that hold work, whether the crib lists them or not (handbook).</summary>
    private static readonly HashSet<string> Holders = ["vice", "vise", "chuck", "jaw", "jaws", "centres", "centers", "mandrel", "arbor", "plate", "faceplate", "blocks", "block", "collet", "collets", "table", "jacks", "jack", "clamps", "straps", "strap", "parallels", "parallel", "fixture", "jig", "spigot", "steady", "angle", "knee", "vees", "carriage", "shims", "stub"];

    public void Read(int index)
    {
        var clause = account.Clauses[index];
        if (!clause.IsTonight)
        {
            return;
        }

        var job = jobs.NearestTo(index);
        if (job is null)
        {
            return;
        }

        ReadHeld(clause, job);
        ReadDatum(clause, job);
        foreach (var tool in clause.Tools)
        {
            if (clause.IsReal(tool.First) && IsUsed(clause, tool) && tool.Name.Ids.Count == 1)
            {
                job.AddTool(tool.Name.Ids[0]);
            }
        }
    }

    // Not "bought a reamer", "like the old drill", "his lathe", "oiled the lathe".
    private bool IsUsed(Clause clause, NameMention tool)
    {
        var before = account.Word(tool.First - 1);
        if (clause.HasAny(Cue.Bought, Cue.Snag) && clause.Operations.Count == 0 || account.HasCueAt(tool.First - 1, Cue.Theirs) || before is "no" or "not" or "another")
        {
            return false;
        }

        for (var atWord = tool.First - 1; atWord >= Math.Max(clause.First, tool.First - 4); atWord--)
        {
            var word = account.Word(atWord);
            if (word is "in" or "on" or "with" or "by" or "using" or "used" or "between" or "against" or "to" or "through" or "into" or "under" or "ran" or "off" or "onto" or "w" or "over" or "set" or "via")
            {
                return true;
            }

            if (word is "for" or "than" or "like" or "from" or "without" or "borrowed" or "bought" or "ordered")
            {
                return false;
            }
        }

        return tool.First == clause.First;
    }

    private void ReadHeld(Clause clause, JobDraft job)
    {
        if (job.Held is not null)
        {
            return;
        }

        for (var at = clause.First; at < clause.Next; at++)
        {
            if (!Prepositions.Contains(account.Word(at)) || !HoldsSoon(clause, at, out var holderEnd) || !clause.IsReal(at))
            {
                continue;
            }

            var first = at;
            while (first > clause.First && (LeadingVerbs.Contains(account.Word(first - 1)) || account.Word(first - 1) is "down" or "up" or "back" && first - 1 > clause.First && LeadingVerbs.Contains(account.Word(first - 2))))
            {
                first--;
            }

            var next = EndOfHolding(clause, holderEnd);
            if (Wording.Of(account, first, next) is { } held)
            {
                job.Held = held.Text;
                job.AddWords(held.Words);
            }

            return;
        }
    }

    // A thing that holds stands within a few words behind the preposition, and the sentence does not go elsewhere before it.
    private bool HoldsSoon(Clause clause, int preposition, out int end)
    {
        end = preposition;
        var word = account.Word(preposition);
        for (var at = preposition + 1; at < Math.Min(clause.Next, preposition + 6); at++)
        {
            if (Prepositions.Contains(account.Word(at)) && at > preposition + 1 || account.OperationBeginning(at) is not null && account.NameOf[at] is null)
            {
                return false;
            }

            var name = account.NameOf[at];
            var isHolder = name is { IsPart: false } ? IsWorkHolding(name) : name is null && Holders.Contains(account.Word(at)) && account.Word(at) is not ("angle" or "plate" or "block" or "table") || (name is null && account.Word(at) is "table" && account.Word(at - 1) is "mill" or "milling" or "the" && word is "on" or "to" or "onto");
            if (isHolder && !(word is "with" or "by" or "over" or "off" or "from" or "at") )
            {
                end = name?.Next ?? at + 1;
                return true;
            }
        }

        return false;
    }

    private bool IsWorkHolding(NameMention name) =>
        account.Journal.Tools.FirstOrDefault(tool => tool.Id.Value == name.Name.Ids[0]) is { Kind: { } kind } && kind.Value is "work-holding" or "fixture" or "jig";

    private int EndOfHolding(Clause clause, int at)
    {
        var start = at;
        while (at < clause.Next && at - start < LongestHolding)
        {
            var word = account.Word(at);
            if (Stops.Contains(word) || account.OperationBeginning(at) is not null || account.QuantityAt(at) is { Kind: not (UnitKind.None or UnitKind.Length) } || word is "from" or "off" && account.Word(at - 1) != "packed")
            {
                var goesOn = word is "and" && (account.NameOf.ElementAtOrDefault(at + 1) is { IsPart: false } || account.Word(at + 1) is "a" or "two" or "three" or "one" && Holders.Contains(account.Word(at + 2)));
                if (!goesOn)
                {
                    break;
                }
            }

            at++;
        }

        return at;
    }

    private void ReadDatum(Clause clause, JobDraft job)
    {
        if (job.Datum is not null)
        {
            return;
        }

        foreach (var hit in clause.Hits)
        {
            if (hit.Cue != Cue.Datum || !IsStrong(clause, hit) || !clause.IsReal(hit.First))
            {
                continue;
            }

            var next = hit.Next;
            while (next < clause.Next && next - hit.Next < 7 && !Stops.Contains(account.Word(next)) && account.QuantityAt(next) is not { Kind: UnitKind.Time } && account.Word(next) is not ("in" or "on" or "with" or "to" or "within" or "off" or "at"))
            {
                next++;
            }

            var first = hit.Next;
            while (first < next && account.Word(first) is "was" or "is" or ":" or "=" or "being")
            {
                first++;
            }

            if (next > first && Wording.Of(account, first, next) is { } datum)
            {
                job.Datum = datum.Text;
                job.AddWords(datum.Words);
                return;
            }
        }
    }

    // "the" alone leads nowhere: the phrase must say that it is measured from.
    private bool IsStrong(Clause clause, CueHit hit)
    {
        var word = account.Word(hit.First);
        if (word is "datum" or "clocked" or "clocking" or "working" or "worked" or "measured" or "registered" or "located" or "indicated" or "squared" or "referenced" or "referencing" or "picked" or "trued" or "dialled" or "everything" or "taken" or "true")
        {
            return true;
        }

        // "off the machined base": made before, so it serves.
        return word is "off" or "from" && account.Word(hit.Next) is "machined" or "milled" or "bored" or "turned" or "faced" or "ground" or "finished" or "scraped" or "sawn" or "datum" && hit.Next < clause.Next;
    }
}
