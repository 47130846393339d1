using Journal.Core.PlainWords.Clauses;
using Journal.Core.PlainWords.Facts.Jobs;
using Journal.Core.PlainWords.Names;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Facts;

/// <summary>Reads how the work was held, what it was measured from, and which tools were used.</summary>
internal sealed class HoldingReader(Account account, JobList jobs)
{
    private const int LongestHolding = 14;
    private static readonly HashSet<string> Prepositions = ["in", "on", "between", "by", "against", "to", "onto", "with", "from", "at", "into", "under", "over", "across", "off"];
    private static readonly HashSet<string> Stops = ["and", "then", "which", "so", "but", "i", "while", "because", "took", "for", "datum", "came", "that", "it", "using", "went", "was", "is", "about", "where", "who", "when", "we"];
    private static readonly HashSet<string> LeadingVerbs = ["clamped", "bolted", "strapped", "upside", "standing", "straight", "wrung", "glued", "superglued", "packed", "upright", "flat", "dogged", "soldered", "square"];

    /// <summary>Things that hold work, whether the crib lists them or not (handbook).</summary>
    private static readonly HashSet<string> Holders = ["vice", "vise", "chuck", "jaw", "jaws", "centres", "centers", "mandrel", "arbor", "plate", "faceplate", "blocks", "block", "collet", "collets", "table", "jacks", "jack", "clamps", "straps", "strap", "parallels", "parallel", "fixture", "jig", "spigot", "steady", "angle", "knee", "vees", "carriage", "shims", "stub", "plug", "bolster", "toolpost", "saddle", "spindle", "tailstock", "packing", "nest"];

    public void Read(int index)
    {
        var clause = account.Clauses[index];
        if (!clause.IsTonight)
        {
            return;
        }

        var job = jobs.NearestTo(account, index);
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

    /// <summary>Words shortly before a tool that say it was not used for the work.</summary>
    private static readonly HashSet<string> NotUsed = ["for", "than", "like", "from", "without", "bought", "ordered", "no", "not", "another", "want", "wants", "need", "needs", "buy", "his", "her", "their", "your", "whose", "oiled", "cleaned", "under", "beside", "behind", "fixed", "sold", "offered", "changed", "looked", "of", "new"];
    private static readonly HashSet<string> Uses = ["in", "on", "with", "by", "using", "used", "between", "against", "through", "into", "ran", "w", "via", "borrowed", "to", "over", "onto"];

    // Not "bought a reamer", "like the old drill", "his lathe", "oiled the lathe", "the lathe's belt".
    private bool IsUsed(Clause clause, NameMention tool)
    {
        if (clause.HasAny(Cue.Bought, Cue.Snag) && clause.Operations.Count == 0 || clause.HasAny(Cue.Film) || IsDeniedBehind(clause, tool) || (account.Word(tool.Next) == "'s" && !account.HasCueAt(tool.Next, Cue.Reads)))
        {
            return false;
        }

        for (var at = tool.First - 1; at >= Math.Max(clause.First, tool.First - 4); at--)
        {
            var word = account.Word(at);
            if (Uses.Contains(word))
            {
                return true;
            }

            if (NotUsed.Contains(word) || account.HasCueAt(at, Cue.Theirs) || (word == "'s" && account.HasCueAt(at - 1, Cue.Others)))
            {
                return false;
            }
        }

        return !clause.Operations.Exists(operation => operation.Operation.Value is "cleaning" or "maintenance") && (clause.Next - tool.First <= 4 || IsMeasuring(tool) || tool.First - clause.First <= 2);
    }

    // "the height gauge battery flat", "the knurling tool is at my brother's", "the mill stayed under its sheet".
    private bool IsDeniedBehind(Clause clause, NameMention tool) =>
        clause.Hits.Exists(hit => hit.Cue is Cue.Negation && hit.First >= tool.Next && hit.First - tool.Next <= 3) || account.Word(tool.Next) is "stayed" or "stays" or "battery" or "is" or "would" or "has" or "was" or "belongs" or "blank" or "reckons";

    private bool IsMeasuring(NameMention tool) => KindOf(tool) is "measuring" or "aligning";

    private void ReadHeld(Clause clause, JobDraft job)
    {
        if (job.Held is not null)
        {
            return;
        }

        if (Fragment(clause) is { } whole)
        {
            job.Held = whole.Text;
            job.AddWords(whole.Words);
            return;
        }

        // "… thirty five minutes three jaw".
        if (clause.Names.LastOrDefault() is { IsPart: false } last && last.Next >= clause.Next && IsWorkHolding(last) && clause.IsReal(last.First) && account.QuantityOver(last.First - 1) is { Kind: UnitKind.Time })
        {
            job.Held = account.TextOf(last.First, last.Next);
            job.AddWords(account.SpanOf(last.First, last.Next));
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

    // "3-jaw", "mill vice": in notes the thing that holds the work stands alone.
    private (string Text, Span Words)? Fragment(Clause clause)
    {
        var isShort = clause.Next - clause.First <= 4 && clause.Quantities.All(quantity => account.NameOf[quantity.First] is not null) && clause.Operations.Count == 0 && clause.IsReal(clause.First);
        if (!isShort || clause.Index == 0)
        {
            return null;
        }

        var first = clause.First;
        while (first < clause.Next && account.Word(first) is "the" or "a" or "my" or "both" or "all")
        {
            first++;
        }

        return first < clause.Next && account.NameOf[first] is { IsPart: false } name && IsWorkHolding(name) && clause.Next - name.Next <= 2 ? Wording.Of(account, clause.First, clause.Next) : null;
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
            if (isHolder && word is not ("by" or "over" or "off" or "from" or "at") && (word != "with" || IsHeldWith(clause, preposition)))
            {
                end = name?.Next ?? at + 1;
                return true;
            }
        }

        return false;
    }

    // "held everything with the angle plate"; "turned it with the tailstock chuck" holds nothing.
    private bool IsHeldWith(Clause clause, int with) => clause.Hits.Exists(hit => hit.Cue == Cue.Held && hit.Next <= with && account.Word(hit.First) is "held" or "clamped" or "gripped" or "holding");

    private bool IsWorkHolding(NameMention name) =>
        KindOf(name) is "work-holding" or "fixture" or "jig" || (KindOf(name) == "tool-holding" && name.Name.Ids[0].Contains("chuck", StringComparison.Ordinal));

    private string? KindOf(NameMention name) => account.Journal.Tools.FirstOrDefault(tool => tool.Id.Value == name.Name.Ids[0])?.Kind?.Value;

    private int EndOfHolding(Clause clause, int at)
    {
        var start = at;
        while (at < clause.Next && at - start < LongestHolding)
        {
            var word = account.Word(at);
            if (Stops.Contains(word) || LeadsAway(clause, at) || account.OperationBeginning(at) is not null || account.QuantityAt(at) is { Kind: not (UnitKind.None or UnitKind.Length) } || word is "from" or "off" && account.Word(at - 1) != "packed")
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

    // "in the vice with a quarter inch end mill at eleven hundred": a cutter and a speed hold nothing.
    private bool LeadsAway(Clause clause, int at)
    {
        if (account.Word(at) is not ("with" or "w" or "at" or "on"))
        {
            return false;
        }

        for (var behind = at + 1; behind < Math.Min(clause.Next, at + 6); behind++)
        {
            if (account.NameOf[behind] is { IsPart: false } name && name.First == behind)
            {
                return !IsWorkHolding(name);
            }

            if (Holders.Contains(account.Word(behind)))
            {
                return false;
            }

            if (account.HasCueAt(behind, Cue.Tool) || account.HasCueAt(behind, Cue.NewTool) || account.QuantityAt(behind) is { Kind: UnitKind.Speed } or { Value: >= 40 })
            {
                return true;
            }
        }

        return account.Word(at) == "at";
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
