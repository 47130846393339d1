using Journal.Core.Model;
using Journal.Core.PlainWords.Clauses;
using Journal.Core.PlainWords.Quantities;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Facts.Jobs;

/// <summary>Reads the jobs: what was done tonight, to which part, for how long.</summary>
internal sealed class JobReader
{
    private readonly Account account;
    private readonly Topic topic;
    private readonly WorkReader work;
    private readonly PartFinder parts;
    private readonly TimePlacer placer;
    private (MadeThing Made, Clause Clause)? madeBefore;

    public JobReader(Account account, Topic topic)
    {
        (this.account, this.topic) = (account, topic);
        work = new(account);
        parts = new(account, topic);
        placer = new(account, topic, Jobs);
    }

    public JobList Jobs { get; } = new();

    public (int Minutes, Span Words)? Total => placer.Total;

    /// <summary>Times that belong to nothing that was said.</summary>
    public IReadOnlyList<Quantity> Unplaced => placer.Unplaced;

    public void Read(int index)
    {
        var clause = account.Clauses[index];
        var times = placer.TimesOf(clause);
        var own = times.OwnOfJobs;
        var done = work.In(clause, own.Count > 0 || placer.IsWaitingFor(clause));
        if (done.Count == 0)
        {
            ReadUnnamed(clause, own);
        }

        AddJobs(clause, done, own);
        CorrectPart(clause);
        topic.Hear(clause);
        if (Jobs.Last is { Parts.Count: 0, HasNamedPart: false } headed && topic.Parts.Count > 0 && index - headed.Clause <= 3)
        {
            headed.Parts.AddRange(topic.Parts);
        }

        if (Jobs.Last is { } last && last.Clause == index)
        {
            topic.Set(last.Parts.Count > 0 ? last.Parts : topic.Parts);
        }

        if (madeBefore is { } thing && own.Count > 0 && done.Count == 0 && index - thing.Clause.Index is > 0 and <= 3 && (Jobs.Last is null || Jobs.Last.Clause < thing.Clause.Index))
        {
            AddMaking(thing.Clause, thing.Made);
            madeBefore = null;
        }

        placer.Place(clause, times);
    }

    /// <summary>At the end: what only the whole account tells.</summary>
    public void Finish()
    {
        placer.Finish();
        // "Lapping! I'd never done it": a word alone, of no part and without a time, tells of no job.
        Jobs.RemoveAll(job => job is { IsFirm: false, Minutes: null, Parts.Count: 0 });
    }

    // Work that no word for an operation names: "an hour cutting" at the mill, "made a split bush, 25 min".
    private void ReadUnnamed(Clause clause, IReadOnlyList<Quantity> own)
    {
        if (own.Count > 0 && CuttingOn(clause) is { } cutting)
        {
            var listed = parts.Listed(clause, [.. clause.Parts]);
            var draft = Jobs.Recent(job => job.Operations.Contains(cutting) && job.Minutes is null) ?? Jobs.Begin(listed.Count > 0 ? listed : topic.Parts, listed.Count > 0);
            draft.IsFirm = true;
            draft.AddOperation(cutting);
            draft.AddWords(account.SpanOf(clause.First, clause.Next));
            draft.Told(clause);
            return;
        }

        if (!clause.IsTonight || clause.Has(Cue.Lost) || MadeThings.In(account, clause) is not { } made)
        {
            return;
        }

        if (own.Count > 0 || placer.IsWaitingFor(clause))
        {
            AddMaking(clause, made);
            placer.GiveWaiting(Jobs.Last!, clause, own.Count);
        }
        else
        {
            madeBefore = (made, clause);
        }
    }

    private void AddJobs(Clause clause, List<OperationHit> done, IReadOnlyList<Quantity> own)
    {
        JobDraft? draft = null;
        var timeAt = 0;
        var eachHasItsTime = own.Count >= done.Count && own.Count > 1;
        foreach (var operation in done)
        {
            var of = parts.Of(clause, operation, done, out var isNamed);
            if (Meant(operation, own.Count) is { } meant)
            {
                draft = meant;
                draft.AddWords(account.SpanOf(clause.First, clause.Next));
                draft.Told(clause);
                continue;
            }

            if (draft is null || (isNamed && draft.HasNamedPart && !of.SequenceEqual(draft.Parts)) || eachHasItsTime)
            {
                draft = Known(operation, of, isNamed, own.Count) ?? Joined(clause, of, isNamed, own.Count) ?? Jobs.Begin(of, isNamed);
                if (eachHasItsTime && timeAt < own.Count)
                {
                    placer.Give(draft, own[timeAt++]);
                }
            }

            draft.IsFirm |= operation.Form != VerbForm.Going && !operation.IsNoun;
            draft.AddOperation(operation.Operation.Value == "turning" && IsBetweenCentres(clause) ? new("between-centres") : operation.Operation);
            draft.AddWords(account.SpanOf(clause.First, clause.Next));
            draft.Told(clause);
            if (!draft.HasNamedPart && isNamed)
            {
                draft.Parts.Clear();
                draft.Parts.AddRange(of);
                draft.HasNamedPart = true;
            }
        }

        if (draft is not null)
        {
            draft.IsRest |= draft.Minutes is null && own.Count == 0 && clause.Has(Cue.Rest);
            placer.GiveWaiting(draft, clause, own.Count);
        }
    }

    // Turning with the work between centres is an operation of its own.
    private bool IsBetweenCentres(Clause clause)
    {
        var first = clause.Index > 0 && account.Clauses[clause.Index - 1].Sentence == clause.Sentence ? account.Clauses[clause.Index - 1].First : clause.First;
        for (var at = first; at + 1 < clause.Next; at++)
        {
            if (account.Word(at) is "between" or "btwn" && account.Word(at + 1) is "centres" or "centers" && !Enumerable.Range(at + 2, 4).Any(behind => account.HasCueAt(behind, Cue.Correction)))
            {
                return true;
            }
        }

        return false;
    }

    // "the boring itself was an hour and five" behind a line-boring: the wider word for the work that waits for its time.
    private JobDraft? Meant(OperationHit operation, int times) =>
        times > 0 && operation.IsNoun && account.Word(operation.First - 1) is "the" or "actual" or "that"
            ? Jobs.Recent(job => job.Minutes is null && !job.Operations.Contains(operation.Operation) && job.Operations.Exists(known => WiderOf(known.Value) == operation.Operation.Value))
            : null;

    private static string WiderOf(string operation) => operation switch
    {
        "line-boring" => "boring",
        "taper-turning" or "form-turning" or "eccentric-turning" or "between-centres" => "turning",
        "fly-cutting" or "slotting" or "keyway-cutting" or "squaring-up" => "milling",
        "centre-drilling" or "spot-drilling" or "drilling-in-place" => "drilling",
        _ => "",
    };

    // The same work spoken of again.
    private JobDraft? Known(OperationHit operation, IReadOnlyList<string> of, bool isNamed, int times) =>
        Jobs.Recent(job => job.Operations.Contains(operation.Operation) && of.SequenceEqual(job.Parts) && (times == 0 || job.Minutes is null))
        ?? ((!isNamed || of.Count == 0) && times > 0 && operation.Form is VerbForm.Going or VerbForm.Phrase ? Jobs.Recent(job => job.Operations.Contains(operation.Operation) && job.Minutes is null) : null);

    // Work on the same part that goes on in one breath without a time of its own is one job.
    private JobDraft? Joined(Clause clause, IReadOnlyList<string> of, bool isNamed, int times) =>
        Jobs.Last is { Minutes: null } last && last.Sentence == clause.Sentence && clause.Index - last.Clause <= 2 && times <= 1 && (!isNamed || of.SequenceEqual(last.Parts)) && !clause.Has(Cue.Rest)
            ? last
            : null;

    // "I bored the … no, I tell a lie, it was the bottom cover".
    private void CorrectPart(Clause clause)
    {
        var isSaid = account.Word(clause.First) is "it" or "that" && account.Word(clause.First + 1) is "was" && (account.NameOf.ElementAtOrDefault(clause.First + 2) is not null || account.NameOf.ElementAtOrDefault(clause.First + 3) is not null);
        if (!isSaid || Jobs.Last is not { } last || clause.Index - last.Clause > 4 || !account.Clauses.Skip(Math.Max(0, clause.Index - 3)).Take(3).Any(other => other.Has(Cue.Correction)))
        {
            return;
        }

        if (parts.Listed(clause, [.. clause.Parts]) is { Count: > 0 } named)
        {
            last.Parts.Clear();
            last.Parts.AddRange(named);
        }
    }

    // "an hour and three quarters cutting": the machine that was spoken of says which way; "in the pillar drill, a quarter of an hour".
    private Id<Operation>? CuttingOn(Clause clause)
    {
        const int FarthestMachine = 8;
        var isCutting = Enumerable.Range(clause.First, clause.Next - clause.First).Any(at => account.Word(at) is "cutting" or "machining");
        if (!isCutting && (Jobs.Last is { Minutes: null } || (Jobs.Last is { } last && last.Sentence == clause.Sentence) || clause.Has(Cue.Reads)))
        {
            return null;
        }

        for (var at = clause.Index; at >= Math.Max(0, clause.Index - (isCutting ? FarthestMachine : 1)); at--)
        {
            foreach (var tool in account.Clauses[at].Tools)
            {
                if ((isCutting || (account.Clauses[at].Sentence == clause.Sentence && account.Word(tool.First - 1) is "the" && account.Word(tool.First - 2) is "in" or "on")) && OfMachine(tool.Name.Ids[0], isCutting) is { } operation)
                {
                    return new(operation);
                }
            }
        }

        return null;
    }

    private static string? OfMachine(string tool, bool isCutting) => tool switch
    {
        "mill" or "milling-machine" when isCutting => "milling",
        "pillar-drill" or "drill-press" or "bench-drill" => "drilling",
        "bandsaw" => "sawing",
        _ => isCutting && tool.EndsWith("lathe", StringComparison.Ordinal) ? "turning" : null,
    };

    // "made a split bush to hold it by, 25 min": what holds or guides the work is made in a job of its own.
    private void AddMaking(Clause clause, MadeThing made)
    {
        var named = parts.Listed(clause, [.. clause.Parts]);
        var draft = Jobs.Begin(named.Count > 0 ? named : topic.Parts, named.Count > 0);
        draft.IsFirm = true;
        draft.AddOperation(new(made.Kind == "tool" ? "tool-making" : "fixture-making"));
        draft.AddWords(account.SpanOf(clause.First, clause.Next));
        draft.Told(clause);
    }
}
